using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>One piece of news about a review that somebody was not told yet.</summary>
/// <param name="Review">Which.</param>
/// <param name="SiteName">Where the event was; null where it belongs to no site.</param>
/// <param name="PersonId">Whom to tell.</param>
/// <param name="News">What.</param>
/// <param name="HasHold">It set a hold.</param>
/// <param name="Words">What was concluded; null while it is open.</param>
public sealed record UntoldReview(ReviewRecord Review, string? SiteName, Guid PersonId, ReviewNews News, bool HasHold, string? Words);

/// <summary>Reads and keeps what people were told about reviews and changed guidance.</summary>
public static class NoticeQueries
{
    // A round that finds more tells the rest ten minutes later.
    private const int MostOfARound = 500;

    /// <summary>Holds and their ends, from a day on, that whoever they are about was not told of. A hold that has ended is told of by its end alone.</summary>
    public static async Task<IReadOnlyList<UntoldReview>> UntoldHoldsAsync(this RecordsContext records, DateOnly since, CancellationToken cancellation)
    {
        var set = await (from hold in records.Holds
                         join review in records.Reviews on hold.ReviewId equals review.Id
                         where hold.StartsOn >= since && !records.ReviewConclusions.Any(end => end.ReviewId == hold.ReviewId)
                             && !records.ReviewNotices.Any(row => row.ReviewId == hold.ReviewId && row.PersonId == hold.PersonId && row.News == ReviewNews.HoldSet)
                         orderby review.KeptAt
                         select new { Review = review, hold.PersonId }).AsNoTracking().Take(MostOfARound).ToListAsync(cancellation);
        var ended = await (from hold in records.Holds
                           join review in records.Reviews on hold.ReviewId equals review.Id
                           join end in records.ReviewConclusions on hold.ReviewId equals end.ReviewId
                           where end.ConcludedOn >= since
                               && !records.ReviewNotices.Any(row => row.ReviewId == hold.ReviewId && row.PersonId == hold.PersonId && row.News == ReviewNews.HoldEnded)
                           orderby end.KeptAt
                           select new { Review = review, hold.PersonId, end.Words }).AsNoTracking().Take(MostOfARound).ToListAsync(cancellation);
        return
        [
            .. set.Select(row => new UntoldReview(row.Review, null, row.PersonId, ReviewNews.HoldSet, true, null)),
            .. ended.Select(row => new UntoldReview(row.Review, null, row.PersonId, ReviewNews.HoldEnded, true, row.Words)),
        ];
    }

    /// <summary>Open reviews that a lead was not told of, oldest first; those of themselves are another lead's.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="leadId">The lead.</param>
    /// <param name="overdueBefore">Reviews opened before this day are overdue, which is news of its own.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<UntoldReview>> UntoldReviewsAsync(
        this RecordsContext records, Guid leadId, DateOnly overdueBefore, CancellationToken cancellation)
    {
        var rows = await (from review in records.Reviews
                          where (review.PersonId == null || review.PersonId != leadId) && !records.ReviewConclusions.Any(end => end.ReviewId == review.Id)
                              && !records.ReviewNotices.Any(row => row.ReviewId == review.Id && row.PersonId == leadId
                                  && (row.News == ReviewNews.Overdue || (row.News == ReviewNews.Opened && review.OpenedOn >= overdueBefore)))
                          join site in records.Sites on review.SiteId equals site.Id into sites
                          from site in sites.DefaultIfEmpty()
                          orderby review.OpenedOn, review.KeptAt
                          select new { Review = review, SiteName = site == null ? null : site.Name, HasHold = records.Holds.Any(hold => hold.ReviewId == review.Id) })
            .AsNoTracking().Take(MostOfARound).ToListAsync(cancellation);
        return rows.ConvertAll(row => new UntoldReview(
            row.Review, row.SiteName, leadId, row.Review.OpenedOn < overdueBefore ? ReviewNews.Overdue : ReviewNews.Opened, row.HasHold, null));
    }

    /// <summary>Who holds something under a scheme on a day, passed its quiz last with one text of the course, and was not told of the changes of another day.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="schemeId">The scheme; its periods.</param>
    /// <param name="quizId">Its quiz.</param>
    /// <param name="courseHash">The text.</param>
    /// <param name="today">The day on which they hold it.</param>
    /// <param name="changedOn">First day of the new values.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<Guid>> UntoldOfGuidanceAsync(
        this RecordsContext records, string schemeId, string quizId, string courseHash, DateOnly today, DateOnly changedOn, CancellationToken cancellation)
    {
        var passed = records.CountingSittings().Where(sitting => sitting.QuizId == quizId && records.SittingResults.Any(result => result.SittingId == sitting.Id
            && result.IsPassed && result.Number == records.SittingResults.Where(other => other.SittingId == sitting.Id).Max(other => other.Number)));
        return await passed.Where(sitting => sitting.CourseHash == courseHash
                && !passed.Any(newer => newer.PersonId == sitting.PersonId && newer.TakenOn > sitting.TakenOn)
                && records.Periods.Any(period => period.PersonId == sitting.PersonId && period.SchemeId == schemeId && period.ExpiresOn >= today)
                && !records.GuidanceNotices.Any(row => row.PersonId == sitting.PersonId && row.ChangedOn == changedOn))
            .Select(sitting => sitting.PersonId).Distinct().OrderBy(id => id).Take(MostOfARound).ToListAsync(cancellation);
    }

    /// <summary>Keeps that somebody was told of reviews, with the one mail that says all of it. False where another server did before; nothing is written then.</summary>
    public static Task<bool> TryKeepAsync(
        this RecordsContext records, IEnumerable<ReviewNotice> notices, OutgoingMail? mail, CancellationToken cancellation) =>
        records.TryInsertAsync(cancellation, [.. mail is null ? [] : new object[] { mail }, .. notices]);

    /// <summary>Keeps that somebody was told of changed guidance. False where another server did before; nothing is written then.</summary>
    public static Task<bool> TryKeepAsync(this RecordsContext records, GuidanceNotice notice, OutgoingMail? mail, CancellationToken cancellation) =>
        mail is null ? records.TryInsertAsync(cancellation, notice) : records.TryInsertAsync(cancellation, mail, notice);
}
