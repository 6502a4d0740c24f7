using CsCheck;
using Training.Courses;

namespace Training.Certification.Tests;

public sealed class NextStepPropertiesTests
{
    /// <summary>Stands in no file: neither taught nor scored.</summary>
    private static readonly Decider Independent = new Decider.Lead(Cast.Id(7_000_000));

    [Fact]
    public void A_decision_is_awaited_today_exactly_where_an_independent_lead_would_grant_it() => RandomCase.Any.Sample(
        random =>
        {
            var decided = Decisions.Decide(random.File, Independent, random.On) as Decision.Granted;
            var awaited = NextSteps.For(random.File, random.On) as NextStep.AwaitsDecision;

            Assert.Equal(decided is not null, awaited is not null && awaited.From == random.On);
            Assert.Equal(decided?.Route ?? awaited?.Route, awaited?.Route);
        },
        iter: 20_000);

    [Fact]
    public void What_is_awaited_can_be_decided_on_its_first_and_last_day_and_not_on_the_next() => RandomCase.Any.Sample(
        random =>
        {
            if (NextSteps.For(random.File, random.On) is not NextStep.AwaitsDecision { Through: { } through } awaited) return;
            var known = KnownOn(random.File, random.On);
            if (known.Held.Any(held => IsSanctionedLater(held, random.On))) return;

            Assert.IsType<Decision.Granted>(Decisions.Decide(known, Independent, awaited.From));
            Assert.IsType<Decision.Granted>(Decisions.Decide(known, Independent, through));
            Assert.NotEqual(awaited.Route, (Decisions.Decide(known, Independent, through.AddDays(1)) as Decision.Granted)?.Route);
        },
        iter: 20_000);

    [Fact]
    public void What_is_not_met_is_what_an_independent_lead_would_miss() => RandomCase.Any.Sample(
        random =>
        {
            if (Decisions.Decide(random.File, Independent, random.On) is not Decision.NotYet notYet) return;

            foreach (var state in NextSteps.For(random.File, random.On).Requirements)
                Assert.Equal(state.IsMet, !notYet.Reasons.Any(reason => IsAbout(reason, state.Requirement)));
        },
        iter: 20_000);

    private static CaseFile KnownOn(CaseFile file, DateOnly on) => file with { Evidence = [.. file.Evidence.Where(e => e.On <= on)] };

    private static bool IsSanctionedLater(HeldCertification held, DateOnly on) =>
        held.Suspensions.Any(suspension => suspension.From > on)
        || held.Withdrawals.Any(withdrawal => withdrawal.On > on)
        || held.Periods.Any(period => period.StartsOn > on);

    private static bool IsAbout(DecisionReason reason, Requirement requirement) => reason switch
    {
        DecisionReason.Missing missing => missing.Requirement == requirement,
        DecisionReason.NotPassed notPassed => notPassed.Requirement == requirement,
        DecisionReason.TooOld tooOld => tooOld.Requirement == requirement,
        DecisionReason.BeforeWindow before => before.Requirement == requirement,
        DecisionReason.ScoredThemselves themselves => themselves.Requirement == requirement,
        DecisionReason.ScorersDisagree disagree => disagree.Requirement == requirement,
        DecisionReason.ScorerTaught taught => taught.Requirement == requirement,
        DecisionReason.PractisedTooLittle practised => practised.Requirement == requirement,
        DecisionReason.NotHeld notHeld => requirement == new Requirement.Holds(notHeld.SchemeId),
        _ => false,
    };
}
