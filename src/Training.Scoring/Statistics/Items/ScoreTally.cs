namespace Training.Scoring;

/// <summary>Takes a complete table of scores person by person, and keeps only sums: memory grows with the items, never with the people.</summary>
/// <param name="items">Number of items; each person has a score on every one.</param>
/// <remarks>
/// <para>Item-rest correlation: Henrysson, "Correction of item-total correlations in item analysis", Psychometrika 28, 1963.</para>
/// <para>For forms in which people see different questions use <see cref="DrawnTally"/>: a total over different questions is no total.</para>
/// </remarks>
public sealed class ScoreTally(int items)
{
    private readonly PairedMoments[] _items = new PairedMoments[items];
    private Moments _total;
    private bool _hasUnusable;
    private bool _isRightOrWrong = true;

    /// <summary>Number of items.</summary>
    public int Items => items;

    /// <summary>People added so far.</summary>
    public long People => _total.Count;

    /// <summary>Mean of the total scores.</summary>
    public Estimate<double> TotalMean => WhyNot(people: 1) is { } reason ? reason : _total.Mean;

    /// <summary>Variance of the total scores, divided by the number of people; 0 where all have the same total.</summary>
    public Estimate<double> PopulationVariance => WhyNot(people: 1) is { } reason ? reason : _total.PopulationVariance;

    /// <summary>Variance of the total scores, divided by the number of people less one.</summary>
    public Estimate<double> SampleVariance => WhyNot(people: 2) is { } reason ? reason : _total.SampleVariance;

    /// <summary>Cronbach's alpha: k/(k−1) · (1 − Σ var(item) / var(total)), the same divisor in both variances.</summary>
    /// <remarks>Cronbach, "Coefficient alpha and the internal structure of tests", Psychometrika 16, 1951. It may be negative.</remarks>
    public Estimate<double> Alpha => WhyNot(people: 2) is { } reason ? reason : AlphaOf(items, SumOverItems(item => item.SumOfSquares), _total);

    /// <summary>KR-20: k/(k−1) · (1 − Σ p(1−p) / var(total)), the total's variance divided by n because p(1−p) is so too.</summary>
    /// <remarks>Kuder and Richardson, "The theory of the estimation of test reliability", Psychometrika 2, 1937, formula 20.</remarks>
    public Estimate<double> Kr20
    {
        get
        {
            if (WhyNot(people: 2) is { } reason) return reason;
            if (!_isRightOrWrong) return Obstacle.NotRightOrWrong;
            if (items < 2) return Obstacle.TooFewItems;
            if (!_total.Varies) return Obstacle.NoTotalVariance;
            return Stepped(items, SumOverItems(item => item.Mean * (1 - item.Mean)) / _total.PopulationVariance);
        }
    }

    /// <summary>Variance components of people, items and what is left, from the analysis of variance of the crossed table.</summary>
    /// <remarks>Brennan, "Generalizability Theory", Springer 2001, design p × i. Estimates may be negative; they are given as they are.</remarks>
    public Estimate<CrossedComponents> Components
    {
        get
        {
            if (WhyNot(people: 2) is { } reason) return reason;
            if (items < 2) return Obstacle.TooFewItems;
            var people = (double)_total.Count;
            var mean = _total.Mean / items;
            var sumOfItems = people * SumOverItems(item => (item.Mean - mean) * (item.Mean - mean));
            var sumOfPeople = _total.SumOfSquares / items;
            var sumOfRest = SumOverItems(item => item.SumOfSquares) - sumOfPeople;

            var meanSquareOfItems = sumOfItems / (items - 1);
            var meanSquareOfPeople = sumOfPeople / (people - 1);
            var meanSquareOfRest = sumOfRest / ((people - 1) * (items - 1));
            return new CrossedComponents(
                (meanSquareOfPeople - meanSquareOfRest) / items,
                (meanSquareOfItems - meanSquareOfRest) / people,
                meanSquareOfRest,
                mean,
                _total.Count,
                items);
        }
    }

    /// <summary>Adds one person. A row with a score that is no number makes every statistic of the table uncomputable.</summary>
    /// <param name="scores">One score an item, always in the same order.</param>
    /// <exception cref="ArgumentException">The row has another number of scores than the table has items.</exception>
    public void Add(ReadOnlySpan<double> scores)
    {
        if (scores.Length != items) throw new ArgumentException($"The table has {items} items, the row {scores.Length} scores.", nameof(scores));
        var total = 0.0;
        foreach (var score in scores)
        {
            _hasUnusable |= !Moments.IsScore(score);
            _isRightOrWrong &= score is 0 or 1;
            total += score;
        }

        _total.Add(total);
        for (var item = 0; item < items; item++)
        {
            _items[item].Add(scores[item], total - scores[item]);
        }
    }

    /// <summary>What the table says about one item.</summary>
    /// <param name="item">Its place in the rows, from 0.</param>
    public ItemResult Item(int item)
    {
        var sums = _items[item];
        Estimate<double> difficulty = WhyNot(people: 1) is { } noMean ? noMean : sums.Item.Mean;
        if (WhyNot(people: 2) is { } reason) return new(difficulty, reason, reason, reason);
        return new(
            difficulty,
            items < 2 ? Obstacle.TooFewItems : sums.WithRest,
            sums.WithTotal(_total),
            AlphaOf(items - 1, SumOverItems(one => one.SumOfSquares) - sums.Item.SumOfSquares, sums.Rest));
    }

    // Both sums of squares would be divided by the same number.
    private static Estimate<double> AlphaOf(int items, double sumOfItemSquares, Moments total)
    {
        if (items < 2) return Obstacle.TooFewItems;
        if (!total.Varies) return Obstacle.NoTotalVariance;
        return Stepped(items, sumOfItemSquares / total.SumOfSquares);
    }

    // At most 1, which rounding may miss by a last digit.
    private static double Stepped(int items, double shareOfItems) => Math.Min(1, items / (items - 1.0) * (1 - shareOfItems));

    private double SumOverItems(Func<Moments, double> ofItem)
    {
        var sum = 0.0;
        foreach (var item in _items)
        {
            sum += ofItem(item.Item);
        }

        return sum;
    }

    private Obstacle? WhyNot(int people)
    {
        if (items == 0) return Obstacle.TooFewItems;
        if (_hasUnusable) return Obstacle.NotANumber;
        if (_total.Count == 0) return Obstacle.NoAnswers;
        return _total.Count < people ? Obstacle.TooFewPeople : null;
    }
}
