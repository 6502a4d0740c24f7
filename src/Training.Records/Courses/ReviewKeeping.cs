using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>Keeps which courses are used and which questions were accepted, and reads both.</summary>
public static class ReviewKeeping
{
    /// <summary>Keeps a choice of courses; the same form again changes nothing.</summary>
    public static async Task KeepAsync(this RecordsContext records, CourseChoice choice, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, choice);

    /// <summary>The choice that serves, or null where none was made.</summary>
    public static Task<CourseChoice?> FindCourseChoiceAsync(this RecordsContext records, CancellationToken cancellation) =>
        records.CourseChoices.AsNoTracking().OrderByDescending(row => row.SinceAt).ThenByDescending(row => row.Id).FirstOrDefaultAsync(cancellation);

    /// <summary>Keeps the reviews of one form; of the same form again, only those of questions that it had not judged before.</summary>
    public static async Task KeepAsync(this RecordsContext records, IReadOnlyList<QuestionReview> reviews, CancellationToken cancellation)
    {
        if (reviews.Count == 0) return;
        var (formId, courseId) = (reviews[0].FormId, reviews[0].CourseId);
        var known = await records.QuestionReviews.Where(review => review.FormId == formId && review.CourseId == courseId)
            .Select(review => review.QuestionId).ToListAsync(cancellation);
        // A copy of the form that comes at this very moment writes the same rows: the key refuses the second, and nothing is missing.
        await records.TryInsertAsync(cancellation, [.. reviews.Where(review => !known.Contains(review.QuestionId))]);
    }

    /// <summary>The newest review of each question as it reads now, by its id; questions that nobody read in this version are not there.</summary>
    public static async Task<IReadOnlyDictionary<string, QuestionReview>> ReviewsOfAsync(
        this RecordsContext records, Course course, CancellationToken cancellation)
    {
        var versions = course.Questions.ToDictionary(question => question.Id, question => question.Version, StringComparer.Ordinal);
        var newest = new Dictionary<string, QuestionReview>(StringComparer.Ordinal);
        var reviews = records.QuestionReviews.AsNoTracking().Where(review => review.CourseId == course.Id)
            .OrderBy(review => review.ReviewedAt).ThenBy(review => review.FormId);
        await foreach (var review in reviews.AsAsyncEnumerable().WithCancellation(cancellation))
        {
            if (versions.GetValueOrDefault(review.QuestionId) == review.QuestionVersion) newest[review.QuestionId] = review;
        }

        return newest;
    }

    /// <summary>The course with those questions in its pool that may be drawn: accepted as they read now.</summary>
    public static async Task<Course> AskedAsync(this RecordsContext records, Course course, CancellationToken cancellation) =>
        course.Asking(await records.ReviewsOfAsync(course, cancellation));

    /// <summary>The same where the reviews were read already, as <see cref="ReviewsOfAsync"/> gives them.</summary>
    public static Course Asking(this Course course, IReadOnlyDictionary<string, QuestionReview> reviews) =>
        course.Asking(reviews.Values.Where(review => review.Outcome == ReviewOutcome.Accepted).Select(review => review.QuestionId).ToHashSet(StringComparer.Ordinal));
}
