using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Panels;

/// <summary>All panels, and the form of a new one.</summary>
/// <param name="Panels">Newest first.</param>
/// <param name="Targets">What a panel can judge: quizzes and checklists of the texts in force.</param>
/// <param name="Form">As typed.</param>
public sealed record PanelsPage(IReadOnlyList<PanelRow> Panels, IReadOnlyList<PanelTarget> Targets, PanelForm Form);

/// <summary>One panel in the list.</summary>
/// <param name="Line">As kept.</param>
/// <param name="Title">What it judges.</param>
/// <param name="OpenedOn">The visitor's calendar day.</param>
public sealed record PanelRow(PanelLine Line, string Title, DateOnly OpenedOn);

/// <summary>A quiz or checklist to judge.</summary>
/// <param name="CourseId">Which course.</param>
/// <param name="TargetId">The quiz or checklist.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="ChecklistTitle">In the page's language; null for the quiz.</param>
public sealed record PanelTarget(string CourseId, string TargetId, string CourseTitle, string? ChecklistTitle)
{
    /// <summary>What the form calls it.</summary>
    public string Value => $"{CourseId}/{TargetId}";

    /// <summary>Everything that a course passes people with.</summary>
    public static IEnumerable<PanelTarget> Of(Course course, Language language) =>
    [
        new(course.Id, course.Quiz.Id, course.Scheme.Words[language].Title, null),
        .. course.Checklists.Select(list => new PanelTarget(course.Id, list.Id, course.Scheme.Words[language].Title, list.Words[language].Title)),
    ];
}

/// <summary>A panel with what it came to, for a lead.</summary>
/// <param name="Judged">The panel and the text that it judges.</param>
/// <param name="Target">What it judges.</param>
/// <param name="OpenedOn">The visitor's calendar day.</param>
/// <param name="Names">Names of judges and leads; erased ones are not there.</param>
/// <param name="Typed">Judges without an account: a lead types for them.</param>
/// <param name="People">Who may be asked to judge, by name.</param>
/// <param name="Scores">First sittings by points; empty for a checklist.</param>
/// <param name="Impressions">Of instructors at the checklist; empty for a quiz.</param>
/// <param name="Shares">How often each question was asked and answered right.</param>
/// <param name="InForce">The course as it serves now; null where it was taken off the shelf.</param>
/// <param name="Forms">What was typed, or empty forms.</param>
/// <param name="FileProblems">What is to be mended in a file that was sent.</param>
public sealed record PanelPage(
    JudgedPanel Judged,
    PanelTarget Target,
    DateOnly OpenedOn,
    IReadOnlyDictionary<Guid, string> Names,
    IReadOnlySet<Guid> Typed,
    IReadOnlyList<(Guid Id, string Name)> People,
    IReadOnlyList<int> Scores,
    IReadOnlyList<SheetImpression> Impressions,
    IReadOnlyDictionary<string, (int Asked, int Right)> Shares,
    Course? InForce,
    PanelForms Forms,
    IReadOnlyList<Problem> FileProblems)
{
    /// <summary>The panel's rows.</summary>
    public PanelFile File => Judged.File;

    /// <summary>The cut of Hofstee, in percent, or why there is none.</summary>
    public Estimate<HofsteeCut> Hofstee => Judged.Hofstee(Scores);

    /// <summary>The pass mark that serves now, and the cut that it names; null where the course or the target is gone.</summary>
    public (int PassPercent, Cut? Cut)? Serving => InForce is null ? null
        : InForce.Quiz.Id == Target.TargetId ? (InForce.Quiz.PassPercent, InForce.Quiz.Cut)
        : InForce.Checklists.FirstOrDefault(list => list.Id == Target.TargetId) is { } checklist ? (checklist.PassPercent, checklist.Cut)
        : null;

    /// <summary>What can be adopted now.</summary>
    public IReadOnlyList<AdoptableCut> Adoptable => AdoptableCut.Of(Judged, Hofstee, Impressions);

    /// <summary>The cut at a borderline impression, in percent, or why there is none.</summary>
    public Estimate<BorderlineRegressionCut> Borderline => Judged.BorderlineRegression(Impressions);
}

/// <summary>The forms of a panel's page.</summary>
public sealed record PanelForms(JudgeForm Judge, AdoptionForm Adoption, Guid FileId)
{
    /// <summary>Empty ones, each with an id of its own.</summary>
    public static PanelForms New() => new(new() { Id = Guid.CreateVersion7() }, new() { Id = Guid.CreateVersion7() }, Guid.CreateVersion7());
}

/// <summary>What one judge is given to rate.</summary>
/// <param name="Judged">The panel and the text that it judges.</param>
/// <param name="Judge">Who judges.</param>
/// <param name="Name">Their name.</param>
/// <param name="IsOwn">Whether the judge looks; else a lead types for an outsider.</param>
/// <param name="Target">What is judged.</param>
/// <param name="Shares">How often each question was asked and answered right; empty in the first round.</param>
/// <param name="Ratings">As typed, or what counts now.</param>
/// <param name="Bounds">As typed, or what counts now.</param>
public sealed record RatingPage(
    JudgedPanel Judged,
    PanelJudge Judge,
    string Name,
    bool IsOwn,
    PanelTarget Target,
    IReadOnlyDictionary<string, (int Asked, int Right)> Shares,
    RatingsForm Ratings,
    BoundsForm Bounds)
{
    /// <summary>Its address below the language.</summary>
    public string Path => IsOwn ? $"/my/panels/{Judged.File.Panel.Id}" : $"/programme/panels/{Judged.File.Panel.Id}/judges/{Judge.Id}";
}
