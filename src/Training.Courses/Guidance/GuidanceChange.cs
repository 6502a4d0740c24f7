namespace Training.Courses;

/// <summary>A value that was taught and is no longer in force.</summary>
/// <param name="Was">What the training rested on.</param>
/// <param name="Is">What took its place.</param>
public sealed record GuidanceChange(GuidanceEntry Was, GuidanceEntry Is)
{
    /// <summary>First day of the new value.</summary>
    public DateOnly ChangedOn => Is.EffectiveFrom;

    /// <summary>
    /// What changed since somebody was trained: for each entry that the training rested on, the entry that is in force in its place. A new
    /// source for the same value is no change, and what begins only after <paramref name="today"/> is none yet.
    /// </summary>
    /// <param name="trained">The guidance of the course as it was read then.</param>
    /// <param name="now">All guidance.</param>
    /// <param name="today">The day asked about.</param>
    /// <returns>The youngest change first.</returns>
    public static IReadOnlyList<GuidanceChange> Since(IEnumerable<GuidanceEntry> trained, GuidanceSet now, DateOnly today) =>
    [
        .. trained.Select(was => (Was: was, Is: Successor(was, now, today)))
            .Where(pair => pair.Is is not null && pair.Is.Value != pair.Was.Value)
            .Select(pair => new GuidanceChange(pair.Was, pair.Is!)) // not null: seen on the line above
            .OrderByDescending(change => change.ChangedOn).ThenBy(change => change.Was.Id, StringComparer.Ordinal),
    ];

    private static GuidanceEntry? Successor(GuidanceEntry was, GuidanceSet now, DateOnly today)
    {
        GuidanceEntry? newest = null;
        var at = now.Find(was.Id);
        // A successor begins later than what it replaces, so the walk ends.
        while (at?.SupersededBy is { } next && now.Find(next) is { } successor && successor.EffectiveFrom <= today)
        {
            newest = at = successor;
        }

        return newest;
    }
}
