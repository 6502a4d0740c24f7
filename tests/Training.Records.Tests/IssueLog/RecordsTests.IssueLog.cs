using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Documents.IssueLog;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static readonly DateTimeOffset Later = Cast.Now.AddDays(40);

    private static IEnumerable<IssueEvent> EventsOf(IEnumerable<OpenedLeaf> leaves) => leaves.Select(leaf => leaf.Entry.Event);

    private static async Task<IReadOnlyList<LogFinding>> AuditAsync(RecordsContext records, params TreeHead[] saved)
    {
        var audit = new LogAudit(saved);
        await foreach (var leaf in records.AllLogLeaves())
            audit.Add(leaf.Leaf, [.. leaf.Hashes.Chunk(LogHash.Size).Select(hash => new LogHash(hash))]);
        return audit.Finish();
    }

    [Fact]
    public async Task A_paper_comes_with_a_leaf_that_commits_to_it()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var serial = NewSerial();
        await using var records = Database.Open();

        await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation);

        var opened = Assert.Single(await records.OpenedLeavesAsync(serial, Cancellation));
        var period = ((Decision.Granted)made.Decision).Period;
        Assert.Equal(new(serial, cast.CourseId, cast.CourseHash, period.StartsOn, period.ExpiresOn, IssueEvent.Issued, Cast.Now), opened.Entry);
        var stored = Assert.Single(await records.LogLeavesAsync(opened.Index, 1, Cancellation));
        Assert.Equal(stored.Leaf, opened.Entry.Leaf(opened.Salt.Span));
        Assert.Empty(await AuditAsync(records));
    }

    [Fact]
    public async Task A_paper_that_is_refused_leaves_no_leaf()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var serial = NewSerial();
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation);

        await records.IssueAsync(Paper(made, cast, NewSerial()), Cast.Now, Cancellation);
        await records.IssueAsync(Paper(made, cast, serial) with { Revision = 2 }, Cast.Now, Cancellation);

        Assert.Single(await records.OpenedLeavesAsync(serial, Cancellation));
        Assert.Empty(await AuditAsync(records));
    }

    [Fact]
    public async Task Eight_at_once_append_eight_leaves_and_the_tree_holds()
    {
        var casts = new List<(Cast Cast, MadeDecision Made)>();
        for (var one = 0; one < 8; one++)
        {
            var cast = await Cast.CreateAsync(Database);
            casts.Add((cast, await cast.KeepGrantedAsync(Database)));
        }

        var issued = await Task.WhenAll(casts.Select(one => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return Assert.IsType<Issue.Issued>(await records.IssueAsync(Paper(one.Made, one.Cast, NewSerial()), Cast.Now, Cancellation));
        })));

        await using var read = Database.Open();
        var leaves = new HashSet<long>();
        foreach (var paper in issued) leaves.Add(Assert.Single(await read.OpenedLeavesAsync(paper.Serial, Cancellation)).Index);
        Assert.Equal(8, leaves.Count);
        Assert.Empty(await AuditAsync(read));
    }

    [Fact]
    public async Task What_happens_to_a_certification_is_logged_of_its_paper()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var serial = NewSerial();
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation);

        await records.SuspendAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(new(2026, 6, 1), cast.Lead, "Looked at.", new(2026, 6, 30), null), Later, Cancellation);
        await records.ReinstateAsync(cast.Worker, cast.CourseId, new(new(2026, 6, 10), cast.OtherLead, "Nothing found."), Later.AddDays(1), Cancellation);
        await records.WithdrawAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(new(2026, 6, 20), cast.Lead, cast.OtherLead, "Somebody else sat."), Later.AddDays(2), Cancellation);

        var leaves = await records.OpenedLeavesAsync(serial, Cancellation);
        Assert.Equal([IssueEvent.Issued, IssueEvent.Suspended, IssueEvent.Reinstated, IssueEvent.Withdrawn], EventsOf(leaves));
        Assert.Equal([Cast.Now, Later, Later.AddDays(1), Later.AddDays(2)], leaves.Select(leaf => leaf.Entry.HappenedAt));
        Assert.Empty(await AuditAsync(records));
    }

    [Fact]
    public async Task A_revision_and_a_renewal_log_the_paper_whose_place_they_take()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var (first, revised, renewed) = (NewSerial(), NewSerial(), NewSerial());
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, first), Cast.Now, Cancellation);

        await records.IssueAsync(Paper(made, cast, revised) with { Revision = 2 }, Later, Cancellation);
        await records.IssueAsync(Paper(await cast.KeepGrantedAsync(Database, number: 2), cast, renewed), Later, Cancellation);

        Assert.Equal([IssueEvent.Issued, IssueEvent.Superseded], EventsOf(await records.OpenedLeavesAsync(first, Cancellation)));
        Assert.Equal([IssueEvent.Issued, IssueEvent.Superseded], EventsOf(await records.OpenedLeavesAsync(revised, Cancellation)));
        Assert.Equal([IssueEvent.Issued], EventsOf(await records.OpenedLeavesAsync(renewed, Cancellation)));
    }

    [Fact]
    public async Task An_erased_opening_leaves_a_whole_log_and_a_leaf_without_meaning()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var serial = NewSerial();
        await using var records = Database.Open();
        var paper = Assert.IsType<Issue.Issued>(await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation));

        await records.LogOpenings.Where(opening => opening.PaperId == paper.PaperId).ExecuteDeleteAsync(Cancellation);

        Assert.Empty(await records.OpenedLeavesAsync(serial, Cancellation));
        Assert.Empty(await AuditAsync(records));
    }

    [Fact]
    public async Task A_stored_log_gives_proofs_that_hold_against_its_own_root()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        var serial = NewSerial();
        await using var records = Database.Open();
        await records.IssueAsync(Paper(made, cast, serial), Cast.Now, Cancellation);
        await using var still = await records.Database.BeginTransactionAsync(System.Data.IsolationLevel.RepeatableRead, Cancellation);
        var opened = Assert.Single(await records.OpenedLeavesAsync(serial, Cancellation));
        var edge = await records.EdgeAsync(Cancellation);

        var proof = InclusionProof.Make(opened.Index, edge.Size, await records.NodesAsync(InclusionProof.NodesFor(opened.Index, edge.Size), Cancellation));

        Assert.True(proof.Proves(MerkleTree.HashLeaf(opened.Entry.Leaf(opened.Salt.Span)), edge.Root));
    }
}
