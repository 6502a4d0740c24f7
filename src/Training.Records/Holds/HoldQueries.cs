using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>Reads holds.</summary>
public static class HoldQueries
{
    /// <summary>Most holds that are read at once; the newest.</summary>
    private const int MostHolds = 20_000;

    /// <summary>The holds of these people, past ones included, by person and first day: one query, however many people they are.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="people">A query of the same context: whom the visitor may see.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<IReadOnlyList<Hold>> HoldsOfAsync(this RecordsContext records, IQueryable<Guid> people, CancellationToken cancellation) =>
        records.ReadAsync(records.Holds.Where(hold => people.Contains(hold.PersonId)), cancellation);

    /// <summary>The holds of one person, past ones included, by first day.</summary>
    public static Task<IReadOnlyList<Hold>> HoldsOfAsync(this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        records.ReadAsync(records.Holds.Where(hold => hold.PersonId == personId), cancellation);

    private static async Task<IReadOnlyList<Hold>> ReadAsync(
        this RecordsContext records, IQueryable<HoldRecord> holds, CancellationToken cancellation)
    {
        var rows = await (from hold in holds
                          join review in records.Reviews on hold.ReviewId equals review.Id
                          join end in records.ReviewConclusions on hold.ReviewId equals end.ReviewId into ends
                          from end in ends.DefaultIfEmpty()
                          orderby hold.StartsOn descending, hold.ReviewId
                          select new { Hold = hold, review.Cause, review.EventId, End = end })
            .AsNoTracking().Take(MostHolds).ToListAsync(cancellation);
        return [.. rows.OrderBy(row => row.Hold.PersonId).ThenBy(row => row.Hold.StartsOn).ThenBy(row => row.Hold.ReviewId)
            .Select(row => new Hold(
                row.Hold.ReviewId, row.Hold.PersonId, row.Hold.StartsOn, row.Cause, row.EventId,
                row.End is null ? null : new ReviewConclusion(row.End.ConcludedOn, row.End.LeadId, row.End.Words)))];
    }
}
