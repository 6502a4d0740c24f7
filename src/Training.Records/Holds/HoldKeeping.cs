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

    private static Task<ReviewConclusionRecord?> FindConclusionAsync(this RecordsContext records, Guid reviewId, CancellationToken cancellation) =>
        records.ReviewConclusions.AsNoTracking().SingleOrDefaultAsync(row => row.ReviewId == reviewId, cancellation);

    private static Kept Repeat(ReviewConclusionRecord stored, ReviewConclusion conclusion) =>
        (stored.ConcludedOn, stored.LeadId, stored.Words) == (conclusion.On, conclusion.By, conclusion.Words)
            ? new Kept.AlreadyStored(stored.ReviewId)
            : new Kept.Refused([RecordsProblems.At("review", RecordsProblems.ReviewConcluded, Text(stored.ConcludedOn))]);

    private static string Text(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);
}
