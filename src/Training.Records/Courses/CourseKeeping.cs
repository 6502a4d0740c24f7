using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>A course text that served last, without findings.</summary>
/// <param name="CourseId">Which course.</param>
/// <param name="Hash">Its address.</param>
/// <param name="Content">The snapshot as the course engine writes it.</param>
/// <param name="SinceAt">Since when it serves.</param>
public sealed record GoodSnapshot(string CourseId, string Hash, string Content, DateTimeOffset SinceAt);

/// <summary>Keeps course snapshots and which of them serves.</summary>
public static class CourseKeeping
{
    private const int MostCourses = 500;

    /// <summary>Keeps a course that was read without findings and puts it in force. Safe to repeat, and from several nodes at once.</summary>
    /// <exception cref="ArgumentException">The hash was kept with other content: it is no content address.</exception>
    public static async Task KeepSnapshotAsync(
        this RecordsContext records, string courseId, string hash, string content, DateTimeOffset now, CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var kept = await records.CourseSnapshots.AsNoTracking().SingleOrDefaultAsync(snapshot => snapshot.Hash == hash, cancellation);
            if (kept is not null && (kept.Content != content || kept.CourseId != courseId))
                throw new ArgumentException($"Snapshot {hash} was kept with other content.", nameof(content));
            var last = await records.CoursesInForce.AsNoTracking().Where(row => row.CourseId == courseId)
                .OrderByDescending(row => row.Number).FirstOrDefaultAsync(cancellation);
            if (last?.Hash == hash) return;

            var inForce = new CourseInForce { CourseId = courseId, Number = (last?.Number ?? 0) + 1, Hash = hash, SinceAt = now };
            var snapshot = new CourseSnapshotRecord { Hash = hash, CourseId = courseId, Content = content, FirstLoadedAt = now };
            object[] rows = kept is null ? [snapshot, inForce] : [inForce];
            if (await records.TryInsertAsync(cancellation, rows)) return;
        }

        throw new InvalidOperationException($"Course {courseId} was put in force by others {Bounds.Attempts} times over.");
    }

    /// <summary>The text of each course that served last; what serves after a restart when the files are broken.</summary>
    public static async Task<IReadOnlyList<GoodSnapshot>> LastGoodSnapshotsAsync(this RecordsContext records, CancellationToken cancellation) =>
        await (from row in records.CoursesInForce
               where row.Number == records.CoursesInForce.Where(other => other.CourseId == row.CourseId).Max(other => other.Number)
               join snapshot in records.CourseSnapshots on row.Hash equals snapshot.Hash
               orderby row.CourseId
               select new GoodSnapshot(row.CourseId, row.Hash, snapshot.Content, row.SinceAt)).Take(MostCourses).ToListAsync(cancellation);

    /// <summary>The content of one snapshot, or null where that text was never kept.</summary>
    public static Task<string?> FindSnapshotAsync(this RecordsContext records, string hash, CancellationToken cancellation) =>
        records.CourseSnapshots.Where(snapshot => snapshot.Hash == hash).Select(snapshot => snapshot.Content).SingleOrDefaultAsync(cancellation);

    /// <summary>The course of a snapshot, or null where that text was never kept.</summary>
    public static Task<string?> FindCourseIdAsync(this RecordsContext records, string hash, CancellationToken cancellation) =>
        records.CourseSnapshots.Where(snapshot => snapshot.Hash == hash).Select(snapshot => snapshot.CourseId).SingleOrDefaultAsync(cancellation);
}
