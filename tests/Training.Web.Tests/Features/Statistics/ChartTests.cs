using Training.Scoring;
using Training.Web.Features.Statistics;

namespace Training.Web.Tests.Features.Statistics;

/// <summary>Where things lie in pictures.</summary>
public sealed class ChartTests
{
    [Fact]
    public void A_value_beyond_the_axis_lies_at_its_end()
    {
        var axis = new ChartAxis(0, 1, 100, 200);

        Assert.Equal([100, 150, 200, 100, 200], new[] { 0, 0.5, 1, -3, 7 }.Select(axis.At));
    }

    [Fact]
    public void Values_grow_upwards_where_the_end_is_smaller_than_the_start() => Assert.Equal(50, new ChartAxis(0, 10, 300, 50).At(10));

    [Fact]
    public void The_cut_lies_between_the_score_that_fails_and_the_one_that_passes()
    {
        var scores = new ScoreDistribution(10);
        for (var score = 5; score <= 10; score++) scores.Add(score, score);

        var chart = ScoreChart.Of(scores, 8, 1.2, "label", "pass from 8");

        var failing = chart.Columns.Where(column => !column.IsPass).ToList();
        var passing = chart.Columns.Where(column => column.IsPass).ToList();
        Assert.Equal((3, 3), (failing.Count, passing.Count));
        Assert.All(failing, column => Assert.True(column.X + column.Width < chart.Cut));
        Assert.All(passing, column => Assert.True(column.X > chart.Cut));
        Assert.Equal(ScoreChart.Ground, chart.Columns[0].Y + chart.Columns[0].Height, 0.11);
        Assert.NotNull(chart.Band);
    }

    [Fact]
    public void An_error_that_is_not_known_has_no_band()
    {
        var scores = new ScoreDistribution(2);
        scores.Add(1);

        Assert.Null(ScoreChart.Of(scores, 2, Obstacle.TooFewPeople, "label", "cut").Band);
    }

    [Fact]
    public void Named_dots_lie_on_top_and_a_row_without_a_value_has_no_dot()
    {
        var dots = DotChart.Of([(0.5, -0.2, "1"), (0.9, 0.4, null)], "label", "across", "up");
        var rows = RowChart.Of([new("one", 0.5, new Interval(0.4, 0.6), false), new("two", Obstacle.NoAnswers, Obstacle.NoAnswers, true)], 0, 1, 0.5, 0.8, "label", FigureWords.Percent);

        Assert.Equal([null, "1"], dots.Dots.Select(dot => dot.Name));
        Assert.True(dots.Dots[1].Y > dots.Nought);
        Assert.Null(rows.Rows[1].Dot);
        Assert.Null(rows.Rows[1].Line);
        Assert.NotNull(rows.Mark);
        Assert.True(rows.Rows[0].Line!.Value.From < rows.Rows[0].Dot);
    }
}
