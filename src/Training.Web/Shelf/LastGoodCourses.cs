using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;

namespace Training.Web.Shelf;

/// <summary>The last good version of every course in the records: what serves after a restart while its folder is broken.</summary>
public sealed class LastGoodCourses(IDbContextFactory<RecordsContext> factory, TimeProvider clock, ILogger<LastGoodCourses> log)
{
    // What was read and could not be kept yet; at most one a course.
    private readonly Dictionary<string, CourseSnapshot> waiting = new(StringComparer.Ordinal);
    private bool isComplaining;

    /// <summary>The courses of the records; null where they cannot be reached, since the folder may still serve.</summary>
    public async Task<IReadOnlyList<Course>?> FindAsync(CancellationToken cancellation)
    {
        try
        {
            await using var records = await factory.CreateDbContextAsync(cancellation);
            return [.. (await records.LastGoodSnapshotsAsync(cancellation)).Select(Read).OfType<Course>()];
        }
        catch (DbException e)
        {
            Complain(e);
            return null;
        }
    }

    /// <summary>Notes what is to be kept next.</summary>
    public void Remember(IEnumerable<CourseSnapshot> snapshots)
    {
        foreach (var snapshot in snapshots) waiting[snapshot.CourseId] = snapshot;
    }

    /// <summary>Keeps what waits; what cannot be kept waits for the next call.</summary>
    public async Task KeepAsync(CancellationToken cancellation)
    {
        if (waiting.Count == 0) return;
        try
        {
            await using var records = await factory.CreateDbContextAsync(cancellation);
            foreach (var snapshot in waiting.Values.ToList())
            {
                await records.KeepSnapshotAsync(snapshot.CourseId, snapshot.Hash, snapshot.Content, clock.GetUtcNow(), cancellation);
                waiting.Remove(snapshot.CourseId);
            }

            isComplaining = false;
        }
        catch (DbException e)
        {
            Complain(e);
        }
    }

    // Once, not every two seconds until somebody restarts the database.
    private void Complain(DbException e)
    {
        if (!isComplaining) Log.RecordsUnreachable(log, e);
        isComplaining = true;
    }

    private Course? Read(GoodSnapshot kept)
    {
        try
        {
            return new CourseSnapshot(kept.CourseId, kept.Hash, kept.Content).Read(CourseAddresses.OfModule);
        }
        catch (InvalidDataException)
        {
            Log.SnapshotUnreadable(log, kept.CourseId);
            return null;
        }
    }
}
