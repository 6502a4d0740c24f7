namespace Training.Courses;

/// <summary>A share of a snake's length that a strike is said to reach, above 0 and at most 1. Kept as a fraction, so that two thirds are two thirds.</summary>
public readonly record struct ReachFraction
{
    private const int GreatestDenominator = 100;

    private ReachFraction(int numerator, int denominator)
    {
        Numerator = numerator;
        Denominator = denominator;
    }

    /// <summary>Above the line, at least 1.</summary>
    public int Numerator { get; }

    /// <summary>Below the line, at least <see cref="Numerator"/>.</summary>
    public int Denominator { get; }

    /// <summary>Makes a fraction, in lowest terms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not above 0 and at most 1.</exception>
    public static ReachFraction Of(int numerator, int denominator)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(numerator, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(numerator, denominator);
        var divisor = (int)System.Numerics.BigInteger.GreatestCommonDivisor(numerator, denominator);
        return new(numerator / divisor, denominator / divisor);
    }

    /// <summary>
    /// The fraction that a guidance value means. A file says <c>2/3</c>, its amount is 0.666… with 28 digits: the fraction with the smallest
    /// denominator up to 100 that gives exactly this decimal. Other decimals count in millionths, rounded up, since less reach is less safe.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is not above 0 and at most 1.</exception>
    public static ReachFraction From(decimal amount)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(amount, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(amount, 1);
        for (var denominator = 1; denominator <= GreatestDenominator; denominator++)
        {
            var numerator = (int)decimal.Round(amount * denominator);
            if (numerator > 0 && (decimal)numerator / denominator == amount) return Of(numerator, denominator);
        }

        return Of((int)decimal.Ceiling(amount * 1_000_000), 1_000_000);
    }

    /// <summary>Whether this one is the larger.</summary>
    public bool IsLargerThan(ReachFraction other) => (long)Numerator * other.Denominator > (long)other.Numerator * Denominator;

    /// <summary>The form it is written in: <c>2/3</c>.</summary>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");
}
