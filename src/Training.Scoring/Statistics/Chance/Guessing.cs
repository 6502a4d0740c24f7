using System.Numerics;

namespace Training.Scoring;

/// <summary>Questions with the same number of equally likely answers, one of them right.</summary>
/// <param name="Options">At least 1; 2 for true or false.</param>
/// <param name="Count">How many such questions.</param>
public readonly record struct GuessedItems(int Options, int Count);

/// <summary>How likely a form is passed by guessing.</summary>
public static class Guessing
{
    /// <summary>Chance of at least the pass mark where every question is guessed blindly and alone.</summary>
    /// <param name="guessed">The questions that are guessed.</param>
    /// <param name="known">Further questions that are answered right for certain.</param>
    /// <param name="passMark">Points needed, one a question; 0 or less is always reached, more than there are questions never.</param>
    /// <remarks>
    /// Feller, "An Introduction to Probability Theory and Its Applications" I, 1968, chapter XI: the coefficients of the product of
    /// ((o−1) + x) count the ways to have so many right. Whole numbers, and only those from the pass mark up are summed, so that also a
    /// chance of 10⁻¹⁴ has all its digits.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A negative number of questions, or a question without options.</exception>
    public static double ChanceToPass(IReadOnlyList<GuessedItems> guessed, int known, int passMark)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(known);
        var ways = new List<BigInteger> { BigInteger.One };
        var all = BigInteger.One;
        foreach (var (options, count) in guessed)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(options, 1, nameof(guessed));
            ArgumentOutOfRangeException.ThrowIfNegative(count, nameof(guessed));
            for (var item = 0; item < count; item++)
            {
                AddItem(ways, options);
            }

            all *= BigInteger.Pow(options, count);
        }

        var passing = BigInteger.Zero;
        for (var right = Math.Max(0, passMark - known); right < ways.Count; right++)
        {
            passing += ways[right];
        }

        return ExactRatio.Of(passing, all);
    }

    /// <summary>Chance of at least one pass in so many independent tries: 1 − (1 − c)ᵐ.</summary>
    /// <param name="chance">c of a single try, 0–1.</param>
    /// <param name="tries">m, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">No chance, or fewer tries than none.</exception>
    public static double InTries(double chance, int tries)
    {
        if (chance is not (>= 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(chance), chance, "From 0 to 1.");
        ArgumentOutOfRangeException.ThrowIfNegative(tries);
        return Complement.OfProduct(Enumerable.Repeat(chance, tries));
    }

    private static void AddItem(List<BigInteger> ways, int options)
    {
        ways.Add(BigInteger.Zero);
        for (var right = ways.Count - 1; right > 0; right--)
        {
            ways[right] = (ways[right] * (options - 1)) + ways[right - 1];
        }

        ways[0] *= options - 1;
    }
}
