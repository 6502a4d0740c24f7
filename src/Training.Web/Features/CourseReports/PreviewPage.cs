using Training.Courses;

namespace Training.Web.Features.CourseReports;

/// <summary>A module as its file is now.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="ModuleId">For addresses.</param>
/// <param name="Page">Its words, rendered; null where its file cannot be read in this language.</param>
/// <param name="Findings">In its files, both languages.</param>
public sealed record PreviewPage(string CourseId, string ModuleId, ModulePage? Page, IReadOnlyList<Problem> Findings)
{
    /// <summary>The preview in one language.</summary>
    public static PreviewPage Of(Course course, Module module, IReadOnlyList<Problem> findings, Language language) => new(
        course.Id,
        module.Id,
        module.Pages.GetValueOrDefault(language),
        [.. findings.Where(finding => finding.Place.File?.StartsWith(course.Id + "/", StringComparison.Ordinal) == true && IsOf(finding, module.Id))]);

    private static bool IsOf(Problem finding, string moduleId) =>
        finding.Place.File!.EndsWith($"/modules/{moduleId}.md", StringComparison.Ordinal) || finding.Place.Part == $"module {moduleId}"; // not null: the caller looked
}
