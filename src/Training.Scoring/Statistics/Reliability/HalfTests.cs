namespace Training.Scoring;

/// <summary>Consistency of the whole test from how two halves of it, each with its share of the cut, decide about the same people.</summary>
/// <param name="HalfPhi">Correlation of the two halves' decisions, 1 − π₀₁/(pq).</param>
/// <param name="Phi">That of two whole tests, 2φ/(1+φ).</param>
/// <param name="Agreement">θ: share of people that two whole tests would decide the same way, 0–1.</param>
/// <remarks>Woodruff and Sawyer, "Estimating measures of pass-fail reliability from parallel half-tests", 1988, ERIC ED292877.</remarks>
public readonly record struct HalfTests(double HalfPhi, double Phi, double Agreement)
{
    /// <summary>From the four shares or counts of people; only their proportions matter.</summary>
    /// <param name="bothFail">Fail both halves.</param>
    /// <param name="onlyFirstPasses">Pass the first half only.</param>
    /// <param name="onlySecondPasses">Pass the second half only.</param>
    /// <param name="bothPass">Pass both halves.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative share.</exception>
    public static Estimate<HalfTests> From(double bothFail, double onlyFirstPasses, double onlySecondPasses, double bothPass)
    {
        var all = bothFail + onlyFirstPasses + onlySecondPasses + bothPass;
        if (!double.IsFinite(all)) return Obstacle.NotANumber;
        ArgumentOutOfRangeException.ThrowIfNegative(bothFail);
        ArgumentOutOfRangeException.ThrowIfNegative(onlyFirstPasses);
        ArgumentOutOfRangeException.ThrowIfNegative(onlySecondPasses);
        ArgumentOutOfRangeException.ThrowIfNegative(bothPass);
        if (all <= 0) return Obstacle.NoAnswers;
        var different = (onlyFirstPasses + onlySecondPasses) / 2 / all;
        var passing = (bothPass / all) + different;
        var failing = 1 - passing;
        if (passing <= 0 || failing <= 0) return Obstacle.OneDecisionOnly;
        var half = 1 - (different / (passing * failing));
        if (half <= -1) return Obstacle.ReliabilityOutOfRange;
        var whole = 2 * half / (1 + half);
        return new HalfTests(half, whole, (passing * passing) + (failing * failing) + (2 * passing * failing * whole));
    }
}
