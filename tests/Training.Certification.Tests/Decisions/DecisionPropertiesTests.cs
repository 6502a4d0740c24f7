using System.Diagnostics;
using CsCheck;
using Training.Courses;

namespace Training.Certification.Tests;

public sealed class DecisionPropertiesTests
{
    private static Decision Decide(RandomCase random) => Decisions.Decide(random.File, random.Decider, random.On);

    [Fact]
    public void No_renewal_shortens_a_validity() => RandomCase.Any.Sample(
        random =>
        {
            if (Decide(random) is not Decision.Granted { Route: Route.Renewal } granted) return;
            var held = random.File.Held.Single(h => h.SchemeId == random.File.Scheme.Id);

            Assert.True(granted.Period.ExpiresOn > held.Periods[^1].ExpiresOn);
            Assert.True(granted.Period.ExpiresOn > random.On);
        },
        iter: 20_000);

    [Fact]
    public void What_is_granted_is_current_from_its_first_day() => RandomCase.Any.Sample(
        random =>
        {
            if (Decide(random) is not Decision.Granted granted) return;
            var held = random.File.Held.SingleOrDefault(h => h.SchemeId == random.File.Scheme.Id)
                ?? new(random.File.PersonId, random.File.Scheme.Id, [], [], []);

            var standing = Standings.On(held with { Periods = [.. held.Periods, granted.Period] }, random.On);

            Assert.True(standing is Standing.Current or Standing.RenewalDue, standing.ToString());
        },
        iter: 20_000);

    [Fact]
    public void Nothing_is_granted_while_any_requirement_is_missing() => RandomCase.Any.Sample(
        random =>
        {
            if (Decide(random) is not Decision.Granted granted) return;
            var asked = granted.Route == Route.Grant ? random.File.Scheme.Grant : random.File.Scheme.Renewal;
            foreach (var requirement in asked)
            {
                var without = Decisions.Decide(Without(random.File, requirement), random.Decider, random.On);

                var reasons = Assert.IsType<Decision.NotYet>(without).Reasons;
                Assert.Contains(
                    requirement switch
                    {
                        Requirement.Holds(var schemeId) => new DecisionReason.NotHeld(schemeId, null),
                        Requirement.Practised => new DecisionReason.PractisedTooLittle(requirement, 0),
                        _ => new DecisionReason.Missing(requirement),
                    },
                    reasons);
                // A pass may answer a practical and count as practice: taken away, both miss it. Nothing else does.
                if (!asked.Any(one => one is Requirement.Practised)) Assert.Single(reasons);
            }
        },
        iter: 20_000);

    [Fact]
    public void The_order_of_the_file_means_nothing() => Gen.Select(RandomCase.Any, Gen.Int[0, 1000]).Sample(
        (random, salt) =>
        {
            var (file, decider, on) = random;
            var shuffled = file with
            {
                Evidence = [.. file.Evidence.OrderBy(e => HashCode.Combine(e.ResultId, salt))],
                TaughtBy = [.. file.TaughtBy.Reverse()],
                Held = [.. file.Held.Reverse()],
            };

            Assert.Equal(Told.Of(Decide(random)), Told.Of(Decisions.Decide(shuffled, decider, on)));
        },
        iter: 20_000);

    [Fact]
    public void What_is_dated_after_the_day_changes_nothing() => RandomCase.Any.Sample(
        random =>
        {
            var (file, decider, on) = random;
            var known = file with
            {
                Evidence = [.. file.Evidence.Where(e => e.On <= on)],
                TaughtBy = [.. file.TaughtBy.Where(t => t.On <= on)],
            };

            Assert.Equal(Told.Of(Decide(random)), Told.Of(Decisions.Decide(known, decider, on)));
        },
        iter: 20_000);

    private static CaseFile Without(CaseFile file, Requirement requirement) => requirement switch
    {
        Requirement.PassedQuiz quiz => file with
        {
            Evidence = [.. file.Evidence.Where(e => e is not Evidence.OfQuiz sitting || sitting.QuizId != quiz.QuizId)],
        },
        Requirement.PassedPractical practical => file with
        {
            Evidence =
            [
                .. file.Evidence.Where(e => e is not Evidence.OfPractical sheet
                    || sheet.ChecklistId != practical.ChecklistId || sheet.Subject != practical.Subject),
            ],
        },
        Requirement.Practised practised => Without(file, new Requirement.PassedPractical(practised.ChecklistId, Subject.Model, practised.Within)),
        Requirement.Holds holds => file with { Held = [.. file.Held.Where(held => held.SchemeId != holds.SchemeId)] },
        _ => throw new UnreachableException(),
    };
}
