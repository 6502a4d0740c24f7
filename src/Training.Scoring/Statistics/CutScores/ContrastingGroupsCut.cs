namespace Training.Scoring;

/// <summary>Cut scores from two groups that were judged competent and not yet competent by other evidence than this score.</summary>
/// <param name="NotYet">How many were judged not yet competent.</param>
/// <param name="Competent">How many were judged competent.</param>
/// <param name="MidpointOfMeans">Halfway between the means of the groups.</param>
/// <param name="NormalCurvesCross">Where normal curves of both groups, each group weighing the same, cross between the means.</param>
/// <param name="FewestErrors">The whole cuts that misjudge the fewest people.</param>
/// <param name="Logistic">Where either judgement is as likely; it moves with the sizes of the groups, the other cuts do not.</param>
public sealed record ContrastingGroupsCut(
    int NotYet,
    int Competent,
    double MidpointOfMeans,
    Estimate<double> NormalCurvesCross,
    FewestErrors FewestErrors,
    Estimate<LogisticCut> Logistic)
{
    /// <summary>The cuts between two groups of scores.</summary>
    /// <remarks>
    /// Livingston and Zieky, Passing Scores, Educational Testing Service, 1982; crossing of the curves: Berk, "Determination of optimal cutting
    /// scores in criterion-referenced measurement", Journal of Experimental Education 45, 1976; logistic: Cizek and Bunch, Standard Setting,
    /// 2007, chapter 8. Normal curves cross where x²(1/v₁ − 1/v₀) + 2x(m₀/v₀ − m₁/v₁) + m₁²/v₁ − m₀²/v₀ + ln(v₁/v₀) = 0.
    /// </remarks>
    public static Estimate<ContrastingGroupsCut> Of(IReadOnlyList<int> notYet, IReadOnlyList<int> competent)
    {
        if (notYet.Count == 0 || competent.Count == 0) return Obstacle.GroupEmpty;
        if (competent.Average() <= notYet.Average()) return Obstacle.ScoresDoNotFollowJudgement;
        double[] lower = [.. notYet.Select(score => (double)score)], upper = [.. competent.Select(score => (double)score)];
        return new ContrastingGroupsCut(
            notYet.Count,
            competent.Count,
            (lower.Average() + upper.Average()) / 2,
            Crossing(lower, upper),
            FewestErrors.Of(notYet, competent),
            LogisticCut.Of(lower, upper));
    }

    private static Estimate<double> Crossing(double[] lower, double[] upper)
    {
        if (lower.Length < 2 || upper.Length < 2) return Obstacle.TooFewPeople;
        double lowerVariance = SampleMoments.Variance(lower), upperVariance = SampleMoments.Variance(upper);
        if (lowerVariance == 0 || upperVariance == 0) return Obstacle.NoVariation;

        double lowerMean = lower.Average(), upperMean = upper.Average();
        var square = (1 / upperVariance) - (1 / lowerVariance);
        var linear = 2 * ((lowerMean / lowerVariance) - (upperMean / upperVariance));
        var constant = (upperMean * upperMean / upperVariance)
            - (lowerMean * lowerMean / lowerVariance)
            + Math.Log(upperVariance / lowerVariance);
        var root = Math.Sqrt(Math.Max((linear * linear) - (4 * square * constant), 0));

        // The form of the solution that stays whole where the variances are the same and the equation is straight.
        var steady = -(linear + Math.CopySign(root, linear)) / 2;
        foreach (var crossing in (double[])[constant / steady, steady / square])
        {
            if (crossing > lowerMean && crossing < upperMean) return crossing;
        }

        return Obstacle.CurvesDoNotCross;
    }
}

/// <summary>The whole cuts at which the fewest people fall on the other side than they were judged to.</summary>
/// <param name="Errors">How many do: judged not yet competent and at the cut or above, or judged competent and below.</param>
/// <param name="FirstCut">Lowest such cut, not below the lowest score.</param>
/// <param name="LastCut">Highest such cut, at most one above the highest score; cuts in between may be worse.</param>
public sealed record FewestErrors(int Errors, int FirstCut, int LastCut)
{
    internal static FewestErrors Of(IReadOnlyList<int> notYet, IReadOnlyList<int> competent)
    {
        // At a cut above a score and up to the next higher one the same people pass.
        int[] scores = [.. notYet.Concat(competent).Distinct().Order()];
        var stretches = scores
            .Zip(scores.Skip(1), (below, next) => (First: below + 1, Last: next))
            .Prepend((First: scores[0], Last: scores[0]))
            .Append((First: scores[^1] + 1, Last: scores[^1] + 1))
            .Select(stretch => (stretch.First, stretch.Last, Errors: ErrorsAt(stretch.Last)))
            .ToList();
        var fewest = stretches.Min(stretch => stretch.Errors);
        var best = stretches.Where(stretch => stretch.Errors == fewest).ToList();
        return new(fewest, best[0].First, best[^1].Last);

        int ErrorsAt(int cut) => notYet.Count(score => score >= cut) + competent.Count(score => score < cut);
    }
}
