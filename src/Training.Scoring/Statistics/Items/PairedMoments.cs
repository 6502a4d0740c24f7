namespace Training.Scoring;

/// <summary>The score on one item and on all others, of people who come one at a time, and how far the two go together.</summary>
/// <remarks>Running products as in Welford 1962 (see <see cref="Moments"/>).</remarks>
internal struct PairedMoments
{
    private Moments _item;
    private Moments _rest;
    private double _sumOfProducts;

    public readonly Moments Item => _item;

    public readonly Moments Rest => _rest;

    /// <summary>Pearson's correlation with the rest, −1 to 1.</summary>
    public readonly Estimate<double> WithRest => Correlation(_sumOfProducts, _rest);

    public void Add(double item, double rest)
    {
        var deviation = item - _item.Mean;
        _item.Add(item);
        _rest.Add(rest);
        _sumOfProducts += deviation * (rest - _rest.Mean);
    }

    /// <summary>Pearson's correlation with the total, which is the item and the rest together.</summary>
    public readonly Estimate<double> WithTotal(Moments total) => Correlation(_sumOfProducts + _item.SumOfSquares, total);

    private readonly Estimate<double> Correlation(double sumOfProducts, Moments other)
    {
        if (_item.Count == 0) return Obstacle.NoAnswers;
        if (_item.Count < 2) return Obstacle.TooFewPeople;
        if (!_item.Varies) return Obstacle.NoItemVariance;
        if (!other.Varies) return Obstacle.NoTotalVariance;
        return Math.Clamp(sumOfProducts / Math.Sqrt(_item.SumOfSquares * other.SumOfSquares), -1, 1);
    }
}
