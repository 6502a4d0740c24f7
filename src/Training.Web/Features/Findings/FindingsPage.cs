using Training.Courses;

namespace Training.Web.Features.Findings;

/// <summary>The courses that serve, and what is wrong in their files.</summary>
/// <param name="Courses">By kind and id.</param>
/// <param name="Findings">Those of no course that serves: a folder never read without findings, or a file beside the courses.</param>
/// <param name="Count">All findings.</param>
/// <param name="FormId">Of the choice that the form sends.</param>
/// <param name="IsChosen">Whether a lead ever chose; until then every course is used.</param>
public sealed record FindingsPage(IReadOnlyList<ServedCourse> Courses, IReadOnlyList<Problem> Findings, int Count, Guid FormId, bool IsChosen);

/// <summary>The form of which courses the provider uses.</summary>
public sealed class ChoiceForm
{
    /// <summary>Made when the form was: the same twice is one choice.</summary>
    public Guid Id { get; set; }

    /// <summary>Those that were ticked.</summary>
    public List<string> CourseIds { get; set; } = [];
}

/// <summary>One course that serves.</summary>
/// <param name="Id">Its folder.</param>
/// <param name="Title">In the page's language.</param>
/// <param name="Kind">What it leads to.</param>
/// <param name="Version">The first characters of its hash, as papers print it.</param>
/// <param name="SinceAt">Since when this text serves, UTC; null where it was not kept yet.</param>
/// <param name="ReviewBy">When the scheme is to be reviewed.</param>
/// <param name="IsUsed">Whether the provider uses it.</param>
/// <param name="WaitingQuestions">Questions that nobody judged as they read now.</param>
/// <param name="Findings">In its folder as it is now.</param>
public sealed record ServedCourse(
    string Id, string Title, SchemeKind Kind, string Version, DateTimeOffset? SinceAt, DateOnly ReviewBy, bool IsUsed, int WaitingQuestions,
    IReadOnlyList<Problem> Findings);
