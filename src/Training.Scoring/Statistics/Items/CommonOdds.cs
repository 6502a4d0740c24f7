using MathNet.Numerics.Distributions;

namespace Training.Scoring;

/// <summary>Right and wrong answers of two groups among people who know about as much as each other.</summary>
/// <param name="ReferenceRight">People of the reference group who answered right.</param>
/// <param name="ReferenceWrong">Those of them who did not.</param>
/// <param name="FocalRight">People of the other group, the one that is asked about, who answered right.</param>
/// <param name="FocalWrong">Those of them who did not.</param>
public readonly record struct Stratum(long ReferenceRight, long ReferenceWrong, long FocalRight, long FocalWrong)
{
    internal double Reference => ReferenceRight + ReferenceWrong;

    internal double Focal => FocalRight + FocalWrong;

    internal double Right => ReferenceRight + FocalRight;

    internal double Wrong => ReferenceWrong + FocalWrong;

    internal double People => Reference + Focal;

    /// <summary>Whether both groups are there and both answers too; else the stratum says nothing about the groups.</summary>
    internal bool Compares => Reference > 0 && Focal > 0 && Right > 0 && Wrong > 0;
}

/// <summary>Whether two groups that know as much answer one question alike (Mantel and Haenszel).</summary>
/// <param name="OddsRatio">Common odds ratio over the strata: 1 where the groups answer alike, above 1 where the reference group finds it easier.</param>
/// <param name="LogVariance">Variance of its logarithm.</param>
/// <param name="ChiSquare">Of the hypothesis that the ratio is 1, one degree of freedom, without a correction for continuity.</param>
/// <param name="PValue">Chance of that chi-square or a greater one under the hypothesis, 0–1.</param>
/// <param name="Strata">How many strata told the groups apart.</param>
/// <param name="People">How many people stood in these strata.</param>
public sealed record CommonOdds(double OddsRatio, double LogVariance, double ChiSquare, double PValue, int Strata, long People)
{
    // An odds ratio on the scale of question difficulties: −(4/1.7)·ln is −2.35·ln.
    private const double DeltaPerLog = -2.35;

    /// <summary>The ratio on the delta scale: 0 where the groups answer alike, below 0 where the focal group finds it harder.</summary>
    /// <remarks>Holland and Thayer, "Differential item performance and the Mantel-Haenszel procedure", in Test Validity, 1988.</remarks>
    public double Delta => DeltaPerLog * Math.Log(OddsRatio);

    /// <summary>Standard error of <see cref="Delta"/>.</summary>
    public double DeltaStandardError => Math.Abs(DeltaPerLog) * Math.Sqrt(LogVariance);

    /// <summary>What the strata say together.</summary>
    /// <remarks>
    /// <para>Mantel and Haenszel, "Statistical aspects of the analysis of data from retrospective studies of disease", Journal of the National
    /// Cancer Institute 22, 1959: Σ ad/n over Σ bc/n; χ² = (Σ a − Σ E)² / Σ V without the half that some take off.</para>
    /// <para>Variance of the logarithm: Robins, Breslow and Greenland, "Estimators of the Mantel-Haenszel variance consistent in both sparse
    /// data and large-strata limiting models", Biometrics 42, 1986.</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A count is negative.</exception>
    public static Estimate<CommonOdds> Of(IReadOnlyList<Stratum> strata)
    {
        foreach (var stratum in strata)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(stratum.ReferenceRight, nameof(strata));
            ArgumentOutOfRangeException.ThrowIfNegative(stratum.ReferenceWrong, nameof(strata));
            ArgumentOutOfRangeException.ThrowIfNegative(stratum.FocalRight, nameof(strata));
            ArgumentOutOfRangeException.ThrowIfNegative(stratum.FocalWrong, nameof(strata));
        }

        if (strata.All(stratum => stratum.People == 0)) return Obstacle.NoAnswers;
        if (strata.All(stratum => stratum.Reference == 0) || strata.All(stratum => stratum.Focal == 0)) return Obstacle.GroupEmpty;
        if (strata.All(stratum => stratum.Right == 0) || strata.All(stratum => stratum.Wrong == 0)) return Obstacle.NoItemVariance;
        var comparing = strata.Where(stratum => stratum.Compares).ToList();
        if (comparing.Count == 0) return Obstacle.NoSharedStratum;

        double forReference = 0, forFocal = 0, both = 0, mixed = 0, neither = 0, excess = 0, variance = 0;
        foreach (var stratum in comparing)
        {
            var people = stratum.People;
            var agreeing = (stratum.ReferenceRight + stratum.FocalWrong) / people;
            var opposing = (stratum.ReferenceWrong + stratum.FocalRight) / people;
            var upper = stratum.ReferenceRight * (double)stratum.FocalWrong / people;
            var lower = stratum.ReferenceWrong * (double)stratum.FocalRight / people;
            forReference += upper;
            forFocal += lower;
            both += agreeing * upper;
            mixed += (agreeing * lower) + (opposing * upper);
            neither += opposing * lower;
            excess += stratum.ReferenceRight - (stratum.Reference * stratum.Right / people);
            variance += stratum.Reference * stratum.Focal * stratum.Right * stratum.Wrong / (people * people * (people - 1));
        }

        if (forReference == 0 || forFocal == 0) return Obstacle.OneSidedStrata;
        var chiSquare = excess * excess / variance;
        return new CommonOdds(
            forReference / forFocal,
            (both / (2 * forReference * forReference)) + (mixed / (2 * forReference * forFocal)) + (neither / (2 * forFocal * forFocal)),
            chiSquare,
            // Both tails of a normal, taken on the small side so that a chance near nought keeps its digits.
            2 * Normal.CDF(0, 1, -Math.Sqrt(chiSquare)),
            comparing.Count,
            comparing.Sum(stratum => stratum.ReferenceRight + stratum.ReferenceWrong + stratum.FocalRight + stratum.FocalWrong));
    }

    /// <summary>Confidence interval of the odds ratio.</summary>
    /// <param name="confidence">Two-sided, between 0 and 1; usually 0.95.</param>
    public Interval OddsRatioInterval(double confidence)
    {
        Interval.RequireConfidence(confidence);
        var half = Normal.InvCDF(0, 1, 1 - ((1 - confidence) / 2)) * Math.Sqrt(LogVariance);
        return new(OddsRatio * Math.Exp(-half), OddsRatio * Math.Exp(half));
    }
}
