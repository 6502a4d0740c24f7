namespace Training.Scoring;

/// <summary>What one judge said in one round.</summary>
/// <param name="Judge">How the judge is named.</param>
/// <param name="Percents">By question or step: how many in a hundred just competent people are right, 0–100; what is not rated is not there.</param>
public sealed record RatingSheet(string Judge, IReadOnlyDictionary<string, int> Percents);

/// <summary>One judge against the panel.</summary>
/// <param name="Judge">How the judge is named.</param>
/// <param name="Percent">Their own cut, in percent of a drawn form.</param>
/// <param name="Severity">By how many points that lies above the cut of the panel; below 0 for a mild judge.</param>
public sealed record JudgeSeverity(string Judge, double Percent, double Severity);

/// <summary>What all judges said of one question or step, also those whom the cut does without.</summary>
/// <param name="ItemId">Which.</param>
/// <param name="Percents">In the order of the judges.</param>
/// <param name="Mean">In percent.</param>
/// <param name="StandardDeviation">In percentage points, divided by one less than there are.</param>
public sealed record ItemSpread(string ItemId, IReadOnlyList<int> Percents, Estimate<double> Mean, Estimate<double> StandardDeviation);

/// <summary>One round of a panel: its cut and its spread.</summary>
/// <param name="Cut">Of a drawn form; judges who left something out are named in it.</param>
/// <param name="Judges">Those of the cut, the most severe first.</param>
/// <param name="Items">In the order of the cells.</param>
public sealed record PanelRound(Estimate<AngoffCut> Cut, IReadOnlyList<JudgeSeverity> Judges, IReadOnlyList<ItemSpread> Items)
{
    /// <summary>The cut in percent.</summary>
    public Estimate<double> Percent => Cut.Then<double>(cut => cut.Percent);

    /// <summary>Standard deviation of the judges' percents.</summary>
    public Estimate<double> StandardDeviation => Cut.Then(cut => InPercent(cut, cut.StandardDeviation));

    /// <summary>Standard error of the cut, in percentage points.</summary>
    public Estimate<double> StandardError => Cut.Then(cut => InPercent(cut, cut.StandardError));

    /// <summary>The round of these judges.</summary>
    /// <remarks>
    /// A form draws anew for everybody, so the items of the cut are the places of a drawn form: each place of a cell is rated by the
    /// judge's mean over the cell. Rule: docs/rules.md, "Cuts".
    /// </remarks>
    /// <exception cref="ArgumentException">There is nothing to rate.</exception>
    public static PanelRound Of(IReadOnlyList<RatedCell> cells, IReadOnlyList<RatingSheet> sheets)
    {
        if (cells.Count == 0) throw new ArgumentException("There is nothing to rate.", nameof(cells));
        var cut = AngoffCut.Of(
            cells.Sum(cell => cell.Drawn),
            [.. sheets.Select(sheet => new AngoffJudge(sheet.Judge, [.. cells.SelectMany(cell => PlacesOf(cell, sheet))]))]);
        var items = cells.SelectMany(cell => cell.ItemIds).Select(item => SpreadOf(item, sheets));
        return new(cut, cut is Estimate<AngoffCut>.Known(var known) ? SeveritiesOf(known) : [], [.. items]);
    }

    /// <summary>The questions or steps on which judges differ most; those on which they agree are not among them.</summary>
    public IReadOnlyList<ItemSpread> MostDisputed(int most) =>
    [
        .. (from item in Items
            let spread = item.StandardDeviation is Estimate<double>.Known(var points) ? points : 0
            where spread > 0
            orderby spread descending
            select item).Take(most),
    ];

    private static IEnumerable<double?> PlacesOf(RatedCell cell, RatingSheet sheet)
    {
        var rated = cell.ItemIds.Where(sheet.Percents.ContainsKey).Select(item => sheet.Percents[item]).ToList();
        double? place = rated.Count == cell.ItemIds.Count ? rated.Average() / 100 : null;
        return Enumerable.Repeat(place, cell.Drawn);
    }

    private static IReadOnlyList<JudgeSeverity> SeveritiesOf(AngoffCut cut)
    {
        var items = cut.ItemMeans.Count;
        return
        [
            .. cut.Judges.Select(judge => new JudgeSeverity(judge.Name, 100 * judge.Sum / items, 100 * (judge.Sum - cut.Cut) / items))
                .OrderByDescending(judge => judge.Severity),
        ];
    }

    private static ItemSpread SpreadOf(string item, IReadOnlyList<RatingSheet> sheets)
    {
        var percents = sheets.Where(sheet => sheet.Percents.ContainsKey(item)).Select(sheet => sheet.Percents[item]).ToList();
        double[] numbers = [.. percents.Select(percent => (double)percent)];
        return new(
            item,
            percents,
            numbers.Length == 0 ? Obstacle.NoUsableJudge : numbers.Average(),
            numbers.Length < 2 ? Obstacle.OneJudge : SampleMoments.StandardDeviation(numbers));
    }

    private static Estimate<double> InPercent(AngoffCut cut, Estimate<double> answers) =>
        answers.Then<double>(right => 100 * right / cut.ItemMeans.Count);
}
