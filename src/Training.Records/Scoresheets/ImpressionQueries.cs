using Microsoft.EntityFrameworkCore;
using Training.Scoring;

namespace Training.Records;

/// <summary>What an instructor thought of a practical as a whole, beside its points.</summary>
/// <param name="InstructorId">Who.</param>
/// <param name="Percent">Points in percent of the most that there are.</param>
/// <param name="Impression">Given before the points were shown.</param>
public sealed record SheetImpression(Guid InstructorId, double Percent, Impression Impression);

/// <summary>Reads impressions for a cut.</summary>
public static class ImpressionQueries
{
    /// <summary>Impressions of practicals that were seen whole, on one text of a checklist, of sheets that count; the newest, at most so many.</summary>
    public static async Task<IReadOnlyList<SheetImpression>> ImpressionsAsync(
        this RecordsContext records, string checklistId, string version, CancellationToken cancellation) =>
        [
            .. (await (from sheet in records.CountingScoresheets()
                       where sheet.ChecklistId == checklistId && sheet.ChecklistVersion == version && sheet.Impression != null
                       join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                       where !records.ScoresheetResults.Any(later => later.ScoresheetId == sheet.Id && later.Number > result.Number) && result.MaxPoints > 0
                       orderby sheet.ScoredOn descending, sheet.Id
                       select new { sheet.InstructorId, result.Points, result.MaxPoints, sheet.Impression })
                    .Take(PerformanceQueries.Most).ToListAsync(cancellation))
                .Select(row => new SheetImpression(row.InstructorId, 100.0 * row.Points / row.MaxPoints, row.Impression!.Value)), // not null: asked for above
        ];
}
