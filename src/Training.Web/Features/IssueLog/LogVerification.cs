using System.Diagnostics;
using System.Globalization;
using Training.Courses;
using Training.Documents.IssueLog;
using Training.Records;
using Training.Web.Keys;

namespace Training.Web.Features.IssueLog;

/// <summary>
/// Verifies the whole log from its leaves: every stored hash, every signed head, and that the records still say of each paper what was logged.
/// Leaves are read one by one; the heads are held.
/// </summary>
/// <param name="records">Which it reads and does not change; a server may go on appending.</param>
/// <param name="keys">All that ever signed.</param>
public sealed class LogVerification(RecordsContext records, IEnumerable<RegisteredKey> keys)
{
    private readonly ILookup<string, RegisteredKey> byKid = keys.Where(key => key.Use == KeyUse.Credentials).ToLookup(key => key.Kid, StringComparer.Ordinal);
    private readonly List<Problem> problems = [];

    /// <summary>Runs once.</summary>
    /// <param name="saved">A head that somebody kept elsewhere; null for none.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public async Task<LogReport> RunAsync(PublishedHead? saved, CancellationToken cancellation)
    {
        // Heads before leaves: what is appended meanwhile only makes the log longer.
        var heads = await records.AllHeads().Select(PublishedHead.Of).ToListAsync(cancellation);
        IReadOnlyList<PublishedHead> all = saved is null ? heads : [.. heads, saved];
        if (all.FirstOrDefault(head => !IsSigned(head)) is { } unsigned) Add(IssueLogProblems.HeadNotSigned, unsigned.Size, unsigned.Timestamp);
        var leaves = await ComputeAsync(all, cancellation);
        await CompareOpeningsAsync(cancellation);
        return new(leaves, heads.Count, await records.UnloggedPapersAsync(cancellation), problems);
    }

    private async Task<long> ComputeAsync(IEnumerable<PublishedHead> heads, CancellationToken cancellation)
    {
        // One that cannot be read is told as not signed.
        var audit = new LogAudit(heads.Select(head => head.FindHead()?.Head).OfType<TreeHead>());
        var leaves = 0L;
        await foreach (var leaf in records.AllLogLeaves().WithCancellation(cancellation))
        {
            audit.Add(leaf.Leaf, Hashes(leaf.Hashes));
            leaves++;
        }

        problems.AddRange(audit.Finish().Select(Read));
        return leaves;
    }

    private async Task CompareOpeningsAsync(CancellationToken cancellation)
    {
        await foreach (var (opened, stored) in records.AllOpenedLeaves().WithCancellation(cancellation))
        {
            var isSame = opened.Salt.Length == IssueEntry.SaltSize && stored.Leaf.AsSpan().SequenceEqual(opened.Entry.Leaf(opened.Salt.Span));
            if (isSame) continue;
            problems.Add(new(
                IssueLogProblems.OpeningDiffers, Place.Of("log"), opened.Index.ToString(CultureInfo.InvariantCulture), opened.Entry.Serial));
            return;
        }
    }

    private bool IsSigned(PublishedHead head) => head.FindHead() is { } signed
        && byKid[head.Kid].Any(key => (key.NotBelievedSince is not { } since || signed.Head.At < since) && signed.IsSignedBy(key.ReadJwk()));

    // A row that was cut within a hash counts as one more, so that it is noticed.
    private static List<LogHash> Hashes(byte[] row) => [.. row.Chunk(LogHash.Size).Select(hash => hash.Length == LogHash.Size ? new LogHash(hash) : default)];

    private static Problem Read(LogFinding finding) => finding switch
    {
        LogFinding.LeafChanged changed => Of(IssueLogProblems.LeafChanged, changed.Index),
        LogFinding.NodeChanged changed => Of(IssueLogProblems.NodeChanged, changed.Node.CompletedBy, 1L << changed.Node.Level),
        LogFinding.NodesMissing missing => Of(IssueLogProblems.RowMissing, missing.Index),
        LogFinding.Truncated cut => Of(IssueLogProblems.Truncated, cut.Size, cut.Saved.Size),
        LogFinding.RootDiffers differs => Of(IssueLogProblems.RootDiffers, differs.Saved.Size),
        _ => throw new UnreachableException(),
    };

    private void Add(string code, params IReadOnlyList<long> numbers) => problems.Add(Of(code, numbers));

    private static Problem Of(string code, params IReadOnlyList<long> numbers) =>
        new(code, Place.Of("log"), [.. numbers.Select(number => number.ToString(CultureInfo.InvariantCulture))]);
}
