namespace Training.Scoring;

/// <summary>Middle and spread of a few numbers.</summary>
internal static class SampleMoments
{
    /// <summary>Divided by one less than there are; there must be two.</summary>
    public static double Variance(IReadOnlyCollection<double> values)
    {
        var mean = values.Average();
        var variance = values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1);

        // Equal numbers whose mean was rounded.
        return values.Distinct().Count() == 1 ? 0 : variance;
    }

    public static double StandardDeviation(IReadOnlyCollection<double> values) => Math.Sqrt(Variance(values));

    /// <summary>The middle one, or the mean of the middle two.</summary>
    public static double Median(IReadOnlyCollection<double> values)
    {
        var inOrder = values.Order().ToArray();
        return (inOrder[(inOrder.Length - 1) / 2] + inOrder[inOrder.Length / 2]) / 2;
    }
}
