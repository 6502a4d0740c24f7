using MathNet.Numerics.Distributions;

namespace Training.Scoring;

/// <summary>Reliability of a total score from summary figures; KR-20 and alpha come from <see cref="ScoreTally"/>.</summary>
public static class TestReliability
{
    /// <summary>KR-21: k/(k−1) · (1 − M(k−M)/(k·s²)), which takes all items as equally hard and is then never above KR-20.</summary>
    /// <param name="items">k, the number of items.</param>
    /// <param name="mean">M, the mean number right.</param>
    /// <param name="variance">s² of the number right. Divided by n it belongs with KR-20; some programs divide by n − 1.</param>
    /// <remarks>Kuder and Richardson, Psychometrika 2, 1937, formula 21. It may be negative.</remarks>
    public static Estimate<double> Kr21(int items, double mean, double variance)
    {
        if (!double.IsFinite(mean) || !double.IsFinite(variance)) return Obstacle.NotANumber;
        if (items < 2) return Obstacle.TooFewItems;
        if (variance <= 0) return Obstacle.NoTotalVariance;
        return items / (items - 1.0) * (1 - (mean * (items - mean) / (items * variance)));
    }

    /// <summary>Reliability of a form that is a number of times as long, with questions of the same kind: f·r / (1 + (f−1)·r).</summary>
    /// <param name="reliability">r of the form as it is, −1 to 1.</param>
    /// <param name="times">f; above 0, below 1 for a shorter form.</param>
    /// <remarks>Spearman, and Brown, both in British Journal of Psychology 3, 1910.</remarks>
    public static Estimate<double> SpearmanBrown(double reliability, double times)
    {
        if (!double.IsFinite(reliability) || !double.IsFinite(times)) return Obstacle.NotANumber;
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(times, 0);
        var divisor = 1 + ((times - 1) * reliability);
        // A negative reliability so low has no longer or shorter form: the formula runs through a pole.
        if (divisor <= 0 || reliability > 1) return Obstacle.ReliabilityOutOfRange;
        return times * reliability / divisor;
    }

    /// <summary>Standard error of measurement: s·√(1 − reliability), in points.</summary>
    /// <param name="variance">s² of the total; the result is for the divisor (n or n − 1) that this one has.</param>
    /// <param name="reliability">At most 1; a negative one is taken as it is.</param>
    /// <remarks>Lord and Novick, "Statistical Theories of Mental Test Scores", 1968, chapter 3.</remarks>
    public static Estimate<double> StandardErrorOfMeasurement(double variance, double reliability)
    {
        if (!double.IsFinite(variance) || !double.IsFinite(reliability)) return Obstacle.NotANumber;
        if (reliability > 1) return Obstacle.ReliabilityOutOfRange;
        if (variance < 0) return Obstacle.NoTotalVariance;
        return Math.Sqrt(variance * (1 - reliability));
    }

    /// <summary>Confidence limits of alpha or KR-20: 1 − (1−α)·F, with n − 1 and (n−1)(k−1) degrees of freedom.</summary>
    /// <param name="alpha">At most 1.</param>
    /// <param name="people">n.</param>
    /// <param name="items">k.</param>
    /// <param name="confidence">Two-sided, between 0 and 1; usually 0.95.</param>
    /// <remarks>Feldt, "The approximate sampling distribution of Kuder-Richardson reliability coefficient twenty", Psychometrika 30, 1965.</remarks>
    public static Estimate<Interval> FeldtLimits(double alpha, long people, int items, double confidence)
    {
        Interval.RequireConfidence(confidence);
        if (!double.IsFinite(alpha)) return Obstacle.NotANumber;
        if (people < 2) return Obstacle.TooFewPeople;
        if (items < 2) return Obstacle.TooFewItems;
        if (alpha > 1) return Obstacle.ReliabilityOutOfRange;
        var tail = (1 - confidence) / 2;
        return new Interval(
            1 - ((1 - alpha) * FQuantile(1 - tail, people - 1.0, (people - 1.0) * (items - 1))),
            1 - ((1 - alpha) * FQuantile(tail, people - 1.0, (people - 1.0) * (items - 1))));
    }

    // By the beta distribution: a search for F itself needs an upper end, and with one degree of freedom none is high enough.
    private static double FQuantile(double probability, double above, double below)
    {
        var share = Beta.InvCDF(above / 2, below / 2, probability);
        return below * share / (above * (1 - share));
    }
}
