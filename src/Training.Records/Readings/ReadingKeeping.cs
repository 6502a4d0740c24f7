using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>A part of a course that the person has read.</summary>
/// <param name="ModuleId">Which part.</param>
/// <param name="LastReadAt">UTC; of the latest text that was read.</param>
public sealed record ReadModule(string ModuleId, DateTimeOffset LastReadAt);

/// <summary>Keeps and reads what people have read.</summary>
public static class ReadingKeeping
{
    /// <summary>Keeps a reading; the same part of the same text again changes nothing.</summary>
    public static async Task KeepAsync(this RecordsContext records, ModuleReading reading, CancellationToken cancellation)
    {
        var isThere = await records.ModuleReadings.AnyAsync(
            other => other.PersonId == reading.PersonId && other.CourseHash == reading.CourseHash && other.ModuleId == reading.ModuleId,
            cancellation);
        // Where somebody else was faster, what they wrote says the same.
        if (!isThere) await records.TryInsertAsync(cancellation, reading);
    }

    /// <summary>The parts that the person has read of any text of the course: a mended question sends nobody back to the first page.</summary>
    public static async Task<IReadOnlyList<ReadModule>> ReadModulesAsync(
        this RecordsContext records, Guid personId, string courseId, CancellationToken cancellation) =>
        await records.ModuleReadings.Where(reading => reading.PersonId == personId && reading.CourseId == courseId)
            .GroupBy(reading => reading.ModuleId)
            .OrderBy(readings => readings.Key)
            .Select(readings => new ReadModule(readings.Key, readings.Max(reading => reading.ReadAt)))
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);

    /// <summary>How many parts the person has read, by course.</summary>
    public static async Task<IReadOnlyDictionary<string, int>> ReadModuleCountsAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        await records.ModuleReadings.Where(reading => reading.PersonId == personId)
            .Select(reading => new { reading.CourseId, reading.ModuleId }).Distinct()
            .GroupBy(reading => reading.CourseId)
            .OrderBy(modules => modules.Key)
            .Select(modules => new { modules.Key, Count = modules.Count() })
            .Take(Bounds.RowsOfOnePerson).ToDictionaryAsync(course => course.Key, course => course.Count, cancellation);
}
