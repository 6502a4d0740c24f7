using MathNet.Numerics.Distributions;
using Training.Courses;

namespace Training.Scoring;

/// <summary>How strict or lenient one scorer is against colleagues who saw the same performances, and whether that changes.</summary>
/// <param name="ScorerId">Who.</param>
/// <param name="Performances">How many a colleague saw too.</param>
/// <param name="Difference">Own share of points less the middle one of the colleagues', on average: above 0 is lenient, below 0 strict; −1 to 1.</param>
/// <param name="Likely">Its 95 % interval.</param>
/// <param name="Drift">How the difference changes in a year, with its 95 % interval.</param>
/// <param name="Quarters">By calendar quarter, the oldest first.</param>
/// <remarks>
/// Compared are only steps that all saw, and only performances that both scored: who happened to get the weaker candidates is not called
/// strict for it. The median of the colleagues, so that one lenient colleague does not make all others look strict. Student's t, as for any mean of differences: Student, "The probable error of a mean", Biometrika 6, 1908.
/// </remarks>
public sealed record ScorerSeverity(
    Guid ScorerId,
    int Performances,
    Estimate<double> Difference,
    Estimate<Interval> Likely,
    Estimate<YearlyChange> Drift,
    IReadOnlyList<QuarterSeverity> Quarters)
{
    /// <summary>Fewer performances in common show nothing about a person. Our own rule.</summary>
    public const int FewestPerformances = 5;

    /// <summary>A difference up to here, as a share of points, matters to nobody however sure it is. Our own rule: one prompt in 25 steps.</summary>
    public const double LeastDifference = 0.02;

    private const double DaysOfYear = 365.25;

    /// <summary>What the figures bear.</summary>
    public SeverityFinding Finding => this switch
    {
        { Performances: < FewestPerformances } => SeverityFinding.TooFew,
        { Likely: Estimate<Interval>.Known { Value.Lower: > LeastDifference } } => SeverityFinding.Lenient,
        { Likely: Estimate<Interval>.Known { Value.Upper: < -LeastDifference } } => SeverityFinding.Strict,
        _ => SeverityFinding.LikeOthers,
    };

    /// <summary>One entry for each scorer who shared a performance with another, by id.</summary>
    /// <param name="checklist">Its steps.</param>
    /// <param name="performances">In any order.</param>
    public static IReadOnlyList<ScorerSeverity> Of(Checklist checklist, IReadOnlyList<ScoredPerformance> performances) =>
    [
        .. from performance in performances
           where performance.IsCompared
           from sheet in performance.Sheets
           let difference = DifferenceOf(checklist, performance, sheet.ScorerId)
           where difference is not null
           group (performance.On, difference.Value) by sheet.ScorerId into own
           orderby own.Key
           select Of(own.Key, [.. own]),
    ];

    private static double? DifferenceOf(Checklist checklist, ScoredPerformance performance, Guid scorer)
    {
        var own = ScorerAgreement.ShareOf(checklist, performance, scorer);
        var others = performance.Sheets.Where(sheet => sheet.ScorerId != scorer)
            .Select(sheet => ScorerAgreement.ShareOf(checklist, performance, sheet.ScorerId)).OfType<double>().Order().ToList();
        return others.Count == 0 ? null : own - ((others[(others.Count - 1) / 2] + others[others.Count / 2]) / 2);
    }

    private static ScorerSeverity Of(Guid scorer, IReadOnlyList<(DateOnly On, double Difference)> own) => new(
        scorer,
        own.Count,
        own.Average(one => one.Difference),
        LikelyOf([.. own.Select(one => one.Difference)]),
        DriftOf(own),
        [
            .. own.GroupBy(one => new DateOnly(one.On.Year, (((one.On.Month - 1) / 3) * 3) + 1, 1)).OrderBy(quarter => quarter.Key)
                .Select(quarter => new QuarterSeverity(quarter.Key, quarter.Count(), quarter.Average(one => one.Difference))),
        ]);

    private static Estimate<Interval> LikelyOf(IReadOnlyList<double> differences)
    {
        var moments = new Moments();
        foreach (var difference in differences) moments.Add(difference);
        if (moments.Count < 2) return Obstacle.TooFewPeople;
        if (!moments.Varies) return Obstacle.ErrorVanishes;
        var half = StudentT.InvCDF(0, 1, moments.Count - 1, 0.975) * Math.Sqrt(moments.SampleVariance / moments.Count);
        return new Interval(moments.Mean - half, moments.Mean + half);
    }

    // A straight line through the differences by ordinary least squares; x in years.
    private static Estimate<YearlyChange> DriftOf(IReadOnlyList<(DateOnly On, double Difference)> own)
    {
        var count = own.Count;
        if (count < 3) return Obstacle.TooFewPeople;
        var (middle, mean) = (own.Average(one => (double)one.On.DayNumber), own.Average(one => one.Difference));
        double X((DateOnly On, double) one) => (one.On.DayNumber - middle) / DaysOfYear;
        var spread = own.Sum(one => X(one) * X(one));
        if (spread == 0) return Obstacle.NoVariation;
        var slope = own.Sum(one => X(one) * (one.Difference - mean)) / spread;
        var rest = own.Sum(one => Square(one.Difference - mean - (slope * X(one)))) / (count - 2);
        if (rest <= 1e-20) return Obstacle.ErrorVanishes;
        var half = StudentT.InvCDF(0, 1, count - 2, 0.975) * Math.Sqrt(rest / spread);
        return new YearlyChange(slope, new Interval(slope - half, slope + half));
    }

    private static double Square(double value) => value * value;
}

/// <summary>What a scorer's difference from colleagues bears.</summary>
public enum SeverityFinding
{
    /// <summary>Too few performances in common to say anything.</summary>
    TooFew,

    /// <summary>Nothing sure.</summary>
    LikeOthers,

    /// <summary>Surely gives more points than colleagues for the same.</summary>
    Lenient,

    /// <summary>Surely gives fewer points than colleagues for the same.</summary>
    Strict,
}

/// <summary>How a difference changes in a year.</summary>
/// <param name="Slope">Shares of points in a year.</param>
/// <param name="Likely">Its 95 % interval.</param>
public readonly record struct YearlyChange(double Slope, Interval Likely)
{
    /// <summary>Whether the whole interval lies beyond what matters to nobody, <see cref="ScorerSeverity.LeastDifference"/>, on one side.</summary>
    public bool IsSure => Likely.Lower > ScorerSeverity.LeastDifference || Likely.Upper < -ScorerSeverity.LeastDifference;
}

/// <summary>A scorer's difference in one quarter.</summary>
/// <param name="From">Its first day.</param>
/// <param name="Performances">How many.</param>
/// <param name="Difference">Own share less the middle one of the colleagues', on average.</param>
public sealed record QuarterSeverity(DateOnly From, int Performances, double Difference);
