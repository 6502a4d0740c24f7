using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static PaperRun Run(Cast cast, PaperRunKind kind) => new()
    {
        Id = Guid.CreateVersion7(), Kind = kind, EmployerId = null, SchemeId = cast.CourseId, Reason = "The address changed.", LeadId = cast.Lead, StartedAt = Cast.Now,
    };

    private async Task<IReadOnlyList<PaperRunItem>> ItemsOfAsync(PaperRun run)
    {
        await using var records = Database.Open();
        return await records.PaperRunItems.AsNoTracking().Where(item => item.RunId == run.Id).OrderBy(item => item.Position).ToListAsync(Cancellation);
    }

    [Fact]
    public async Task A_run_for_what_is_missing_names_each_grant_without_a_paper_once()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var run = Run(cast, PaperRunKind.Missing);
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.StartAsync(run, Cast.Today, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.StartAsync(run, Cast.Today, Cancellation));

        var item = Assert.Single(await ItemsOfAsync(run));
        Assert.Equal((1, made.Id, 1), (item.Position, item.DecisionId, item.Revision));
        var progress = (await records.FindProgressAsync(run.Id, Cancellation))!;
        Assert.Equal((1, 0, 0, false), (progress.All, progress.Done, progress.Failed, progress.IsOver));
    }

    [Fact]
    public async Task What_is_done_follows_from_the_papers_that_exist()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var run = Run(cast, PaperRunKind.Missing);
        await using var records = Database.Open();
        await records.StartAsync(run, Cast.Today, Cancellation);
        Assert.Contains(await records.NextItemsAsync(1000, Cancellation), item => item.RunId == run.Id);

        var serial = NewSerial();
        Assert.Empty(await records.SerialsOfAsync(run.Id, 1, 100, Cancellation));
        await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation);

        Assert.Equal([serial], await records.SerialsOfAsync(run.Id, 1, 100, Cancellation));
        Assert.True((await records.FindProgressAsync(run.Id, Cancellation))!.IsOver);
        Assert.DoesNotContain(await records.NextItemsAsync(1000, Cancellation), item => item.RunId == run.Id);
        Assert.Equal(Pdf, Assert.Single(await records.FilesOf(run.Id, 1, 100, Language.Spanish).ToListAsync(Cancellation)));
    }

    [Fact]
    public async Task A_run_for_new_revisions_leaves_out_what_is_over_and_what_was_withdrawn()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, NewSerial()), Cast.Now, Cancellation);
        var (holds, over) = (Run(cast, PaperRunKind.Anew), Run(cast, PaperRunKind.Anew));

        Assert.IsType<Kept.Stored>(await records.StartAsync(holds, Cast.Today, Cancellation));
        Assert.Equal(2, Assert.Single(await ItemsOfAsync(holds)).Revision);
        var refused = Assert.IsType<Kept.Refused>(await records.StartAsync(over, Cast.Today.AddYears(2), Cancellation));
        Assert.Equal(RecordsProblems.NothingToPrint, Assert.Single(refused.Problems).Code);

        await records.WithdrawAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(Cast.Today, cast.Lead, cast.OtherLead, "Somebody else sat."), Cast.Now, Cancellation);
        Assert.IsType<Kept.Refused>(await records.StartAsync(over, Cast.Today, Cancellation));
    }

    [Fact]
    public async Task A_paper_that_cannot_be_made_is_not_tried_again_in_its_run_and_says_why()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        var run = Run(cast, PaperRunKind.Missing);
        await using var records = Database.Open();
        await records.StartAsync(run, Cast.Today, Cancellation);

        await records.KeepAsync(
            new PaperRunFailure { RunId = run.Id, Position = 1, Code = "certificate.field-too-long", Field = "worker-name", Arguments = ["140", "120"], At = Cast.Now },
            Cancellation);

        var progress = (await records.FindProgressAsync(run.Id, Cancellation))!;
        Assert.Equal((0, 1, true), (progress.Done, progress.Failed, progress.IsOver));
        Assert.DoesNotContain(await records.NextItemsAsync(1000, Cancellation), item => item.RunId == run.Id);
        var failed = Assert.Single(await records.FailedPapersAsync(run.Id, 10, Cancellation));
        Assert.Equal(
            (cast.Worker, cast.CourseId, "certificate.field-too-long", "worker-name"), (failed.PersonId, failed.SchemeId, failed.Problem.Code, failed.Problem.Place.Part));
        Assert.Equal(["140", "120"], failed.Problem.Arguments);
    }

    [Fact]
    public async Task An_order_counts_from_the_later_of_the_last_expiry_and_the_decision()
    {
        var cast = await Cast.CreateAsync(Database);
        var first = await cast.KeepGrantedAsync(Database);
        var second = await cast.KeepGrantedAsync(Database, number: 2);
        await using var records = Database.Open();

        var (grant, renewal) = (await records.FindOrderAsync(first.Id, 1, Cancellation), await records.FindOrderAsync(second.Id, 3, Cancellation));

        Assert.Equal((Cast.Today, 1, (Guid?)cast.Lead), (grant!.CountedFrom, grant.Revision, grant.LeadId));
        Assert.Equal(grant.Period.ExpiresOn, renewal!.CountedFrom);
        Assert.Null(await records.FindOrderAsync(Guid.CreateVersion7(), 1, Cancellation));
    }
}
