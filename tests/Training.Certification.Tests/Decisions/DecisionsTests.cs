using Training.Courses;
using Training.Scoring;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class DecisionsTests
{
    private static readonly Decider Rule = new Decider.Rule();

    /// <summary>Through 31 May 2026; the window opens on 1 April, grace ends on 30 June.</summary>
    private static readonly HeldCertification HeldThroughMay = Held(Period(1, "2025-05-31", "2026-05-31"));

    private static Decision Renew(HeldCertification held, string on, params Evidence[] evidence) =>
        Decisions.Decide(File(TrainingScheme(OnQuiz), evidence) with { Held = [held] }, Rule, On(on));

    [Fact]
    public void The_first_certification_starts_on_the_day_of_the_decision()
    {
        var granted = Decisions.Decide(File(TrainingScheme(OnQuiz), Sitting(1, "2026-03-01")), Rule, On("2026-03-05")).Granted();

        Assert.Equal(Route.Grant, granted.Route);
        Assert.Equal(Period(1, "2026-03-05", "2027-03-05"), granted.Period);
        Assert.Equal([Id(1)], granted.RestsOn);
        Assert.Empty(granted.Exceptions);
    }

    public static TheoryData<string, Route, string> Decided_on_and_new_expiry => new()
    {
        { "2026-04-01", Route.Renewal, "2027-05-31" }, // the window opens: the anniversary is kept
        { "2026-05-31", Route.Renewal, "2027-05-31" }, // the last valid day still lies in the window
        { "2026-06-01", Route.Renewal, "2027-06-01" }, // a day late: the period starts at the decision
        { "2026-06-30", Route.Renewal, "2027-06-30" }, // the last day of grace
        { "2026-07-01", Route.Grant, "2027-07-01" },   // after grace: the full course again
    };

    [Theory, MemberData(nameof(Decided_on_and_new_expiry))]
    public void The_day_of_the_decision_sets_route_and_new_expiry(string on, Route route, string expiresOn)
    {
        var granted = Renew(HeldThroughMay, on, Sitting(1, on)).Granted();

        Assert.Equal(route, granted.Route);
        Assert.Equal(Period(2, on, expiresOn), granted.Period);
        Assert.Equal([Id(1)], granted.RestsOn);
    }

    [Fact]
    public void The_day_before_the_window_is_too_early_and_that_is_all() =>
        Assert.Equal([new DecisionReason.TooEarly(On("2026-04-01"))], Renew(HeldThroughMay, "2026-03-31").Reasons());

    [Fact]
    public void On_the_day_the_window_opens_the_requirements_are_asked() =>
        Assert.Equal([new DecisionReason.Missing(OnQuiz)], Renew(HeldThroughMay, "2026-04-01").Reasons());

    [Fact]
    public void A_second_renewal_on_the_day_of_the_first_is_too_early()
    {
        var renewed = Held(Period(1, "2025-05-31", "2026-05-31"), Period(2, "2026-04-01", "2027-05-31"));

        Assert.Equal(
            [new DecisionReason.TooEarly(On("2027-04-01"))],
            Renew(renewed, "2026-04-01", Sitting(1, "2026-04-01")).Reasons());
    }

    [Fact]
    public void An_anniversary_on_29_February_stays_on_the_28th_for_good()
    {
        var held = Held(Period(1, "2028-02-29", "2029-02-28"));
        string[] days = ["2029-02-28", "2030-02-28", "2031-02-28"];
        foreach (var on in days)
        {
            var granted = Renew(held, on, Sitting(1, on)).Granted();
            held = held with { Periods = [.. held.Periods, granted.Period] };
        }

        Assert.Equal(
            [On("2029-02-28"), On("2030-02-28"), On("2031-02-28"), On("2032-02-28")],
            held.Periods.Select(period => period.ExpiresOn));
    }

    [Fact]
    public void Window_and_grace_are_the_old_periods_and_validity_is_the_schemes_of_today()
    {
        var stricter = TrainingScheme(OnQuiz) with { Terms = new(D("P6M"), D("P10D"), D("P0D")) };
        var file = File(stricter, Sitting(1, "2026-06-30"), Sitting(2, "2026-04-01")) with { Held = [HeldThroughMay] };

        var early = Decisions.Decide(file, Rule, On("2026-04-01")).Granted();
        var late = Decisions.Decide(file, Rule, On("2026-06-30")).Granted();

        Assert.Equal(new(2, On("2026-04-01"), On("2026-04-01"), On("2026-11-30"), stricter.Terms), early.Period);
        Assert.Equal(Route.Renewal, late.Route);
        Assert.Equal(On("2026-12-30"), late.Period.ExpiresOn);
    }

    [Fact]
    public void Grant_and_renewal_ask_for_their_own_requirements()
    {
        var scheme = TrainingScheme(OnQuiz) with { Renewal = [new Requirement.PassedQuiz("refresher", D("P90D"))] };
        var file = File(scheme, Sitting(1, "2026-05-01"));

        Assert.Equal(Route.Grant, Decisions.Decide(file, Rule, On("2026-05-01")).Granted().Route);
        Assert.Equal(
            [new DecisionReason.Missing(scheme.Renewal[0])],
            Decisions.Decide(file with { Held = [HeldThroughMay] }, Rule, On("2026-05-01")).Reasons());
    }

    [Fact]
    public void A_certification_under_another_scheme_is_not_renewed()
    {
        var other = HeldThroughMay with { SchemeId = Awareness };

        var granted = Renew(other, "2026-05-01", Sitting(1, "2026-05-01")).Granted();

        Assert.Equal(Route.Grant, granted.Route);
        Assert.Equal(1, granted.Period.Number);
    }

    // Greatest age, day of the pass, last day on which it counts.
    public static TheoryData<string, string, string> Age_and_last_day => new()
    {
        { "P90D", "2026-01-01", "2026-04-01" },
        { "P0D", "2026-01-01", "2026-01-01" },
        { "P6M", "2026-01-15", "2026-07-15" },
        { "P1M", "2026-02-28", "2026-03-31" }, // 31 March less a month is 28 February
        { "P1M", "2028-02-28", "2028-03-28" }, // not the month's end in a leap year
        { "P1M", "2026-01-31", "2026-02-28" },
        { "P1M", "2026-01-29", "2026-02-28" },
        { "P6M", "2026-02-28", "2026-08-31" },
        { "P1Y", "2027-02-28", "2028-02-29" },
        { "P1Y", "2024-02-29", "2025-02-28" },
    };

    [Theory, MemberData(nameof(Age_and_last_day))]
    public void A_pass_counts_through_its_last_day_and_not_a_day_longer(string age, string passedOn, string countsThrough)
    {
        var quiz = OnQuiz with { GreatestAge = D(age) };
        var file = File(TrainingScheme(quiz), Sitting(1, passedOn));

        Assert.Equal([Id(1)], Decisions.Decide(file, Rule, On(countsThrough)).Granted().RestsOn);
        Assert.Equal(
            [new DecisionReason.TooOld(quiz, Id(1), On(countsThrough))],
            Decisions.Decide(file, Rule, On(countsThrough).AddDays(1)).Reasons());
    }

    [Fact]
    public void Of_several_old_passes_the_latest_is_named()
    {
        var file = File(TrainingScheme(OnQuiz), Sitting(1, "2025-01-01"), Sitting(2, "2025-02-01"), Sitting(3, "2025-01-15"));

        Assert.Equal(
            [new DecisionReason.TooOld(OnQuiz, Id(2), On("2025-05-02"))], Decisions.Decide(file, Rule, On("2026-01-01")).Reasons());
    }

    [Fact]
    public void What_is_dated_after_the_day_does_not_exist_yet()
    {
        var file = File(TrainingScheme(OnQuiz), Sitting(1, "2026-03-06"));

        Assert.Equal([new DecisionReason.Missing(OnQuiz)], Decisions.Decide(file, Rule, On("2026-03-05")).Reasons());
        Assert.IsType<Decision.Granted>(Decisions.Decide(file, Rule, On("2026-03-06")));
    }

    [Theory]
    [InlineData("2026-04-01", true)]
    [InlineData("2026-03-31", false)]
    public void A_renewal_rests_only_on_what_is_dated_from_the_windows_opening(string passedOn, bool isGranted)
    {
        foreach (var on in new[] { "2026-04-20", "2026-06-05" }) // valid, and in grace
        {
            var decision = Renew(HeldThroughMay, on, Sitting(1, passedOn));

            if (isGranted) Assert.Equal([Id(1)], decision.Granted().RestsOn);
            else Assert.Equal([new DecisionReason.BeforeWindow(OnQuiz, Id(1), On("2026-04-01"))], decision.Reasons());
        }
    }

    [Fact]
    public void A_pass_that_is_both_too_old_and_before_the_window_is_told_both() =>
        Assert.Equal(
            [
                new DecisionReason.TooOld(OnQuiz, Id(1), On("2026-04-01")),
                new DecisionReason.BeforeWindow(OnQuiz, Id(1), On("2026-04-01")),
            ],
            Renew(HeldThroughMay, "2026-04-02", Sitting(1, "2026-01-01")).Reasons());

    [Fact]
    public void A_pass_within_the_window_may_be_too_old_all_the_same()
    {
        var brief = OnQuiz with { GreatestAge = D("P7D") };
        var file = File(TrainingScheme(brief), Sitting(1, "2026-04-01")) with { Held = [HeldThroughMay] };

        Assert.Equal(
            [new DecisionReason.TooOld(brief, Id(1), On("2026-04-08"))], Decisions.Decide(file, Rule, On("2026-05-01")).Reasons());
    }

    [Fact]
    public void Another_quiz_and_another_checklist_do_not_count()
    {
        var file = File(
            CertificationScheme(OnQuiz, OnModel),
            Sitting(1, "2026-03-01", quiz: "other"),
            Sheet(2, "2026-03-01") with { ChecklistId = "other" });

        Assert.Equal(
            [new DecisionReason.Missing(OnQuiz), new DecisionReason.Missing(OnModel)],
            Decisions.Decide(file, new Decider.Lead(Lead), On("2026-03-01")).Reasons());
    }

    [Theory]
    [InlineData(Subject.Live)]
    [InlineData(Subject.Model)]
    public void Model_and_live_do_not_stand_in_for_each_other(Subject done)
    {
        var asked = done == Subject.Live ? OnModel : OnLive;
        var file = File(CertificationScheme(asked), Sheet(1, "2026-03-01", subject: done));

        Assert.Equal(
            [new DecisionReason.Missing(asked)], Decisions.Decide(file, new Decider.Lead(Lead), On("2026-03-01")).Reasons());
    }

    [Theory]
    [InlineData(PracticalOutcome.Failed)]
    [InlineData(PracticalOutcome.Incomplete)]
    public void Only_a_pass_passes_and_the_latest_other_result_is_named(PracticalOutcome outcome)
    {
        var file = File(
            CertificationScheme(OnQuiz, OnModel),
            Sitting(1, "2026-03-02", isPassed: false),
            Sitting(2, "2026-03-01", isPassed: false),
            Sheet(3, "2026-03-01", outcome),
            Sheet(4, "2026-03-02", outcome));

        Assert.Equal(
            [new DecisionReason.NotPassed(OnQuiz, Id(1)), new DecisionReason.NotPassed(OnModel, Id(4))],
            Decisions.Decide(file, new Decider.Lead(Lead), On("2026-03-03")).Reasons());
    }

    [Fact]
    public void A_failure_after_a_pass_does_not_undo_it()
    {
        var file = File(TrainingScheme(OnQuiz), Sitting(1, "2026-03-01"), Sitting(2, "2026-03-02", isPassed: false));

        Assert.Equal([Id(1)], Decisions.Decide(file, Rule, On("2026-03-03")).Granted().RestsOn);
    }

    public static TheoryData<string, Standing> Days_of_the_other_scheme => new()
    {
        { "2026-03-31", Standing.Current },
        { "2026-04-01", Standing.RenewalDue },
        { "2026-05-31", Standing.RenewalDue },
        { "2026-06-01", Standing.Lapsed },
        { "2026-08-01", Standing.Suspended },
        { "2026-09-01", Standing.Withdrawn },
    };

    [Theory, MemberData(nameof(Days_of_the_other_scheme))]
    public void A_scheme_to_be_held_must_be_current_on_the_day(string on, Standing standing)
    {
        var awareness = HeldThroughMay.Suspended("2026-08-01").Withdrawn("2026-09-01") with { SchemeId = Awareness };
        var file = File(TrainingScheme(HoldsAwareness)) with { Held = [awareness] };

        var decision = Decisions.Decide(file, Rule, On(on));

        if (standing is Standing.Current or Standing.RenewalDue) Assert.Empty(decision.Granted().RestsOn);
        else Assert.Equal([new DecisionReason.NotHeld(Awareness, standing)], decision.Reasons());
    }

    [Fact]
    public void A_scheme_to_be_held_binds_the_renewal_too_and_may_never_have_been_held()
    {
        var file = File(TrainingScheme(HoldsAwareness)) with { Held = [HeldThroughMay] };

        var notYet = Assert.IsType<Decision.NotYet>(Decisions.Decide(file, Rule, On("2026-05-01")));

        Assert.Equal(Route.Renewal, notYet.Route);
        Assert.Equal([new DecisionReason.NotHeld(Awareness, null)], notYet.Reasons);
    }

    [Theory]
    [InlineData("2026-04-09", true)]
    [InlineData("2026-04-10", false)] // first day
    [InlineData("2026-04-20", false)] // day of the reinstatement
    [InlineData("2026-04-21", true)]
    public void Nothing_is_renewed_on_a_day_that_a_suspension_touches(string on, bool isGranted)
    {
        var decision = Renew(HeldThroughMay.Suspended("2026-04-10", "2026-04-20"), on, Sitting(1, on));

        if (isGranted) Assert.IsType<Decision.Granted>(decision);
        else Assert.Equal([new DecisionReason.WhileSuspended(On("2026-04-10"))], decision.Reasons());
    }

    [Fact]
    public void Nothing_is_granted_after_grace_while_a_suspension_lasts() =>
        Assert.Equal(
            [new DecisionReason.WhileSuspended(On("2026-04-10"))],
            Renew(HeldThroughMay.Suspended("2026-04-10"), "2027-01-01", Sitting(1, "2027-01-01")).Reasons());

    [Fact]
    public void Of_two_suspensions_that_last_the_first_is_named() =>
        Assert.Equal(
            [new DecisionReason.WhileSuspended(On("2026-04-10"))],
            Renew(HeldThroughMay.Suspended("2026-04-10").Suspended("2026-04-12"), "2026-04-15", Sitting(1, "2026-04-15")).Reasons());

    [Theory]
    [InlineData("2026-04-10")]
    [InlineData("2026-03-01")] // before the window would have opened
    public void After_a_withdrawal_the_whole_grant_opens_the_next_period(string on)
    {
        var held = HeldThroughMay.Suspended("2026-01-10").Withdrawn("2026-02-10");

        var granted = Renew(held, on, Sitting(1, on)).Granted();

        Assert.Equal(Route.Grant, granted.Route);
        Assert.Equal(2, granted.Period.Number);
        Assert.Equal(On(on).AddYears(1), granted.Period.ExpiresOn);
        Assert.Equal(Standing.Current, Standings.On(held with { Periods = [.. held.Periods, granted.Period] }, On(on)));
    }

    [Fact]
    public void On_the_day_of_the_withdrawal_nothing_is_granted()
    {
        var held = HeldThroughMay.Withdrawn("2026-04-10");

        var notYet = Assert.IsType<Decision.NotYet>(Renew(held, "2026-04-10", Sitting(1, "2026-04-10")));

        Assert.Equal(Route.Grant, notYet.Route);
        Assert.Equal([new DecisionReason.OnDayOfWithdrawal(On("2026-04-10"))], notYet.Reasons);
        Assert.Equal(Route.Renewal, Renew(held, "2026-04-09", Sitting(1, "2026-04-09")).Granted().Route);
        Assert.Equal(Route.Grant, Renew(held, "2026-04-11", Sitting(1, "2026-04-11")).Granted().Route);
    }

    [Theory]
    [InlineData("2026-02-28", false)]
    [InlineData("2026-03-01", true)]
    public void Rules_decide_from_the_day_they_come_into_force(string on, bool isGranted)
    {
        var scheme = TrainingScheme(OnQuiz) with { EffectiveFrom = On("2026-03-01") };

        var decision = Decisions.Decide(File(scheme, Sitting(1, "2026-02-01")), Rule, On(on));

        if (isGranted) Assert.IsType<Decision.Granted>(decision);
        else Assert.Equal([new DecisionReason.RulesNotInForce(On("2026-03-01"))], decision.Reasons());
    }

    [Fact]
    public void All_reasons_are_told_at_once_in_a_fixed_order()
    {
        var live = OnLive with { GreatestAge = D("P10D") };
        var scheme = CertificationScheme(HoldsAwareness, OnModel, live, OnQuiz) with { EffectiveFrom = On("2027-01-01") };
        var file = new CaseFile(
            Worker, scheme, [Sheet(1, "2026-05-01") with { ScorerId = Worker }, Sheet(2, "2026-05-01", subject: Subject.Live)],
            [Taught(Worker, "2026-05-01")], [HeldThroughMay.Suspended("2026-05-10")]);

        Assert.Equal(
            [
                new DecisionReason.RulesNotInForce(On("2027-01-01")),
                new DecisionReason.WhileSuspended(On("2026-05-10")),
                new DecisionReason.NotHeld(Awareness, null),
                new DecisionReason.ScoredThemselves(OnModel, Id(1)),
                new DecisionReason.ScorerTaught(OnModel, Id(1), Worker, On("2026-05-01")),
                new DecisionReason.TooOld(live, Id(2), On("2026-05-11")),
                new DecisionReason.Missing(OnQuiz),
                new DecisionReason.DeciderNotIndependent(Worker, Hat.Candidate),
                new DecisionReason.DeciderNotIndependent(Worker, Hat.Taught),
                new DecisionReason.DeciderNotIndependent(Worker, Hat.Scored),
            ],
            Decisions.Decide(file, new Decider.Lead(Worker), On("2026-05-20")).Reasons());
    }

    [Fact]
    public void Suspension_withdrawal_and_an_early_day_are_told_in_this_order()
    {
        var held = HeldThroughMay.Suspended("2026-01-10");

        Assert.Equal(
            [new DecisionReason.WhileSuspended(On("2026-01-10")), new DecisionReason.TooEarly(On("2026-04-01"))],
            Renew(held, "2026-01-20").Reasons());
        Assert.Equal(
            [
                new DecisionReason.WhileSuspended(On("2026-01-10")),
                new DecisionReason.OnDayOfWithdrawal(On("2026-01-20")),
                new DecisionReason.Missing(OnQuiz),
            ],
            Renew(held.Withdrawn("2026-01-20"), "2026-01-20").Reasons());
    }

    [Fact]
    public void Results_are_named_in_the_order_of_the_requirements()
    {
        var file = File(
            CertificationScheme(OnLive, OnQuiz, OnModel),
            Sitting(1, "2026-03-01"), Sheet(2, "2026-03-01"), Sheet(3, "2026-03-02", subject: Subject.Live));

        Assert.Equal(
            [Id(3), Id(1), Id(2)], Decisions.Decide(file, new Decider.Lead(Lead), On("2026-03-05")).Granted().RestsOn);
    }

    [Fact]
    public void Mixed_up_records_are_a_broken_promise()
    {
        var good = File(TrainingScheme(OnQuiz), Sitting(1, "2026-05-01")) with { Held = [HeldThroughMay] };
        CaseFile[] bad =
        [
            good with { Evidence = [Sitting(1, "2026-05-01") with { PersonId = Id(1) }] },
            good with { Evidence = [Sitting(1, "2026-05-01"), Sitting(1, "2026-05-02")] },
            good with { TaughtBy = [Taught(Teacher, "2026-05-01") with { PersonId = Id(1) }] },
            good with { Held = [HeldThroughMay with { PersonId = Id(1) }] },
            good with { Held = [HeldThroughMay, HeldThroughMay] },
            good with { Held = [HeldThroughMay with { SchemeId = Awareness, Periods = [] }] },
            good with { Scheme = good.Scheme with { Kind = SchemeKind.Certification } },
        ];

        Assert.IsType<Decision.Granted>(Decisions.Decide(good, Rule, On("2026-05-01")));
        Assert.All(bad, file => Assert.Throws<ArgumentException>(() => Decisions.Decide(file, Rule, On("2026-05-01"))));
    }

    [Fact]
    public void A_decision_before_the_last_one_is_a_broken_promise() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Renew(HeldThroughMay, "2025-05-30", Sitting(1, "2025-05-30")));
}
