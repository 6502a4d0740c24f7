using Microsoft.EntityFrameworkCore;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>A leaf about a paper, as its opening tells.</summary>
/// <param name="Index">Of the leaf.</param>
/// <param name="Entry">What it commits to.</param>
/// <param name="Salt">With which.</param>
public sealed record OpenedLeaf(long Index, IssueEntry Entry, ReadOnlyMemory<byte> Salt);

/// <summary>Reads the log of what was issued.</summary>
public static class IssueLogQueries
{
    /// <summary>How many leaves there are.</summary>
    public static async Task<long> LogSizeAsync(this RecordsContext records, CancellationToken cancellation) =>
        await records.LogLeaves.MaxAsync(leaf => (long?)leaf.Index, cancellation) + 1 ?? 0;

    /// <summary>The right edge of the log as it is.</summary>
    public static async Task<MerkleFrontier> EdgeAsync(this RecordsContext records, CancellationToken cancellation)
    {
        var size = await records.LogSizeAsync(cancellation);
        return MerkleFrontier.Read(size, await records.NodesAsync(MerkleTree.Peaks(size), cancellation));
    }

    /// <summary>The hashes of these subtrees: what proofs are made of.</summary>
    /// <exception cref="KeyNotFoundException">When one is asked for that was not among them, or that no leaf has completed.</exception>
    public static async Task<Func<LogNode, LogHash>> NodesAsync(this RecordsContext records, IReadOnlyList<LogNode> nodes, CancellationToken cancellation)
    {
        var leaves = nodes.Select(node => node.CompletedBy).Distinct().ToList();
        var rows = await records.LogLeaves.Where(leaf => leaves.Contains(leaf.Index)).ToDictionaryAsync(leaf => leaf.Index, leaf => leaf.Hashes, cancellation);
        return node => new(rows[node.CompletedBy].AsSpan(node.Offset, LogHash.Size));
    }

    /// <summary>Leaves in their order.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="from">Index of the first.</param>
    /// <param name="most">How many at most.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<LogLeafRecord>> LogLeavesAsync(this RecordsContext records, long from, int most, CancellationToken cancellation) =>
        await records.LogLeaves.AsNoTracking().Where(leaf => leaf.Index >= from).OrderBy(leaf => leaf.Index).Take(most).ToListAsync(cancellation);

    /// <summary>All leaves in their order, read as they are asked for.</summary>
    public static IAsyncEnumerable<LogLeafRecord> AllLogLeaves(this RecordsContext records) =>
        records.LogLeaves.AsNoTracking().OrderBy(leaf => leaf.Index).AsAsyncEnumerable();

    /// <summary>The leaves about the paper of a serial, oldest first; empty where it was issued before the log began, or its openings were erased.</summary>
    public static async Task<IReadOnlyList<OpenedLeaf>> OpenedLeavesAsync(this RecordsContext records, string serial, CancellationToken cancellation)
    {
        var key = KeyText.Of(serial);
        var rows = await records.Openings(records.Papers.Where(paper => paper.Serial == key)).OrderBy(row => row.Opening.LeafIndex)
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        return [.. rows.Select(row => row.Read())];
    }

    /// <summary>All leaves that can be opened, in their order, read as they are asked for: what the records say today that each is about.</summary>
    public static IAsyncEnumerable<(OpenedLeaf Opened, LogLeafRecord Stored)> AllOpenedLeaves(this RecordsContext records) =>
        (from row in records.Openings(records.Papers)
         join leaf in records.LogLeaves on row.Opening.LeafIndex equals leaf.Index
         orderby leaf.Index
         select new { Row = row, Leaf = leaf }).AsNoTracking().AsAsyncEnumerable().Select(both => (both.Row.Read(), both.Leaf));

    /// <summary>How many papers no leaf can be opened for: issued before the log began, or erased from it.</summary>
    public static Task<int> UnloggedPapersAsync(this RecordsContext records, CancellationToken cancellation) => records.Papers.CountAsync(
        paper => !records.LogOpenings.Any(opening => opening.PaperId == paper.Id && opening.Event == IssueEvent.Issued), cancellation);

    /// <summary>The newest signed head, or null where none was signed yet.</summary>
    public static Task<TreeHeadRecord?> FindNewestHeadAsync(this RecordsContext records, CancellationToken cancellation) =>
        records.TreeHeads.AsNoTracking().OrderByDescending(head => head.At).FirstOrDefaultAsync(cancellation);

    /// <summary>Signed heads, newest first.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="before">Signed before this instant; null from the newest on.</param>
    /// <param name="most">How many at most.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<TreeHeadRecord>> HeadsAsync(
        this RecordsContext records, DateTimeOffset? before, int most, CancellationToken cancellation) =>
        await records.TreeHeads.AsNoTracking().Where(head => before == null || head.At < before).OrderByDescending(head => head.At).Take(most).ToListAsync(cancellation);

    /// <summary>All signed heads by size, read as they are asked for.</summary>
    public static IAsyncEnumerable<TreeHeadRecord> AllHeads(this RecordsContext records) =>
        records.TreeHeads.AsNoTracking().OrderBy(head => head.Size).ThenBy(head => head.At).AsAsyncEnumerable();

    private static IQueryable<OpeningRow> Openings(this RecordsContext records, IQueryable<PaperRecord> papers) =>
        (from paper in papers
         join opening in records.LogOpenings on paper.Id equals opening.PaperId
         join period in records.Periods on paper.DecisionId equals period.DecisionId
         join decision in records.Decisions on paper.DecisionId equals decision.Id
         select new OpeningRow { Opening = opening, Paper = paper, Period = period, CourseHash = decision.CourseHash }).AsNoTracking();

    private sealed class OpeningRow
    {
        public required LogOpeningRecord Opening { get; init; }

        public required PaperRecord Paper { get; init; }

        public required PeriodRecord Period { get; init; }

        public required string CourseHash { get; init; }

        public OpenedLeaf Read() => new(
            Opening.LeafIndex, IssueLogKeeping.EventOf(Paper, Period, CourseHash, Opening.Event, Opening.HappenedAt).Entry, Opening.Salt);
    }
}
