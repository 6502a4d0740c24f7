namespace Training.Scoring;

/// <summary>The score at which either judgement is as likely, from people judged by other evidence.</summary>
public abstract record LogisticCut
{
    private LogisticCut()
    {
    }

    /// <summary>The cut, with decimals.</summary>
    public abstract double Cut { get; }

    /// <summary>A curve of the chance to be judged competent, fitted by maximum likelihood.</summary>
    /// <param name="Intercept">b₀.</param>
    /// <param name="Slope">b₁ for one point of score; above 0.</param>
    /// <param name="IsWithinScores">Whether the cut lies among the scores; else it is a guess beyond what was seen.</param>
    public sealed record Fitted(double Intercept, double Slope, bool IsWithinScores) : LogisticCut
    {
        /// <inheritdoc/>
        public override double Cut => -Intercept / Slope;

        /// <summary>The chance, 0 to 1, that somebody with a score is judged competent.</summary>
        public double ChanceAt(double score) => LogisticFit.Chance(Intercept + (Slope * score));
    }

    /// <summary>
    /// A cut tells the groups apart without an error, or with errors at one single score. Then no curve fits best, the steeper the better;
    /// the cut is the middle of the gap.
    /// </summary>
    /// <param name="HighestNotYet">Highest score of those not yet competent.</param>
    /// <param name="LowestCompetent">Lowest score of the competent; not below the other.</param>
    public sealed record Separated(double HighestNotYet, double LowestCompetent) : LogisticCut
    {
        /// <inheritdoc/>
        public override double Cut => (HighestNotYet + LowestCompetent) / 2;
    }

    /// <summary>The cut between two groups.</summary>
    /// <remarks>
    /// Cut −b₀/b₁. Whether a finite fit exists: Albert and Anderson, "On the existence of maximum likelihood estimates in logistic
    /// regression models", Biometrika 71, 1984; with one score it does if and only if the groups overlap.
    /// </remarks>
    public static Estimate<LogisticCut> Of(IReadOnlyList<double> notYet, IReadOnlyList<double> competent)
    {
        if (!notYet.Concat(competent).All(UsableNumber.IsUsable)) return Obstacle.NotANumber;
        if (notYet.Count == 0 || competent.Count == 0) return Obstacle.GroupEmpty;
        if (notYet.Concat(competent).Distinct().Count() == 1) return Obstacle.NoVariation;
        if (notYet.Max() <= competent.Min()) return new Separated(notYet.Max(), competent.Min());
        if (competent.Max() <= notYet.Min()) return Obstacle.ScoresDoNotFollowJudgement;
        if (LogisticFit.Of(notYet, competent) is not { } fit) return Obstacle.FitDidNotSettle;
        if (fit.Slope <= 0) return Obstacle.ScoresDoNotFollowJudgement;

        var cut = -fit.Intercept / fit.Slope;
        var isWithin = cut >= Math.Min(notYet.Min(), competent.Min()) && cut <= Math.Max(notYet.Max(), competent.Max());
        return new Fitted(fit.Intercept, fit.Slope, isWithin);
    }
}
