using MathNet.Numerics.Distributions;

namespace Training.Scoring;

/// <summary>Consistency of pass and fail, estimated from one sitting a person. A score at the cut or above passes.</summary>
/// <remarks>A short quiz has a low reliability and so a low κ: show the number of people and the reliability beside it.</remarks>
public static class SingleSitting
{
    /// <summary>Livingston's K² = (r·s² + (M−C)²)/(s² + (M−C)²): reliability of the distance from the cut.</summary>
    /// <param name="mean">M of the scores.</param>
    /// <param name="populationVariance">s² of the scores, divided by n.</param>
    /// <param name="reliability">r, at most 1.</param>
    /// <param name="cut">C, in points.</param>
    /// <remarks>Livingston, "Criterion-referenced applications of classical test theory", Journal of Educational Measurement 9, 1972.</remarks>
    public static Estimate<double> Livingston(double mean, double populationVariance, double reliability, double cut)
    {
        if (!double.IsFinite(mean + populationVariance + reliability + cut)) return Obstacle.NotANumber;
        if (reliability > 1) return Obstacle.ReliabilityOutOfRange;
        if (populationVariance <= 0) return Obstacle.NoTotalVariance;
        var distance = (mean - cut) * (mean - cut);
        return ((reliability * populationVariance) + distance) / (populationVariance + distance);
    }

    /// <summary>Each person's rate is regressed towards the mean, and the second sitting is binomial.</summary>
    /// <param name="scores">What people scored.</param>
    /// <param name="reliability">r, 0–1, usually KR-21.</param>
    /// <param name="cut">In points; 0 or less passes everybody, more than there are items nobody.</param>
    /// <remarks>
    /// Subkoviak, "Estimating reliability from a single administration of a criterion-referenced test", Journal of Educational
    /// Measurement 13, 1976: rate r·x/k + (1−r)·M/k, p = mean of u² + (1−u)², where u is the chance to reach the cut.
    /// </remarks>
    public static Estimate<DecisionConsistency> Subkoviak(ScoreDistribution scores, double reliability, int cut)
    {
        if (reliability is not (>= 0 and <= 1)) return Obstacle.ReliabilityOutOfRange;
        if (scores.Items == 0) return Obstacle.TooFewItems;
        return scores.Mean.Then<DecisionConsistency>(mean =>
        {
            var tail = new BinomialTail(cut, scores.Items);
            double Passing(int score) => tail.At(((reliability * score) + ((1 - reliability) * mean)) / scores.Items);
            return new DecisionConsistency(
                scores.Average(Passing),
                scores.Average(score => 1 - Passing(score)),
                scores.Average(score => 2 * Passing(score) * (1 - Passing(score))));
        });
    }

    /// <summary>The beta distribution of true rates that Huynh's method takes from mean and reliability.</summary>
    /// <remarks>Huynh 1976: α = M(1/r − 1), β = k(1/r − 1) − α.</remarks>
    public static Estimate<(double Alpha, double Beta)> HuynhParameters(double mean, int items, double reliability)
    {
        if (reliability is not (> 0 and < 1)) return Obstacle.ReliabilityOutOfRange;
        if (!(mean > 0 && mean < items)) return Obstacle.NoTotalVariance;
        var alpha = mean * ((1 / reliability) - 1);
        return (alpha, (items * ((1 / reliability) - 1)) - alpha);
    }

    /// <summary>True rates are beta distributed, and the scores of both sittings binomial.</summary>
    /// <param name="mean">Mean number right.</param>
    /// <param name="items">Questions of a form.</param>
    /// <param name="reliability">KR-21, above 0 and below 1.</param>
    /// <param name="cut">In points; 0 or less passes everybody, more than there are items nobody.</param>
    /// <remarks>
    /// Huynh, "On the reliability of decisions in domain-referenced testing", Journal of Educational Measurement 13, 1976: the bivariate
    /// beta-binomial C(k,x)·C(k,y)·B(α+x+y, β+2k−x−y)/B(α,β).
    /// </remarks>
    public static Estimate<DecisionConsistency> Huynh(double mean, int items, double reliability, int cut) =>
        HuynhParameters(mean, items, reliability).Then<DecisionConsistency>(rates =>
        {
            var logChoose = new double[items + 1];
            for (var right = 1; right <= items; right++)
            {
                logChoose[right] = logChoose[right - 1] + Math.Log((items - right + 1.0) / right);
            }

            var logAlpha = LogRising(rates.Alpha, 2 * items);
            var logBeta = LogRising(rates.Beta, 2 * items);
            var logBoth = LogRising(rates.Alpha + rates.Beta, 2 * items)[2 * items];
            double bothPass = 0, bothFail = 0, passThenFail = 0;
            for (var first = 0; first <= items; first++)
            {
                for (var second = 0; second <= items; second++)
                {
                    var right = first + second;
                    var chance = Math.Exp(logChoose[first] + logChoose[second] + logAlpha[right] + logBeta[(2 * items) - right] - logBoth);
                    if (first >= cut && second >= cut) bothPass += chance;
                    else if (first < cut && second < cut) bothFail += chance;
                    else if (first >= cut) passThenFail += chance;
                }
            }

            return new DecisionConsistency(bothPass + passThenFail, bothFail + passThenFail, 2 * passThenFail);
        });

    /// <summary>Both scores are normal and correlate by the reliability.</summary>
    /// <param name="standardisedCut">z = (C − ½ − M)/s.</param>
    /// <param name="reliability">r, 0–1.</param>
    /// <remarks>
    /// Peng and Subkoviak, "A note on Huynh's normal approximation procedure for estimating criterion-referenced reliability", Journal of
    /// Educational Measurement 17, 1980. Both above the cut: (1−Φ(z))² + 1/2π · ∫ exp(−z²/(1 + sin θ)) dθ from 0 to arcsin r, which is
    /// Plackett's formula, Biometrika 41, 1954, with the correlation written as sin θ.
    /// </remarks>
    public static Estimate<DecisionConsistency> PengSubkoviak(double standardisedCut, double reliability)
    {
        if (!double.IsFinite(standardisedCut)) return Obstacle.NotANumber;
        if (reliability is not (>= 0 and <= 1)) return Obstacle.ReliabilityOutOfRange;
        var squared = standardisedCut * standardisedCut;
        var integral = Quadrature.Nodes(0, Math.Asin(reliability)).Sum(theta => theta.Weight * Math.Exp(-squared / (1 + Math.Sin(theta.Place))));
        var extra = integral / (2 * Math.PI);
        var passing = Normal.CDF(0, 1, -standardisedCut);
        var failing = Normal.CDF(0, 1, standardisedCut);
        // What both above gain by the correlation, one above and one below lose.
        return new DecisionConsistency(passing, failing, 2 * ((passing * failing) - extra));
    }

    // Logarithms of a·(a+1)·…·(a+m−1) for m from 0: quotients of beta functions without the functions.
    private static double[] LogRising(double start, int factors)
    {
        var logs = new double[factors + 1];
        for (var factor = 0; factor < factors; factor++)
        {
            logs[factor + 1] = logs[factor] + Math.Log(start + factor);
        }

        return logs;
    }
}
