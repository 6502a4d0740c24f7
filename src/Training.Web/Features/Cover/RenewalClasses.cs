using Training.Courses;

namespace Training.Web.Features.Cover;

/// <summary>Which classes serve a renewal.</summary>
public static class RenewalClasses
{
    /// <summary>Courses whose classes score a practical that the renewal asks for; empty where it asks for none.</summary>
    public static IReadOnlySet<string> CoursesFor(Scheme scheme, IReadOnlyList<Course> courses)
    {
        var practicals = scheme.Renewal.Select(requirement => requirement switch
        {
            Requirement.PassedPractical practical => practical.ChecklistId,
            Requirement.Practised practised => practised.ChecklistId,
            _ => null,
        }).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return courses.Where(course => course.Checklists.Any(checklist => practicals.Contains(checklist.Id)))
            .Select(course => course.Id).ToHashSet(StringComparer.Ordinal);
    }
}
