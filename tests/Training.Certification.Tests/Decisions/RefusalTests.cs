using CsCheck;
using Training.Courses;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class RefusalTests
{
    private static readonly CaseFile Complete = File(CertificationScheme(OnQuiz, OnModel), Sitting(1, "2026-03-01"), Sheet(2, "2026-03-02"));

    [Fact]
    public void A_lead_may_refuse_what_the_rules_would_grant()
    {
        var refused = Decisions.Refuse(Complete, new(Lead), On("2026-03-05"), "Reported from site twice.");

        Assert.True(refused.IsRefusal);
        Assert.Equal(Route.Grant, refused.Route);
        Assert.Equal([new DecisionReason.RefusedByLead("Reported from site twice.")], refused.Reasons);
    }

    [Fact]
    public void The_rules_own_reasons_come_before_the_leads()
    {
        var file = Complete with { Evidence = [Sheet(2, "2026-03-02")] };

        Assert.Equal(
            [new DecisionReason.Missing(OnQuiz), new DecisionReason.RefusedByLead("Come back after the quiz.")],
            Decisions.Refuse(file, new(Lead), On("2026-03-05"), "Come back after the quiz.").Reasons);
    }

    public static TheoryData<Guid, Hat> Who_may_not_decide => new()
    {
        { Worker, Hat.Candidate },
        { Teacher, Hat.Taught },
        { Scorer, Hat.Scored },
    };

    [Theory, MemberData(nameof(Who_may_not_decide))]
    public void Who_may_not_decide_may_not_refuse(Guid lead, Hat hat)
    {
        var file = Complete with { TaughtBy = [Taught(Teacher, "2026-02-01")] };

        var notYet = Decisions.Refuse(file, new(lead), On("2026-03-05"), "No.");

        Assert.False(notYet.IsRefusal);
        Assert.Equal([new DecisionReason.DeciderNotIndependent(lead, hat)], notYet.Reasons);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \n")]
    public void A_refusal_without_a_reason_is_a_broken_promise(string reason) =>
        Assert.Throws<ArgumentException>(() => Decisions.Refuse(Complete, new(Lead), On("2026-03-05"), reason));

    [Fact]
    public void A_refusal_ends_nothing() =>
        Assert.IsType<Decision.Granted>(Decisions.Decide(Complete, new Decider.Lead(Lead), On("2026-03-05")));

    [Fact]
    public void A_refusal_adds_one_reason_to_the_decision_or_none_where_a_hat_is_in_the_way() => RandomCase.Any.Sample(
        random =>
        {
            if (random.Decider is not Decider.Lead lead) return;
            var decided = Decisions.Decide(random.File, lead, random.On);
            IReadOnlyList<DecisionReason> own = decided is Decision.NotYet notYet ? notYet.Reasons : [];
            var isFree = !own.Any(reason => reason is DecisionReason.DeciderNotIndependent);

            var refused = Decisions.Refuse(random.File, lead, random.On, "No.");

            Assert.Equal(isFree, refused.IsRefusal);
            Assert.Equal(isFree ? [.. own, new DecisionReason.RefusedByLead("No.")] : own, refused.Reasons);
        },
        iter: 20_000);

    [Fact]
    public void A_case_waits_where_only_the_lead_is_missing()
    {
        Assert.True(Decisions.AwaitsLead(Complete, On("2026-03-05")));
        Assert.False(Decisions.AwaitsLead(Complete with { Evidence = [Sitting(1, "2026-03-01")] }, On("2026-03-05")));
        Assert.False(Decisions.AwaitsLead(Complete, On("2026-03-01")));
    }

    [Fact]
    public void A_case_waits_too_where_a_lead_may_write_the_missing_reason() =>
        Assert.True(Decisions.AwaitsLead(Complete with { TaughtBy = [Taught(Scorer, "2026-02-01")] }, On("2026-03-05")));

    [Fact]
    public void Nothing_waits_that_the_rule_grants() =>
        Assert.False(Decisions.AwaitsLead(File(TrainingScheme(OnQuiz), Sitting(1, "2026-03-01")), On("2026-03-05")));

    [Fact]
    public void What_waits_is_granted_by_some_lead_once_the_reasons_are_written() => RandomCase.Any.Sample(
        random =>
        {
            if (!Decisions.AwaitsLead(random.File, random.On)) return;
            var file = random.File with
            {
                Evidence =
                [
                    .. random.File.Evidence.Select(evidence =>
                        evidence is Evidence.OfPractical sheet ? sheet with { SeparationReason = "Remote range." } : evidence),
                ],
            };

            Assert.IsType<Decision.Granted>(Decisions.Decide(file, new Decider.Lead(Id(99)), random.On));
        },
        iter: 20_000);
}
