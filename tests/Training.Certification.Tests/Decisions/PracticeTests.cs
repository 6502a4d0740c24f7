using Training.Courses;
using Training.Scoring;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class PracticeTests
{
    private static readonly Scheme Twice = TrainingScheme(OnModelAgain); // two tries within six months

    private static Decision Decide(Scheme scheme, string on, params Evidence[] evidence) => Decisions.Decide(File(scheme, evidence), new Decider.Rule(), On(on));

    /// <summary>The older of two tries, and through when the two are enough.</summary>
    public static TheoryData<string, string, bool> Spans => new()
    {
        { "2026-01-15", "2026-07-15", true },  // exactly six months
        { "2026-01-15", "2026-07-16", false },
        { "2026-02-28", "2026-08-31", true },  // counted back from the 31st: 28 February
        { "2026-02-28", "2026-09-01", false },
        { "2024-02-29", "2024-08-29", true },
        { "2024-02-29", "2024-08-30", true },  // counted back from the 30th: 29 February
        { "2024-02-29", "2024-09-01", false },
        { "2026-07-15", "2026-07-15", true },  // of the day itself
    };

    [Theory, MemberData(nameof(Spans))]
    public void Both_tries_lie_within_the_span_counted_back_from_the_decision(string older, string on, bool isEnough)
    {
        Evidence[] tries = [Sheet(1, older), Sheet(2, on)];

        var decision = Decide(Twice, on, tries);

        if (isEnough) Assert.Equal([Id(1), Id(2)], decision.Granted().RestsOn.Order());
        else Assert.Equal([new DecisionReason.PractisedTooLittle(OnModelAgain, 1)], decision.Reasons());
    }

    public static TheoryData<string, Evidence> Not_practice => new()
    {
        { "live", Sheet(2, "2026-05-02", subject: Subject.Live) },
        { "not passed", Sheet(2, "2026-05-02", PracticalOutcome.Failed) },
        { "not seen whole", Sheet(2, "2026-05-02", PracticalOutcome.Incomplete) },
        { "another checklist", Sheet(2, "2026-05-02") with { ChecklistId = "bite-drill" } },
        { "after the decision", Sheet(2, "2026-06-02") },
        { "the same try, scored by a second", Sheet(2, "2026-05-01") with { Try = 1, ScorerId = Id(301) } },
        { "a quiz", Sitting(2, "2026-05-02") },
    };

    [Theory, MemberData(nameof(Not_practice))]
    public void Only_a_passed_try_on_the_model_is_practice(string what, Evidence other)
    {
        Assert.NotEmpty(what);
        Assert.Equal(
            [new DecisionReason.PractisedTooLittle(OnModelAgain, 1)],
            Decide(Twice, "2026-06-01", Sheet(1, "2026-05-01"), other).Reasons());
    }

    [Fact]
    public void The_renewal_window_does_not_bind_practice_and_a_pass_may_count_for_two_requirements()
    {
        var scheme = TrainingScheme(OnModel, OnModelAgain);
        var file = File(scheme, Sheet(1, "2026-02-01"), Sheet(2, "2026-05-01")) with { Held = [Held(Period(1, "2025-05-31", "2026-05-31"))] };

        var granted = Decisions.Decide(file, new Decider.Rule(), On("2026-05-10")).Granted();

        Assert.Equal((Route.Renewal, 2), (granted.Route, granted.RestsOn.Count));
        Assert.Equal([Id(2), Id(1)], granted.RestsOn);
    }

    [Fact]
    public void Where_scorers_who_taught_are_all_that_is_in_the_way_a_lead_may_write_the_reason()
    {
        var scheme = CertificationScheme(OnModelAgain);
        var file = File(scheme, Sheet(1, "2026-05-01"), Sheet(2, "2026-05-02") with { ScorerId = Teacher }) with { TaughtBy = [Taught(Teacher, "2026-04-01")] };

        Assert.Equal(
            [new DecisionReason.ScorerTaught(OnModelAgain, Id(2), Teacher, On("2026-04-01"))],
            Decisions.Decide(file, new Decider.Lead(Lead), On("2026-06-01")).Reasons());
        Assert.True(Decisions.AwaitsLead(file, On("2026-06-01")));
    }

    [Fact]
    public void The_deciders_own_sheet_is_left_aside_where_another_try_counts()
    {
        Evidence own = Sheet(3, "2026-05-20") with { ScorerId = Lead };

        var enough = Decisions.Decide(File(CertificationScheme(OnModelAgain), Sheet(1, "2026-05-01"), Sheet(2, "2026-05-02"), own), new Decider.Lead(Lead), On("2026-06-01"));
        var tooLittle = Decisions.Decide(File(CertificationScheme(OnModelAgain), Sheet(1, "2026-05-01"), own), new Decider.Lead(Lead), On("2026-06-01"));

        Assert.Equal([Id(2), Id(1)], enough.Granted().RestsOn);
        Assert.Equal([new DecisionReason.DeciderNotIndependent(Lead, Hat.Scored)], tooLittle.Reasons());
    }

    [Fact]
    public void Practice_stays_met_until_the_older_of_the_tries_that_count_leaves_the_span()
    {
        var file = File(Twice, Sheet(1, "2026-01-15"), Sheet(2, "2026-02-28"), Sheet(3, "2026-04-30"));

        Assert.Equal(On("2026-08-31"), Assert.Single(NextSteps.For(file, On("2026-05-01")).Requirements).MetUntil);
        Assert.Null(Assert.Single(NextSteps.For(file, On("2026-09-01")).Requirements).MetUntil);
    }
}
