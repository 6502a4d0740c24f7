namespace Training.Scoring;

/// <summary>Compares a share of points with a percentage without rounding.</summary>
internal static class Share
{
    /// <summary><c>points * 100 ≥ percent * max</c>: 79.99 % is not 80 %.</summary>
    public static bool Reaches(int points, int max, int percent) => points * 100 >= percent * max;
}
