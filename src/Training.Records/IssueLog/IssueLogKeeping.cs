using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>Something that happened to a paper, for the log.</summary>
/// <param name="PaperId">Which.</param>
/// <param name="Entry">What the leaf commits to.</param>
internal sealed record LoggedEvent(Guid PaperId, IssueEntry Entry);

/// <summary>Appends to the log of what was issued, in the transaction of what it logs: nothing that counts can exist without its leaf.</summary>
public static class IssueLogKeeping
{
    /// <summary>Keeps a head that was signed; one of the same instant and size is there already.</summary>
    public static Task KeepAsync(this RecordsContext records, TreeHeadRecord head, CancellationToken cancellation) =>
        records.TryInsertAsync(cancellation, head);

    /// <summary>Inserts rows and the leaves about them, all or none. Who loses a race for the next leaf reads the edge again.</summary>
    /// <returns>False where a unique index of the rows refused; nothing was written then.</returns>
    internal static async Task<bool> TryInsertLoggedAsync(
        this RecordsContext records, IReadOnlyList<LoggedEvent> events, CancellationToken cancellation, params object[] rows)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var edge = await records.EdgeAsync(cancellation);
            var size = edge.Size;
            if (await records.TryInsertAsync(cancellation, [.. rows, .. events.SelectMany(one => Append(edge, one))])) return true;
            if (await records.LogSizeAsync(cancellation) == size) return false;
        }

        throw new InvalidOperationException($"The log was appended to {Bounds.Attempts} times meanwhile.");
    }

    /// <summary>What happens to a certification, as events of the papers that show it: of each period that is not over, else of the last.</summary>
    internal static async Task<IReadOnlyList<LoggedEvent>> EventsOfAsync(
        this RecordsContext records, Guid personId, string schemeId, IssueEvent what, DateOnly day, DateTimeOffset now, CancellationToken cancellation)
    {
        var papers = await (from period in records.Periods
                            where period.PersonId == personId && period.SchemeId == schemeId
                                && (period.ExpiresOn >= day || !records.Periods.Any(later =>
                                    later.PersonId == personId && later.SchemeId == schemeId && later.Number > period.Number))
                            join paper in records.Papers on period.DecisionId equals paper.DecisionId
                            where !records.Papers.Any(later => later.DecisionId == paper.DecisionId && later.Revision > paper.Revision)
                            join decision in records.Decisions on paper.DecisionId equals decision.Id
                            orderby period.Number
                            select new { Paper = paper, Period = period, decision.CourseHash }).AsNoTracking().ToListAsync(cancellation);
        return [.. papers.Select(one => EventOf(one.Paper, one.Period, one.CourseHash, what, now))];
    }

    /// <summary>An event of a paper.</summary>
    internal static LoggedEvent EventOf(PaperRecord paper, PeriodRecord period, string courseHash, IssueEvent what, DateTimeOffset now) =>
        new(paper.Id, new(paper.Serial, period.SchemeId, courseHash, period.StartsOn, period.ExpiresOn, what, now));

    private static object[] Append(MerkleFrontier edge, LoggedEvent logged)
    {
        var salt = RandomNumberGenerator.GetBytes(IssueEntry.SaltSize);
        var (index, leaf) = (edge.Size, logged.Entry.Leaf(salt));
        var completed = edge.Append(MerkleTree.HashLeaf(leaf));
        return
        [
            new LogLeafRecord { Index = index, Leaf = leaf, Hashes = [.. completed.SelectMany(hash => hash.ToArray())] },
            new LogOpeningRecord { LeafIndex = index, PaperId = logged.PaperId, Event = logged.Entry.Event, HappenedAt = logged.Entry.HappenedAt, Salt = salt },
        ];
    }
}
