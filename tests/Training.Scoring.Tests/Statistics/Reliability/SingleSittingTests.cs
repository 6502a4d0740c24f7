using CsCheck;

namespace Training.Scoring.Tests;

public sealed class SingleSittingTests
{
    private static readonly ScoreDistribution Some = Tallies.Distribution(4, [(1, 2), (2, 3), (4, 5)]);

    private static void IsSensible(DecisionConsistency consistency)
    {
        Assert.InRange(consistency.Agreement, consistency.ByChance - 1e-9, 1 + 1e-9);
        Assert.InRange(consistency.ByChance, 0.5 - 1e-9, 1 + 1e-9);
        if (consistency.Kappa is Estimate<double>.Known(var kappa)) Assert.InRange(kappa, -1e-6, 1 + 1e-6);
    }

    [Fact]
    public void Agreement_is_never_below_chance() => Gen.Select(Gen.Double[0.05, 0.95], Gen.Int[0, 41]).Sample((reliability, cut) =>
    {
        var exam = ReliabilityValues.Exam;

        IsSensible(SingleSitting.Subkoviak(exam, reliability, cut).Known());
        IsSensible(SingleSitting.Huynh(exam.Mean.Known(), exam.Items, reliability, cut).Known());
        IsSensible(SingleSitting.PengSubkoviak((cut - 26.0) / 5, reliability).Known());
    });

    [Fact]
    public void A_cut_that_everybody_or_nobody_reaches_leaves_nothing_to_chance()
    {
        foreach (var cut in new[] { 0, 5 })
        {
            var subkoviak = SingleSitting.Subkoviak(Some, 0.5, cut).Known();
            Assert.Equal(1, subkoviak.Agreement);
            subkoviak.Kappa.IsUnknown(Obstacle.OneDecisionOnly);
            SingleSitting.Huynh(2, 4, 0.5, cut).Then(consistency => consistency.Kappa).IsUnknown(Obstacle.OneDecisionOnly);
        }
    }

    [Fact]
    public void Scores_that_say_everything_or_nothing_have_agreement_one_or_chance()
    {
        Assert.Equal(1, SingleSitting.PengSubkoviak(0.7, 1).Known().Agreement, 1e-9);
        Assert.Equal(0, SingleSitting.PengSubkoviak(0.7, 0).Known().Kappa.Known(), 1e-9);
        Assert.Equal(0, SingleSitting.Subkoviak(Some, 0, 2).Known().Kappa.Known(), 1e-9);
    }

    [Theory, InlineData(-0.1), InlineData(1.1), InlineData(double.NaN)]
    public void A_reliability_out_of_range_gives_no_consistency(double reliability)
    {
        SingleSitting.Subkoviak(Some, reliability, 2).IsUnknown(Obstacle.ReliabilityOutOfRange);
        SingleSitting.Huynh(2, 4, reliability, 2).IsUnknown(Obstacle.ReliabilityOutOfRange);
        SingleSitting.PengSubkoviak(0, reliability).IsUnknown(Obstacle.ReliabilityOutOfRange);
    }

    [Fact]
    public void Bad_input_gives_a_reason()
    {
        SingleSitting.Livingston(4, 0, 0.5, 2).IsUnknown(Obstacle.NoTotalVariance);
        SingleSitting.Livingston(4, 2, 1.1, 2).IsUnknown(Obstacle.ReliabilityOutOfRange);
        SingleSitting.Livingston(double.NaN, 2, 0.5, 2).IsUnknown(Obstacle.NotANumber);
        SingleSitting.Subkoviak(new(4), 0.5, 2).IsUnknown(Obstacle.NoAnswers);
        SingleSitting.Subkoviak(Tallies.Distribution(0, [(0, 3)]), 0.5, 0).IsUnknown(Obstacle.TooFewItems);
        SingleSitting.Huynh(0, 4, 0.5, 2).IsUnknown(Obstacle.NoTotalVariance);
        SingleSitting.Huynh(4, 4, 0.5, 2).IsUnknown(Obstacle.NoTotalVariance);
        SingleSitting.Huynh(2, 4, 0, 2).IsUnknown(Obstacle.ReliabilityOutOfRange);
        SingleSitting.PengSubkoviak(double.PositiveInfinity, 0.5).IsUnknown(Obstacle.NotANumber);
    }
}
