namespace Training.Scoring;

/// <summary>Maximum likelihood fit of a logistic curve on one score, of groups that overlap.</summary>
/// <remarks>
/// Newton's method on standardised scores, with the step halved while it would lower the likelihood; that is concave, so that the top, which
/// exists where groups overlap, is found. Hosmer, Lemeshow and Sturdivant, Applied Logistic Regression, 3rd edition, 2013, chapter 1.
/// </remarks>
internal sealed class LogisticFit
{
    private const int MostSteps = 100;
    private const int MostHalvings = 40;

    // In standard deviations of the score and in logits.
    private const double Settled = 1e-11;

    private readonly double _mean;
    private readonly double _spread;
    private readonly (double Score, double Outcome)[] _people;

    private LogisticFit(IReadOnlyList<double> notYet, IReadOnlyList<double> competent)
    {
        double[] scores = [.. notYet, .. competent];
        _mean = scores.Average();
        _spread = SampleMoments.StandardDeviation(scores);
        _people = [.. scores.Select((score, person) => ((score - _mean) / _spread, person < notYet.Count ? 0.0 : 1.0))];
    }

    /// <summary>Null where the steps did not settle.</summary>
    public static (double Intercept, double Slope)? Of(IReadOnlyList<double> notYet, IReadOnlyList<double> competent) =>
        new LogisticFit(notYet, competent).Fit();

    public static double Chance(double logit) => 1 / (1 + Math.Exp(-logit));

    private (double Intercept, double Slope)? Fit()
    {
        double intercept = 0, slope = 0;
        for (var turn = 0; turn < MostSteps; turn++)
        {
            var step = Step(intercept, slope);
            if (!double.IsFinite(step.Intercept) || !double.IsFinite(step.Slope)) return null;
            if (Math.Abs(step.Intercept) < Settled && Math.Abs(step.Slope) < Settled)
            {
                return (intercept - (slope * _mean / _spread), slope / _spread);
            }

            var share = ShareToTake(intercept, slope, step);
            intercept += share * step.Intercept;
            slope += share * step.Slope;
        }

        return null;
    }

    private (double Intercept, double Slope) Step(double intercept, double slope)
    {
        double risesInIntercept = 0, risesInSlope = 0, bends = 0, bendsMixed = 0, bendsInSlope = 0;
        foreach (var (score, outcome) in _people)
        {
            var chance = Chance(intercept + (slope * score));
            var weight = chance * (1 - chance);
            risesInIntercept += outcome - chance;
            risesInSlope += (outcome - chance) * score;
            bends += weight;
            bendsMixed += weight * score;
            bendsInSlope += weight * score * score;
        }

        var determinant = (bends * bendsInSlope) - (bendsMixed * bendsMixed);
        return (
            ((bendsInSlope * risesInIntercept) - (bendsMixed * risesInSlope)) / determinant,
            ((bends * risesInSlope) - (bendsMixed * risesInIntercept)) / determinant);
    }

    private double ShareToTake(double intercept, double slope, (double Intercept, double Slope) step)
    {
        var share = 1.0;
        var likelihood = LogLikelihood(intercept, slope);
        for (var halving = 0; halving < MostHalvings; halving++)
        {
            if (LogLikelihood(intercept + (share * step.Intercept), slope + (share * step.Slope)) >= likelihood + (Settled * likelihood)) break;
            share /= 2;
        }

        return share;
    }

    // ln(1 + e^x) without overflow.
    private double LogLikelihood(double intercept, double slope) => -_people.Sum(person =>
    {
        var logit = (intercept + (slope * person.Score)) * (1 - (2 * person.Outcome));
        return Math.Max(logit, 0) + Math.Log(1 + Math.Exp(-Math.Abs(logit)));
    });
}
