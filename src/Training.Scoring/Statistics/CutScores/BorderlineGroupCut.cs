namespace Training.Scoring;

/// <summary>Cut score from the people whom those who know their work judged neither competent nor not yet competent.</summary>
/// <param name="Median">The cut that the method takes.</param>
/// <param name="Mean">Beside it, to see whether a few scores far out would move the cut.</param>
/// <param name="People">How many borderline people there were; few make a cut that another few would not repeat.</param>
public sealed record BorderlineGroupCut(double Median, double Mean, int People)
{
    /// <summary>The cut of these scores.</summary>
    /// <remarks>Livingston and Zieky, Passing Scores, Educational Testing Service, 1982: the median of the borderline group.</remarks>
    public static Estimate<BorderlineGroupCut> Of(IReadOnlyList<int> scores) => scores.Count == 0
        ? Obstacle.GroupEmpty
        : new BorderlineGroupCut(SampleMoments.Median([.. scores.Select(score => (double)score)]), scores.Average(), scores.Count);
}
