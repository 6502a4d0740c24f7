using CsCheck;

namespace Training.Scoring.Tests;

/// <summary>How far scorers agree. The coefficients are checked where they are computed; here, that the right ratings reach them.</summary>
public sealed class ScorerAgreementTests
{
    private static readonly DateOnly Day = new(2026, 3, 2);

    private static readonly string AllDone = TestPerformance.Prompted(0);

    [Fact]
    public void Full_agreement_is_full_by_every_coefficient()
    {
        var agreement = Of(
            TestPerformance.Of(Day, (TestPerformance.Ana, AllDone), (TestPerformance.Ben, AllDone)),
            TestPerformance.Of(Day, (TestPerformance.Ana, "ddn-----------------"), (TestPerformance.Ben, "ddn-----------------")));

        Assert.Equal(1, agreement.Outcome.Percent.Known());
        Assert.Equal(1, agreement.Outcome.Fleiss.Known().Value, 1e-12);
        Assert.Equal(1, agreement.Marks.Known().Value, 1e-12);
        Assert.Equal(1, Assert.Single(agreement.Pairs).Kappa.Known().Value, 1e-12);
        Assert.Empty(agreement.Critical);
    }

    [Fact]
    public void Scorers_who_mark_independently_agree_about_as_much_as_by_chance()
    {
        var random = new SplitMix64(20261126);
        string Letters() => new([.. Enumerable.Range(0, 20).Select(_ => "dpn"[(int)random.NextBelow(3)])]);
        var agreement = Of([.. Enumerable.Range(0, 400).Select(day => TestPerformance.Of(Day.AddDays(day), (TestPerformance.Ana, Letters()), (TestPerformance.Ben, Letters())))]);

        Assert.Equal(0, agreement.Marks.Known().Value, 0.05);
        Assert.Equal(0, agreement.Pairs[0].Kappa.Known().Value, 0.05);
        Assert.Equal(0, agreement.Outcome.Fleiss.Known().Value, 0.15);
    }

    [Fact]
    public void A_critical_step_passed_by_one_and_failed_by_another_is_listed_by_name()
    {
        var agreement = Of(
            TestPerformance.Of(Day, (TestPerformance.Ana, AllDone), (TestPerformance.Ben, "ddn-----------------"), (TestPerformance.Cruz, "ddp-----------------")),
            TestPerformance.Of(Day.AddDays(1), (TestPerformance.Ana, AllDone), (TestPerformance.Ben, "dd------------------")));

        // A prompt is not allowed on this step, so that it fails; what one never saw is no disagreement.
        var critical = Assert.Single(agreement.Critical);
        Assert.Equal((Day, "s3"), (critical.On, critical.StepId));
        Assert.Equal([TestPerformance.Ana], critical.PassedBy);
        Assert.Equal([TestPerformance.Ben, TestPerformance.Cruz], critical.FailedBy);
    }

    [Fact]
    public void Each_step_has_its_own_agreement()
    {
        var agreement = Of(
            TestPerformance.Of(Day, (TestPerformance.Ana, AllDone), (TestPerformance.Ben, TestPerformance.Prompted(1))),
            TestPerformance.Of(Day, (TestPerformance.Ana, AllDone), (TestPerformance.Ben, AllDone)));

        Assert.Equal(1, agreement.Steps[0].Figures.Percent.Known());
        Assert.Equal(0.5, agreement.Steps[19].Figures.Percent.Known());
        Assert.Equal([false, false, true, false], agreement.Steps.Take(4).Select(step => step.IsCritical));
    }

    [Fact]
    public void A_performance_that_one_scorer_saw_alone_says_nothing()
    {
        var agreement = Of(TestPerformance.Of(Day, (TestPerformance.Ana, AllDone)));

        Assert.Equal(0, agreement.Performances);
        agreement.Outcome.Percent.IsUnknown(Obstacle.NothingCompared);
        agreement.Marks.IsUnknown(Obstacle.NothingCompared);
        Assert.Empty(agreement.Pairs);
    }

    [Fact]
    public void Order_of_performances_and_of_scorers_changes_nothing() =>
        Gen.Select(Gen.Char["dpn-"].Array[20].Array[3].Array[2, 8], Gen.ULong).Sample((tables, seed) =>
        {
            var scorers = new[] { TestPerformance.Ana, TestPerformance.Ben, TestPerformance.Cruz };
            var performances = tables.Select((sheets, day) =>
                TestPerformance.Of(Day.AddDays(day), [.. sheets.Select((letters, place) => (scorers[place], new string(letters)))])).ToArray();
            var random = new SplitMix64(seed);
            var shuffled = performances.Select(performance =>
            {
                var sheets = performance.Sheets.ToArray();
                random.Shuffle<PerformanceSheet>(sheets);
                return performance with { Sheets = sheets };
            }).ToArray();
            random.Shuffle<ScoredPerformance>(shuffled);

            var (one, other) = (Of(performances), Of(shuffled));

            ValueOf(one.Marks).IsSameAs(ValueOf(other.Marks));
            one.Outcome.Percent.IsSameAs(other.Outcome.Percent);
            Assert.Equal(one.Critical.Select(critical => (critical.PerformanceId, critical.StepId)), other.Critical.Select(critical => (critical.PerformanceId, critical.StepId)));
            Assert.Equal(one.Pairs.Select(pair => (pair.FirstId, pair.SecondId, pair.Performances)), other.Pairs.Select(pair => (pair.FirstId, pair.SecondId, pair.Performances)));
        });

    private static ScorerAgreement Of(params ScoredPerformance[] performances) => ScorerAgreement.Of(TestPerformance.Checklist, performances);

    private static Estimate<double> ValueOf(Estimate<KrippendorffAlpha> alpha) => alpha.Then<double>(one => one.Value);
}
