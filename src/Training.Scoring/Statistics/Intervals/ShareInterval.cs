using MathNet.Numerics.Distributions;

namespace Training.Scoring;

/// <summary>Confidence intervals of a share that was counted.</summary>
public static class ShareInterval
{
    /// <summary>Wilson's score interval, without a correction for continuity; on average it covers what it promises, also near 0 and 1.</summary>
    /// <param name="counted">Right answers, passes …; 0 to <paramref name="all"/>.</param>
    /// <param name="all">Answers, people …</param>
    /// <param name="confidence">Two-sided, between 0 and 1; usually 0.95.</param>
    /// <remarks>
    /// Wilson, "Probable inference, the law of succession, and statistical inference", JASA 22, 1927; as method 3 in Newcombe, Statistics in
    /// Medicine 17, 1998: (p + z²/2n ± z·√(p(1−p)/n + z²/4n²))/(1 + z²/n).
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">More counted than there are, fewer than none, or no confidence.</exception>
    public static Estimate<Interval> Wilson(long counted, long all, double confidence)
    {
        RequireCounts(counted, all, confidence);
        if (all == 0) return Obstacle.NoAnswers;
        var z = Normal.InvCDF(0, 1, 1 - ((1 - confidence) / 2));
        var share = (double)counted / all;
        var middle = share + (z * z / (2.0 * all));
        var half = z * Math.Sqrt((share * (1 - share) / all) + (z * z / (4.0 * all * all)));
        var scale = 1 + (z * z / all);
        // At the ends the limit is the end; rounding would put it just beside.
        return new Interval(counted == 0 ? 0 : (middle - half) / scale, counted == all ? 1 : (middle + half) / scale);
    }

    /// <summary>Clopper and Pearson's interval, which covers at least what it promises, and is wider for it.</summary>
    /// <param name="counted">Right answers, passes …; 0 to <paramref name="all"/>.</param>
    /// <param name="all">Answers, people …</param>
    /// <param name="confidence">Two-sided also at 0 and all, between 0 and 1; usually 0.95.</param>
    /// <remarks>
    /// Clopper and Pearson, "The use of confidence or fiducial limits illustrated in the case of the binomial", Biometrika 26, 1934: quantiles
    /// of Beta(r, n−r+1) below and Beta(r+1, n−r) above.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">More counted than there are, fewer than none, or no confidence.</exception>
    public static Estimate<Interval> ClopperPearson(long counted, long all, double confidence)
    {
        RequireCounts(counted, all, confidence);
        if (all == 0) return Obstacle.NoAnswers;
        var tail = (1 - confidence) / 2;
        return new Interval(
            counted == 0 ? 0 : Beta.InvCDF(counted, all - counted + 1.0, tail),
            counted == all ? 1 : Beta.InvCDF(counted + 1.0, all - counted, 1 - tail));
    }

    private static void RequireCounts(long counted, long all, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(counted);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(counted, all);
        Interval.RequireConfidence(confidence);
    }
}
