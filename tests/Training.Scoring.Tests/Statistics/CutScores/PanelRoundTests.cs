using CsCheck;

namespace Training.Scoring.Tests;

public sealed class PanelRoundTests
{
    private static readonly RatedCell[] TwoCells = [new(1, ["c1", "c2"]), new(3, ["o1", "o2", "o3", "o4"])];

    private static readonly Gen<int[][]> AnyRatings = Gen.Int[0, 100].Array[6].Array[2, 8];

    private static RatingSheet Sheet(string judge, params int[] percents) => new(
        judge, TwoCells.SelectMany(cell => cell.ItemIds).Zip(percents).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal));

    private static PanelRound Round(int[][] ratings) => PanelRound.Of(TwoCells, [.. ratings.Select((percents, judge) => Sheet($"j{judge}", percents))]);

    /// <summary>The table of docs/rules.md, "Cuts": three others with a mean of 70, one critical with 90; 300 / 4.</summary>
    [Fact]
    public void A_cut_is_that_of_a_drawn_form()
    {
        var round = Round([[85, 95, 60, 70, 70, 80]]);

        Assert.Equal(75, round.Percent.Known(), 1e-9);
        round.StandardError.IsUnknown(Obstacle.OneJudge);
    }

    /// <summary>By hand: judges of 70, 75 and 83 percent; mean 76, deviations −6, −1 and 7, so s² = 86/2.</summary>
    [Fact]
    public void Spread_and_severity_are_in_points_of_percent()
    {
        var round = Round([[70, 70, 70, 70, 70, 70], [83, 83, 83, 83, 83, 83], [75, 75, 75, 75, 75, 75]]);

        Assert.Equal(76, round.Percent.Known(), 1e-9);
        Assert.Equal(Math.Sqrt(43), round.StandardDeviation.Known(), 1e-9);
        Assert.Equal(Math.Sqrt(43 / 3.0), round.StandardError.Known(), 1e-9);
        Assert.Equal(["j1", "j2", "j0"], round.Judges.Select(judge => judge.Judge));
        Assert.Equal([7, -1, -6], round.Judges.Select(judge => Math.Round(judge.Severity, 9)));
    }

    [Fact]
    public void Where_a_form_holds_everything_once_it_is_the_plain_mean() => AnyRatings.Sample(ratings =>
    {
        var plain = PanelRound.Of(
            [new(2, ["c1", "c2"]), new(4, ["o1", "o2", "o3", "o4"])], [.. ratings.Select((percents, judge) => Sheet($"j{judge}", percents))]);

        Assert.Equal(ratings.Average(percents => percents.Average()), plain.Percent.Known(), 1e-9);
    });

    [Fact]
    public void The_cut_lies_between_the_mildest_and_the_most_severe_judge_and_severities_cancel_out() => AnyRatings.Sample(ratings =>
    {
        var round = Round(ratings);

        Assert.InRange(round.Percent.Known(), round.Judges[^1].Percent - 1e-9, round.Judges[0].Percent + 1e-9);
        Assert.Equal(0, round.Judges.Sum(judge => judge.Severity), 1e-6);
    });

    [Fact]
    public void One_judge_who_asks_for_more_never_lowers_the_cut() => Gen.Select(AnyRatings, Gen.Int[0, 5], Gen.Int[0, 100]).Sample((ratings, item, points) =>
    {
        var before = Round(ratings).Percent.Known();
        ratings[0][item] = Math.Min(100, ratings[0][item] + points);

        Assert.True(Round(ratings).Percent.Known() >= before - 1e-9);
    });

    [Fact]
    public void A_judge_who_left_something_out_is_named_and_counts_for_the_questions_only()
    {
        var round = PanelRound.Of(TwoCells, [Sheet("whole", 80, 80, 80, 80, 80, 80), Sheet("half", 20, 20, 20)]);

        Assert.Equal([new("half", LeftOutReason.Incomplete)], round.Cut.Known().LeftOut);
        Assert.Equal(80, round.Percent.Known(), 1e-9);
        Assert.Equal([80, 20], round.Items[0].Percents);
        Assert.Equal([80], round.Items[^1].Percents);
    }

    [Fact]
    public void Questions_on_which_judges_differ_come_first_and_agreement_is_no_dispute()
    {
        var round = Round([[50, 90, 60, 60, 60, 60], [60, 10, 60, 60, 60, 60]]);

        Assert.Equal(["c2", "c1"], round.MostDisputed(5).Select(item => item.ItemId));
        Assert.Equal(["c2"], round.MostDisputed(1).Select(item => item.ItemId));
    }

    [Fact]
    public void Without_a_complete_judge_there_is_no_cut()
    {
        PanelRound.Of(TwoCells, [Sheet("half", 20)]).Percent.IsUnknown(Obstacle.NoUsableJudge);
        Assert.Throws<ArgumentException>(() => PanelRound.Of([], []));
    }

    [Fact]
    public void What_is_rated_is_what_the_blueprint_can_draw()
    {
        var course = TestCourse.Mixed;

        var cells = RatedCell.Of(course.Quiz, course.Questions);

        Assert.Equal(course.Quiz.Blueprint.Sum(row => row.Questions), cells.Sum(cell => cell.Drawn));
        Assert.All(cells, cell => Assert.True(cell.ItemIds.Count >= cell.Drawn));
        Assert.All(cells, cell => Assert.Single(course.Questions.Where(question => cell.ItemIds.Contains(question.Id))
            .Select(question => (question.Topic, question.IsCritical)).Distinct()));
    }
}
