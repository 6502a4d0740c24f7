using Microsoft.EntityFrameworkCore;
using Training.Scoring;

namespace Training.Records;

/// <summary>A round with how far it is.</summary>
/// <param name="Round">The round.</param>
/// <param name="ClosedAt">UTC; null while it is open.</param>
/// <param name="SentBy">Instructors who sent their marks.</param>
public sealed record CalibrationProgress(CalibrationRound Round, DateTimeOffset? ClosedAt, IReadOnlyList<Guid> SentBy)
{
    /// <summary>Whether sheets are still taken, and nobody sees another's marks.</summary>
    public bool IsOpen => ClosedAt is null;
}

/// <summary>Reads rounds of calibration.</summary>
public static class CalibrationQueries
{
    private const int MostRounds = 200;

    /// <summary>Rounds, the newest first.</summary>
    public static Task<IReadOnlyList<CalibrationProgress>> CalibrationsAsync(this RecordsContext records, CancellationToken cancellation) =>
        records.ProgressAsync(records.CalibrationRounds.OrderByDescending(round => round.OpenedAt).Take(MostRounds), cancellation);

    /// <summary>One round, or null.</summary>
    public static async Task<CalibrationProgress?> FindCalibrationAsync(this RecordsContext records, Guid roundId, CancellationToken cancellation) =>
        await records.ProgressAsync(records.CalibrationRounds.Where(round => round.Id == roundId), cancellation) is [var found] ? found : null;

    /// <summary>What instructors marked in a round, by instructor. For open rounds nobody is shown this but their own.</summary>
    public static async Task<IReadOnlyList<PerformanceSheet>> CalibrationSheetsAsync(
        this RecordsContext records, Guid roundId, CancellationToken cancellation) =>
        [
            .. (await records.CalibrationSheets.AsNoTracking().Include(sheet => sheet.Marks).Where(sheet => sheet.RoundId == roundId)
                    .OrderBy(sheet => sheet.InstructorId).ToListAsync(cancellation))
                .Select(sheet => new PerformanceSheet(
                    sheet.InstructorId, sheet.Marks.ToDictionary(mark => mark.StepId, mark => mark.Observation, StringComparer.Ordinal), sheet.Outcome)),
        ];

    private static async Task<IReadOnlyList<CalibrationProgress>> ProgressAsync(
        this RecordsContext records, IQueryable<CalibrationRound> rounds, CancellationToken cancellation)
    {
        var rows = await rounds.AsNoTracking().ToListAsync(cancellation);
        var ids = rows.ConvertAll(round => round.Id);
        var ends = await records.CalibrationEnds.Where(end => ids.Contains(end.RoundId))
            .ToDictionaryAsync(end => end.RoundId, end => end.ClosedAt, cancellation);
        var sent = (await records.CalibrationSheets.Where(sheet => ids.Contains(sheet.RoundId))
            .Select(sheet => new { sheet.RoundId, sheet.InstructorId }).ToListAsync(cancellation)).ToLookup(sheet => sheet.RoundId, sheet => sheet.InstructorId);
        return rows.ConvertAll(round => new CalibrationProgress(
            round, ends.TryGetValue(round.Id, out var closedAt) ? closedAt : null, [.. sent[round.Id]]));
    }
}
