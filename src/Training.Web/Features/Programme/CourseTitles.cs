using Training.Courses;

namespace Training.Web.Features.Programme;

/// <summary>What courses call their schemes, quizzes and checklists.</summary>
public static class CourseTitles
{
    /// <summary>Titles by id, in one language. A quiz is called what its scheme is called.</summary>
    public static IReadOnlyDictionary<string, string> Titles(this IReadOnlyList<Course> courses, Language language)
    {
        var titles = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var course in courses)
        {
            titles.TryAdd(course.Id, course.Scheme.Words[language].Title);
            titles.TryAdd(course.Quiz.Id, course.Scheme.Words[language].Title);
            foreach (var checklist in course.Checklists) titles.TryAdd(checklist.Id, checklist.Words[language].Title);
        }

        return titles;
    }

    /// <summary>The title, or the id where its course is not on the shelf just now.</summary>
    public static string Of(this IReadOnlyDictionary<string, string> titles, string id) => titles.GetValueOrDefault(id, id);
}
