using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Keeps rounds of calibration and what instructors marked in them.</summary>
public static class CalibrationKeeping
{
    /// <summary>Opens a round; the same form again changes nothing.</summary>
    public static async Task OpenAsync(this RecordsContext records, CalibrationRound round, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, round);

    /// <summary>Closes a round; closed already, nothing changes.</summary>
    public static async Task CloseAsync(this RecordsContext records, CalibrationEnd end, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, end);

    /// <summary>Keeps an instructor's marks. The first sheet of an instructor stands; a repeat of it is answered as kept.</summary>
    /// <returns>Nothing, or why it is refused: the round is closed, or the instructor sent other marks before.</returns>
    public static async Task<IReadOnlyList<Problem>> KeepAsync(this RecordsContext records, CalibrationSheet sheet, CancellationToken cancellation)
    {
        var sent = await records.CalibrationSheets.Where(other => other.RoundId == sheet.RoundId && other.InstructorId == sheet.InstructorId)
            .Select(other => (Guid?)other.Id).SingleOrDefaultAsync(cancellation);
        if (sent == sheet.Id) return [];
        if (sent is not null) return [RecordsProblems.At("sheet", RecordsProblems.CalibratedAlready)];
        if (await records.CalibrationEnds.AnyAsync(end => end.RoundId == sheet.RoundId, cancellation))
            return [RecordsProblems.At("round", RecordsProblems.RoundClosed)];
        return await records.TryInsertAsync(cancellation, sheet) ? [] : [RecordsProblems.At("sheet", RecordsProblems.CalibratedAlready)];
    }
}
