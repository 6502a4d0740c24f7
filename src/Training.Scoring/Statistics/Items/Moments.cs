namespace Training.Scoring;

/// <summary>Mean and sum of squared deviations of numbers that come one at a time.</summary>
/// <remarks>Welford, "Note on a method for calculating corrected sums of squares and products", Technometrics 4, 1962.</remarks>
internal struct Moments
{
    // Squares and sums of numbers up to here stay far below what a double holds.
    private const double LargestScore = 1e100;

    private double _largest;

    public long Count { get; private set; }

    public double Mean { get; private set; }

    public double SumOfSquares { get; private set; }

    /// <summary>False where all numbers are the same up to the rounding of sums.</summary>
    public readonly bool Varies => SumOfSquares > Count * Math.Pow(1e-12 * _largest, 2);

    public readonly double PopulationVariance => SumOfSquares / Count;

    public readonly double SampleVariance => SumOfSquares / (Count - 1);

    public static bool IsScore(double number) => Math.Abs(number) <= LargestScore;

    public void Add(double number)
    {
        Count++;
        var deviation = number - Mean;
        Mean += deviation / Count;
        SumOfSquares += deviation * (number - Mean);
        _largest = Math.Max(_largest, Math.Abs(number));
    }
}
