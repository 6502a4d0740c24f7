namespace Training.Scoring;

/// <summary>Shares of people by what is decided and by what would be true; together they make 1.</summary>
/// <param name="PassTruePass">Pass, and rightly.</param>
/// <param name="FailTruePass">Fail, although their true share reaches the cut.</param>
/// <param name="PassTrueFail">Pass, although their true share does not reach the cut.</param>
/// <param name="FailTrueFail">Fail, and rightly.</param>
/// <param name="PassPass">Would pass twice.</param>
/// <param name="FailFail">Would fail twice.</param>
/// <param name="PassFail">Would pass the first time and fail the second.</param>
public readonly record struct Classification(
    double PassTruePass,
    double FailTruePass,
    double PassTrueFail,
    double FailTrueFail,
    double PassPass,
    double FailFail,
    double PassFail)
{
    /// <summary>Share of people who are decided as their true share asks, 0–1.</summary>
    public double Accuracy => PassTruePass + FailTrueFail;

    /// <summary>How consistently two sittings would decide.</summary>
    public DecisionConsistency Consistency => new(PassPass + PassFail, FailFail + PassFail, 2 * PassFail);
}

/// <summary>Accuracy and consistency of pass and fail for scores of any kind, by way of a test of right and wrong that is as reliable.</summary>
/// <remarks>
/// Livingston and Lewis, "Estimating the consistency and accuracy of classifications based on test scores", Journal of Educational
/// Measurement 32, 1995. Scores here run from 0 to the number of items; variances are divided by n − 1.
/// </remarks>
public static class LivingstonLewis
{
    /// <summary>Length of the test of independent items that is as reliable: [M·(max−M) − r·s²]/[s²·(1−r)], not rounded.</summary>
    /// <param name="scores">What people scored.</param>
    /// <param name="reliability">r, above 0 and below 1.</param>
    public static Estimate<double> EffectiveLength(ScoreDistribution scores, double reliability)
    {
        if (reliability is not (> 0 and < 1)) return Obstacle.ReliabilityOutOfRange;
        return scores.SampleVariance.Then(variance => scores.Mean.Then<double>(mean => variance <= 0
            ? Obstacle.NoTotalVariance
            : ((mean * (scores.Items - mean)) - (reliability * variance)) / (variance * (1 - reliability))));
    }

    /// <summary>True shares between 0 and 1 with the mean and variance that the scores suggest.</summary>
    public static Estimate<TrueScores> FitTwo(ScoreDistribution scores, double reliability) =>
        EffectiveLength(scores, reliability).Then<TrueScores>(length =>
        {
            if (length < 2) return Obstacle.TooFewItems;
            var mean = TrueMoment(scores, length, 1);
            var variance = TrueMoment(scores, length, 2) - (mean * mean);
            var shapes = (mean * (1 - mean) / variance) - 1;
            return variance > 0 && shapes > 0 ? new TrueScores(0, 1, mean * shapes, (1 - mean) * shapes) : Obstacle.NoTrueScoreFit;
        });

    /// <summary>True shares between limits of their own, with the first four moments that the scores suggest; not always usable.</summary>
    /// <remarks>Moments and shapes as in Lord, "A strong true-score theory, with applications", Psychometrika 30, 1965.</remarks>
    public static Estimate<TrueScores> FitFour(ScoreDistribution scores, double reliability) =>
        EffectiveLength(scores, reliability).Then<TrueScores>(length =>
        {
            if (length < 4) return Obstacle.TooFewItems;
            var (m1, m2) = (TrueMoment(scores, length, 1), TrueMoment(scores, length, 2));
            var (m3, m4) = (TrueMoment(scores, length, 3), TrueMoment(scores, length, 4));
            var variance = m2 - (m1 * m1);
            if (variance <= 0) return Obstacle.NoTrueScoreFit;
            var skew = (m3 - (3 * m1 * m2) + (2 * Math.Pow(m1, 3))) / Math.Pow(variance, 1.5);
            var kurtosis = (m4 - (4 * m1 * m3) + (6 * m1 * m1 * m2) - (3 * Math.Pow(m1, 4))) / (variance * variance);
            var both = 6 * (kurtosis - (skew * skew) - 1) / (6 + (3 * skew * skew) - (2 * kurtosis));
            var root = Math.Sqrt(1 - (24 * (both + 1) / (((both + 2) * (both + 3) * kurtosis) - (3 * (both - 6) * (both + 1)))));
            var (greater, smaller) = (both / 2 * (1 + root), both / 2 * (1 - root));
            var (alpha, beta) = skew < 0 ? (greater, smaller) : (smaller, greater);
            // Written so that NaN, from a root that does not exist, is refused too.
            if (!(alpha > 0 && beta > 0 && double.IsFinite(alpha + beta))) return Obstacle.NoTrueScoreFit;
            var scale = Math.Sqrt(variance * (alpha + beta + 1) / (alpha * beta));
            return new TrueScores(m1 - (alpha * scale), m1 + (beta * scale), alpha, beta);
        });

    /// <summary>Score on the test of effective length that stands for the cut: the nearest whole number, halves up.</summary>
    /// <param name="effectiveLength">Rounded effective length.</param>
    /// <param name="items">Highest score.</param>
    /// <param name="cut">Cut on the scores, in points.</param>
    public static int EffectiveCut(int effectiveLength, int items, int cut) => (int)Math.Floor((effectiveLength * (double)cut / items) + 0.5);

    /// <summary>Classifies with four parameters where their limits are possible, else with two.</summary>
    /// <param name="scores">What people scored.</param>
    /// <param name="reliability">r, above 0 and below 1.</param>
    /// <param name="cut">In points; a score at the cut passes.</param>
    public static Estimate<Classification> Classify(ScoreDistribution scores, double reliability, int cut) =>
        EffectiveLength(scores, reliability).Then<Classification>(exactLength =>
        {
            var length = (int)Math.Floor(exactLength + 0.5);
            var four = FitFour(scores, reliability);
            var fit = four is Estimate<TrueScores>.Known { Value.IsUsable: true } ? four : FitTwo(scores, reliability);
            return fit.Then<Classification>(trueScores =>
                Classify(trueScores, length, EffectiveCut(length, scores.Items, cut), (double)cut / scores.Items));
        });

    /// <summary>Classifies people whose true shares are known.</summary>
    /// <param name="trueScores">Usable true shares.</param>
    /// <param name="effectiveLength">Independent questions of a form.</param>
    /// <param name="effectiveCut">So many right pass.</param>
    /// <param name="trueCut">Who has this true share or more ought to pass, 0–1.</param>
    /// <exception cref="ArgumentException">The true shares are not usable.</exception>
    public static Classification Classify(TrueScores trueScores, int effectiveLength, int effectiveCut, double trueCut)
    {
        if (!trueScores.IsUsable) throw new ArgumentException("True shares lie from 0 to 1.", nameof(trueScores));
        var tail = new BinomialTail(effectiveCut, effectiveLength);
        var below = trueScores.Below(trueCut).Select(part => (Passing: tail.At(part.Share), part.Weight)).ToList();
        var above = trueScores.Above(trueCut).Select(part => (Passing: tail.At(part.Share), part.Weight)).ToList();
        var all = below.Concat(above).ToList();
        var whole = all.Sum(part => part.Weight);
        return new(
            above.Sum(part => part.Weight * part.Passing) / whole,
            above.Sum(part => part.Weight * (1 - part.Passing)) / whole,
            below.Sum(part => part.Weight * part.Passing) / whole,
            below.Sum(part => part.Weight * (1 - part.Passing)) / whole,
            all.Sum(part => part.Weight * part.Passing * part.Passing) / whole,
            all.Sum(part => part.Weight * (1 - part.Passing) * (1 - part.Passing)) / whole,
            all.Sum(part => part.Weight * part.Passing * (1 - part.Passing)) / whole);
    }

    // Mean over the people of y(y−1)…/(length(length−1)…), with y the score on the effective length: the moment of the true shares.
    private static double TrueMoment(ScoreDistribution scores, double length, int order) => scores.Average(score =>
    {
        var rescaled = (double)score / scores.Items * length;
        if (rescaled < order) return 0;
        var moment = 1.0;
        for (var factor = 0; factor < order; factor++)
        {
            moment *= (rescaled - factor) / (length - factor);
        }

        return moment;
    });
}
