namespace Training.Scoring;

/// <summary>What one judge, or the mean of a panel, would accept.</summary>
/// <param name="MinCut">Lowest acceptable cut, even if everybody passes.</param>
/// <param name="MaxCut">Highest acceptable cut, even if nobody passes.</param>
/// <param name="MinFailPercent">Lowest acceptable per cent failing.</param>
/// <param name="MaxFailPercent">Highest acceptable per cent failing.</param>
public sealed record HofsteeBounds(double MinCut, double MaxCut, double MinFailPercent, double MaxFailPercent)
{
    internal LeftOutReason? WhyUnusable(int greatestScore)
    {
        // Written so that NaN lies outside.
        var isInRange = MinCut >= 0 && MinCut <= greatestScore && MaxCut >= 0 && MaxCut <= greatestScore
            && MinFailPercent is >= 0 and <= 100 && MaxFailPercent is >= 0 and <= 100;
        if (!isInRange) return LeftOutReason.OutOfRange;
        return MinCut <= MaxCut && MinFailPercent <= MaxFailPercent ? null : LeftOutReason.BoundsSwapped;
    }
}

/// <summary>One judge's bounds; null where not all four were given.</summary>
public sealed record HofsteeJudge(string Name, HofsteeBounds? Bounds)
{
    /// <summary>Why a cut on scores up to the greatest does without the judge, or null where it does not.</summary>
    public LeftOutReason? WhyLeftOut(int greatestScore) => Bounds is null ? LeftOutReason.Incomplete : Bounds.WhyUnusable(greatestScore);
}

/// <summary>How the curve of the people who fail lies to what the panel accepts.</summary>
public enum HofsteeMeeting
{
    /// <summary>It crosses the panel's line: a compromise exists.</summary>
    Crosses,

    /// <summary>Already at the lowest acceptable cut more fail than is acceptable. The cut is that lowest one.</summary>
    AboveAll,

    /// <summary>Still at the highest acceptable cut fewer fail than is acceptable. The cut is that highest one.</summary>
    BelowAll,
}

/// <summary>Compromise between what a panel thinks is needed and how many would fail (Hofstee).</summary>
/// <param name="Bounds">Means of the judges' bounds.</param>
/// <param name="Cut">Where the curve, its whole scores joined by straight lines, meets the line of the panel; with decimals.</param>
/// <param name="Meeting">Tell the panel unless it is <see cref="HofsteeMeeting.Crosses"/>: the cut is then no compromise.</param>
/// <param name="WholeScore">
/// Smallest whole score not below the cut. Where the curve crosses, that is the first at which the curve as steps lies on or above the line:
/// curve and steps are the same at whole scores, and once above the line the curve stays there.
/// </param>
/// <param name="FailPercentAtWholeScore">Per cent that fail at that score.</param>
/// <param name="LeftOut">Judges that it does without.</param>
public sealed record HofsteeCut(
    HofsteeBounds Bounds,
    double Cut,
    HofsteeMeeting Meeting,
    int WholeScore,
    double FailPercentAtWholeScore,
    IReadOnlyList<LeftOutJudge> LeftOut)
{
    /// <summary>The cut of a panel.</summary>
    /// <remarks>
    /// Hofstee, "The case for compromise in educational selection and grading", in Anderson and Helmick (eds.), On Educational Testing,
    /// 1983: the line runs from (lowest cut, most failing) to (highest cut, fewest failing).
    /// </remarks>
    public static Estimate<HofsteeCut> Of(IReadOnlyList<HofsteeJudge> judges, FailCurve curve)
    {
        var usable = judges
            .Where(judge => judge.WhyLeftOut(curve.GreatestScore) is null)
            .Select(judge => judge.Bounds)
            .OfType<HofsteeBounds>()
            .ToList();
        if (usable.Count == 0) return Obstacle.NoUsableJudge;
        var means = new HofsteeBounds(
            usable.Average(bounds => bounds.MinCut),
            usable.Average(bounds => bounds.MaxCut),
            usable.Average(bounds => bounds.MinFailPercent),
            usable.Average(bounds => bounds.MaxFailPercent));
        return Of(
            means,
            curve,
            [.. from judge in judges
                let reason = judge.WhyLeftOut(curve.GreatestScore)
                where reason is not null
                select new LeftOutJudge(judge.Name, reason.Value)]);
    }

    /// <summary>The cut of bounds that a panel settled on together.</summary>
    public static Estimate<HofsteeCut> Of(HofsteeBounds bounds, FailCurve curve) => Of(bounds, curve, []);

    private static Estimate<HofsteeCut> Of(HofsteeBounds bounds, FailCurve curve, IReadOnlyList<LeftOutJudge> leftOut)
    {
        if (bounds.WhyUnusable(curve.GreatestScore) is not null) return Obstacle.OutOfRange;
        if (curve.People == 0) return Obstacle.NobodyScored;
        var meeting = MeetingOf(bounds, curve);
        var cut = meeting switch
        {
            HofsteeMeeting.Crosses => curve.Reaches(Line(bounds), bounds.MinCut, bounds.MaxCut) ?? bounds.MaxCut,
            HofsteeMeeting.AboveAll => bounds.MinCut,
            HofsteeMeeting.BelowAll => bounds.MaxCut,
        };
        var whole = PassMarks.Of(cut);
        return new HofsteeCut(bounds, cut, meeting, whole, curve.FailPercentAt(whole), leftOut);
    }

    private static HofsteeMeeting MeetingOf(HofsteeBounds bounds, FailCurve curve)
    {
        if (curve.JoinedAt(bounds.MinCut) > bounds.MaxFailPercent) return HofsteeMeeting.AboveAll;
        return curve.JoinedAt(bounds.MaxCut) < bounds.MinFailPercent ? HofsteeMeeting.BelowAll : HofsteeMeeting.Crosses;
    }

    // Bounds that allow one cut only have an upright line; it is met at that cut, whatever its slope is taken to be.
    private static CutLine Line(HofsteeBounds bounds) => new(
        bounds.MinCut,
        bounds.MaxFailPercent,
        bounds.MaxCut > bounds.MinCut ? (bounds.MinFailPercent - bounds.MaxFailPercent) / (bounds.MaxCut - bounds.MinCut) : 0);
}
