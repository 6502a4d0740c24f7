using System.Numerics;

namespace Training.Scoring;

/// <summary>Counting with whole numbers of any size, rounded once at the end.</summary>
internal static class ExactRatio
{
    // Bits of a quotient: more than the 53 that a double keeps.
    private const int QuotientBits = 64;

    /// <summary>The quotient, at most 1, to the precision of a double also where both numbers are far beyond its range.</summary>
    public static double Of(BigInteger part, BigInteger whole)
    {
        if (part.IsZero) return 0;
        var shift = (int)(QuotientBits + whole.GetBitLength() - part.GetBitLength());
        return Math.ScaleB((double)((part << shift) / whole), -shift);
    }

    /// <summary>In how many ways so many of so many can be chosen; 0 where there are not enough.</summary>
    public static BigInteger Ways(int all, int chosen)
    {
        if (chosen < 0 || chosen > all) return BigInteger.Zero;
        var ways = BigInteger.One;
        for (var factor = 1; factor <= Math.Min(chosen, all - chosen); factor++)
        {
            // Divides without remainder at every step: each product is itself a number of ways.
            ways = ways * (all - factor + 1) / factor;
        }

        return ways;
    }
}
