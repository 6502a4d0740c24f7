using Training.Courses;

namespace Training.Scoring;

/// <summary>How far scorers agree who saw the same performances.</summary>
/// <param name="Performances">How many two scorers or more saw.</param>
/// <param name="Steps">In the order of the checklist.</param>
/// <param name="Outcome">On passed or not; an incomplete sheet is no rating.</param>
/// <param name="Marks">Krippendorff's alpha of all marks of all steps, as ranks and with gaps.</param>
/// <param name="Shares">Intraclass correlations of the share of points, over performances that every scorer saw.</param>
/// <param name="Pairs">Each two scorers with a performance in common.</param>
/// <param name="Critical">Disagreements on critical steps, the newest first.</param>
/// <remarks>Which coefficient answers which question: docs/scoring.md, "Instructors".</remarks>
public sealed record ScorerAgreement(
    int Performances,
    IReadOnlyList<StepAgreement> Steps,
    CategoryFigures Outcome,
    Estimate<KrippendorffAlpha> Marks,
    Estimate<IntraclassCorrelations> Shares,
    IReadOnlyList<PairAgreement> Pairs,
    IReadOnlyList<CriticalDisagreement> Critical)
{
    private const int PassedOrNot = 2;
    private const int NotDonePromptedDone = 3;

    /// <summary>The agreement on a checklist.</summary>
    /// <param name="checklist">Its steps; marks of other steps are left out.</param>
    /// <param name="performances">In any order; those of one scorer alone say nothing here.</param>
    public static ScorerAgreement Of(Checklist checklist, IReadOnlyList<ScoredPerformance> performances)
    {
        var compared = performances.Where(performance => performance.IsCompared).ToList();
        var scorers = compared.SelectMany(performance => performance.Sheets).Select(sheet => sheet.ScorerId).Distinct().Order().ToList();
        return new(
            compared.Count,
            [.. checklist.Steps.Select(step => new StepAgreement(step.Id, step.IsCritical, CategoryFigures.Of(
                NotDonePromptedDone, [.. compared.Select(performance => Ratings(performance, sheet => sheet.Number(step.Id)))])))],
            CategoryFigures.Of(PassedOrNot, [.. compared.Select(performance => Ratings(performance, Passed))]),
            KrippendorffAlpha.Of(
                [
                    .. from performance in compared
                       from step in checklist.Steps
                       select (IReadOnlyList<double?>)[.. scorers.Select(scorer => (double?)SheetOf(performance, scorer)?.Number(step.Id))],
                ],
                MeasurementLevel.Ordinal),
            IntraclassCorrelations.Of(
                [.. compared.Select(performance => (IReadOnlyList<double?>)[.. scorers.Select(scorer => ShareOf(checklist, performance, scorer))])]),
            [
                .. from first in scorers
                   from second in scorers.SkipWhile(scorer => scorer != first).Skip(1)
                   let both = compared.Where(performance => SheetOf(performance, first) is not null && SheetOf(performance, second) is not null).ToList()
                   where both.Count > 0
                   select PairAgreement.Of(checklist, first, second, both),
            ],
            [.. CriticalOf(checklist, compared)]);
    }

    internal static PerformanceSheet? SheetOf(ScoredPerformance performance, Guid scorer) =>
        performance.Sheets.FirstOrDefault(sheet => sheet.ScorerId == scorer);

    /// <summary>
    /// The share of points that a scorer gave on the steps which every scorer of the performance observed: a sheet that was stopped early must
    /// not look strict for what it never came to.
    /// </summary>
    internal static double? ShareOf(Checklist checklist, ScoredPerformance performance, Guid scorer)
    {
        if (SheetOf(performance, scorer) is not { } own) return null;
        var common = checklist.Steps.Where(step => performance.Sheets.All(sheet => sheet.Number(step.Id) is not null)).ToList();
        return common.Count == 0 ? null : common.Sum(step => own.Number(step.Id) ?? 0) / (2.0 * common.Count);
    }

    private static IReadOnlyList<int?> Ratings(ScoredPerformance performance, Func<PerformanceSheet, int?> rating) =>
        [.. performance.Sheets.Select(rating)];

    private static int? Passed(PerformanceSheet sheet) => sheet.Outcome switch
    {
        PracticalOutcome.Failed => 0,
        PracticalOutcome.Passed => 1,
        PracticalOutcome.Incomplete => null,
    };

    private static IEnumerable<CriticalDisagreement> CriticalOf(Checklist checklist, IEnumerable<ScoredPerformance> compared) =>
        from performance in compared
        orderby performance.On descending, performance.Id
        from step in checklist.Steps
        where step.IsCritical
        let said = performance.Sheets.Where(sheet => sheet.Passes(step) is not null).ToList()
        where said.Select(sheet => sheet.Passes(step)).Distinct().Count() > 1
        select new CriticalDisagreement(
            performance.Id, performance.On, step.Id,
            [.. said.Where(sheet => sheet.Passes(step) == true).Select(sheet => sheet.ScorerId)],
            [.. said.Where(sheet => sheet.Passes(step) == false).Select(sheet => sheet.ScorerId)]);
}

/// <summary>Agreement on categories in several ways, each answering another question.</summary>
/// <param name="Percent">Share of pairs of ratings that agree, 0–1; chance is in it.</param>
/// <param name="Fleiss">Beyond chance, for scorers who are interchangeable.</param>
/// <param name="Ac1">Beyond chance, steady where nearly everybody gets the same mark.</param>
public sealed record CategoryFigures(Estimate<double> Percent, Estimate<FleissKappa> Fleiss, Estimate<CategoryAgreement> Ac1)
{
    internal static CategoryFigures Of(int categories, IReadOnlyList<IReadOnlyList<int?>> performances)
    {
        var counts = CategoryCounts.FromRatings(categories, performances);
        return new(CategoryAgreement.PercentOf(counts), FleissKappa.Of(counts), CategoryAgreement.Ac1(counts));
    }
}

/// <summary>Agreement on one step.</summary>
/// <param name="StepId">Which.</param>
/// <param name="IsCritical">Whether failing it stops the practical.</param>
/// <param name="Figures">Of the marks not done, after a prompt, done.</param>
public sealed record StepAgreement(string StepId, bool IsCritical, CategoryFigures Figures);

/// <summary>Agreement of two scorers on the marks of all steps.</summary>
/// <param name="FirstId">One of them.</param>
/// <param name="SecondId">The other.</param>
/// <param name="Performances">How many both saw.</param>
/// <param name="Kappa">Cohen's kappa, every disagreement alike.</param>
/// <param name="Weighted">Linear weights: a prompt lies halfway between done and not done.</param>
public sealed record PairAgreement(Guid FirstId, Guid SecondId, int Performances, Estimate<CohenKappa> Kappa, Estimate<CohenKappa> Weighted)
{
    internal static PairAgreement Of(Checklist checklist, Guid first, Guid second, IReadOnlyList<ScoredPerformance> both)
    {
        var table = PairTable.FromRatings(3,
        [
            .. from performance in both
               from step in checklist.Steps
               select (ScorerAgreement.SheetOf(performance, first)?.Number(step.Id), ScorerAgreement.SheetOf(performance, second)?.Number(step.Id)),
        ]);
        return new(first, second, both.Count, CohenKappa.Of(table, new KappaWeights.Unweighted()), CohenKappa.Of(table, new KappaWeights.Linear()));
    }
}

/// <summary>One performance on which scorers disagreed whether a critical step was passed.</summary>
/// <param name="PerformanceId">Which.</param>
/// <param name="On">Its day.</param>
/// <param name="StepId">Which step.</param>
/// <param name="PassedBy">Who passed it.</param>
/// <param name="FailedBy">Who failed it.</param>
public sealed record CriticalDisagreement(
    Guid PerformanceId, DateOnly On, string StepId, IReadOnlyList<Guid> PassedBy, IReadOnlyList<Guid> FailedBy);
