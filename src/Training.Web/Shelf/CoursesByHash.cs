using System.Collections.Concurrent;
using Training.Courses;
using Training.Records;

namespace Training.Web.Shelf;

/// <summary>Courses as they were when something was decided: by the hash of their snapshot, read once and then remembered.</summary>
public sealed class CoursesByHash(CourseShelf shelf)
{
    // Far more texts than a programme changes in a year; beyond it the memory starts anew.
    private const int Most = 200;
    private readonly ConcurrentDictionary<string, Course> known = new(StringComparer.Ordinal);

    /// <summary>The course of a snapshot, from the shelf where it is still that text, else from the records; null where it was never kept.</summary>
    public async Task<Course?> FindAsync(RecordsContext records, string courseId, string hash, CancellationToken cancellation)
    {
        if (shelf.Find(courseId) is { } served && served.Hash == hash) return served;
        if (known.TryGetValue(hash, out var course)) return course;
        if (await records.FindSnapshotAsync(hash, cancellation) is not { } content) return null;
        if (known.Count >= Most) known.Clear();
        return known[hash] = new CourseSnapshot(courseId, hash, content).Read(CourseAddresses.OfModule);
    }
}
