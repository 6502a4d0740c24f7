namespace Training.Scoring;

/// <summary>From a cut with decimals to the whole score that passes.</summary>
public static class PassMarks
{
    // A cut of 7 that was summed from tenths may read 7.000000000000001.
    private const double Rounding = 1e-9;

    /// <summary>The smallest whole score not below a cut.</summary>
    public static int Of(double cut) => (int)Math.Ceiling(cut - Rounding);

    /// <summary>The fewest points with <c>points * 100 ≥ percent * max</c>: what grading asks, in whole numbers.</summary>
    public static int OfPercent(int percent, int max) => ((percent * max) + 99) / 100;
}
