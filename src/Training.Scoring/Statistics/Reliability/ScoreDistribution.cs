namespace Training.Scoring;

/// <summary>How many people reached each number of right answers on forms of the same length.</summary>
/// <param name="items">Questions of a form.</param>
public sealed class ScoreDistribution(int items)
{
    private readonly long[] _people = new long[items + 1];

    /// <summary>Questions of a form: the highest score.</summary>
    public int Items => items;

    /// <summary>People added so far.</summary>
    public long People { get; private set; }

    /// <summary>People per score, from 0 right to all right.</summary>
    public IReadOnlyList<long> Counts => _people;

    /// <summary>Mean number right.</summary>
    public Estimate<double> Mean => People == 0 ? Obstacle.NoAnswers : SumOf(score => score) / People;

    /// <summary>Variance divided by the number of people; 0 where all have the same score.</summary>
    public Estimate<double> PopulationVariance => Mean.Then<double>(mean => SumOfSquares(mean) / People);

    /// <summary>Variance divided by the number of people less one.</summary>
    public Estimate<double> SampleVariance =>
        Mean.Then<double>(mean => People < 2 ? Obstacle.TooFewPeople : SumOfSquares(mean) / (People - 1));

    /// <summary>Adds people who have this score.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No form of this length gives the score, or the number of people is negative.</exception>
    public void Add(int score, long people = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(score);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(score, items);
        ArgumentOutOfRangeException.ThrowIfNegative(people);
        _people[score] += people;
        People += people;
    }

    /// <summary>Mean over the people of something that depends on the score alone; there must be people.</summary>
    internal double Average(Func<int, double> ofScore) => SumOf(ofScore) / People;

    private double SumOfSquares(double mean) => SumOf(score => (score - mean) * (score - mean));

    private double SumOf(Func<int, double> ofScore)
    {
        var sum = 0.0;
        for (var score = 0; score <= items; score++)
        {
            if (_people[score] > 0) sum += _people[score] * ofScore(score);
        }

        return sum;
    }
}
