using Microsoft.EntityFrameworkCore;
using Training.Scoring;

namespace Training.Records;

/// <summary>A certification that rests on a result which a correction turned into "not passed".</summary>
/// <param name="CorrectionId">Which correction.</param>
/// <param name="DecisionId">The decision.</param>
/// <param name="PersonId">Whose.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="DecidedOn">The day of the decision.</param>
/// <param name="ExpiresOn">Last day of its period.</param>
public sealed record CorrectionCase(Guid CorrectionId, Guid DecisionId, Guid PersonId, string SchemeId, DateOnly DecidedOn, DateOnly ExpiresOn);

/// <summary>A sitting that a correction graded again, with what it was before.</summary>
/// <param name="FormId">Of the sitting.</param>
/// <param name="PersonId">Whose.</param>
/// <param name="TakenOn">Its day.</param>
/// <param name="WasPassed">By the result before.</param>
/// <param name="Points">By the result before.</param>
/// <param name="MaxPoints">By the result before.</param>
/// <param name="IsPassed">Now.</param>
/// <param name="NewPoints">Now.</param>
/// <param name="NewMaxPoints">Now.</param>
public sealed record RegradedSitting(
    Guid FormId, Guid PersonId, DateOnly TakenOn, bool WasPassed, int Points, int MaxPoints, bool IsPassed, int NewPoints, int NewMaxPoints);

/// <summary>Reads corrections, what is left to be graded again, and the cases that they bring up.</summary>
public static class CorrectionQueries
{
    /// <summary>Most rows of a list.</summary>
    public const int Most = 500;

    /// <summary>Corrections of a course, the newest first.</summary>
    public static async Task<IReadOnlyList<KeyCorrectionRecord>> CorrectionsOfAsync(
        this RecordsContext records, string courseId, CancellationToken cancellation) =>
        await records.KeyCorrections.AsNoTracking().Where(correction => correction.CourseId == courseId)
            .OrderByDescending(correction => correction.MadeAt).ThenByDescending(correction => correction.Id).Take(Most).ToListAsync(cancellation);

    /// <summary>How many people's sittings that count drew this text of a question.</summary>
    public static Task<int> CountDrawnAsync(this RecordsContext records, string questionId, string version, CancellationToken cancellation) =>
        records.Drew(questionId, version).CountAsync(cancellation);

    /// <summary>Form ids of sittings that drew this text of a question, in the order of their keys, after one of them.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="questionId">Which question.</param>
    /// <param name="version">Which text.</param>
    /// <param name="after">Key of the last one that was read; empty for the first page.</param>
    /// <param name="count">At most so many.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<(Guid Key, Guid FormId)>> DrawnAfterAsync(
        this RecordsContext records, string questionId, string version, Guid after, int count, CancellationToken cancellation) =>
        [
            .. (await records.Drew(questionId, version).Where(sitting => sitting.Id.CompareTo(after) > 0)
                    .OrderBy(sitting => sitting.Id).Take(count).Select(sitting => new { sitting.Id, sitting.FormId }).ToListAsync(cancellation))
                .Select(row => (row.Id, row.FormId)),
        ];

    /// <summary>Form ids of sittings whose latest result does not follow the correction yet.</summary>
    public static async Task<IReadOnlyList<Guid>> NotYetRegradedAsync(
        this RecordsContext records, KeyCorrectionRecord correction, int count, CancellationToken cancellation) =>
        await records.NotYetRegraded(correction).OrderBy(sitting => sitting.Id).Take(count).Select(sitting => sitting.FormId).ToListAsync(cancellation);

    /// <summary>How many sittings do not follow the correction yet; none where a later correction of the same text replaced it.</summary>
    public static async Task<int> CountNotYetRegradedAsync(
        this RecordsContext records, KeyCorrectionRecord correction, CancellationToken cancellation) =>
        await records.IsCountingAsync(correction, cancellation) ? await records.NotYetRegraded(correction).CountAsync(cancellation) : 0;

    /// <summary>Whether the correction is the newest of its text, and so the one that grading follows.</summary>
    public static async Task<bool> IsCountingAsync(this RecordsContext records, KeyCorrectionRecord correction, CancellationToken cancellation) =>
        !await records.KeyCorrections.AnyAsync(
            other => other.CourseId == correction.CourseId && other.QuestionId == correction.QuestionId
                && other.QuestionVersion == correction.QuestionVersion && other.MadeAt > correction.MadeAt,
            cancellation);

    /// <summary>Sittings that a correction graded again, with the result before; the newest day first.</summary>
    public static async Task<IReadOnlyList<RegradedSitting>> RegradedAsync(
        this RecordsContext records, Guid correctionId, CancellationToken cancellation) =>
        await (from result in records.SittingResults
               where result.Regrading!.CorrectionId == correctionId
               join before in records.SittingResults on new { result.SittingId, Number = result.Number - 1 } equals new { before.SittingId, before.Number }
               join sitting in records.Sittings on result.SittingId equals sitting.Id
               where before.IsPassed != result.IsPassed || before.Points != result.Points || before.MaxPoints != result.MaxPoints
               orderby before.IsPassed != result.IsPassed descending, sitting.TakenOn descending, sitting.Id
               select new RegradedSitting(
                   sitting.FormId, sitting.PersonId, sitting.TakenOn, before.IsPassed, before.Points, before.MaxPoints, result.IsPassed, result.Points,
                   result.MaxPoints)).Take(Most).ToListAsync(cancellation);

    /// <summary>
    /// Certifications for a lead to look at: granted on a result that passed and, after a correction, does not; the period is not over, not
    /// withdrawn since, and nobody concluded the case. The oldest decision first.
    /// </summary>
    public static async Task<IReadOnlyList<CorrectionCase>> OpenCorrectionCasesAsync(
        this RecordsContext records, DateOnly today, CancellationToken cancellation) =>
        await (from result in records.SittingResults
               where result.Regrading != null && !result.IsPassed
               where !records.SittingResults.Any(later => later.SittingId == result.SittingId && later.Number > result.Number)
               join decided in records.SittingResults on result.SittingId equals decided.SittingId
               where decided.IsPassed
               join evidence in records.Set<DecisionEvidenceRecord>() on decided.Id equals evidence.SittingResultId
               join period in records.Periods on evidence.DecisionId equals period.DecisionId
               where period.ExpiresOn >= today
               where !records.Withdrawals.Any(withdrawal =>
                   withdrawal.PersonId == period.PersonId && withdrawal.SchemeId == period.SchemeId && withdrawal.WithdrawnOn >= period.StartsOn)
               where !records.CorrectionCases.Any(one => one.CorrectionId == result.Regrading!.CorrectionId && one.DecisionId == evidence.DecisionId)
               orderby period.DecidedOn, period.DecisionId
               select new CorrectionCase(
                   result.Regrading!.CorrectionId, period.DecisionId, period.PersonId, period.SchemeId, period.DecidedOn, period.ExpiresOn))
            .Take(Most).ToListAsync(cancellation);

    /// <summary>Who is told of a changed result: the person, and who represents an employer of theirs on that day.</summary>
    public static async Task<IReadOnlyList<Guid>> ToldOfResultAsync(
        this RecordsContext records, Guid personId, DateOnly today, CancellationToken cancellation)
    {
        var representatives = await (from employment in records.Employments
                                     where employment.PersonId == personId && employment.StartsOn <= today
                                         && (employment.EndsOn == null || employment.EndsOn >= today)
                                     join row in records.Representatives on employment.EmployerId equals row.EmployerId
                                     where row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today)
                                     select row.PersonId).Distinct().OrderBy(id => id).Take(Most).ToListAsync(cancellation);
        return [personId, .. representatives.Where(id => id != personId)];
    }

    private static IQueryable<SittingRecord> Drew(this RecordsContext records, string questionId, string version) =>
        records.Sittings.Where(sitting => sitting.Copy == 1
            && sitting.Questions.Any(question => question.QuestionId == questionId && question.QuestionVersion == version));

    // Told by the marks themselves: whatever happened in between, a sitting that does not follow the correction is found.
    private static IQueryable<SittingRecord> NotYetRegraded(this RecordsContext records, KeyCorrectionRecord correction)
    {
        var drew = records.Drew(correction.QuestionId, correction.QuestionVersion);
        return correction.Remedy switch
        {
            CorrectionRemedy.LeaveOut => drew.Where(sitting => records.SittingResults.Any(result => result.SittingId == sitting.Id
                && !records.SittingResults.Any(later => later.SittingId == sitting.Id && later.Number > result.Number)
                && result.Questions.Any(marked => marked.QuestionId == correction.QuestionId && marked.Mark != Mark.LeftOut))),
            CorrectionRemedy.OtherKey => drew.Where(sitting => records.SittingResults.Any(result => result.SittingId == sitting.Id
                && !records.SittingResults.Any(later => later.SittingId == sitting.Id && later.Number > result.Number)
                && result.Questions.Any(marked => marked.QuestionId == correction.QuestionId && marked.QuestionVersion != correction.ByVersion))),
        };
    }
}
