namespace Training.Courses;

/// <summary>
/// Reach, minimum working length and stand-off, in centimetres. Comparisons are exact; only what is shown is rounded, needed lengths up,
/// lengths of manageable snakes down. Nothing here is a safe distance: a minimum working length is the least that may be worked with.
/// </summary>
/// <remarks>Derivation: reach F × L; minimum F × L + M; line for everybody who is not handling: the larger of the stand-off and L + M.</remarks>
public static class StrikeDistances
{
    /// <summary>How far the head may come from where the snake lies: <c>F × L</c>.</summary>
    /// <param name="lengthCm">Length of the snake, high estimate, above 0.</param>
    /// <param name="fraction">Share of the length.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0, or the fraction was never set.</exception>
    public static decimal Reach(decimal lengthCm, ReachFraction fraction)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(lengthCm, 0);
        ArgumentOutOfRangeException.ThrowIfLessThan(fraction.Denominator, 1, nameof(fraction));
        return lengthCm * fraction.Numerator / fraction.Denominator;
    }

    /// <summary>From the front of the leading hand to the tool's grip point: <c>F × L + M</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A length is not above 0.</exception>
    public static decimal MinimumWorkingLength(decimal lengthCm, ReachFraction fraction, decimal marginCm) => Reach(lengthCm, fraction) + marginCm;

    /// <summary>Whether a working length is at least the minimum under one fraction. For comparison; <see cref="Choose"/> decides.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A length is not above 0.</exception>
    public static bool Meets(decimal workingLengthCm, decimal lengthCm, ReachFraction fraction, decimal marginCm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(lengthCm, 0);
        ArgumentOutOfRangeException.ThrowIfLessThan(fraction.Denominator, 1, nameof(fraction));

        // Multiplied out, since 2/3 of a length has no last decimal.
        return (workingLengthCm - marginCm) * fraction.Denominator >= lengthCm * fraction.Numerator;
    }

    /// <summary>The longest snake that a working length is enough for under one fraction, unrounded; 0 where it is enough for none.</summary>
    public static decimal LongestManageable(decimal workingLengthCm, ReachFraction fraction, decimal marginCm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(fraction.Denominator, 1, nameof(fraction));
        return decimal.Max(0, (workingLengthCm - marginCm) * fraction.Denominator / fraction.Numerator);
    }

    /// <summary>Where everybody stands who is not handling: the larger of the stand-off in force and the whole length plus margin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0.</exception>
    public static decimal StandOffLine(decimal lengthCm, decimal standOffCm, decimal marginCm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(lengthCm, 0);
        return decimal.Max(standOffCm, lengthCm + marginCm);
    }

    /// <summary>The length to reckon with: the high estimate, or the record length of the species where nobody could tell.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A length is not above 0.</exception>
    public static decimal LengthToReckonWith(decimal? estimateCm, decimal recordCm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(recordCm, 0);
        if (estimateCm is null) return recordCm;
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(estimateCm.Value, 0, nameof(estimateCm));
        return estimateCm.Value;
    }

    /// <summary>Picks the shortest tool that is long enough under the deciding fraction, since a shorter one is easier to control.</summary>
    /// <param name="workingLengthsCm">Of the tools in the kit, hand to grip point; may be empty.</param>
    /// <param name="lengthCm">From <see cref="LengthToReckonWith"/>.</param>
    /// <param name="rules">Fractions and margin.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0.</exception>
    public static ToolChoice Choose(IReadOnlyList<decimal> workingLengthsCm, decimal lengthCm, ReachRules rules)
    {
        var needed = MinimumWorkingLength(lengthCm, rules.Deciding, rules.MarginCm);
        var enough = workingLengthsCm.Where(tool => Meets(tool, lengthCm, rules.Deciding, rules.MarginCm)).Order().ToList();
        return enough.Count > 0 ? new ToolChoice.LongEnough(enough[0], needed) : new ToolChoice.StandOffAndCall(needed);
    }

    /// <summary>A needed length as it is shown: whole centimetres, rounded up.</summary>
    public static decimal ShownNeeded(decimal lengthCm) => decimal.Ceiling(lengthCm);

    /// <summary>The length of a manageable snake as it is shown: whole centimetres, rounded down.</summary>
    public static decimal ShownManageable(decimal lengthCm) => decimal.Floor(lengthCm);
}

/// <summary>What the kit allows. A closed family.</summary>
public abstract record ToolChoice
{
    private ToolChoice()
    {
    }

    /// <summary>This tool meets the minimum working length. That makes nothing safe, and nobody who is not certified handles.</summary>
    /// <param name="WorkingLengthCm">The shortest one that does.</param>
    /// <param name="NeededCm">The minimum, unrounded.</param>
    public sealed record LongEnough(decimal WorkingLengthCm, decimal NeededCm) : ToolChoice;

    /// <summary>No tool in the kit is long enough: stand off and call.</summary>
    /// <param name="NeededCm">The minimum, unrounded.</param>
    public sealed record StandOffAndCall(decimal NeededCm) : ToolChoice;
}
