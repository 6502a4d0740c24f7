namespace Training.Scoring.Tests;

/// <summary>Short ways to look at what was computed.</summary>
internal static class Outcomes
{
    public static T Known<T>(this Computed<T> statistic) => Assert.IsType<Computed<T>.Known>(statistic).Value;

    public static void IsUnknown<T>(this Computed<T> statistic, Uncomputable because) =>
        Assert.Equal(because, Assert.IsType<Computed<T>.Unknown>(statistic).Because);

    /// <summary>Both the same up to rounding, or both not computable for the same reason; never NaN.</summary>
    public static void IsSameAs(this Computed<double> one, Computed<double> other, double tolerance = 1e-9)
    {
        if (one is Computed<double>.Known(var value)) Assert.Equal(value, other.Known(), tolerance);
        else Assert.Equal(one, other);
    }
}
