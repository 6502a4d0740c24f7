namespace Training.Scoring;

/// <summary>The upper-lower index D of a complete score table, taken person by person.</summary>
/// <param name="items">Number of items.</param>
/// <remarks>
/// <para>Mean score of the best 27 % less that of the weakest 27 %: Kelley, "The selection of upper and lower groups for the validation
/// of test items", Journal of Educational Psychology 30, 1939. People tied at the border share its seats equally.</para>
/// <para>Memory grows with the number of different totals, at most one more than there are items where answers are right or wrong.</para>
/// </remarks>
public sealed class UpperLowerTally(int items)
{
    private readonly ScoreBands _bands = new(items);
    private bool _hasUnusable;

    /// <summary>People in each of the two groups: 27 % of all, halves rounded up.</summary>
    public long GroupSize => SizeOf(_bands.People);

    /// <summary>Adds one person.</summary>
    /// <param name="scores">One score an item, always in the same order.</param>
    /// <exception cref="ArgumentException">The row has another number of scores than the table has items.</exception>
    public void Add(ReadOnlySpan<double> scores)
    {
        if (scores.Length != items) throw new ArgumentException($"The table has {items} items, the row {scores.Length} scores.", nameof(scores));
        var total = 0.0;
        foreach (var score in scores)
        {
            _hasUnusable |= !Moments.IsScore(score);
            total += score;
        }

        var sums = _bands.Add(total);
        for (var item = 0; item < items; item++)
        {
            sums[item] += scores[item];
        }
    }

    /// <summary>D of one item: −1 to 1 for right or wrong.</summary>
    /// <param name="item">Its place in the rows, from 0.</param>
    public Estimate<double> Index(int item)
    {
        if (_hasUnusable) return Obstacle.NotANumber;
        if (_bands.People == 0) return Obstacle.NoAnswers;
        if (GroupSize == 0) return Obstacle.TooFewPeople;
        if (!_bands.Varies) return Obstacle.NoTotalVariance;
        return (_bands.UpperSums(GroupSize)[item] - _bands.LowerSums(GroupSize)[item]) / GroupSize;
    }

    /// <summary>People in a group of 27 %, halves rounded up, in whole numbers since the framework rounds halves to even.</summary>
    internal static long SizeOf(long people) => ((27 * people) + 50) / 100;
}
