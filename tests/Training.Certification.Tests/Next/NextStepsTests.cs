using Training.Courses;
using Training.Scoring;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class NextStepsTests
{
    private static readonly Scheme Asked = CertificationScheme(OnQuiz, OnModel);

    /// <summary>12 months through 31 May 2026; the window opens on 1 April, grace ends on 30 June.</summary>
    private static readonly HeldCertification HeldThroughMay = Held(Period(1, "2025-05-31", "2026-05-31"));

    private static NextStep Next(string today, HeldCertification? held = null, params Evidence[] evidence) =>
        NextSteps.For(File(Asked, evidence) with { Held = held is null ? [] : [held] }, On(today));

    private static readonly NextStep WindowClosed = new NextStep.NothingDue(On("2026-04-01"), On("2026-05-31"));
    private static readonly NextStep Due = new NextStep.Renew(On("2026-05-31"));
    private static readonly NextStep Late = new NextStep.RenewLate(On("2026-05-31"), On("2026-06-30"));

    public static TheoryData<string, NextStep> Days_and_steps_without_evidence => new()
    {
        { "2025-05-31", WindowClosed }, // the day of the decision itself
        { "2026-03-31", WindowClosed }, // the day before the window
        { "2026-04-01", Due },          // the window opens
        { "2026-05-31", Due },          // the last day
        { "2026-06-01", Late },         // the day after it
        { "2026-06-30", Late },         // the last day of grace
        { "2026-07-01", new NextStep.GrantDue() },
    };

    [Theory, MemberData(nameof(Days_and_steps_without_evidence))]
    public void The_day_sets_the_step(string today, NextStep expected) =>
        Assert.Equal(expected, Bare(Next(today, HeldThroughMay)));

    public static TheoryData<string, NextStep> Days_and_steps_with_passes_of_10_May => new()
    {
        { "2026-05-09", Due }, // not passed yet
        { "2026-05-10", new NextStep.AwaitsDecision(Route.Renewal, On("2026-05-10"), On("2026-06-30")) },
        { "2026-06-30", new NextStep.AwaitsDecision(Route.Renewal, On("2026-06-30"), On("2026-06-30")) },
        { "2026-07-01", new NextStep.AwaitsDecision(Route.Grant, On("2026-07-01"), On("2026-08-08")) }, // 90 days: through 8 August
        { "2026-08-08", new NextStep.AwaitsDecision(Route.Grant, On("2026-08-08"), On("2026-08-08")) },
        { "2026-08-09", new NextStep.GrantDue() }, // too old
    };

    [Theory, MemberData(nameof(Days_and_steps_with_passes_of_10_May))]
    public void With_every_requirement_met_a_decision_is_awaited(string today, NextStep expected) =>
        Assert.Equal(expected, Bare(Next(today, HeldThroughMay, Sitting(1, "2026-05-10"), Sheet(2, "2026-05-10"))));

    [Fact]
    public void A_pass_of_the_day_before_the_window_renews_nothing()
    {
        var next = Next("2026-04-01", HeldThroughMay, Sitting(1, "2026-03-31"), Sheet(2, "2026-04-01"));

        Assert.Equal(Due, Bare(next));
        Assert.Equal([new(OnQuiz, null), new(OnModel, On("2026-06-30"))], next.Requirements);
    }

    [Fact]
    public void Never_held_the_whole_grant_is_due_and_each_requirement_says_how_it_stands()
    {
        var next = Next("2026-03-02", null, Sitting(1, "2026-01-01"), Sheet(2, "2026-03-01", PracticalOutcome.Failed));

        Assert.Equal(new NextStep.GrantDue(), Bare(next));
        Assert.Equal([new(OnQuiz, On("2026-04-01")), new(OnModel, null)], next.Requirements);
        Assert.Equal([true, false], next.Requirements.Select(state => state.IsMet));
    }

    [Fact]
    public void Of_several_passes_the_last_day_of_any_counts()
    {
        var next = Next("2026-03-02", null, Sitting(1, "2026-02-01"), Sitting(2, "2026-01-01"), Sitting(3, "2026-03-01", isPassed: false));

        Assert.Equal(On("2026-05-02"), next.Requirements[0].MetUntil);
    }

    [Fact]
    public void A_sheet_whose_scorer_taught_the_person_meets_nothing_without_its_reason()
    {
        var file = File(Asked, Sheet(2, "2026-03-01")) with { TaughtBy = [Taught(Scorer, "2026-01-01")] };
        var excepted = file with { Evidence = [Sheet(2, "2026-03-01") with { SeparationReason = "nobody else within 500 miles" }] };

        Assert.False(NextSteps.For(file, On("2026-03-02")).Requirements[1].IsMet);
        Assert.True(NextSteps.For(excepted, On("2026-03-02")).Requirements[1].IsMet);
    }

    [Fact]
    public void A_scheme_that_must_be_held_meets_it_through_its_last_day()
    {
        var awareness = Held(Period(1, "2025-03-02", "2026-03-02")) with { SchemeId = Awareness };
        var file = File(CertificationScheme(HoldsAwareness)) with { Held = [awareness] };

        Assert.Equal(new NextStep.AwaitsDecision(Route.Grant, On("2026-03-02"), On("2026-03-02")), Bare(NextSteps.For(file, On("2026-03-02"))));
        Assert.Equal(new NextStep.GrantDue(), Bare(NextSteps.For(file, On("2026-03-03"))));
    }

    [Theory]
    [InlineData("2026-04-09", false)]
    [InlineData("2026-04-10", true)]
    [InlineData("2026-04-20", true)]
    [InlineData("2026-04-21", false)]
    public void While_suspended_a_review_is_awaited(string today, bool isAwaited)
    {
        var step = Bare(Next(today, HeldThroughMay.Suspended("2026-04-10", "2026-04-20")));

        Assert.Equal(isAwaited ? new NextStep.AwaitsReview(On("2026-04-10"), On("2026-05-10"), On("2026-04-20")) : Due, step);
    }

    [Fact]
    public void A_suspension_that_lasts_has_no_end_and_asks_nothing()
    {
        var next = Next("2027-01-01", HeldThroughMay.Suspended("2026-04-10"), Sitting(1, "2027-01-01"), Sheet(2, "2027-01-01"));

        Assert.Equal(new NextStep.AwaitsReview(On("2026-04-10"), On("2026-05-10"), null), Bare(next));
        Assert.Empty(next.Requirements);
    }

    [Fact]
    public void Withdrawn_the_whole_grant_is_due_and_can_be_decided_from_the_next_day()
    {
        var withdrawn = HeldThroughMay.Suspended("2026-04-10").Withdrawn("2026-04-15");
        Evidence[] passes = [Sitting(1, "2026-03-01"), Sheet(2, "2026-03-01")];

        Assert.Equal(new NextStep.GrantDue(), Bare(Next("2026-04-15", withdrawn)));
        Assert.Equal(
            new NextStep.AwaitsDecision(Route.Grant, On("2026-04-16"), On("2026-05-30")), Bare(Next("2026-04-15", withdrawn, passes)));
        Assert.Equal(
            new NextStep.AwaitsDecision(Route.Grant, On("2026-04-16"), On("2026-05-30")), Bare(Next("2026-04-16", withdrawn, passes)));
    }

    [Fact]
    public void What_no_longer_counts_on_the_day_after_a_withdrawal_awaits_no_decision() =>
        Assert.Equal(
            new NextStep.GrantDue(),
            Bare(Next("2026-04-15", HeldThroughMay.Withdrawn("2026-04-15"), Sitting(1, "2026-01-15"), Sheet(2, "2026-04-15"))));

    [Fact]
    public void A_suspension_after_a_withdrawal_awaits_its_review() =>
        Assert.IsType<NextStep.AwaitsReview>(Next("2026-04-20", HeldThroughMay.Withdrawn("2026-04-15").Suspended("2026-04-16")));

    [Fact]
    public void Before_the_rules_are_in_force_a_decision_is_awaited_from_their_first_day()
    {
        var file = File(Asked with { EffectiveFrom = On("2026-03-10") }, Sitting(1, "2026-03-01"), Sheet(2, "2026-03-01"));

        Assert.Equal(
            new NextStep.AwaitsDecision(Route.Grant, On("2026-03-10"), On("2026-05-30")), Bare(NextSteps.For(file, On("2026-03-02"))));
    }

    [Fact]
    public void A_decision_dated_tomorrow_in_its_zone_is_made_already() =>
        Assert.Equal(WindowClosed, Bare(Next("2025-05-30", HeldThroughMay, Sitting(1, "2025-05-30"), Sheet(2, "2025-05-30"))));

    [Fact]
    public void A_file_that_is_mixed_up_is_refused() =>
        Assert.Throws<ArgumentException>(() => Next("2026-03-02", HeldThroughMay with { PersonId = Id(7) }));

    /// <summary>The step alone: a record compares its list by reference.</summary>
    private static NextStep Bare(NextStep step) => step with { Requirements = [] };
}
