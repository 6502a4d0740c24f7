using CsCheck;

namespace Training.Scoring.Tests;

public sealed class LivingstonLewisTests
{
    [Fact]
    public void Impossible_limits_fall_back_to_two_parameters()
    {
        var exam = ReliabilityValues.Exam;

        var classified = LivingstonLewis.Classify(exam, 0.82, 28).Known();

        Assert.False(LivingstonLewis.FitFour(exam, 0.82).Known().IsUsable);
        Assert.Equal(LivingstonLewis.Classify(LivingstonLewis.FitTwo(exam, 0.82).Known(), 77, 54, 0.7), classified);
    }

    [Fact]
    public void Possible_limits_are_used()
    {
        var wide = ReliabilityValues.Wide;

        var classified = LivingstonLewis.Classify(wide, 0.90, 30).Known();

        Assert.Equal(LivingstonLewis.Classify(LivingstonLewis.FitFour(wide, 0.90).Known(), 44, 26, 0.6), classified);
    }

    [Fact]
    public void Shares_make_one() => Gen.Select(Gen.Double[0.3, 400], Gen.Double[0.3, 400], Gen.Double[0, 1]).Sample((alpha, beta, cut) =>
    {
        var shares = LivingstonLewis.Classify(new(0, 1, alpha, beta), 60, (int)Math.Floor((60 * cut) + 0.5), cut);

        Assert.Equal(1, shares.PassTruePass + shares.FailTruePass + shares.PassTrueFail + shares.FailTrueFail, 1e-7);
        Assert.Equal(1, shares.PassPass + shares.FailFail + (2 * shares.PassFail), 1e-7);
        Assert.InRange(shares.Consistency.Agreement, shares.Consistency.ByChance - 1e-7, 1 + 1e-7);
    });

    [Theory, InlineData(0.0, 0.5), InlineData(1.0, 0.5), InlineData(1e-90, 0.3), InlineData(1e-90, 200.0)]
    public void A_cut_at_the_end_of_the_true_shares_still_gives_shares(double cut, double shape)
    {
        var shares = LivingstonLewis.Classify(new(0, 1, shape, shape), 20, 10, cut);

        Assert.Equal(cut < 0.5 ? 1 : 0, shares.PassTruePass + shares.FailTruePass, 1e-9);
    }

    [Fact]
    public void On_a_long_form_all_reach_a_cut_far_below_what_they_can_do_and_none_one_far_above()
    {
        var trueScores = new TrueScores(0.85, 0.95, 2, 2);

        Assert.Equal(1, LivingstonLewis.Classify(trueScores, 2000, 100, 0.05).PassTruePass, 1e-9);
        Assert.Equal(1, LivingstonLewis.Classify(trueScores, 2000, 1996, 0.998).FailTrueFail, 1e-9);
    }

    [Theory, InlineData(77, 40, 28, 54), InlineData(45, 30, 15, 23), InlineData(10, 40, 2, 1)]
    public void The_effective_cut_is_the_nearest_whole_number_with_halves_up(int length, int items, int cut, int expected) =>
        Assert.Equal(expected, LivingstonLewis.EffectiveCut(length, items, cut));

    [Theory, InlineData(0), InlineData(1), InlineData(double.NaN)]
    public void A_reliability_out_of_range_gives_no_classification(double reliability) =>
        LivingstonLewis.Classify(ReliabilityValues.Exam, reliability, 28).IsUnknown(Obstacle.ReliabilityOutOfRange);

    [Fact]
    public void People_must_be_there_and_differ()
    {
        LivingstonLewis.Classify(new(10), 0.5, 5).IsUnknown(Obstacle.NoAnswers);
        LivingstonLewis.Classify(Tallies.Distribution(10, [(7, 1)]), 0.5, 5).IsUnknown(Obstacle.TooFewPeople);
        LivingstonLewis.Classify(Tallies.Distribution(10, [(7, 9)]), 0.5, 5).IsUnknown(Obstacle.NoTotalVariance);
    }

    [Fact]
    public void Any_scores_give_shares_or_a_reason() => Gen.Select(Gen.Int[0, 20].Array[2, 40], Gen.Double[0.01, 0.99], Gen.Int[0, 20]).Sample(
        (scores, reliability, cut) =>
        {
            var classified = LivingstonLewis.Classify(Tallies.Distribution(20, scores.Select(score => (score, 1))), reliability, cut);

            if (classified is Estimate<Classification>.Known(var shares)) Assert.InRange(shares.Accuracy, 0, 1 + 1e-6);
        },
        iter: 100);

    [Fact]
    public void Shares_below_none_are_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => LivingstonLewis.Classify(new(-0.1, 1, 2, 2), 10, 5, 0.5));
}
