using CsCheck;

namespace Training.Scoring.Tests;

public sealed class TestReliabilityTests
{
    // Answers depend on the person's level alone, and every pattern occurs as often as its chance says: truly parallel items.
    private static IEnumerable<double[]> ParallelForm(int[] levels, int items) =>
        from quarters in levels
        from pattern in Enumerable.Range(0, 1 << (2 * items))
        select Enumerable.Range(0, items).Select(item => ((pattern >> (2 * item)) & 3) < quarters ? 1.0 : 0.0).ToArray();

    [Fact]
    public void Alpha_of_a_doubled_form_follows_Spearman_and_Brown() => Gen.Select(Gen.Int[0, 4].Array[2, 4], Gen.Int[2, 3]).Sample(
        (levels, items) =>
        {
            var single = Tallies.Of([.. ParallelForm(levels, items)]).Alpha;

            var doubled = Tallies.Of([.. ParallelForm(levels, 2 * items)]).Alpha;

            single.Then(alpha => TestReliability.SpearmanBrown(alpha, 2)).IsSameAs(doubled);
        },
        iter: 60);

    [Fact]
    public void Lengthening_and_shortening_again_changes_nothing() => Gen.Select(Gen.Double[0, 0.99], Gen.Double[0.2, 5]).Sample(
        (reliability, times) =>
        {
            var there = TestReliability.SpearmanBrown(reliability, times);

            Assert.Equal(reliability, there.Then(longer => TestReliability.SpearmanBrown(longer, 1 / times)).Known(), 1e-9);
        });

    [Fact]
    public void Spearman_Brown_stops_before_its_pole()
    {
        TestReliability.SpearmanBrown(-0.6, 3).IsUnknown(Obstacle.ReliabilityOutOfRange);
        TestReliability.SpearmanBrown(1.1, 3).IsUnknown(Obstacle.ReliabilityOutOfRange);
        TestReliability.SpearmanBrown(double.NaN, 3).IsUnknown(Obstacle.NotANumber);
        Assert.Throws<ArgumentOutOfRangeException>(() => TestReliability.SpearmanBrown(0.5, 0));
    }

    [Fact]
    public void KR_21_is_never_above_KR_20() => AnyTable.RightOrWrong.Sample(table =>
    {
        var tally = Tallies.Of(table);
        if (tally.Kr20 is not Estimate<double>.Known(var kr20)) return;

        var kr21 = TestReliability.Kr21(tally.Items, tally.TotalMean.Known(), tally.PopulationVariance.Known()).Known();

        Assert.True(kr21 <= kr20 + 1e-9);
    });

    [Fact]
    public void KR_21_needs_two_items_and_people_who_differ()
    {
        TestReliability.Kr21(1, 0.5, 0.25).IsUnknown(Obstacle.TooFewItems);
        TestReliability.Kr21(10, 10, 0).IsUnknown(Obstacle.NoTotalVariance);
        TestReliability.Kr21(10, double.NaN, 1).IsUnknown(Obstacle.NotANumber);
        TestReliability.Kr21(10, 5, double.NaN).IsUnknown(Obstacle.NotANumber);
    }

    [Fact]
    public void The_standard_error_runs_from_nought_to_the_standard_deviation_and_beyond()
    {
        Assert.Equal(0, TestReliability.StandardErrorOfMeasurement(4, 1).Known());
        Assert.Equal(2, TestReliability.StandardErrorOfMeasurement(4, 0).Known());
        Assert.Equal(Math.Sqrt(6), TestReliability.StandardErrorOfMeasurement(4, -0.5).Known(), 1e-12);
        TestReliability.StandardErrorOfMeasurement(4, 1.1).IsUnknown(Obstacle.ReliabilityOutOfRange);
        TestReliability.StandardErrorOfMeasurement(-1, 0.5).IsUnknown(Obstacle.NoTotalVariance);
        TestReliability.StandardErrorOfMeasurement(double.NaN, 0.5).IsUnknown(Obstacle.NotANumber);
    }

    [Fact]
    public void Feldt_limits_lie_around_alpha() => Gen.Select(Gen.Double[-0.5, 0.99], Gen.Long[2, 5000], Gen.Int[2, 60]).Sample(
        (alpha, people, items) =>
        {
            var limits = TestReliability.FeldtLimits(alpha, people, items, 0.95).Known();

            Assert.True(limits.Lower < alpha && alpha < limits.Upper && limits.Upper <= 1);
            Assert.True(double.IsFinite(limits.Lower));
        });

    /// <summary>F(1, 1) at 0.975 is 647.789 in printed tables, at 0.025 its inverse.</summary>
    [Fact]
    public void Feldt_limits_hold_for_two_people_and_two_items()
    {
        var limits = TestReliability.FeldtLimits(0.5, 2, 2, 0.95).Known();

        Assert.Equal(1 - (0.5 * 647.789), limits.Lower, 1e-3);
        Assert.Equal(1 - (0.5 / 647.789), limits.Upper, 1e-6);
    }

    [Fact]
    public void Feldt_limits_need_people_items_and_an_alpha()
    {
        TestReliability.FeldtLimits(0.5, 1, 5, 0.95).IsUnknown(Obstacle.TooFewPeople);
        TestReliability.FeldtLimits(0.5, 5, 1, 0.95).IsUnknown(Obstacle.TooFewItems);
        TestReliability.FeldtLimits(1.1, 5, 5, 0.95).IsUnknown(Obstacle.ReliabilityOutOfRange);
        TestReliability.FeldtLimits(double.NaN, 5, 5, 0.95).IsUnknown(Obstacle.NotANumber);
        Assert.Throws<ArgumentOutOfRangeException>(() => TestReliability.FeldtLimits(0.5, 5, 5, 1));
    }
}
