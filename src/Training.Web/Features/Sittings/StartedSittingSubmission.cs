using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Corrections;
using Training.Web.Features.Decisions;

namespace Training.Web.Features.Sittings;

/// <summary>Submits a started sitting: its answers as they are kept, graded once, with the certificate that it earns.</summary>
public sealed class StartedSittingSubmission(RuleDecisions decisions, CorrectionReading corrections)
{
    /// <summary>
    /// In one transaction, so that a failure at any moment leaves either all of it or every answer. Submitting again changes nothing
    /// and answers the same.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="course">The snapshot that the draw comes from.</param>
    /// <param name="personId">Who submits.</param>
    /// <param name="sittingId">Which sitting.</param>
    /// <param name="zone">IANA zone of the person's site now, for a decision; the sitting keeps that of its start.</param>
    /// <param name="now">UTC.</param>
    /// <param name="problems">Receives everything for which it is refused.</param>
    /// <param name="cancellation">Ends the wait; what was committed stays.</param>
    /// <returns>The result, or null: where <paramref name="problems"/> is empty, the person has no such sitting.</returns>
    public async Task<SittingResult?> SubmitAsync(
        RecordsContext records, Course course, Guid personId, Guid sittingId, string zone, DateTimeOffset now, ICollection<Problem> problems,
        CancellationToken cancellation)
    {
        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        var held = await records.HoldStartedSittingAsync(personId, sittingId, cancellation);
        if (held is null) return null;
        var corrected = await corrections.ReadAsync(records, course.Id, cancellation);
        var result = await records.SubmitAsync(course, held.SubmittedAt(now), corrected, held.Zone, now, problems, cancellation);
        if (result is null) return null;
        if (result.IsPassed && !held.IsSubmitted) await decisions.DecideAsync(records, personId, held.Draw.QuizId, zone, now, cancellation);
        await transaction.CommitAsync(cancellation);
        return result;
    }
}
