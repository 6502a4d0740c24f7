using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Finds scoresheets that were started.</summary>
public static class StartedScoresheetQueries
{
    /// <summary>The instructor's own sheet with its marks, signed or not; null where it is not there or somebody else's.</summary>
    public static Task<StartedScoresheet?> FindStartedScoresheetAsync(
        this RecordsContext records, Guid instructorId, Guid sheetId, CancellationToken cancellation) =>
        records.StartedScoresheets.AsNoTracking().AsSplitQuery().Include(sheet => sheet.Observations).Include(sheet => sheet.UsedKit)
            .SingleOrDefaultAsync(sheet => sheet.Id == sheetId && sheet.InstructorId == instructorId, cancellation);

    /// <summary>
    /// What the instructor started and did not sign yet, newest first, with marks. A sheet without a mark that was started anew is left out:
    /// nothing was seen on it.
    /// </summary>
    public static async Task<IReadOnlyList<StartedScoresheet>> OpenScoresheetsOfAsync(
        this RecordsContext records, Guid instructorId, CancellationToken cancellation) =>
        await records.StartedScoresheets.AsNoTracking().Include(sheet => sheet.Observations)
            .Where(sheet => sheet.InstructorId == instructorId && !records.Scoresheets.Any(signed => signed.FormId == sheet.Id)
                && (sheet.Observations.Any() || sheet.StoppedAtStep != null || !records.StartedScoresheets.Any(later =>
                    later.InstructorId == instructorId && later.ClassId == sheet.ClassId && later.CandidateId == sheet.CandidateId
                    && later.StartedAt > sheet.StartedAt)))
            .OrderByDescending(sheet => sheet.StartedAt).ThenBy(sheet => sheet.Id).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);

    /// <summary>Whether any content was signed under the form's id.</summary>
    public static Task<bool> IsSignedAsync(this RecordsContext records, Guid sheetId, CancellationToken cancellation) =>
        records.Scoresheets.AnyAsync(signed => signed.FormId == sheetId, cancellation);
}
