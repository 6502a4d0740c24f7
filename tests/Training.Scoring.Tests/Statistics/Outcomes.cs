namespace Training.Scoring.Tests;

/// <summary>Short ways to look at an estimate; the wrong case fails the test.</summary>
internal static class Outcomes
{
    public static T Known<T>(this Estimate<T> statistic) => Assert.IsType<Estimate<T>.Known>(statistic).Value;

    public static Obstacle Because<T>(this Estimate<T> statistic) => Assert.IsType<Estimate<T>.Unknown>(statistic).Because;

    public static void IsUnknown<T>(this Estimate<T> statistic, Obstacle because) =>
        Assert.Equal(because, statistic.Because());

    /// <summary>Both the same up to rounding, or both not computable for the same reason; never NaN.</summary>
    public static void IsSameAs(this Estimate<double> one, Estimate<double> other, double tolerance = 1e-9)
    {
        if (one is Estimate<double>.Known(var value)) Assert.Equal(value, other.Known(), tolerance);
        else Assert.Equal(one, other);
    }
}
