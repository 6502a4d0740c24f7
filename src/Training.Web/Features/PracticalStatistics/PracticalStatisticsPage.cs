using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Scoring;
using Training.Web.Features.Statistics;

namespace Training.Web.Features.PracticalStatistics;

/// <summary>What the page of a checklist's statistics is given.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Checklist">As it serves.</param>
/// <param name="Words">Its words in the page's language.</param>
/// <param name="Sheets">Sheets of candidates that were looked at.</param>
/// <param name="Passed">Of these.</param>
/// <param name="Failed">Of these.</param>
/// <param name="Steps">How each step went.</param>
/// <param name="Agreement">Of scorers who saw the same.</param>
/// <param name="Severity">Of each scorer against colleagues.</param>
/// <param name="StepPicture">Share done at each step; null without sheets.</param>
/// <param name="AgreementPicture">Agreement at each step; null where nobody can be compared.</param>
/// <param name="SeverityPicture">Difference from colleagues; null where nobody can be compared.</param>
/// <param name="Names">By person; erased ones are not there.</param>
public sealed record PracticalStatisticsPage(
    string CourseId,
    string CourseTitle,
    Checklist Checklist,
    ChecklistWords Words,
    int Sheets,
    int Passed,
    int Failed,
    IReadOnlyList<StepCounts> Steps,
    ScorerAgreement Agreement,
    IReadOnlyList<ScorerSeverity> Severity,
    RowChart? StepPicture,
    RowChart? AgreementPicture,
    RowChart? SeverityPicture,
    IReadOnlyDictionary<Guid, string> Names)
{
    /// <summary>Below this share of agreement a step is worth a talk. Common practice, no source.</summary>
    public const double LeastAgreement = 0.8;

    private const double SeverityReach = 0.3;

    /// <summary>Scorers who are surely lenient or strict.</summary>
    public IReadOnlyList<ScorerSeverity> Apart => [.. Severity.Where(one => one.Finding is SeverityFinding.Lenient or SeverityFinding.Strict)];

    /// <summary>The page in one language.</summary>
    /// <param name="course">As it serves.</param>
    /// <param name="checklist">Of the course.</param>
    /// <param name="performances">All that were looked at.</param>
    /// <param name="names">By scorer.</param>
    /// <param name="language">In which language.</param>
    /// <param name="text">Words of the page.</param>
    public static PracticalStatisticsPage Of(
        Course course, Checklist checklist, IReadOnlyList<ScoredPerformance> performances, IReadOnlyDictionary<Guid, string> names, Language language,
        IStringLocalizer<PracticalStatisticsText> text)
    {
        var sheets = performances.SelectMany(performance => performance.Sheets).ToList();
        var steps = StepCounts.Of(checklist, sheets);
        var agreement = ScorerAgreement.Of(checklist, performances);
        var severity = ScorerSeverity.Of(checklist, performances);
        string Name(Guid id) => names.GetValueOrDefault(id) ?? text["NameErased"];
        string Step(string id) => text["StepNumber", checklist.Steps.ToList().FindIndex(step => step.Id == id) + 1, id];
        return new(
            course.Id,
            course.Scheme.Words[language].Title,
            checklist,
            checklist.Words[language],
            sheets.Count,
            sheets.Count(sheet => sheet.Outcome == PracticalOutcome.Passed),
            sheets.Count(sheet => sheet.Outcome == PracticalOutcome.Failed),
            steps,
            agreement,
            severity,
            sheets.Count == 0
                ? null
                : RowChart.Of(
                    [.. steps.Select(step => new RowValue(Step(step.StepId), step.ShareDone, step.LikelyDone, step.IsCritical && step.NotDone > 0))],
                    0, 1, 0.2, null, text["StepsLabel", sheets.Count], FigureWords.Percent),
            agreement.Performances == 0
                ? null
                : RowChart.Of(
                    [
                        .. agreement.Steps.Select(step => new RowValue(
                            Step(step.StepId), step.Figures.Percent, Obstacle.OneSubject,
                            step.Figures.Percent is Estimate<double>.Known(< LeastAgreement))),
                    ],
                    0, 1, 0.2, LeastAgreement, text["AgreementLabel", agreement.Performances], FigureWords.Percent),
            severity.Count == 0
                ? null
                : RowChart.Of(
                    [
                        .. severity.Select(one => new RowValue(
                            Name(one.ScorerId), one.Difference, one.Likely, one.Finding is SeverityFinding.Lenient or SeverityFinding.Strict)),
                    ],
                    -SeverityReach, SeverityReach, 0.1, 0, text["SeverityLabel", severity.Count], Signed),
            names);
    }

    /// <summary>A difference of shares in whole hundredths with its sign.</summary>
    public static string Signed(double share) => (Math.Round(share, 2) + 0.0).ToString("+0\u00a0%;−0\u00a0%;0\u00a0%", CultureInfo.CurrentCulture);
}
