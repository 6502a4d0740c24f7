namespace Training.Scoring.Tests;

/// <summary>Answers of 2,000 people to 20 questions from a known model; Data/Quizzes/README.md describes the generator.</summary>
internal sealed class SyntheticAnswers
{
    private const int People = 2000;
    private const int Items = 20;

    public SyntheticAnswers(params double[] slopes)
    {
        var random = new SplitMix64(42);
        Locations = [.. Enumerable.Range(0, Items).Select(item => -2.375 + (4.75 * item / (Items - 1)))];
        var rows = new List<double[]>();
        for (var person = 0; person < People; person++)
        {
            var ability = Math.Log((person + 0.5) / (People - person - 0.5)) / 1.7;
            rows.Add([.. Locations.Select((location, item) => IsRight(slopes[item % slopes.Length] * (ability - location)) ? 1.0 : 0.0)]);
        }

        Rows = rows;

        bool IsRight(double logit) => (random.NextUInt64() >> 11) * Math.Pow(2, -53) < 1 / (1 + Math.Exp(-logit));
    }

    public IReadOnlyList<double[]> Rows { get; }

    /// <summary>Difficulty of each question in the model.</summary>
    public IReadOnlyList<double> Locations { get; }
}
