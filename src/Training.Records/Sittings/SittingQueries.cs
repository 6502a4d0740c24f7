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
public sealed record StoredSittingResult(Guid Id, DateTimeOffset GradedAt, SittingResult Result);

/// <summary>Reads sittings back.</summary>
public static class SittingQueries
{
    /// <summary>The sitting that counts under the form's id, or null.</summary>
    public static async Task<StoredSitting?> FindSittingAsync(this RecordsContext records, Guid formId, CancellationToken cancellation) =>
        await records.CopiesOfSittingAsync(formId, cancellation) is [var first, ..] ? first : null;

    /// <summary>All contents that came under the form's id: the one that counts first, then the disputed ones.</summary>
    public static async Task<IReadOnlyList<StoredSitting>> CopiesOfSittingAsync(
        this RecordsContext records, Guid formId, CancellationToken cancellation)
    {
        var rows = await records.Sittings.AsNoTracking().AsSplitQuery().Include(sitting => sitting.Questions).Include(sitting => sitting.Answers)
            .Where(sitting => sitting.FormId == formId).OrderBy(sitting => sitting.Copy).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        var ids = rows.ConvertAll(row => row.Id);
        var results = await records.SittingResults.AsNoTracking().AsSplitQuery().Include(result => result.Topics).Include(result => result.Questions)
            .Where(result => ids.Contains(result.SittingId)).OrderBy(result => result.Number).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        var reading = await records.StartedSittings.Where(started => started.Id == formId)
            .Select(started => new ReadOut(started.Aid, started.ReadBy)).SingleOrDefaultAsync(cancellation) ?? ReadOut.Nobody;
        return rows.ConvertAll(row => new StoredSitting(SittingRows.Read(row), row.TakenOn, row.Zone, row.Copy,
            [.. results.Where(result => result.SittingId == row.Id)
                .Select(result => new StoredSittingResult(result.Id, result.GradedAt, SittingRows.Read(result)))], reading));
    }
}
