namespace Training.Scoring.Tests;

/// <summary>Strict or lenient against colleagues who saw the same.</summary>
public sealed class ScorerSeverityTests
{
    private static readonly DateOnly Day = new(2026, 3, 2);

    /// <summary>Differences 0.10, 0.05, 0.20 … in points of 40, with the days on which they arose.</summary>
    private static readonly (DateOnly On, int Points)[] Rows =
    [
        (new(2025, 1, 10), 4), (new(2025, 3, 5), 2), (new(2025, 5, 20), 8), (new(2025, 7, 1), 6),
        (new(2025, 9, 15), 0), (new(2025, 11, 30), 10), (new(2026, 2, 10), 4), (new(2026, 4, 1), 2),
    ];

    private static IReadOnlyList<ScorerSeverity> Severities => ScorerSeverity.Of(TestPerformance.Checklist,
        [.. Rows.Select(row => TestPerformance.Of(row.On, (TestPerformance.Ana, TestPerformance.Prompted(0)), (TestPerformance.Ben, TestPerformance.Prompted(row.Points))))]);

    [Fact]
    public void Mean_interval_and_drift_are_those_of_R()
    {
        // R 4.2.2: t.test(d)$conf.int and confint(lm(d ~ day/365.25)) on the eight differences; a second computation, our own data.
        var lenient = Severities[0];

        Assert.Equal((TestPerformance.Ana, 8), (lenient.ScorerId, lenient.Performances));
        Assert.Equal(0.1125, lenient.Difference.Known(), 1e-12);
        Assert.Equal(0.0427321345528347, lenient.Likely.Known().Lower, 1e-9);
        Assert.Equal(0.1822678654471653, lenient.Likely.Known().Upper, 1e-9);
        Assert.Equal(-0.00350032222311676, lenient.Drift.Known().Slope, 1e-9);
        Assert.Equal(-0.193350468706946, lenient.Drift.Known().Likely.Lower, 1e-9);
        Assert.Equal(0.186349824260713, lenient.Drift.Known().Likely.Upper, 1e-9);
        Assert.False(lenient.Drift.Known().IsSure);
    }

    [Fact]
    public void Lenient_and_strict_are_two_sides_of_one_difference()
    {
        Assert.Equal([SeverityFinding.Lenient, SeverityFinding.Strict], Severities.Select(one => one.Finding));
        Assert.Equal(Severities[0].Difference.Known(), -Severities[1].Difference.Known(), 1e-12);
    }

    [Fact]
    public void One_lenient_colleague_does_not_make_the_others_look_strict()
    {
        var one = ScorerSeverity.Of(TestPerformance.Checklist,
            [TestPerformance.Of(
                Day, (TestPerformance.Ana, TestPerformance.Prompted(0)), (TestPerformance.Ben, TestPerformance.Prompted(8)),
                (TestPerformance.Cruz, TestPerformance.Prompted(8)), (TestPerformance.Dora, TestPerformance.Prompted(8)))]);

        Assert.Equal([0.2, 0, 0, 0], one.Select(scorer => Math.Round(scorer.Difference.Known(), 12)));
    }

    [Fact]
    public void Quarters_are_counted_apart() =>
        Assert.Equal(
            [(new DateOnly(2025, 1, 1), 2), (new(2025, 4, 1), 1), (new(2025, 7, 1), 2), (new(2025, 10, 1), 1), (new(2026, 1, 1), 1), (new(2026, 4, 1), 1)],
            Severities[0].Quarters.Select(quarter => (quarter.From, quarter.Performances)));

    [Fact]
    public void Four_performances_are_too_few_to_speak_of_anybody()
    {
        var few = ScorerSeverity.Of(TestPerformance.Checklist, [.. Enumerable.Range(0, 4).Select(day => TestPerformance.Of(
            Day.AddDays(day), (TestPerformance.Ana, TestPerformance.Prompted(0)), (TestPerformance.Ben, TestPerformance.Prompted(5 + day))))]);

        Assert.All(few, one => Assert.Equal(SeverityFinding.TooFew, one.Finding));
    }

    [Fact]
    public void A_sheet_stopped_early_is_not_strict_for_what_it_never_came_to()
    {
        var one = Assert.Single(ScorerSeverity.Of(TestPerformance.Checklist,
            [TestPerformance.Of(Day, (TestPerformance.Ana, "dddddddddddddddddddd"), (TestPerformance.Ben, "ddn-----------------"))]),
            severity => severity.ScorerId == TestPerformance.Ben);

        // Two of three steps that both saw: 4 of 6 points, a third less than the colleague.
        Assert.Equal(-1 / 3.0, one.Difference.Known(), 1e-12);
    }

    [Fact]
    public void What_cannot_be_known_says_why()
    {
        var alone = ScorerSeverity.Of(TestPerformance.Checklist, [TestPerformance.Of(Day, (TestPerformance.Ana, TestPerformance.Prompted(0)))]);
        var once = ScorerSeverity.Of(TestPerformance.Checklist,
            [TestPerformance.Of(Day, (TestPerformance.Ana, TestPerformance.Prompted(0)), (TestPerformance.Ben, TestPerformance.Prompted(1)))]);
        var alike = ScorerSeverity.Of(TestPerformance.Checklist, [.. Enumerable.Range(0, 6).Select(day => TestPerformance.Of(
            Day.AddDays(day), (TestPerformance.Ana, TestPerformance.Prompted(0)), (TestPerformance.Ben, TestPerformance.Prompted(0))))]);

        Assert.Empty(alone);
        once[0].Likely.IsUnknown(Obstacle.TooFewPeople);
        once[0].Drift.IsUnknown(Obstacle.TooFewPeople);
        alike[0].Likely.IsUnknown(Obstacle.ErrorVanishes);
        Assert.Equal(SeverityFinding.LikeOthers, alike[0].Finding);
    }
}
