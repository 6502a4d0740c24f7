using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>Keeps graded sittings. Nothing twice, nothing lost.</summary>
public static class SittingKeeping
{
    /// <summary>
    /// Keeps a submitted sitting with its first result, in one transaction. The same id and content again is answered with what is
    /// stored; other content under the same id is kept beside it as disputed, without a result.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="sitting">As submitted; every answer belongs to a drawn question, at most one each.</param>
    /// <param name="result">What grading it found.</param>
    /// <param name="takenOn">The day of the sitting in <paramref name="zone"/>.</param>
    /// <param name="zone">IANA time zone of the person's site that day.</param>
    /// <param name="now">When it is kept, UTC.</param>
    /// <param name="cancellation">Ends the wait; what was committed stays.</param>
    /// <exception cref="ArgumentException">Two answers to one question, or one to a question not drawn: it was never graded.</exception>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, Sitting sitting, SittingResult result, DateOnly takenOn, string zone, DateTimeOffset now,
        CancellationToken cancellation)
    {
        RequireGradable(sitting);
        var problems = new List<Problem>();
        await records.RequirePersonAsync(sitting.PersonId, "person", problems, cancellation);
        await records.RequireSnapshotAsync(sitting.Draw.CourseHash, problems, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);

        var hash = ContentHash.Of(sitting);
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var copies = await records.Sittings.Where(other => other.FormId == sitting.Id)
                .Select(other => new { other.Id, other.Copy, other.ContentHash }).ToListAsync(cancellation);
            var same = copies.Find(other => other.ContentHash == hash);
            if (same is { Copy: 1 }) return new Kept.AlreadyStored(await records.FirstResultAsync(same.Id, cancellation));
            if (same is not null) return Dispute(same.Id, sitting);

            var row = SittingRows.Of(sitting, hash, copies.Count + 1, takenOn, zone, now);
            if (row.Copy > 1)
            {
                if (await records.TryInsertAsync(cancellation, row)) return Dispute(row.Id, sitting);
                continue;
            }

            var graded = SittingRows.Of(result, row.Id, number: 1, now);
            if (await records.TryInsertAsync(cancellation, row, graded)) return new Kept.Stored(graded.Id);
        }

        throw new InvalidOperationException($"Sitting {sitting.Id} came with {Bounds.Attempts} contents at once.");
    }

    internal static async Task RequireSnapshotAsync(
        this RecordsContext records, string hash, List<Problem> problems, CancellationToken cancellation)
    {
        if (!await records.CourseSnapshots.AnyAsync(snapshot => snapshot.Hash == hash, cancellation))
            problems.Add(RecordsProblems.At("course", RecordsProblems.SnapshotUnknown, hash));
    }

    private static Task<Guid> FirstResultAsync(this RecordsContext records, Guid rowId, CancellationToken cancellation) =>
        records.SittingResults.Where(result => result.SittingId == rowId && result.Number == 1)
            .Select(result => result.Id).SingleAsync(cancellation);

    private static Kept.Disputed Dispute(Guid rowId, Sitting sitting) =>
        new(rowId, RecordsProblems.At("sitting", RecordsProblems.OtherContent, sitting.Id.ToString()));

    private static void RequireGradable(Sitting sitting)
    {
        var drawn = sitting.Draw.Questions.Select(question => question.QuestionId).ToHashSet(StringComparer.Ordinal);
        // Removing finds both faults: a question that was never there, and one that an earlier answer took.
        if (drawn.Count != sitting.Draw.Questions.Count || !sitting.Answers.All(answer => drawn.Remove(answer.QuestionId)))
            throw new ArgumentException("Each question is drawn once, and each answer is the only one to a drawn question.", nameof(sitting));
    }
}
