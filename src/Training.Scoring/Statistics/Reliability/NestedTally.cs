namespace Training.Scoring;

/// <summary>Generalisability of scores where everybody is asked other questions, from sittings one at a time; it keeps sums only.</summary>
/// <remarks>
/// <para>Design i:p, items nested in people: Brennan, "Generalizability Theory", Springer 2001, chapter 2. The questions of each form are
/// taken as a random sample of a large pool. Components from a one-way analysis of variance; where forms differ in length, the number of
/// items for the component of people is (N − Σk²/N)/(n−1) (Searle, "Linear Models", 1971, chapter 10).</para>
/// <para>Relative and absolute error are the same here, since nobody's difficulty is somebody else's; a draw by topic varies less than a
/// random sample, so that the coefficient is on the low side.</para>
/// </remarks>
public sealed class NestedTally
{
    private long _people;
    private double _answers;
    private double _squaredLengths;
    private double _right;
    private double _rightSquaredPerLength;

    /// <summary>Adds one sitting; one without questions counts for nothing.</summary>
    /// <param name="asked">Questions asked.</param>
    /// <param name="right">How many of them were answered right.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than none, or more right than asked.</exception>
    public void Add(int asked, int right)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(asked);
        ArgumentOutOfRangeException.ThrowIfNegative(right);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(right, asked);
        if (asked == 0) return;
        _people++;
        _answers += asked;
        _squaredLengths += (double)asked * asked;
        _right += right;
        _rightSquaredPerLength += (double)right * right / asked;
    }

    /// <summary>σ²(p) and σ²(i:p), on the scale of one question; needs two people and, for one of them, two questions.</summary>
    public Estimate<NestedComponents> Components
    {
        get
        {
            if (_people == 0) return Obstacle.NoAnswers;
            if (_people < 2) return Obstacle.TooFewPeople;
            if (_answers <= _people) return Obstacle.TooFewItems;
            // Right or wrong: a score is its own square, so that the sum of squares of single answers is the number right.
            var within = (_right - _rightSquaredPerLength) / (_answers - _people);
            var between = (_rightSquaredPerLength - (_right * _right / _answers)) / (_people - 1);
            var typicalLength = (_answers - (_squaredLengths / _answers)) / (_people - 1);
            return new NestedComponents((between - within) / typicalLength, within, _right / _answers, _people, _answers);
        }
    }
}

/// <summary>Variance components of sittings with different questions, on the scale of one question.</summary>
/// <param name="OfPeople">σ²(p): how much people differ; an estimate that may be negative.</param>
/// <param name="OfQuestions">σ²(i:p): how much one person's answers differ.</param>
/// <param name="Mean">Share right of all answers, 0–1.</param>
/// <param name="People">Sittings, at least 2.</param>
/// <param name="Answers">Answers in all of them.</param>
public readonly record struct NestedComponents(double OfPeople, double OfQuestions, double Mean, long People, double Answers)
{
    /// <summary>Eρ² = Φ = σ²(p)/(σ²(p) + σ²(i:p)/k) for a form of k questions.</summary>
    /// <param name="items">k, at least 1.</param>
    public Estimate<double> Generalisability(int items)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(items, 1);
        return Dependability.Ratio(OfPeople, OfQuestions / items);
    }

    /// <summary>Φ(λ) of a form of k questions: dependability of decisions at a cut (Brennan and Kane 1977).</summary>
    /// <param name="items">k, at least 1.</param>
    /// <param name="cut">λ, the share of questions, 0–1.</param>
    public Estimate<double> PhiAt(int items, double cut)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(items, 1);
        var varianceOfMean = (OfPeople / People) + (OfQuestions / Answers);
        return Dependability.Ratio(OfPeople + ((Mean - cut) * (Mean - cut)) - varianceOfMean, OfQuestions / items);
    }

    /// <summary>Standard error of the share right on a form of k questions, 0–1.</summary>
    /// <param name="items">k, at least 1.</param>
    public double StandardError(int items)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(items, 1);
        return Math.Sqrt(OfQuestions / items);
    }
}
