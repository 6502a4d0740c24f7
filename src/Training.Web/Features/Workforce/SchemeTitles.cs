using Training.Courses;
using Training.Web.Shelf;

namespace Training.Web.Features.Workforce;

/// <summary>Titles of schemes in the page's language.</summary>
public static class SchemeTitles
{
    /// <summary>The scheme's title; its id where its course is not on the shelf just now.</summary>
    public static string TitleOf(this CourseShelf shelf, string schemeId, Language language) =>
        shelf.Find(schemeId)?.Scheme.Words[language].Title ?? schemeId;
}
