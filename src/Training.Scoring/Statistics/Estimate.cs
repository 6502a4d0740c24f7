using System.Diagnostics;

namespace Training.Scoring;

/// <summary>A statistic, or why what was given does not determine it. No number in it is ever infinite or not a number.</summary>
/// <typeparam name="T">A number, or a record of figures that are computed together.</typeparam>
public abstract record Estimate<T>
{
    private Estimate()
    {
    }

    /// <summary>It could be computed.</summary>
    public sealed record Known(T Value) : Estimate<T>;

    /// <summary>It cannot be computed. That is not the same as nought, and must not be shown as nought.</summary>
    public sealed record Unknown(Obstacle Because) : Estimate<T>;

    /// <summary>A value that could be computed.</summary>
    public static implicit operator Estimate<T>(T value) => new Known(value);

    /// <summary>Why there is no value.</summary>
    public static implicit operator Estimate<T>(Obstacle because) => new Unknown(because);

    /// <summary>What follows from the statistic; where there is none, the same reason holds for what would follow.</summary>
    public Estimate<TNext> Then<TNext>(Func<T, Estimate<TNext>> next) => this switch
    {
        Known(var value) => next(value),
        Unknown(var because) => because,
        _ => throw new UnreachableException(),
    };
}
