using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>Reads holds.</summary>
public static class HoldQueries
{
    /// <summary>Most holds that are read at once; the newest.</summary>
    private const int MostHolds = 20_000;

    private const int MostReviews = 1000;

    /// <summary>The holds of these people, past ones included, by person and first day: one query, however many people they are.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="people">A query of the same context: whom the visitor may see.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<IReadOnlyList<Hold>> HoldsOfAsync(this RecordsContext records, IQueryable<Guid> people, CancellationToken cancellation) =>
        records.ReadAsync(records.Holds.Where(hold => people.Contains(hold.PersonId)), cancellation);

    /// <summary>The holds of one person, past ones included, by first day.</summary>
    public static Task<IReadOnlyList<Hold>> HoldsOfAsync(this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        records.ReadAsync(records.Holds.Where(hold => hold.PersonId == personId), cancellation);

    /// <summary>Reviews that no lead has concluded, oldest first.</summary>
    public static async Task<IReadOnlyList<OpenReview>> OpenReviewsAsync(this RecordsContext records, CancellationToken cancellation) =>
        await (from review in records.Reviews
               where !records.ReviewConclusions.Any(end => end.ReviewId == review.Id)
               join site in records.Sites on review.SiteId equals site.Id into sites
               from site in sites.DefaultIfEmpty()
               orderby review.OpenedOn, review.KeptAt, review.Id
               select new OpenReview(review, site == null ? null : site.Name, records.Holds.Any(hold => hold.ReviewId == review.Id)))
            .AsNoTracking().Take(MostReviews).ToListAsync(cancellation);

    /// <summary>The last reviews that were concluded, newest first.</summary>
    public static async Task<IReadOnlyList<ConcludedReview>> ConcludedReviewsAsync(this RecordsContext records, int most, CancellationToken cancellation) =>
        await (from end in records.ReviewConclusions
               join review in records.Reviews on end.ReviewId equals review.Id
               join site in records.Sites on review.SiteId equals site.Id into sites
               from site in sites.DefaultIfEmpty()
               orderby end.KeptAt descending, end.ReviewId
               select new ConcludedReview(review, site == null ? null : site.Name, end))
            .AsNoTracking().Take(most).ToListAsync(cancellation);

    /// <summary>One review with the event that it was opened after, or null.</summary>
    public static async Task<ReviewCase?> FindReviewAsync(this RecordsContext records, Guid id, CancellationToken cancellation)
    {
        if (await records.Reviews.AsNoTracking().SingleOrDefaultAsync(row => row.Id == id, cancellation) is not { } review) return null;
        return new(
            review,
            await records.Sites.Where(site => site.Id == review.SiteId).Select(site => site.Name).SingleOrDefaultAsync(cancellation),
            await records.Holds.AnyAsync(hold => hold.ReviewId == id, cancellation),
            await records.ReviewConclusions.AsNoTracking().SingleOrDefaultAsync(end => end.ReviewId == id, cancellation),
            await records.Encounters.AsNoTracking().SingleOrDefaultAsync(row => row.Id == review.EventId, cancellation),
            await records.EnteredEvents.AsNoTracking().SingleOrDefaultAsync(row => row.Id == review.EventId, cancellation),
            await records.CapabilityReports.AsNoTracking().SingleOrDefaultAsync(row => row.Id == review.EventId, cancellation));
    }

    /// <summary>
    /// Who is a current handler of a site on a day, with their names: they work there, and something that they hold under one of these
    /// schemes is current or renewal due. Holds are not asked: somebody on hold is held for another event too.
    /// </summary>
    public static async Task<IReadOnlyList<(Guid PersonId, string Name)>> HandlersAtAsync(
        this RecordsContext records, Guid siteId, DateOnly day, IReadOnlySet<string> certifications, CancellationToken cancellation)
    {
        var people = records.SiteAssignments.Where(row => row.SiteId == siteId && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day))
            .Select(row => row.PersonId);
        var handlers = (await records.HeldCertificationsAsync(people, cancellation))
            .Where(held => certifications.Contains(held.SchemeId) && Standings.On(held, day) is Standing.Current or Standing.RenewalDue)
            .Select(held => held.PersonId).ToHashSet();
        return [.. (await records.PeopleAtAsync(siteId, day, cancellation)).Where(person => handlers.Contains(person.PersonId))];
    }

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

/// <summary>A review that no lead has concluded.</summary>
/// <param name="Review">Which.</param>
/// <param name="SiteName">Where the event was; null where it belongs to no site.</param>
/// <param name="HasHold">Somebody does not handle until then.</param>
public sealed record OpenReview(ReviewRecord Review, string? SiteName, bool HasHold);

/// <summary>A review with its end.</summary>
/// <param name="Review">Which.</param>
/// <param name="SiteName">Where the event was; null where it belongs to no site.</param>
/// <param name="Conclusion">What a lead concluded.</param>
public sealed record ConcludedReview(ReviewRecord Review, string? SiteName, ReviewConclusionRecord Conclusion);

/// <summary>A review with what it was opened after: one of the three.</summary>
/// <param name="Review">Which.</param>
/// <param name="SiteName">Where the event was; null where it belongs to no site.</param>
/// <param name="HasHold">It set a hold.</param>
/// <param name="Conclusion">Its end, or null.</param>
/// <param name="Encounter">The encounter, or null.</param>
/// <param name="Entry">What a lead entered, or null.</param>
/// <param name="Report">What the person reported about themselves, or null.</param>
public sealed record ReviewCase(
    ReviewRecord Review, string? SiteName, bool HasHold, ReviewConclusionRecord? Conclusion, EncounterRecord? Encounter, EnteredEvent? Entry, CapabilityReport? Report);
