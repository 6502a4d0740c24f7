using Microsoft.EntityFrameworkCore;
using Training.Scoring;

namespace Training.Records;

/// <summary>A sitting read back, so that it can be shown, explained and regraded.</summary>
/// <param name="Sitting">As submitted; answers in the order of the draw.</param>
/// <param name="TakenOn">The day in <paramref name="Zone"/>.</param>
/// <param name="Zone">IANA time zone.</param>
/// <param name="Copy">1 for the sitting that counts, more for a disputed copy.</param>
/// <param name="Results">In the order of grading; the last one is what new decisions read. Empty for a disputed copy.</param>
/// <param name="Reading">Who read it out.</param>
public sealed record StoredSitting(
    Sitting Sitting, DateOnly TakenOn, string Zone, int Copy, IReadOnlyList<StoredSittingResult> Results, ReadOut Reading);

/// <summary>One grading read back.</summary>
/// <param name="Id">Of the result.</param>
/// <param name="GradedAt">UTC.</param>
/// <param name="Result">What it found.</param>
/// <param name="CorrectionReason">Why it was graded again, in a lead's words; null for the first grading.</param>
public sealed record StoredSittingResult(Guid Id, DateTimeOffset GradedAt, SittingResult Result, string? CorrectionReason = null);

/// <summary>Reads sittings back.</summary>
public static class SittingQueries
{
    /// <summary>The sitting that counts under the form's id, or null.</summary>
    public static async Task<StoredSitting?> FindSittingAsync(this RecordsContext records, Guid formId, CancellationToken cancellation) =>
        await records.CopiesOfSittingAsync(formId, cancellation) is [var first, ..] ? first : null;

    /// <summary>All contents that came under the form's id: the one that counts first, then the disputed ones.</summary>
    public static Task<IReadOnlyList<StoredSitting>> CopiesOfSittingAsync(this RecordsContext records, Guid formId, CancellationToken cancellation) =>
        records.StoredAsync(
            records.Sittings.Where(sitting => sitting.FormId == formId).OrderBy(sitting => sitting.Copy).Take(Bounds.RowsOfOnePerson), cancellation);

    /// <summary>The sittings that count under these form ids, in the order of their keys.</summary>
    public static Task<IReadOnlyList<StoredSitting>> StoredSittingsAsync(
        this RecordsContext records, IReadOnlyCollection<Guid> formIds, CancellationToken cancellation) =>
        records.StoredAsync(
            records.Sittings.Where(sitting => formIds.Contains(sitting.FormId) && sitting.Copy == 1).OrderBy(sitting => sitting.Id), cancellation);

    private static async Task<IReadOnlyList<StoredSitting>> StoredAsync(
        this RecordsContext records, IQueryable<SittingRecord> sittings, CancellationToken cancellation)
    {
        var rows = await sittings.AsNoTracking().AsSplitQuery().Include(sitting => sitting.Questions).Include(sitting => sitting.Answers)
            .ToListAsync(cancellation);
        var (ids, formIds) = (rows.ConvertAll(row => row.Id), rows.Select(row => row.FormId).Distinct().ToList());
        var results = (await records.SittingResults.AsNoTracking().AsSplitQuery().Include(result => result.Topics).Include(result => result.Questions)
            .Include(result => result.Regrading)
            .Where(result => ids.Contains(result.SittingId)).OrderBy(result => result.Number).ToListAsync(cancellation)).ToLookup(result => result.SittingId);
        var corrections = results.SelectMany(group => group).Select(result => result.Regrading?.CorrectionId).OfType<Guid>().Distinct().ToList();
        var reasons = await records.KeyCorrections.Where(correction => corrections.Contains(correction.Id))
            .ToDictionaryAsync(correction => correction.Id, correction => correction.Reason, cancellation);
        var reading = await records.StartedSittings.Where(started => formIds.Contains(started.Id))
            .ToDictionaryAsync(started => started.Id, started => new ReadOut(started.Aid, started.ReadBy), cancellation);
        return rows.ConvertAll(row => new StoredSitting(
            SittingRows.Read(row), row.TakenOn, row.Zone, row.Copy,
            [.. results[row.Id].Select(result => new StoredSittingResult(
                result.Id, result.GradedAt, SittingRows.Read(result), result.Regrading is { } regrading ? reasons[regrading.CorrectionId] : null))],
            reading.GetValueOrDefault(row.FormId) ?? ReadOut.Nobody));
    }
}
