using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static readonly byte[] Pdf = [0x25, 0x50, 0x44, 0x46, 0, 255];

    [Fact]
    public async Task A_paper_is_found_by_its_serial_with_what_a_gate_needs()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var serial = NewSerial();
        await using var records = Database.Open();

        var issued = Assert.IsType<Issue.Issued>(await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation));

        var found = (await records.FindPaperAsync($" {serial.ToLowerInvariant()} ", Cancellation))!;
        Assert.Equal((issued.PaperId, serial, "Íñigo Peña-Ruiz"), (found.Id, found.Serial, found.PrintedName));
        Assert.Equal((cast.CourseId, cast.CourseHash, 1, Supersession.None), (found.SchemeId, found.CourseHash, found.Revision, found.Supersession));
        Assert.Equal((Cast.Now, Cast.Zone), (found.IssuedAt, found.Zone));
        Assert.Equal(found.Period, Assert.Single(found.Held.Periods));
        var rendering = (await records.FindRenderingAsync(found.Id, Language.Spanish, RenderingFormat.CertificatePdf, Cancellation))!;
        Assert.Equal(Pdf, rendering.Bytes.ToArray());
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Pdf)), rendering.Sha256);
    }

    [Fact]
    public async Task An_unknown_serial_finds_nothing()
    {
        await using var records = Database.Open();

        Assert.Null(await records.FindPaperAsync("NEVER-ISSUED", Cancellation));
    }

    [Fact]
    public async Task Ten_at_once_issue_one_paper_for_a_decision()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);

        var issues = await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.IssueAsync(Paper(made, cast, NewSerial()), Cast.Now, Cancellation);
        })));

        var issued = Assert.Single(issues.OfType<Issue.Issued>());
        Assert.Equal(9, issues.OfType<Issue.AlreadyIssued>().Count(other => other.Serial == issued.Serial));
        await using var read = Database.Open();
        Assert.Equal(2, await read.Renderings.CountAsync(rendering => rendering.PaperId == issued.PaperId, Cancellation));
    }

    [Fact]
    public async Task The_index_forbids_a_second_paper_for_the_same_decision_and_revision()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, NewSerial()), Cast.Now, Cancellation);
        records.Add(new PaperRecord
        {
            Id = Guid.CreateVersion7(), DecisionId = made.Id, Revision = 1, Serial = NewSerial(), PersonNameId = cast.WorkerName, IssuedAt = Cast.Now,
        });

        var refused = await Assert.ThrowsAsync<DbUpdateException>(() => records.SaveChangesAsync(Cancellation));

        Assert.True(UniqueViolation.Is(refused));
    }

    [Fact]
    public async Task A_serial_of_another_paper_is_told_and_nothing_is_issued()
    {
        var cast = await Cast.CreateAsync(Database);
        var other = await Cast.CreateAsync(Database);
        var serial = NewSerial();
        var (made, theirs) = (await cast.KeepGrantedAsync(Database), await other.KeepGrantedAsync(Database));
        await using var records = Database.Open();
        await records.IssueAsync(Paper(theirs, other, serial), Cast.Now, Cancellation);

        Assert.IsType<Issue.DrawTaken>(await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation));
        Assert.Null(await records.FindLatestPaperAsync(made.Id, Cancellation));
        Assert.Equal(other.Worker, (await records.FindPaperAsync(serial, Cancellation))!.PersonId);
    }

    [Fact]
    public async Task A_place_in_the_status_lists_is_never_given_twice()
    {
        var cast = await Cast.CreateAsync(Database);
        var other = await Cast.CreateAsync(Database);
        var (made, theirs) = (await cast.KeepGrantedAsync(Database), await other.KeepGrantedAsync(Database));
        var first = Paper(theirs, other, NewSerial());
        await using var records = Database.Open();
        await records.IssueAsync(first, Cast.Now, Cancellation);

        var second = await records.IssueAsync(Paper(made, cast, NewSerial()) with { StatusIndex = first.StatusIndex }, Cast.Now, Cancellation);

        Assert.IsType<Issue.DrawTaken>(second);
        Assert.Null(await records.FindLatestPaperAsync(made.Id, Cancellation));
    }

    [Fact]
    public async Task A_later_revision_and_a_later_period_supersede_a_paper()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var serials = (First: NewSerial(), Revised: NewSerial(), Renewed: NewSerial());
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, serials.First), Cast.Now, Cancellation);

        await records.IssueAsync(Paper(made, cast, serials.Revised) with { Revision = 2 }, Cast.Now, Cancellation);
        Assert.Equal(Supersession.Revised, (await records.FindPaperAsync(serials.First, Cancellation))!.Supersession);
        Assert.Equal(Supersession.None, (await records.FindPaperAsync(serials.Revised, Cancellation))!.Supersession);

        var renewed = await cast.KeepGrantedAsync(Database, number: 2);
        Assert.Equal(Supersession.None, (await records.FindPaperAsync(serials.Revised, Cancellation))!.Supersession);
        await records.IssueAsync(Paper(renewed, cast, serials.Renewed), Cast.Now, Cancellation);
        var found = (await records.FindPaperAsync(serials.Revised, Cancellation))!;
        Assert.Equal((Supersession.Renewed, 2), (found.Supersession, found.Held.Periods.Count));
        Assert.Equal(Supersession.None, (await records.FindPaperAsync(serials.Renewed, Cancellation))!.Supersession);
    }

    [Fact]
    public async Task Current_are_the_latest_papers_that_stand_today_in_the_order_asked_for()
    {
        var (cast, other) = (await Cast.CreateAsync(Database), await Cast.CreateAsync(Database));
        var (made, theirs) = (await cast.KeepGrantedAsync(Database), await other.KeepGrantedAsync(Database));
        var (first, revised, second) = (NewSerial(), NewSerial(), NewSerial());
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, first), Cast.Now, Cancellation);
        await records.IssueAsync(Paper(made, cast, revised) with { Revision = 2 }, Cast.Now, Cancellation);
        await records.IssueAsync(Paper(theirs, other, second), Cast.Now, Cancellation);
        async Task<IEnumerable<string>> CurrentAsync(DateTimeOffset now) =>
            (await records.CurrentPapersAsync([second, first, revised, "NEVER-ISSUED"], now, Cancellation)).Select(paper => paper.Serial);

        Assert.Equal([second, revised], await CurrentAsync(Cast.Now));
        Assert.Empty(await CurrentAsync(Cast.Now.AddYears(9)));
        var paper = Assert.Single(await records.CurrentPapersAsync([revised], Cast.Now, Cancellation));
        Assert.Equal((2, cast.Worker, cast.CourseId, Cast.Today), (paper.Revision, paper.PersonId, paper.SchemeId, paper.Today));

        await cast.KeepGrantedAsync(Database, number: 2);
        Assert.Equal([second, revised], await CurrentAsync(Cast.Now));
        (await records.PersonNames.SingleAsync(name => name.Id == other.WorkerName, Cancellation)).Text = null;
        await records.SaveChangesAsync(Cancellation);
        Assert.Equal([revised], await CurrentAsync(Cast.Now));
    }

    [Fact]
    public async Task A_paper_without_a_grant_a_name_or_its_earlier_revision_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var paper = new PaperToIssue(Guid.CreateVersion7(), 2, NewSerial(), Guid.CreateVersion7(), 7, Guid.NewGuid(), []);
        await using var records = Database.Open();

        var refused = Assert.IsType<Issue.Refused>(await records.IssueAsync(paper, Cast.Now, Cancellation));

        Assert.Equal(
            [RecordsProblems.NothingGranted, RecordsProblems.NameUnknown, RecordsProblems.RevisionSkipped],
            refused.Problems.Select(problem => problem.Code));
    }

    [Fact]
    public async Task An_erased_name_leaves_the_paper_and_its_evidence()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var serial = NewSerial();
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation);

        (await records.PersonNames.SingleAsync(name => name.Id == cast.WorkerName, Cancellation)).Text = null;
        await records.SaveChangesAsync(Cancellation);

        var found = (await records.FindPaperAsync(serial, Cancellation))!;
        Assert.Null(found.PrintedName);
        Assert.Single(found.Held.Periods);
    }

    private static string NewSerial() => $"S{Guid.CreateVersion7():N}".ToUpperInvariant();

    private static PaperToIssue Paper(MadeDecision made, Cast cast, string serial) => new(
        made.Id, 1, serial, cast.WorkerName, RandomNumberGenerator.GetInt32(int.MaxValue), Guid.NewGuid(),
        [new(Language.English, RenderingFormat.CertificatePdf, Pdf), new(Language.Spanish, RenderingFormat.CertificatePdf, Pdf)]);
}
