using Microsoft.EntityFrameworkCore;
using Training.Scoring;

namespace Training.Records;

/// <summary>Reads practicals as the statistics of scorers need them.</summary>
public static class PerformanceQueries
{
    /// <summary>Most performances that are looked at; the newest.</summary>
    public const int Most = 5000;

    /// <summary>
    /// Practicals at a checklist on the model or live, each with the sheets of everybody who scored the same try, and closed rounds of
    /// calibration. The newest first; disputed copies and what an appeal set aside are left out.
    /// </summary>
    public static async Task<IReadOnlyList<ScoredPerformance>> PerformancesAsync(
        this RecordsContext records, string checklistId, CancellationToken cancellation)
    {
        var rows = await (from sheet in records.CountingScoresheets()
                          where sheet.ChecklistId == checklistId
                          join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                          where !records.ScoresheetResults.Any(later => later.ScoresheetId == sheet.Id && later.Number > result.Number)
                          orderby sheet.ScoredOn descending, sheet.Id
                          select new
                          {
                              sheet.Id, sheet.ClassId, sheet.CandidateId, sheet.Subject, sheet.Try, sheet.InstructorId, sheet.ScoredOn, result.Outcome,
                          }).Take(Most).ToListAsync(cancellation);
        var oldest = rows.Count == 0 ? DateOnly.MaxValue : rows[^1].ScoredOn;
        var marks = (await (from sheet in records.Scoresheets
                            where sheet.ChecklistId == checklistId && sheet.Copy == 1 && sheet.ScoredOn >= oldest
                            from seen in sheet.Observations
                            select new { seen.ScoresheetId, seen.StepId, seen.Observation }).ToListAsync(cancellation))
            .ToLookup(seen => seen.ScoresheetId);
        var performances = rows.GroupBy(row => new { row.ClassId, row.CandidateId, row.Subject, row.Try }).Select(one => new ScoredPerformance(
            one.First().Id,
            one.First().ScoredOn,
            [
                .. one.DistinctBy(row => row.InstructorId).Select(row => new PerformanceSheet(
                    row.InstructorId, marks[row.Id].ToDictionary(seen => seen.StepId, seen => seen.Observation, StringComparer.Ordinal), row.Outcome)),
            ]));
        return [.. performances.Concat(await records.CalibratedAsync(checklistId, cancellation)).OrderByDescending(one => one.On).Take(Most)];
    }

    private static async Task<IReadOnlyList<ScoredPerformance>> CalibratedAsync(
        this RecordsContext records, string checklistId, CancellationToken cancellation)
    {
        var closed = await (from round in records.CalibrationRounds
                            where round.ChecklistId == checklistId
                            join end in records.CalibrationEnds on round.Id equals end.RoundId
                            orderby end.ClosedAt descending
                            select new { round.Id, round.OpenedAt }).Take(Most).ToListAsync(cancellation);
        var performances = new List<ScoredPerformance>();
        foreach (var round in closed)
        {
            performances.Add(new(
                round.Id, DateOnly.FromDateTime(round.OpenedAt.UtcDateTime), await records.CalibrationSheetsAsync(round.Id, cancellation)));
        }

        return performances;
    }
}
