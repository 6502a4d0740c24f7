namespace Training.Scoring.Tests;

/// <summary>What the tests need to judge chance.</summary>
internal static class Statistics
{
    /// <summary>Pearson's chi-square against equal frequencies.</summary>
    public static double ChiSquare(IReadOnlyCollection<int> counts)
    {
        var expected = counts.Average();
        return counts.Sum(count => (count - expected) * (count - expected) / expected);
    }
}
