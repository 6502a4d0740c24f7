using Training.Scoring;

namespace Training.Benchmarks;

internal static class Known
{
    /// <summary>The value of a statistic that answers from the model always determine.</summary>
    public static double Value(this Estimate<double> estimate) =>
        estimate is Estimate<double>.Known(var value) ? value : throw new InvalidOperationException($"No value: {estimate}.");
}
