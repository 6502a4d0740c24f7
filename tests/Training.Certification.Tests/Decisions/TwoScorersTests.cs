using CsCheck;
using Training.Courses;
using Training.Scoring;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class TwoScorersTests
{
    private const PracticalOutcome Passed = PracticalOutcome.Passed;
    private const PracticalOutcome Failed = PracticalOutcome.Failed;
    private const PracticalOutcome Incomplete = PracticalOutcome.Incomplete;

    private static readonly DateOnly Today = On("2026-03-31");
    private static readonly Decider ByLead = new Decider.Lead(Lead);

    private static Decision Decide(params Evidence[] sheets) => Decisions.Decide(File(CertificationScheme(OnModel), sheets), ByLead, Today);

    /// <summary>A sheet of try 1 by a scorer of its own.</summary>
    private static Evidence.OfPractical OfTry1(int id, PracticalOutcome outcome) =>
        Sheet(id, "2026-03-10", outcome) with { Try = 1, ScorerId = Id(300 + id) };

    // What two scorers of one try found, and whether the pass counts.
    public static TheoryData<PracticalOutcome, PracticalOutcome, bool> Two_sheets_of_one_try => new()
    {
        { Passed, Passed, true },
        { Passed, Failed, false },
        { Failed, Passed, false },
        { Passed, Incomplete, true }, // who did not see all of it has not failed anything
        { Incomplete, Passed, true },
    };

    [Theory, MemberData(nameof(Two_sheets_of_one_try))]
    public void A_try_that_one_scorer_passed_and_another_failed_is_no_pass(PracticalOutcome one, PracticalOutcome other, bool counts)
    {
        var decision = Decide(OfTry1(1, one), OfTry1(2, other));

        var (pass, failure) = one == Passed ? (1, 2) : (2, 1);
        if (counts) Assert.Equal(Id(pass), Assert.Single(decision.Granted().RestsOn));
        else Assert.Equal([new DecisionReason.ScorersDisagree(OnModel, Id(pass), Id(failure))], decision.Reasons());
    }

    [Fact]
    public void Two_failures_of_one_try_are_no_pass_and_no_disagreement() =>
        Assert.Equal([new DecisionReason.NotPassed(OnModel, Id(1))], Decide(OfTry1(1, Failed), OfTry1(2, Failed)).Reasons());

    public static TheoryData<string> What_makes_it_another_try => ["class", "checklist", "subject", "try", "tomorrow"];

    [Theory, MemberData(nameof(What_makes_it_another_try))]
    public void A_failure_of_another_try_takes_nothing_from_a_pass(string difference)
    {
        var failure = OfTry1(2, Failed);
        failure = difference switch
        {
            "class" => failure with { ClassId = Id(901) },
            "checklist" => failure with { ChecklistId = "box-and-label" },
            "subject" => failure with { Subject = Subject.Live },
            "try" => failure with { Try = 2 },
            _ => failure with { On = Today.AddDays(1) },
        };

        Assert.Equal([Id(1)], Decide(OfTry1(1, Passed), failure).Granted().RestsOn);
    }

    [Fact]
    public void A_later_try_that_passes_counts_and_so_does_an_earlier_one()
    {
        Evidence[] disputed = [OfTry1(1, Passed), OfTry1(2, Failed)];

        Assert.Equal([Id(3)], Decide([.. disputed, Sheet(3, "2026-03-10")]).Granted().RestsOn);
        Assert.Equal([Id(4)], Decide([.. disputed, Sheet(4, "2026-03-01")]).Granted().RestsOn);
    }

    [Fact]
    public void Of_three_scorers_one_failure_is_enough_and_the_smallest_ids_are_named() => Assert.Equal(
        [new DecisionReason.ScorersDisagree(OnModel, Id(2), Id(1))],
        Decide(OfTry1(4, Failed), OfTry1(3, Passed), OfTry1(2, Passed), OfTry1(1, Failed)).Reasons());

    [Fact]
    public void A_disputed_try_awaits_no_lead_and_meets_no_requirement()
    {
        var file = File(CertificationScheme(OnModel), OfTry1(1, Passed), OfTry1(2, Failed));

        Assert.False(Decisions.AwaitsLead(file, Today));
        Assert.False(Assert.Single(NextSteps.For(file, Today).Requirements).IsMet);
        Assert.True(Decisions.AwaitsLead(file with { Evidence = [.. file.Evidence, Sheet(3, "2026-03-12")] }, Today));
    }

    [Fact]
    public void It_is_named_before_the_teaching_of_its_scorer() => Assert.Equal(
        [new DecisionReason.ScorersDisagree(OnModel, Id(1), Id(2)), new DecisionReason.ScorerTaught(OnModel, Id(1), Id(301), On("2026-03-01"))],
        Decisions.Decide(
            File(CertificationScheme(OnModel), OfTry1(1, Passed), OfTry1(2, Failed)) with { TaughtBy = [Taught(Id(301), "2026-03-01")] }, ByLead, Today)
            .Reasons());

    [Fact]
    public void The_order_of_the_sheets_means_nothing_and_no_disputed_pass_is_rested_on() =>
        Gen.Select(Gen.Int[1, 3], Gen.Enum<PracticalOutcome>()).Array[1, 8].SelectMany(sheets => Gen.Shuffle(sheets.Index().ToArray()), (sheets, order) => (sheets, order))
            .Sample(drawn =>
            {
                Evidence.OfPractical[] sheets = [.. drawn.sheets.Select((sheet, index) => OfTry1(index + 1, sheet.Item2) with { Try = sheet.Item1 })];
                Evidence.OfPractical[] shuffled = [.. drawn.order.Select(place => sheets[place.Index])];

                var decision = Decide(shuffled);

                Assert.Equal(Told.Of(Decide(sheets)), Told.Of(decision));
                if (decision is not Decision.Granted granted) return;
                var rested = sheets.Single(sheet => sheet.ResultId == granted.RestsOn.Single());
                Assert.DoesNotContain(sheets, sheet => sheet.Try == rested.Try && sheet.Outcome == Failed);
            });
}
