using Training.Courses;

namespace Training.Web.Features.Findings;

/// <summary>The courses that serve, and what is wrong in their files.</summary>
/// <param name="Courses">By kind and id.</param>
/// <param name="Findings">Those of no course that serves: a folder never read without findings, or a file beside the courses.</param>
/// <param name="Count">All findings.</param>
public sealed record FindingsPage(IReadOnlyList<ServedCourse> Courses, IReadOnlyList<Problem> Findings, int Count);

/// <summary>One course that serves.</summary>
/// <param name="Id">Its folder.</param>
/// <param name="Title">In the page's language.</param>
/// <param name="Kind">What it leads to.</param>
/// <param name="Version">The first characters of its hash, as papers print it.</param>
/// <param name="SinceAt">Since when this text serves, UTC; null where it was not kept yet.</param>
/// <param name="ReviewBy">When the scheme is to be reviewed.</param>
/// <param name="Findings">In its folder as it is now.</param>
public sealed record ServedCourse(
    string Id, string Title, SchemeKind Kind, string Version, DateTimeOffset? SinceAt, DateOnly ReviewBy, IReadOnlyList<Problem> Findings);
