using Training.Courses;

namespace Training.Certification;

/// <summary>A day on which the holder of a certification is reminded: so long before the last day, or the day after it.</summary>
/// <param name="Before">How long before the last day, counted back from it; null for the day after.</param>
public readonly record struct Milestone(Duration? Before)
{
    /// <summary>The day after the last day.</summary>
    public static Milestone DayAfter => default;

    /// <summary>The day it falls on, for a certification that is current through <paramref name="expiresOn"/>.</summary>
    public DateOnly Of(DateOnly expiresOn) => Before is { } before ? before.Before(expiresOn) : expiresOn.AddDays(1);

    /// <summary>As it is stored: <c>P60D</c> before the last day, <c>after</c> for the day after it.</summary>
    public override string ToString() => Before?.ToString() ?? "after";
}

/// <summary>Last days of periods that one milestone is looked for at.</summary>
/// <param name="Milestone">Which.</param>
/// <param name="From">The first of them.</param>
/// <param name="Through">The last of them.</param>
public sealed record MilestoneSpan(Milestone Milestone, DateOnly From, DateOnly Through);
