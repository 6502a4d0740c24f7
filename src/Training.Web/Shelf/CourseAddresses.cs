using Training.Courses;

namespace Training.Web.Shelf;

/// <summary>Where the site keeps modules.</summary>
public static class CourseAddresses
{
    /// <summary>Absolute, so that it is right on whatever page a course's text is shown.</summary>
    public static string OfModule(Language language, string courseId, string moduleId, string? section) =>
        $"/{language.Tag()}/courses/{courseId}/{moduleId}{(section is null ? "" : "#" + section)}";
}
