namespace Training.Certification;

/// <summary>Tells on which days holds are on.</summary>
/// <remarks>Rule: docs/rules.md, "Reviews and holds".</remarks>
public static class Holds
{
    /// <summary>
    /// Whether any of these holds touches the day: its first, that of the conclusion, and every day between; without a conclusion every
    /// day from the first on.
    /// </summary>
    /// <param name="holds">Of one person, in any order; those of several people tell whether any of them is on hold.</param>
    /// <param name="day">In the zone of the person's site.</param>
    public static bool IsOn(IEnumerable<Hold> holds, DateOnly day) => On(holds, day).Any();

    /// <summary>Those that touch the day.</summary>
    public static IEnumerable<Hold> On(IEnumerable<Hold> holds, DateOnly day) =>
        holds.Where(hold => hold.From <= day && (hold.Conclusion is null || day <= hold.Conclusion.On));
}
