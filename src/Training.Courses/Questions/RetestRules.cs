namespace Training.Courses;

/// <summary>When a failed quiz or practical may be tried again (docs/rules.md, "Trying again").</summary>
/// <param name="Wait">Counted from the day of the last failure; none lets somebody try again on the same day.</param>
/// <param name="Most">So many failures within <paramref name="Within"/>, and the course must be taken again first. At least 1.</param>
/// <param name="Within">The span in which failures are counted.</param>
public sealed record RetestRules(Duration Wait, int Most, Duration Within);
