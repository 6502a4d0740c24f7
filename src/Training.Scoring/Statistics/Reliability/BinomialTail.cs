namespace Training.Scoring;

/// <summary>Chance of at least so many right of independent tries that all have the same chance.</summary>
/// <param name="least">So many right; 0 or less is certain, more than there are tries impossible.</param>
/// <param name="tries">Number of tries.</param>
internal sealed class BinomialTail(int least, int tries)
{
    // A term that cannot change the sum any more; those after it are smaller still.
    private const double Negligible = 1e-18;

    private readonly double _logWays = LogWays(least, tries);

    /// <summary>Sums from the border away from the most likely number, where terms only fall; the other tail is what is left of 1.</summary>
    public double At(double chance)
    {
        if (least <= 0) return 1;
        if (least > tries) return 0;
        if (chance <= 0) return 0;
        if (chance >= 1) return 1;
        var odds = chance / (1 - chance);
        var atLeast = Math.Exp(_logWays + (least * Math.Log(chance)) + ((tries - least) * Math.Log(1 - chance)));
        return least > tries * chance ? Math.Min(1, Above(atLeast, odds)) : Math.Max(0, 1 - Below(atLeast, odds));
    }

    private double Above(double atLeast, double odds)
    {
        var sum = 0.0;
        var term = atLeast;
        for (var right = least; right <= tries && term > sum * Negligible; right++)
        {
            sum += term;
            term *= (tries - right) / (right + 1.0) * odds;
        }

        return sum;
    }

    private double Below(double atLeast, double odds)
    {
        var sum = 0.0;
        var term = atLeast * least / (tries - least + 1.0) / odds;
        for (var right = least - 1; right >= 0 && term > sum * Negligible; right--)
        {
            sum += term;
            term *= right / (tries - right + 1.0) / odds;
        }

        return sum;
    }

    private static double LogWays(int least, int tries)
    {
        var log = 0.0;
        for (var factor = 1; factor <= least && factor <= tries; factor++)
        {
            log += Math.Log((tries - factor + 1.0) / factor);
        }

        return log;
    }
}
