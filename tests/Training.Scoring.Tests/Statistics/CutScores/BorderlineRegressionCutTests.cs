using CsCheck;

namespace Training.Scoring.Tests;

public sealed class BorderlineRegressionCutTests
{
    private static readonly Gen<(int[] Globals, int Slope, int Intercept)> Lines = Gen.Select(Gen.Int[1, 5].Array[3, 20], Gen.Int[1, 9], Gen.Int[-9, 9]);

    [Fact]
    public void Points_on_a_line_are_read_off_it() => Lines.Sample((globals, slope, intercept) =>
    {
        var performances = globals.Select(global => new JudgedPerformance(intercept + (slope * global), global));
        var cut = BorderlineRegressionCut.Of([.. performances], borderline: 2);

        if (globals.Distinct().Count() == 1)
        {
            Assert.Equal(Obstacle.NoVariation, cut.Because());
            return;
        }

        Assert.Equal(intercept + (2 * slope), cut.Known().Cut, 1e-9);
        Assert.Equal(slope, cut.Known().Slope, 1e-9);
        Assert.Equal(intercept, cut.Known().Intercept, 1e-9);
        Assert.Equal(1, cut.Known().RSquared, 1e-9);
        Assert.Equal((globals.Length, globals.Min() <= 2 && globals.Max() >= 2), (cut.Known().People, cut.Known().IsWithinRatings));
    });

    public static TheoryData<Obstacle, double[], double[]> Points_and_impressions_without_a_cut => new()
    {
        { Obstacle.TooFewPeople, [], [] },
        { Obstacle.TooFewPeople, [10, 20], [1, 2] },
        { Obstacle.NoVariation, [10, 20, 30], [3, 3, 3] },
        { Obstacle.ScoresDoNotFollowJudgement, [10, 10, 10], [1, 2, 3] },
        { Obstacle.ScoresDoNotFollowJudgement, [30, 20, 10], [1, 2, 3] },
        { Obstacle.NotANumber, [10, double.NaN, 30], [1, 2, 3] },
        { Obstacle.NotANumber, [10, 20, 30], [1, double.PositiveInfinity, 3] },
    };

    [Theory, MemberData(nameof(Points_and_impressions_without_a_cut))]
    public void Performances_without_a_cut_say_why(Obstacle obstacle, double[] points, double[] globals)
    {
        var performances = points.Zip(globals, (checklist, global) => new JudgedPerformance(checklist, global));

        Assert.Equal(obstacle, BorderlineRegressionCut.Of([.. performances], borderline: 2).Because());
    }

    [Fact]
    public void A_borderline_impression_that_is_no_number_has_no_cut() => Assert.Equal(
        Obstacle.NotANumber, BorderlineRegressionCut.Of([new(10, 1), new(20, 2), new(25, 3)], double.NaN).Because());
}
