using System.Diagnostics;

namespace Training.Scoring;

/// <summary>A statistic, or the reason why the data do not give one: never NaN, infinity or a zero that only looks like a finding.</summary>
/// <typeparam name="T">A number, or a record of figures that are computed together.</typeparam>
public abstract record Computed<T>
{
    private Computed()
    {
    }

    /// <summary>The data give it.</summary>
    public sealed record Known(T Value) : Computed<T>;

    /// <summary>It cannot be computed; that is not nought, and must not be shown as nought.</summary>
    public sealed record Unknown(Uncomputable Because) : Computed<T>;

    /// <summary>A statistic that the data give.</summary>
    public static implicit operator Computed<T>(T value) => new Known(value);

    /// <summary>A statistic that they do not.</summary>
    public static implicit operator Computed<T>(Uncomputable because) => new Unknown(because);

    /// <summary>What follows from the statistic; where there is none, the same reason holds for what would follow.</summary>
    public Computed<TNext> Then<TNext>(Func<T, Computed<TNext>> next) => this switch
    {
        Known(var value) => next(value),
        Unknown(var because) => because,
        _ => throw new UnreachableException(),
    };
}
