using Training.Courses;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class TransitionStateTests
{
    // New rules from 1 March 2026 ask those certified before for the quiz by 30 June 2026; a pass counts for 90 days.
    private static readonly Scheme Changed = TrainingScheme(OnQuiz) with
    {
        EffectiveFrom = On("2026-03-01"),
        Transition = new("0b7d31c2a9e4", On("2026-06-30"), [OnQuiz]),
    };

    private static readonly HeldCertification Before = Held(Period(1, "2025-11-15", "2026-11-15"));

    private static TransitionState? Of(string today, Scheme? scheme = null, HeldCertification? held = null, params Evidence[] evidence) =>
        TransitionState.Of(File(scheme ?? Changed, evidence) with { Held = held is null ? [Before] : [held] }, On(today));

    /// <summary>The day of the pass; whether it is what the new rules ask.</summary>
    public static TheoryData<string, bool> Passes => new()
    {
        { "2025-11-30", false }, // counted through 28 February: not on any day of the new rules
        { "2025-12-01", true },  // counted on 1 March
        { "2026-03-01", true },
        { "2026-06-30", true },  // the last day
        { "2026-07-01", false },
    };

    [Theory, MemberData(nameof(Passes))]
    public void What_is_asked_besides_is_met_on_a_day_between_the_first_and_the_last(string pass, bool isMet)
    {
        var state = Of("2026-08-01", evidence: Sitting(1, pass));

        Assert.Equal((isMet, !isMet, On("2026-11-15")), (state!.IsMet, state.IsOverdue(On("2026-08-01")), state.Through));
        Assert.Equal([new TransitionNeed(OnQuiz, isMet)], state.Needs);
    }

    [Fact]
    public void Once_met_it_stays_met_and_on_the_last_day_it_is_not_overdue()
    {
        Assert.True(Of("2026-10-30", evidence: Sitting(1, "2026-03-05"))!.IsMet); // long past the 90 days
        Assert.False(Of("2026-06-30")!.IsOverdue(On("2026-06-30")));
        Assert.True(Of("2026-07-01")!.IsOverdue(On("2026-07-01")));
    }

    [Fact]
    public void Where_nothing_is_asked_besides_the_terms_are_kept_through_the_last_day()
    {
        var state = Of("2026-04-01", Changed with { Transition = new("0b7d31c2a9e4", null, []) });

        Assert.Equal((On("2026-11-15"), null, true, false), (state!.Through, state.By, state.IsMet, state.IsOverdue(On("2099-01-01"))));
    }

    [Fact]
    public void It_binds_only_what_was_decided_before_and_lasts()
    {
        Assert.Null(Of("2026-04-01", Changed with { Transition = null }));
        Assert.NotNull(Of("2026-04-01", held: Held(Period(1, "2026-02-28", "2027-02-28"))));
        Assert.Null(Of("2026-04-01", held: Held(Period(1, "2026-03-01", "2027-03-01")))); // by the new rules
        Assert.NotNull(Of("2026-11-15"));
        Assert.Null(Of("2026-11-16")); // lapsed: the renewal asks by the rules in force
        Assert.Null(Of("2026-04-01", held: Before.Withdrawn("2026-03-20")));
        Assert.NotNull(Of("2026-04-01", held: Before.Suspended("2026-03-20"))); // it may be reinstated
        Assert.Null(TransitionState.Of(File(Changed), On("2026-04-01")));
    }

    [Fact]
    public void A_renewal_by_the_new_rules_ends_it() =>
        Assert.Null(Of("2026-10-01", held: Held(Period(1, "2025-11-15", "2026-11-15"), Period(2, "2026-09-20", "2027-11-15"))));

    [Fact]
    public void Rules_to_come_tell_those_who_hold_something_today() =>
        Assert.Equal((On("2026-06-30"), false), (Of("2026-02-01")!.By, Of("2026-02-01")!.IsMet));
}
