using System.Collections.Concurrent;
using CsCheck;

namespace Training.Certification.Tests;

/// <summary>Outside check of decisions and standing: the same rules, written a second time in <see cref="SlowRules"/>.</summary>
public sealed class SecondImplementationTests
{
    private const int Histories = 100_000;

    [Fact]
    public void Decisions_agree_on_100000_random_histories()
    {
        var seen = new ConcurrentDictionary<string, int>(StringComparer.Ordinal);

        RandomCase.Any.Sample(
            random =>
            {
                var decision = Decisions.Decide(random.File, random.Decider, random.On);
                Assert.Equal(SlowRules.Decide(random.File, random.Decider, random.On), Told.Of(decision));
                foreach (var kind in Kinds(decision)) seen.AddOrUpdate(kind, 1, (_, count) => count + 1);
            },
            iter: Histories);

        // Agreement on a rule that no history reached would be worth nothing.
        string[] kinds =
        [
            "Grant", "Renewal", "with exception", "Missing", "NotPassed", "TooOld", "BeforeWindow", "PractisedTooLittle", "NotHeld", "ScorersDisagree", "ScorerTaught",
            "ScoredThemselves", "LeadRequired", "TooEarly", "WhileSuspended", "OnDayOfWithdrawal", "RulesNotInForce",
            "Candidate", "Taught", "Scored",
        ];
        Assert.All(kinds, kind => Assert.True(seen.GetValueOrDefault(kind) >= 100, $"{kind}: {seen.GetValueOrDefault(kind)}"));
    }

    [Fact]
    public void Standing_and_last_day_agree_on_100000_random_histories() => RandomCase.Any.Sample(
        random =>
        {
            foreach (var held in random.File.Held)
            {
                var through = held.Periods[^1].ExpiresOn.AddDays(40);
                var states = SlowRules.Walk(held, through);
                for (var i = 1; i < states.Count; i++)
                {
                    // Both sides of every change, and one day in a hundred between.
                    if (states[i - 1].Standing == states[i].Standing && ReferenceEquals(states[i - 1].Period, states[i].Period) && i % 100 != 0) continue;
                    AssertAgrees(held, states[i - 1]);
                    AssertAgrees(held, states[i]);
                }

                AssertAgrees(held, states[0]);
                AssertAgrees(held, states[^1]);
            }
        },
        iter: Histories);

    private static void AssertAgrees(HeldCertification held, SlowRules.DayState state)
    {
        Assert.Equal(state.Standing, Standings.On(held, state.Day));
        Assert.Equal(state.Period?.ExpiresOn, Standings.ExpiresOn(held, state.Day));
    }

    private static IEnumerable<string> Kinds(Decision decision) => decision switch
    {
        Decision.Granted { Exceptions.Count: > 0 } => ["with exception"],
        Decision.Granted granted => [granted.Route.ToString()],
        Decision.NotYet notYet => notYet.Reasons.Select(
            reason => reason is DecisionReason.DeciderNotIndependent(_, var hat) ? hat.ToString() : reason.GetType().Name),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
