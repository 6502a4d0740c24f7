using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Panels;

/// <summary>A panel with the text that it judges: what a cut is worked out from.</summary>
/// <param name="File">The panel's rows.</param>
/// <param name="Course">The text that was in force when it was opened.</param>
public sealed record JudgedPanel(PanelFile File, Course Course)
{
    /// <summary>The checklist that is judged; null where it is the quiz.</summary>
    public Checklist? Checklist => Course.Checklists.FirstOrDefault(list => list.Id == File.Panel.TargetId);

    /// <summary>What is judged, as a drawn form holds it.</summary>
    public IReadOnlyList<RatedCell> Cells => Checklist is { } checklist ? RatedCell.Of(checklist)
        : RatedCell.Of(Course.Quiz, [.. Course.Questions.Where(question => File.Panel.ItemIds.Contains(question.Id, StringComparer.Ordinal))]);

    /// <summary>How many questions a form draws, or steps a checklist has.</summary>
    public int FormLength => Cells.Sum(cell => cell.Drawn);

    /// <summary>What came of a round that has ended. Judges are named by their number.</summary>
    public PanelRound Round(int round) => PanelRound.Of(
        Cells, [.. File.Judges.Select(judge => new RatingSheet(NameOf(judge), File.Counting(judge.Id, round)))]);

    /// <summary>The rounds that have ended, the first one first.</summary>
    public IReadOnlyList<(int Number, PanelRound Round)> EndedRounds => [.. File.Ends.Select(end => (end.Round, Round(end.Round)))];

    /// <summary>The last round that has ended, or null.</summary>
    public PanelRound? LastRound => File.Ends.Count == 0 ? null : Round(File.Ends[^1].Round);

    /// <summary>The cut of Hofstee in points of a form.</summary>
    /// <param name="scores">People by points in their first sitting; empty for a checklist, which has none.</param>
    public Estimate<HofsteeCut> Hofstee(IReadOnlyList<int> scores) => scores.Count == 0 ? Obstacle.NobodyScored : HofsteeCut.Of(
        [
            .. File.Judges.Where(judge => File.Bounds.ContainsKey(judge.Id)).Select(judge => new HofsteeJudge(NameOf(judge), BoundsOf(File.Bounds[judge.Id]))),
        ],
        FailCurve.Of(scores));

    /// <summary>The cut in percent at which the line through instructors' impressions is borderline; not for a quiz.</summary>
    /// <param name="impressions">Of the checklist in the text that is judged.</param>
    public Estimate<BorderlineRegressionCut> BorderlineRegression(IReadOnlyList<SheetImpression> impressions) => impressions.Count == 0
        ? Obstacle.NobodyScored
        : BorderlineRegressionCut.Of(
            [.. impressions.Select(one => new JudgedPerformance(one.Percent, (int)one.Impression))], (int)Impression.Borderline);

    /// <summary>How tables of figures name a judge.</summary>
    public static string NameOf(PanelJudge judge) => judge.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    // Judges think in percent, the curve counts points.
    private HofsteeBounds BoundsOf(PanelBounds bounds) => new(
        bounds.LeastCut * FormLength / 100.0, bounds.GreatestCut * FormLength / 100.0, bounds.LeastFail, bounds.GreatestFail);
}

/// <summary>A cut that a lead may adopt, with the figures that an adoption keeps.</summary>
/// <param name="Method">How it was found.</param>
/// <param name="Mean">In percent, two decimals.</param>
/// <param name="StandardError">In points, two decimals; null where the method gives none.</param>
/// <param name="StandardDeviation">In points, two decimals; null where the method gives none.</param>
/// <param name="Judges">How many it is the mean of.</param>
/// <param name="Rounds">How many rounds they judged.</param>
public sealed record AdoptableCut(CutMethod Method, decimal Mean, decimal? StandardError, decimal? StandardDeviation, int Judges, int Rounds)
{
    /// <summary>The smallest whole percent not below the mean as it is kept; at least 1, since nothing is passed with nothing.</summary>
    public int PassPercent => Math.Max(1, PassMarks.Of((double)Mean));

    /// <summary>Whether the panel cannot tell a pass mark from its cut: it lies within one standard error.</summary>
    public bool IsWithinError(int passPercent) => StandardError is { } error && Math.Abs(passPercent - Mean) <= error;

    /// <summary>What can be adopted: the last ended round of ratings, and bounds that met the scores.</summary>
    /// <param name="judged">The panel.</param>
    /// <param name="hofstee">Its bounds met with scores, or why not.</param>
    /// <param name="impressions">Of instructors, for a checklist; empty for a quiz.</param>
    public static IReadOnlyList<AdoptableCut> Of(JudgedPanel judged, Estimate<HofsteeCut> hofstee, IReadOnlyList<SheetImpression> impressions)
    {
        var cuts = new List<AdoptableCut>();
        if (judged.LastRound is { Cut: Estimate<AngoffCut>.Known(var angoff) } round)
        {
            cuts.Add(new(
                CutMethod.Angoff, Rounded(angoff.Percent), Rounded(round.StandardError), Rounded(round.StandardDeviation), angoff.Judges.Count,
                judged.File.Ends.Count));
        }

        if (hofstee is Estimate<HofsteeCut>.Known(var met))
        {
            var judges = judged.File.Bounds.Count - met.LeftOut.Count;
            cuts.Add(new(CutMethod.Hofstee, Rounded(100 * met.Cut / judged.FormLength), null, null, judges, Rounds: 1));
        }

        // A borderline that nobody gave would be a guess beyond what was seen.
        if (judged.BorderlineRegression(impressions) is Estimate<BorderlineRegressionCut>.Known({ IsWithinRatings: true, Cut: > 0 and <= 100 } line))
        {
            var instructors = impressions.Select(one => one.InstructorId).Distinct().Count();
            cuts.Add(new(CutMethod.BorderlineRegression, Rounded(line.Cut), null, null, instructors, Rounds: 1));
        }

        return cuts;
    }

    private static decimal Rounded(double percent) => Math.Round((decimal)percent, 2, MidpointRounding.AwayFromZero);

    private static decimal? Rounded(Estimate<double> points) => points is Estimate<double>.Known(var value) ? Rounded(value) : null;
}
