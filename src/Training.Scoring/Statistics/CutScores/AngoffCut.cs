namespace Training.Scoring;

/// <summary>One judge's estimates.</summary>
/// <param name="Name">How the judge is named beside the cut.</param>
/// <param name="Ratings">For each item the chance, 0 to 1, that somebody just competent answers right; null where none was given.</param>
public sealed record AngoffJudge(string Name, IReadOnlyList<double?> Ratings)
{
    /// <summary>Why a cut for this many items does without the judge, or null where it does not.</summary>
    public LeftOutReason? WhyLeftOut(int items)
    {
        if (Ratings.Count != items || Ratings.Contains(null)) return LeftOutReason.Incomplete;
        return Ratings.All(rating => rating is >= 0 and <= 1) ? null : LeftOutReason.OutOfRange;
    }
}

/// <summary>How many items a judge expects somebody just competent to answer right.</summary>
public sealed record JudgeSum(string Name, double Sum);

/// <summary>Cut score of a panel that judged every item (modified Angoff). Each round of judging is one of these.</summary>
/// <param name="Cut">Mean of the judges' sums, in right answers.</param>
/// <param name="Percent">The cut as per cent of the items.</param>
/// <param name="PassMark">Smallest whole score not below the cut.</param>
/// <param name="MedianOfJudges">Median of the judges' sums: a harsh or mild judge moves it less.</param>
/// <param name="StandardDeviation">Of the judges' sums, divided by one less than there are judges.</param>
/// <param name="StandardError">Of the cut, for another panel of as many judges.</param>
/// <param name="ItemMeans">Mean estimate of each item, in the order of the items.</param>
/// <param name="Judges">The sums that the cut is the mean of.</param>
/// <param name="LeftOut">Judges that it does without; a judge who rated half of the items is one.</param>
public sealed record AngoffCut(
    double Cut,
    double Percent,
    int PassMark,
    double MedianOfJudges,
    Estimate<double> StandardDeviation,
    Estimate<double> StandardError,
    IReadOnlyList<double> ItemMeans,
    IReadOnlyList<JudgeSum> Judges,
    IReadOnlyList<LeftOutJudge> LeftOut)
{
    /// <summary>The cut of a panel.</summary>
    /// <remarks>
    /// Angoff, "Scales, norms, and equivalent scores", in Thorndike (ed.), Educational Measurement, 2nd edition, 1971, pages 514–515, with
    /// estimates of chances instead of yes and no; the error of the mean over judges as in Cizek and Bunch, Standard Setting, 2007, chapter 6.
    /// </remarks>
    public static Estimate<AngoffCut> Of(int items, IReadOnlyList<AngoffJudge> judges)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(items);
        var usable = judges
            .Where(judge => judge.WhyLeftOut(items) is null)
            .Select(judge => (judge.Name, Ratings: judge.Ratings.OfType<double>().ToArray()))
            .ToList();
        if (usable.Count == 0) return Obstacle.NoUsableJudge;

        var sums = usable.Select(judge => new JudgeSum(judge.Name, judge.Ratings.Sum())).ToList();
        var totals = sums.Select(judge => judge.Sum).ToList();
        return new AngoffCut(
            totals.Average(),
            100 * totals.Average() / items,
            PassMarks.Of(totals.Average()),
            SampleMoments.Median(totals),
            totals.Count > 1 ? SampleMoments.StandardDeviation(totals) : Obstacle.OneJudge,
            totals.Count > 1 ? SampleMoments.StandardDeviation(totals) / Math.Sqrt(totals.Count) : Obstacle.OneJudge,
            [.. Enumerable.Range(0, items).Select(item => usable.Average(judge => judge.Ratings[item]))],
            sums,
            [.. from judge in judges
                let reason = judge.WhyLeftOut(items)
                where reason is not null
                select new LeftOutJudge(judge.Name, reason.Value)]);
    }
}
