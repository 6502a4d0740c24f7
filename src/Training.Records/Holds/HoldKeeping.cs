using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>Keeps reviews, the holds that they set, and their conclusions.</summary>
public static class HoldKeeping
{
    /// <summary>Ends a review, and with it the hold that it set. The same again is answered with what is stored; other words are refused.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="reviewId">Which.</param>
    /// <param name="conclusion">On which day, by which lead, in which words.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> ConcludeReviewAsync(
        this RecordsContext records, Guid reviewId, ReviewConclusion conclusion, DateTimeOffset now, CancellationToken cancellation)
    {
        var review = await records.Reviews.AsNoTracking().SingleOrDefaultAsync(row => row.Id == reviewId, cancellation);
        if (review is null) return new Kept.Refused([RecordsProblems.At("review", RecordsProblems.ReviewUnknown)]);
        if (await records.FindConclusionAsync(reviewId, cancellation) is { } stored) return Repeat(stored, conclusion);

        var problems = new List<Problem>();
        if (review.PersonId == conclusion.By) problems.Add(RecordsProblems.At("lead", RecordsProblems.LeadAboutOneself));
        await records.RequireAppointedAsync(conclusion.By, AppointedRole.ProgrammeLead, conclusion.On, problems, cancellation);
        if (conclusion.On < review.OpenedOn) problems.Add(RecordsProblems.At("review", RecordsProblems.BeforeReview, Text(review.OpenedOn)));
        if (problems.Count > 0) return new Kept.Refused(problems);

        var added = new ReviewConclusionRecord
        {
            ReviewId = reviewId, LeadId = conclusion.By, ConcludedOn = conclusion.On, Words = conclusion.Words, KeptAt = now,
        };
        if (await records.TryInsertAsync(cancellation, added)) return new Kept.Stored(reviewId);
        return await records.FindConclusionAsync(reviewId, cancellation) is { } first
            ? Repeat(first, conclusion)
            : throw new InvalidOperationException($"The conclusion of review {reviewId} was refused although there is none.");
    }

    /// <summary>
    /// Keeps what a lead entered about the handlers of a site, with a review and a hold of each who is named. The same id again with the same
    /// words is the same entry; it opens nothing a second time.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="entry">What happened, at which site.</param>
    /// <param name="people">Who does not handle until reviewed: current handlers of the site without training on it.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<Kept> KeepAsync(
        this RecordsContext records, EnteredEvent entry, IEnumerable<Guid> people, CancellationToken cancellation) =>
        records.KeepEntryAsync(
            entry,
            [.. people.Distinct().SelectMany(person => ReviewRecord.OfPerson(entry.Cause, entry.Id, person, entry.SiteId, entry.EnteredOn, entry.KeptAt).WithHold())],
            cancellation);

    /// <summary>Keeps what a lead entered about a person, with a review of them, and a hold where the lead says so. The same again is the same entry.</summary>
    /// <exception cref="ArgumentException">The entry is about a site alone.</exception>
    public static Task<Kept> KeepAsync(this RecordsContext records, EnteredEvent entry, ReviewWeight weight, CancellationToken cancellation)
    {
        var personId = entry.PersonId ?? throw new ArgumentException("It is about nobody.", nameof(entry));
        var review = ReviewRecord.OfPerson(entry.Cause, entry.Id, personId, entry.SiteId, entry.EnteredOn, entry.KeptAt);
        return records.KeepEntryAsync(entry, weight == ReviewWeight.Hold ? review.WithHold() : [review], cancellation);
    }

    /// <summary>Keeps what somebody reported about themselves, with a review of them; it sets no hold. The same again is the same report.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="report">What they said.</param>
    /// <param name="siteId">Where they work; null where nowhere.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> KeepAsync(this RecordsContext records, CapabilityReport report, Guid? siteId, CancellationToken cancellation)
    {
        var review = ReviewRecord.OfPerson(ReviewCause.ReportedCapability, report.Id, report.PersonId, siteId, report.ReportedOn, report.KeptAt);
        if (await records.TryInsertAsync(cancellation, report, review)) return new Kept.Stored(report.Id);
        var there = await records.CapabilityReports.AsNoTracking().SingleAsync(row => row.Id == report.Id, cancellation);
        return (there.PersonId, there.Matter, there.Words) == (report.PersonId, report.Matter, report.Words)
            ? new Kept.AlreadyStored(report.Id)
            : new Kept.Refused([RecordsProblems.At("report", RecordsProblems.OtherContent, report.Id.ToString())]);
    }

    /// <summary>The rows of a review of a person that sets a hold from its first day on: the review and the hold.</summary>
    /// <exception cref="ArgumentException">The review is about a site: only a person is put on hold.</exception>
    public static object[] WithHold(this ReviewRecord review) =>
    [
        review,
        new HoldRecord
        {
            ReviewId = review.Id, StartsOn = review.OpenedOn,
            PersonId = review.PersonId ?? throw new ArgumentException("Only a person is put on hold.", nameof(review)),
        },
    ];

    private static async Task<Kept> KeepEntryAsync(this RecordsContext records, EnteredEvent entry, object[] opens, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, [entry, .. opens])) return new Kept.Stored(entry.Id);
        var there = await records.EnteredEvents.AsNoTracking().SingleAsync(row => row.Id == entry.Id, cancellation);
        return (there.Cause, there.SiteId, there.PersonId, there.Words, there.LeadId) == (entry.Cause, entry.SiteId, entry.PersonId, entry.Words, entry.LeadId)
            ? new Kept.AlreadyStored(entry.Id)
            : new Kept.Refused([RecordsProblems.At("event", RecordsProblems.OtherContent, entry.Id.ToString())]);
    }

    private static Task<ReviewConclusionRecord?> FindConclusionAsync(this RecordsContext records, Guid reviewId, CancellationToken cancellation) =>
        records.ReviewConclusions.AsNoTracking().SingleOrDefaultAsync(row => row.ReviewId == reviewId, cancellation);

    private static Kept Repeat(ReviewConclusionRecord stored, ReviewConclusion conclusion) =>
        (stored.ConcludedOn, stored.LeadId, stored.Words) == (conclusion.On, conclusion.By, conclusion.Words)
            ? new Kept.AlreadyStored(stored.ReviewId)
            : new Kept.Refused([RecordsProblems.At("review", RecordsProblems.ReviewConcluded, Text(stored.ConcludedOn))]);

    private static string Text(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);
}

/// <summary>Whether handling waits for a review.</summary>
public enum ReviewWeight
{
    /// <summary>Somebody looks; handling goes on.</summary>
    ReviewOnly,

    /// <summary>Nothing is handled until somebody has looked.</summary>
    Hold,
}
