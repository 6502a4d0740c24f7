namespace Training.Scoring.Tests;

/// <summary>Every row of Data/cut-expected.csv, to its tolerance; sources stand in the file and in Data/agreement-cut.README.md.</summary>
public sealed class CutScoreExpectedTests
{
    private static readonly IReadOnlyList<ExpectedFigure> Expected = JudgementFiles.Expected("cut-expected.csv");

    private static readonly Lazy<Dictionary<string, double>> Computed = new(() => new(
        [.. Angoff(), .. Hofstee(), .. Beuk(), .. Groups(), .. StudyHours(), .. Regression()], StringComparer.Ordinal));

    public static TheoryData<string> Names => [.. Expected.Select(row => row.Name)];

    [Theory, MemberData(nameof(Names))]
    public void The_expected_value_comes_out(string name) => Expected.Single(row => row.Name == name).Assert(Computed.Value[name]);

    [Fact]
    public void Every_row_is_asserted_and_nothing_else_is() =>
        Assert.Equal(Expected.Select(row => row.Name).Order(StringComparer.Ordinal), Computed.Value.Keys.Order(StringComparer.Ordinal));

    private static IEnumerable<KeyValuePair<string, double>> Angoff()
    {
        var judges = JudgementFiles.Rows("cut-angoff.csv")
            .Select(row => new AngoffJudge(row[0], [.. row.Skip(1).Select(cell => (double?)double.Parse(cell))]));
        var cut = AngoffCut.Of(10, [.. judges]).Known();
        return
        [
            new("cut.angoff.raw", cut.Cut),
            new("cut.angoff.percent", cut.Percent),
            new("cut.angoff.sd_judges", cut.StandardDeviation.Known()),
            new("cut.angoff.se_judges", cut.StandardError.Known()),
            new("cut.angoff.median_of_judges", cut.MedianOfJudges),
            new("cut.angoff.pass_mark_ceiling", cut.PassMark),
            .. cut.ItemMeans.Select((mean, item) => KeyValuePair.Create($"cut.angoff.item_mean.q{item + 1}", mean)),
        ];
    }

    private static IEnumerable<KeyValuePair<string, double>> Hofstee()
    {
        var judges = JudgementFiles.Rows("cut-hofstee-judges.csv")
            .Select(row => (Name: row[0], Bounds: row.Skip(1).Select(double.Parse).ToArray()))
            .Select(judge => new HofsteeJudge(judge.Name, new(judge.Bounds[0], judge.Bounds[1], judge.Bounds[2], judge.Bounds[3])));
        var cut = HofsteeCut.Of([.. judges], Exam()).Known();
        Assert.Equal(HofsteeMeeting.Crosses, cut.Meeting);
        return
        [
            new("cut.hofstee.mean_min_cut", cut.Bounds.MinCut),
            new("cut.hofstee.mean_max_cut", cut.Bounds.MaxCut),
            new("cut.hofstee.mean_min_fail_pct", cut.Bounds.MinFailPercent),
            new("cut.hofstee.mean_max_fail_pct", cut.Bounds.MaxFailPercent),
            new("cut.hofstee.raw", cut.Cut),
            new("cut.hofstee.whole_score", cut.WholeScore),
            new("cut.hofstee.fail_pct_at_whole", cut.FailPercentAtWholeScore),
            new("cut.hofstee.curve_above_box", HofsteeCut.Of(new HofsteeBounds(30, 34, 0, 10), Exam()).Known().Cut),
            new("cut.hofstee.curve_below_box", HofsteeCut.Of(new HofsteeBounds(14, 18, 20, 40), Exam()).Known().Cut),
        ];
    }

    private static IEnumerable<KeyValuePair<string, double>> Beuk()
    {
        var judges = JudgementFiles.Rows("cut-beuk-judges.csv")
            .Select(row => new BeukJudge(row[0], double.Parse(row[1]), double.Parse(row[2])));
        var cut = BeukCut.Of([.. judges], Exam()).Known();
        return
        [
            new("cut.beuk.mean_cut", cut.MeanCut),
            new("cut.beuk.mean_pass_pct", cut.MeanPassPercent),
            new("cut.beuk.slope", cut.Slope.Known()),
            new("cut.beuk.raw", cut.Cut),
        ];
    }

    private static IEnumerable<KeyValuePair<string, double>> Groups()
    {
        var groups = JudgementFiles.Rows("cut-judged-groups.csv").ToLookup(row => row[2], row => int.Parse(row[1]), StringComparer.Ordinal);
        var borderline = BorderlineGroupCut.Of([.. groups["borderline"]]).Known();
        var contrasting = ContrastingGroupsCut.Of([.. groups["not_yet"]], [.. groups["competent"]]).Known();
        var fitted = Assert.IsType<LogisticCut.Fitted>(contrasting.Logistic.Known());
        return
        [
            new("cut.groups.n_not_yet", contrasting.NotYet),
            new("cut.groups.n_borderline", borderline.People),
            new("cut.groups.n_competent", contrasting.Competent),
            new("cut.borderline_group.median", borderline.Median),
            new("cut.borderline_group.mean", borderline.Mean),
            new("cut.contrasting.midpoint_of_means", contrasting.MidpointOfMeans),
            new("cut.contrasting.normal_curves_cross", contrasting.NormalCurvesCross.Known()),
            new("cut.contrasting.min_errors", contrasting.FewestErrors.Errors),
            new("cut.contrasting.min_errors_first_cut", contrasting.FewestErrors.FirstCut),
            new("cut.contrasting.min_errors_last_cut", contrasting.FewestErrors.LastCut),
            new("cut.contrasting.logit_b0", fitted.Intercept),
            new("cut.contrasting.logit_b1", fitted.Slope),
            new("cut.contrasting.logit_cut", fitted.Cut),
        ];
    }

    private static IEnumerable<KeyValuePair<string, double>> StudyHours()
    {
        var students = JudgementFiles.Numbers("cut-study-hours.csv").ToLookup(row => row[1], row => row[0]);
        var fitted = Assert.IsType<LogisticCut.Fitted>(LogisticCut.Of([.. students[0]], [.. students[1]]).Known());
        return
        [
            new("cut.study_hours.logit_b0", fitted.Intercept),
            new("cut.study_hours.logit_b1", fitted.Slope),
            new("cut.study_hours.logit_cut", fitted.Cut),
            new("cut.study_hours.p_at_2h", fitted.ChanceAt(2)),
        ];
    }

    private static IEnumerable<KeyValuePair<string, double>> Regression()
    {
        var performances = JudgementFiles.Numbers("cut-checklist-global.csv").Select(row => new JudgedPerformance(row[1], row[2]));
        var cut = BorderlineRegressionCut.Of([.. performances], borderline: 2).Known();
        return
        [
            new("cut.borderline_regression.slope", cut.Slope),
            new("cut.borderline_regression.intercept", cut.Intercept),
            new("cut.borderline_regression.r2", cut.RSquared),
            new("cut.borderline_regression.cut_at_2", cut.Cut),
        ];
    }

    private static FailCurve Exam() => FailCurve.Of([.. JudgementFiles.Counts("Quizzes/exam-40x200.csv").Select(row => row[1])]);
}
