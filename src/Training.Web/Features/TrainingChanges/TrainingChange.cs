using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.TrainingChanges;

/// <summary>One value that somebody learnt and that is no longer in force.</summary>
/// <param name="CourseId">Where they learnt it.</param>
/// <param name="CourseTitle">What the paper calls it.</param>
/// <param name="TrainedOn">Day of the passed quiz.</param>
/// <param name="Subject">What it is about.</param>
/// <param name="Was">The value that was taught, in words.</param>
/// <param name="Is">The value in force, in words.</param>
/// <param name="ChangedOn">First day of the new value.</param>
/// <param name="Source">Who says so now.</param>
public sealed record TrainingChange(
    string CourseId, string CourseTitle, DateOnly TrainedOn, string Subject, string Was, string Is, DateOnly ChangedOn, string Source);

/// <summary>Finds what changed since somebody was trained: a sitting keeps the text that it was drawn from, and that text its guidance.</summary>
public sealed class TrainingChangeReading(RecordsContext records, CourseShelf shelf, CoursesByHash courses)
{
    private const int MostSittings = 200;

    /// <summary>What the newest passed quiz of each course rests on and is no longer so; the youngest change first.</summary>
    public async Task<IReadOnlyList<TrainingChange>> OfAsync(Guid personId, DateOnly today, Language language, CancellationToken cancellation)
    {
        var changes = new List<TrainingChange>();
        foreach (var (courseId, hash, trainedOn) in await NewestPassesAsync(personId, cancellation))
        {
            if (await courses.FindAsync(records, courseId, hash, cancellation) is not { } course) continue;
            changes.AddRange(GuidanceChange.Since(course.Guidance, shelf.Guidance, today).Select(change => new TrainingChange(
                courseId, course.Scheme.Words[language].Title, trainedOn, shelf.Guidance.SubjectText(change.Is.Subject, language),
                TextOf(change.Was, language), TextOf(change.Is, language), change.ChangedOn, change.Is.Source)));
        }

        // Two courses may teach the same value; whoever passed both reads of its change once.
        return [.. changes.OrderByDescending(change => change.ChangedOn).DistinctBy(change => (change.Subject, change.Was, change.Is))];
    }

    private string TextOf(GuidanceEntry entry, Language language) => shelf.Guidance.Text(entry.Value, language) ?? entry.Id;

    private async Task<IEnumerable<(string CourseId, string Hash, DateOnly On)>> NewestPassesAsync(Guid personId, CancellationToken cancellation)
    {
        var passes = await (from sitting in records.CountingSittings()
                            where sitting.PersonId == personId
                            join result in records.SittingResults on sitting.Id equals result.SittingId
                            where result.IsPassed
                                && result.Number == records.SittingResults.Where(other => other.SittingId == sitting.Id).Max(other => other.Number)
                            join snapshot in records.CourseSnapshots on sitting.CourseHash equals snapshot.Hash
                            orderby sitting.TakenOn descending, sitting.SubmittedAt descending
                            select new { sitting.QuizId, snapshot.CourseId, sitting.CourseHash, sitting.TakenOn }).Take(MostSittings).ToListAsync(cancellation);
        return passes.DistinctBy(pass => pass.QuizId).Select(pass => (pass.CourseId, pass.CourseHash, pass.TakenOn));
    }
}
