namespace Training.Scoring;

/// <summary>What an instructor gave one candidate at one practical.</summary>
/// <param name="Checklist">Points of the checklist.</param>
/// <param name="Global">The overall impression, on a scale of its own, given without adding up points.</param>
public sealed record JudgedPerformance(double Checklist, double Global);

/// <summary>Cut score of a practical from the overall impressions of the instructors (borderline regression).</summary>
/// <param name="Cut">The points that the line gives for a borderline impression; with decimals.</param>
/// <param name="Slope">Points for one step of impression; above 0.</param>
/// <param name="Intercept">Points at impression 0.</param>
/// <param name="RSquared">Share of the spread of points that impressions explain, 0 to 1; a low one makes a weak case for the cut.</param>
/// <param name="People">How many performances it rests on.</param>
/// <param name="IsWithinRatings">Whether the borderline impression lies among those given; else the cut is a guess beyond them.</param>
public sealed record BorderlineRegressionCut(double Cut, double Slope, double Intercept, double RSquared, int People, bool IsWithinRatings)
{
    // A line through two people always fits.
    private const int FewestPeople = 3;

    /// <summary>The cut at a borderline impression. For a practical of several stations, the exam's cut is the mean of the stations' cuts.</summary>
    /// <remarks>
    /// Least squares of points on impressions, as in Hejri, Jalili, Muijtjens and van der Vleuten, "Assessing the reliability of the borderline
    /// regression method as a standard setting procedure for objective structured clinical examination", Journal of Research in Medical
    /// Sciences 18, 2013.
    /// </remarks>
    public static Estimate<BorderlineRegressionCut> Of(IReadOnlyList<JudgedPerformance> performances, double borderline)
    {
        if (!performances.All(one => UsableNumber.IsUsable(one.Checklist) && UsableNumber.IsUsable(one.Global)) || !UsableNumber.IsUsable(borderline))
        {
            return Obstacle.NotANumber;
        }

        if (performances.Count < FewestPeople) return Obstacle.TooFewPeople;
        double meanPoints = performances.Average(one => one.Checklist), meanGlobal = performances.Average(one => one.Global);
        if (performances.Select(one => one.Global).Distinct().Count() == 1) return Obstacle.NoVariation;
        if (performances.Select(one => one.Checklist).Distinct().Count() == 1) return Obstacle.ScoresDoNotFollowJudgement;

        var globals = performances.Sum(one => (one.Global - meanGlobal) * (one.Global - meanGlobal));
        var points = performances.Sum(one => (one.Checklist - meanPoints) * (one.Checklist - meanPoints));
        var together = performances.Sum(one => (one.Global - meanGlobal) * (one.Checklist - meanPoints));
        var slope = together / globals;
        if (slope <= 0) return Obstacle.ScoresDoNotFollowJudgement;
        return new BorderlineRegressionCut(
            meanPoints + (slope * (borderline - meanGlobal)),
            slope,
            meanPoints - (slope * meanGlobal),
            together * together / (globals * points),
            performances.Count,
            borderline >= performances.Min(one => one.Global) && borderline <= performances.Max(one => one.Global));
    }
}
