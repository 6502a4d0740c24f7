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

    /// <summary>The parts that the person has read, by course, of any text of it: a mended question sends nobody back to the first page.</summary>
    public static async Task<ILookup<string, ReadModule>> ReadModulesAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation)
    {
        var rows = await records.ModuleReadings.Where(reading => reading.PersonId == personId)
            .GroupBy(reading => new { reading.CourseId, reading.ModuleId })
            .OrderBy(readings => readings.Key.CourseId).ThenBy(readings => readings.Key.ModuleId)
            .Select(readings => new { readings.Key, LastReadAt = readings.Max(reading => reading.ReadAt) })
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        return rows.ToLookup(row => row.Key.CourseId, row => new ReadModule(row.Key.ModuleId, row.LastReadAt), StringComparer.Ordinal);
    }

    /// <summary>Keeps that a part about a site was read there; again changes nothing.</summary>
    public static async Task KeepAsync(this RecordsContext records, SiteReading reading, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, reading);

    /// <summary>The parts about a site that the person has read there, of any text of their course.</summary>
    public static async Task<IReadOnlySet<(string CourseId, string ModuleId)>> ReadAtSiteAsync(
        this RecordsContext records, Guid personId, Guid siteId, CancellationToken cancellation)
    {
        var rows = await records.SiteReadings.Where(reading => reading.PersonId == personId && reading.SiteId == siteId)
            .Select(reading => new { reading.CourseId, reading.ModuleId }).Distinct()
            .OrderBy(part => part.CourseId).ThenBy(part => part.ModuleId).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        return rows.Select(part => (part.CourseId, part.ModuleId)).ToHashSet();
    }
}
