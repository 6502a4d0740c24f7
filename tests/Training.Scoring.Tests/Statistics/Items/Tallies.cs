namespace Training.Scoring.Tests;

/// <summary>Tallies of whole tables.</summary>
internal static class Tallies
{
    public static ScoreTally Of(IReadOnlyList<double[]> table)
    {
        var tally = new ScoreTally(table[0].Length);
        foreach (var row in table) tally.Add(row);
        return tally;
    }

    public static UpperLowerTally UpperLower(IReadOnlyList<double[]> table)
    {
        var tally = new UpperLowerTally(table[0].Length);
        foreach (var row in table) tally.Add(row);
        return tally;
    }

    public static ScoreDistribution Distribution(int items, IEnumerable<(int Score, int People)> counts)
    {
        var scores = new ScoreDistribution(items);
        foreach (var (score, people) in counts) scores.Add(score, people);
        return scores;
    }
}
