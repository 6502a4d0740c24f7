namespace Training.Scoring;

/// <summary>Why somebody should look at a question.</summary>
public enum ItemFlag
{
    /// <summary>Too few answers to say anything; no other flag stands beside it.</summary>
    TooFew,

    /// <summary>Surely fewer than 30 % answer it right.</summary>
    TooHard,

    /// <summary>Surely more than 95 % answer it right.</summary>
    TooEasy,

    /// <summary>Surely those who know the rest answer it wrong rather than right: look at the key.</summary>
    Negative,

    /// <summary>Surely it goes along with the rest by less than 0.20.</summary>
    Weak,
}

/// <summary>Flags a question only where the sample can bear it: the whole 95 % interval must lie beyond the limit.</summary>
/// <remarks>
/// Our own rule. The limits are rules of thumb (Ebel and Frisbie, "Essentials of Educational Measurement", 1991); the interval keeps 22 of 100
/// right from being called too hard, as 270 of 1,000 is.
/// </remarks>
public static class ItemFlags
{
    /// <summary>Fewer answers say nothing.</summary>
    public const int FewestAnswers = 30;

    private const double Confidence = 0.95;
    private const double HardBelow = 0.30;
    private const double EasyAbove = 0.95;
    private const double WeakBelow = 0.20;

    /// <summary>All flags of a question, in the order of the enumeration; empty where nothing stands out.</summary>
    /// <param name="answers">How often it was asked.</param>
    /// <param name="right">How often it was answered right.</param>
    /// <param name="discrimination">Its corrected item-rest correlation; where that cannot be computed, only difficulty is looked at.</param>
    public static IReadOnlyList<ItemFlag> Of(long answers, long right, Estimate<double> discrimination)
    {
        if (answers < FewestAnswers) return [ItemFlag.TooFew];
        var flags = new List<ItemFlag>();
        if (ShareInterval.Wilson(right, answers, Confidence) is Estimate<Interval>.Known(var share))
        {
            if (share.Upper < HardBelow) flags.Add(ItemFlag.TooHard);
            if (share.Lower > EasyAbove) flags.Add(ItemFlag.TooEasy);
        }

        if (discrimination.Then(rest => CorrelationInterval.Fisher(rest, answers, Confidence)) is Estimate<Interval>.Known(var correlation))
        {
            if (correlation.Upper < 0) flags.Add(ItemFlag.Negative);
            else if (correlation.Upper < WeakBelow) flags.Add(ItemFlag.Weak);
        }

        return flags;
    }
}
