using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static readonly Requirement.PassedQuiz AskedQuiz = new("handler-quiz", new(90, DurationUnit.Days));

    private static readonly Requirement.PassedPractical AskedPractical = new("move-to-bucket", Subject.Model, new(90, DurationUnit.Days));

    private static Scheme Asking(Cast cast) => SchemeOf(cast) with { Grant = [AskedQuiz, AskedPractical], Renewal = [AskedQuiz] };

    private async Task<WaitingDecision?> FindWaitingAsync(Cast cast, DateOnly? today = null)
    {
        await using var records = Database.Open();
        var waiting = await records.WaitingDecisionsAsync(Asking(cast), today ?? Cast.Today, Cancellation);
        return waiting.SingleOrDefault(one => one.PersonId == cast.Worker);
    }

    private async Task KeepSittingAsync(Cast cast, DateTimeOffset now, DateOnly? on = null, bool isPassed = true)
    {
        await using var records = Database.Open();
        var sitting = cast.Sitting();
        var result = isPassed ? cast.Passed(sitting) : cast.Failed(sitting);
        Assert.IsType<Kept.Stored>(await records.KeepAsync(sitting, result, on ?? Cast.Today, Cast.Zone, now, Cancellation));
    }

    private async Task KeepSheetAsync(Cast cast, DateOnly on)
    {
        await using var records = Database.Open();
        Assert.IsType<Kept.Stored>(await records.KeepAsync(cast.Sheet(), Cast.PassedSheet(), on, Cast.Zone, Cast.Now, Cancellation));
    }

    private async Task DecideAsync(Cast cast, Decision decision, DateTimeOffset now)
    {
        await using var records = Database.Open();
        var made = new MadeDecision(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, cast.CourseHash, new Decider.Lead(cast.Lead), Cast.Today, Cast.Zone, decision);
        Assert.IsType<Kept.Stored>(await records.KeepAsync(made, now, Cancellation));
    }

    [Fact]
    public async Task A_case_waits_once_everything_asked_is_there_and_says_since_when()
    {
        var cast = await Cast.CreateAsync(Database);

        Assert.Null(await FindWaitingAsync(cast));
        await KeepSittingAsync(cast, Cast.Now, Cast.Today.AddDays(-9));
        Assert.Null(await FindWaitingAsync(cast));
        await KeepSheetAsync(cast, Cast.Today.AddDays(-4));

        Assert.Equal(new WaitingDecision(cast.Worker, cast.CourseId, Cast.Today.AddDays(-4)), await FindWaitingAsync(cast));
        Assert.Null(await FindWaitingAsync(cast, Cast.Today.AddDays(82))); // the sitting is 91 days old
        Assert.Null(await FindWaitingAsync(cast, Cast.Today.AddDays(-5))); // the sheet does not exist yet
    }

    [Fact]
    public async Task A_refused_case_waits_again_only_with_a_new_pass()
    {
        var cast = await Cast.CreateAsync(Database);
        await KeepSittingAsync(cast, Cast.Now);
        await KeepSheetAsync(cast, Cast.Today);
        await DecideAsync(cast, new Decision.NotYet(Route.Grant, [new DecisionReason.RefusedByLead("Reported twice.")]), Cast.Now.AddHours(1));

        Assert.Null(await FindWaitingAsync(cast));
        await KeepSittingAsync(cast, Cast.Now.AddHours(2), isPassed: false);
        Assert.Null(await FindWaitingAsync(cast));
        await KeepSittingAsync(cast, Cast.Now.AddHours(3));
        Assert.NotNull(await FindWaitingAsync(cast));
    }

    [Fact]
    public async Task Not_yet_by_the_rules_alone_hides_nothing_and_a_grant_ends_the_wait()
    {
        var cast = await Cast.CreateAsync(Database);
        await KeepSittingAsync(cast, Cast.Now);
        await KeepSheetAsync(cast, Cast.Today);
        await DecideAsync(cast, new Decision.NotYet(Route.Grant, [new DecisionReason.LeadRequired()]), Cast.Now.AddHours(1));

        Assert.NotNull(await FindWaitingAsync(cast));
        await DecideAsync(
            cast, new Decision.Granted(Route.Grant, new(1, Cast.Today, Cast.Today, Cast.Today.AddYears(1), Cast.Annual), [], []), Cast.Now.AddHours(2));
        Assert.Null(await FindWaitingAsync(cast));
    }

    [Fact]
    public async Task A_certificate_of_training_never_waits()
    {
        var cast = await Cast.CreateAsync(Database);
        await KeepSittingAsync(cast, Cast.Now);
        await KeepSheetAsync(cast, Cast.Today);
        await using var records = Database.Open();

        Assert.Empty(await records.WaitingDecisionsAsync(Asking(cast) with { Kind = SchemeKind.CertificateOfTraining }, Cast.Today, Cancellation));
    }

    [Fact]
    public async Task A_refusal_reads_back_with_the_leads_words()
    {
        var cast = await Cast.CreateAsync(Database);
        DecisionReason[] reasons = [new DecisionReason.Missing(AskedQuiz), new DecisionReason.RefusedByLead("Vino sin guantes: “otra vez”.")];
        var made = cast.Granted(1, []) with { Decision = new Decision.NotYet(Route.Grant, reasons) };
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.KeepAsync(made, Cast.Now, Cancellation));

        var read = Assert.IsType<Decision.NotYet>((await records.FindDecisionAsync(made.Id, Cancellation))!.Made.Decision);
        Assert.True(read.IsRefusal);
        Assert.Equal(reasons, read.Reasons);
        Assert.Contains(records.Decisions, decision => decision.Id == made.Id && decision.Outcome == DecisionOutcome.Refused);
    }

    [Fact]
    public async Task A_suspension_is_open_until_it_is_reinstated_or_withdrawn()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        var suspension = new Suspension(Cast.Today, cast.Lead, "Reported from site.", Cast.Today.AddDays(14), null);
        var first = Guid.CreateVersion7();
        await records.SuspendAsync(first, cast.Worker, cast.CourseId, suspension, Cast.Now, Cancellation);

        Assert.Equal(
            new OpenSuspension(first, cast.Worker, cast.CourseId, Cast.Today, Cast.Today.AddDays(14), cast.Lead, "Reported from site."),
            (await records.OpenSuspensionsAsync(Cancellation)).Single(one => one.PersonId == cast.Worker));
        await records.ReinstateAsync(cast.Worker, cast.CourseId, new(Cast.Today, cast.Lead, "Settled."), Cast.Now, Cancellation);
        Assert.DoesNotContain(await records.OpenSuspensionsAsync(Cancellation), one => one.PersonId == cast.Worker);

        await records.SuspendAsync(Guid.CreateVersion7(), cast.Worker, cast.CourseId, suspension, Cast.Now, Cancellation);
        await records.WithdrawAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(Cast.Today, cast.Lead, cast.OtherLead, "x"), Cast.Now, Cancellation);
        Assert.DoesNotContain(await records.OpenSuspensionsAsync(Cancellation), one => one.PersonId == cast.Worker);
    }

    [Fact]
    public async Task A_suspension_that_a_withdrawal_settled_is_in_the_way_of_no_later_one()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        var suspension = new Suspension(Cast.Today, cast.Lead, "Reported from site.", Cast.Today.AddDays(14), null);
        await records.SuspendAsync(Guid.CreateVersion7(), cast.Worker, cast.CourseId, suspension, Cast.Now, Cancellation);
        await records.WithdrawAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(Cast.Today, cast.Lead, cast.OtherLead, "x"), Cast.Now, Cancellation);
        Assert.Equal(
            [RecordsProblems.NotSuspended],
            Codes(await records.ReinstateAsync(cast.Worker, cast.CourseId, new(Cast.Today, cast.Lead, "x"), Cast.Now, Cancellation)));
        await cast.KeepGrantedAsync(Database, number: 2);
        var later = suspension with { From = Cast.Today.AddDays(5) };

        Assert.IsType<Kept.Stored>(await records.SuspendAsync(Guid.CreateVersion7(), cast.Worker, cast.CourseId, later, Cast.Now, Cancellation));
    }

    [Fact]
    public async Task Disputed_sheets_and_sittings_are_listed_and_what_counts_is_not()
    {
        var cast = await Cast.CreateAsync(Database);
        var (sheet, sitting) = (cast.Sheet(), cast.Sitting());
        var other = cast.Sitting(sitting.Id, chosen: "prod");
        await using var records = Database.Open();
        await records.KeepAsync(sheet, Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        await records.KeepAsync(sheet with { Remarks = "Again." }, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now.AddHours(1), Cancellation);
        await records.KeepAsync(sitting, cast.Passed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        await records.KeepAsync(other, cast.Passed(other), Cast.Today, Cast.Zone, Cast.Now.AddHours(2), Cancellation);

        Assert.Equal(
            [
                new DisputedCopy(sitting.Id, cast.Worker, "handler-quiz", Cast.Today, false, Cast.Now.AddHours(2)),
                new DisputedCopy(sheet.Id, cast.Worker, "move-to-bucket", Cast.Today, true, Cast.Now.AddHours(1)),
            ],
            (await records.DisputedCopiesAsync(Cancellation)).Where(copy => copy.PersonId == cast.Worker));
    }
}
