using MathNet.Numerics.Distributions;

namespace Training.Scoring;

/// <summary>Confidence interval of a correlation.</summary>
public static class CorrelationInterval
{
    /// <summary>Limits by Fisher's transformation: tanh(artanh r ± z/√(n−3)).</summary>
    /// <param name="correlation">r, −1 to 1; at either end both limits are that end.</param>
    /// <param name="people">n, at least 4.</param>
    /// <param name="confidence">Two-sided, between 0 and 1; usually 0.95.</param>
    /// <remarks>Fisher, "On the 'probable error' of a coefficient of correlation deduced from a small sample", Metron 1, 1921.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">No correlation, or no confidence.</exception>
    public static Estimate<Interval> Fisher(double correlation, long people, double confidence)
    {
        Interval.RequireConfidence(confidence);
        if (double.IsNaN(correlation)) return Obstacle.NotANumber;
        ArgumentOutOfRangeException.ThrowIfLessThan(correlation, -1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(correlation, 1);
        if (people < 4) return Obstacle.TooFewPeople;
        var middle = Math.Atanh(correlation);
        var half = Normal.InvCDF(0, 1, 1 - ((1 - confidence) / 2)) / Math.Sqrt(people - 3);
        return new Interval(Math.Tanh(middle - half), Math.Tanh(middle + half));
    }
}
