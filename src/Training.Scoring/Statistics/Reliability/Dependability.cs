namespace Training.Scoring;

/// <summary>What share of a variance is no error.</summary>
internal static class Dependability
{
    public static Estimate<double> Ratio(double signal, double error)
    {
        // What is left of two numbers that cancel out is their rounding.
        if (signal + error <= 1e-12 * (Math.Abs(signal) + error)) return Obstacle.NoTotalVariance;
        return signal / (signal + error);
    }
}
