namespace Training.Courses;

/// <summary>What distances are judged by: the sourced fractions, the one that decides, and the margin.</summary>
public sealed class ReachRules
{
    /// <summary>
    /// No value of any source but the floor that design sets under all of them: whatever guidance says, no snake's reach is taken for less
    /// than two thirds of its length. An edit of a file must not be able to lower it.
    /// </summary>
    private static readonly ReachFraction Floor = ReachFraction.Of(2, 3);

    /// <summary>Makes rules from guidance values.</summary>
    /// <param name="sourced">Every fraction that a source gives; at least one.</param>
    /// <param name="marginCm">Added to every reach, in centimetres, above 0.</param>
    /// <exception cref="ArgumentException">No fraction is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The margin is not above 0.</exception>
    public ReachRules(IReadOnlyList<ReachFraction> sourced, decimal marginCm)
    {
        if (sourced.Count == 0) throw new ArgumentException("Without a sourced fraction nothing can be judged.", nameof(sourced));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(marginCm, 0);
        Sourced = sourced;
        MarginCm = marginCm;
        Deciding = sourced.Aggregate(Floor, (largest, next) => next.IsLargerThan(largest) ? next : largest);
    }

    /// <summary>Every fraction given; those that do not decide are shown as comparison.</summary>
    public IReadOnlyList<ReachFraction> Sourced { get; }

    /// <summary>The one that decides: the largest, never below two thirds.</summary>
    public ReachFraction Deciding { get; }

    /// <summary>Added to every reach, in centimetres.</summary>
    public decimal MarginCm { get; }

    /// <summary>Makes rules from entries in force.</summary>
    /// <param name="fractions">Entries with the unit <c>fraction</c>.</param>
    /// <param name="margin">An entry with a length.</param>
    /// <exception cref="ArgumentException">An entry has another unit or is a word.</exception>
    public static ReachRules From(IReadOnlyList<GuidanceEntry> fractions, GuidanceEntry margin) => new(
        [.. fractions.Select(entry => entry.Value is GuidanceValue.Quantity { Unit: "fraction" } fraction
            ? ReachFraction.From(fraction.Amount)
            : throw new ArgumentException($"Entry '{entry.Id}' is no fraction.", nameof(fractions)))],
        margin.Value is GuidanceValue.Quantity length
            ? Lengths.InCentimetres(length)
            : throw new ArgumentException($"Entry '{margin.Id}' is no length.", nameof(margin)));
}
