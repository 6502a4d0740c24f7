using Microsoft.EntityFrameworkCore;
using Training.Scoring;

namespace Training.Records;

/// <summary>A scoresheet read back, so that it can be shown and regraded.</summary>
/// <param name="Sheet">As signed.</param>
/// <param name="ScoredOn">The day in <paramref name="Zone"/>.</param>
/// <param name="Zone">IANA time zone.</param>
/// <param name="Copy">1 for the sheet that counts, more for a disputed one.</param>
/// <param name="Results">In the order of grading; the last one is what new decisions read. Empty for a disputed sheet.</param>
public sealed record StoredScoresheet(
    Scoresheet Sheet, DateOnly ScoredOn, string Zone, int Copy, IReadOnlyList<StoredScoresheetResult> Results);

/// <summary>One grading read back.</summary>
public sealed record StoredScoresheetResult(Guid Id, DateTimeOffset GradedAt, ScoresheetResult Result);

/// <summary>Reads scoresheets back.</summary>
public static class ScoresheetQueries
{
    /// <summary>The first sheet that came under the form's id, or null. It counts where its copy is 1.</summary>
    public static async Task<StoredScoresheet?> FindScoresheetAsync(this RecordsContext records, Guid formId, CancellationToken cancellation) =>
        await records.CopiesOfScoresheetAsync(formId, cancellation) is [var first, ..] ? first : null;

    /// <summary>All contents that came under the form's id, in the order of their copies.</summary>
    public static Task<IReadOnlyList<StoredScoresheet>> CopiesOfScoresheetAsync(
        this RecordsContext records, Guid formId, CancellationToken cancellation) =>
        records.StoredAsync(
            records.Scoresheets.Where(sheet => sheet.FormId == formId).OrderBy(sheet => sheet.Copy).Take(Bounds.RowsOfOnePerson), cancellation);

    /// <summary>The sheets that count under these form ids, in the order of their keys.</summary>
    public static Task<IReadOnlyList<StoredScoresheet>> StoredScoresheetsAsync(
        this RecordsContext records, IReadOnlyCollection<Guid> formIds, CancellationToken cancellation) =>
        records.StoredAsync(
            records.Scoresheets.Where(sheet => formIds.Contains(sheet.FormId) && sheet.Copy == 1).OrderBy(sheet => sheet.Id), cancellation);

    private static async Task<IReadOnlyList<StoredScoresheet>> StoredAsync(
        this RecordsContext records, IQueryable<ScoresheetRecord> sheets, CancellationToken cancellation)
    {
        var rows = await sheets.AsNoTracking().AsSplitQuery().Include(sheet => sheet.Observations).Include(sheet => sheet.UsedKit).Include(sheet => sheet.Live)
            .ToListAsync(cancellation);
        var ids = rows.ConvertAll(row => row.Id);
        var results = (await records.ScoresheetResults.AsNoTracking()
            .Where(result => ids.Contains(result.ScoresheetId)).OrderBy(result => result.Number).ToListAsync(cancellation)).ToLookup(result => result.ScoresheetId);
        var passes = rows.Where(row => row.Live is not null).Select(row => row.Live!.ModelPassId).ToList(); // filtered in the line itself
        var passForms = await records.Scoresheets.Where(pass => passes.Contains(pass.Id))
            .ToDictionaryAsync(pass => pass.Id, pass => pass.FormId, cancellation);
        return rows.ConvertAll(row => new StoredScoresheet(
            ScoresheetRows.Read(row, row.Live is { } live ? passForms[live.ModelPassId] : null), row.ScoredOn, row.Zone, row.Copy,
            [.. results[row.Id].Select(result => new StoredScoresheetResult(result.Id, result.GradedAt, ScoresheetRows.Read(result)))]));
    }
}
