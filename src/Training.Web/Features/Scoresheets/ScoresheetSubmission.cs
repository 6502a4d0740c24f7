using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Scoresheets;

/// <summary>What becomes of a signed scoresheet: graded by the checklist that it was scored with, then kept with its result.</summary>
public static class ScoresheetSubmission
{
    /// <summary>Grades and keeps a sheet; the same one again changes nothing.</summary>
    /// <param name="records">Where to, and where the pass on the model is looked up.</param>
    /// <param name="course">The snapshot named by the sheet.</param>
    /// <param name="sheet">As signed.</param>
    /// <param name="zone">IANA zone of the site where it was scored.</param>
    /// <param name="now">UTC.</param>
    /// <param name="problems">Receives everything for which it is refused or disputed.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>The result, or null where a problem was found; then nothing was graded.</returns>
    public static async Task<ScoresheetResult?> SubmitAsync(
        this RecordsContext records, Course course, Scoresheet sheet, string zone, DateTimeOffset now, ICollection<Problem> problems,
        CancellationToken cancellation)
    {
        var lacking = new List<Problem>();
        SignatureCheck.Run(sheet, lacking);
        var graded = await records.GradeAsync(course, sheet, zone, lacking, cancellation);
        foreach (var problem in lacking) problems.Add(problem);
        if (lacking.Count > 0 || graded is not { } result) return null;
        var scoredOn = DecisionDay.On(sheet.SignedAt, TimeZoneInfo.FindSystemTimeZoneById(zone));
        var kept = await records.KeepAsync(sheet, result, scoredOn, zone, now, cancellation);
        return kept.IsKept(problems) ? result : null;
    }

    /// <summary>Grades a sheet and keeps nothing; null where it may not stand, and then <paramref name="problems"/> say why.</summary>
    public static async Task<ScoresheetResult?> GradeAsync(
        this RecordsContext records, Course course, Scoresheet sheet, string zone, ICollection<Problem> problems, CancellationToken cancellation)
    {
        var scoredOn = DecisionDay.On(sheet.SignedAt, TimeZoneInfo.FindSystemTimeZoneById(zone));
        var context = new ScoresheetContext(scoredOn, await records.FindModelPassAsync(sheet, cancellation));
        return ScoresheetGrader.Grade(course, sheet, context, problems);
    }

    private static async Task<ModelPass?> FindModelPassAsync(this RecordsContext records, Scoresheet sheet, CancellationToken cancellation)
    {
        if (sheet.Live is not { } live) return null;
        var stored = await records.FindScoresheetAsync(live.ModelPassId, cancellation);
        return stored is { Sheet.Subject: Subject.Model, Results: [.., { Result.Outcome: PracticalOutcome.Passed }] }
            ? new(stored.Sheet.Id, stored.Sheet.CandidateId, stored.Sheet.ChecklistId, stored.Sheet.SignedAt)
            : null;
    }
}
