using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>Keeps corrections and what they lead to. Results are added, never changed.</summary>
public static class CorrectionKeeping
{
    /// <summary>Keeps a correction with the review that takes the text out of the draws, if there is one. The same form again changes nothing.</summary>
    /// <returns>False where it was kept before.</returns>
    public static Task<bool> KeepAsync(
        this RecordsContext records, KeyCorrectionRecord correction, QuestionReview? setAside, CancellationToken cancellation) =>
        setAside is null ? records.TryInsertAsync(cancellation, correction) : records.TryInsertAsync(cancellation, correction, setAside);

    /// <summary>
    /// Adds the result of grading a sitting again because of a correction, with the mails that tell of it: all of it or nothing.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="sittingId">The form's id of the sitting.</param>
    /// <param name="before">Number of the result that this one follows; where another came in between, nothing is written.</param>
    /// <param name="result">What it comes to now.</param>
    /// <param name="correctionId">Why it was graded again.</param>
    /// <param name="mails">To whom it is told.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>False where another got through first.</returns>
    public static async Task<bool> KeepRegradedAsync(
        this RecordsContext records, Guid sittingId, int before, SittingResult result, Guid correctionId, IReadOnlyList<OutgoingMail> mails,
        DateTimeOffset now, CancellationToken cancellation)
    {
        var rowId = await records.Sittings.Where(sitting => sitting.FormId == sittingId && sitting.Copy == 1)
            .Select(sitting => sitting.Id).SingleAsync(cancellation);
        var graded = SittingRows.Of(result, rowId, before + 1, now, correctionId);
        return await records.TryInsertAsync(cancellation, [graded, .. mails]);
    }

    /// <summary>Keeps what a lead concluded about a case; the same again changes nothing.</summary>
    /// <returns>Nothing, or why it is refused.</returns>
    public static async Task<IReadOnlyList<Problem>> ConcludeAsync(this RecordsContext records, CorrectionCaseRecord conclusion, CancellationToken cancellation)
    {
        var isOwn = await records.Decisions.AnyAsync(
            decision => decision.Id == conclusion.DecisionId && decision.PersonId == conclusion.LeadId, cancellation);
        if (isOwn) return [RecordsProblems.At("lead", RecordsProblems.OwnCase)];
        await records.TryInsertAsync(cancellation, conclusion);
        return [];
    }
}
