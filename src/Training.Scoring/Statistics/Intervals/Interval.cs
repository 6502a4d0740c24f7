namespace Training.Scoring;

/// <summary>A confidence interval, both limits included.</summary>
/// <param name="Lower">Lower limit.</param>
/// <param name="Upper">Upper limit, not below the lower one.</param>
public readonly record struct Interval(double Lower, double Upper)
{
    internal static void RequireConfidence(double confidence)
    {
        if (confidence is not (> 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Between 0 and 1.");
    }
}
