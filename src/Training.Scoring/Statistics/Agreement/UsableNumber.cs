namespace Training.Scoring;

/// <summary>Tells ratings and scores from what an upload may hold besides.</summary>
internal static class UsableNumber
{
    // Fourth powers of such numbers, summed over millions, are still finite.
    private const double Greatest = 1e50;

    // Comparisons with NaN are false.
    public static bool IsUsable(double value) => Math.Abs(value) <= Greatest;
}
