using Training.Courses;

namespace Training.Web.Tests.House;

/// <summary>Every public page there is, from the courses being served.</summary>
internal static class PublicPages
{
    public static IReadOnlyList<string> Of(RunningSite site) => [.. LanguageTags.All.SelectMany(language => Of(site, language.Tag()))];

    public static IReadOnlyList<string> Modules(RunningSite site) => [.. Of(site).Where(path => path.Contains("/courses/", StringComparison.Ordinal) && path.Count(c => c == '/') == 4)];

    private static IEnumerable<string> Of(RunningSite site, string tag)
    {
        yield return $"/{tag}";
        yield return $"/{tag}/distances";
        yield return $"/{tag}/distances?Snake=150&Tool=122";
        yield return $"/{tag}/verify";
        yield return $"/{tag}/verify/not-a-serial";
        yield return $"/{tag}/appeals";
        yield return $"/{tag}/log";
        yield return $"/{tag}/species";
        foreach (var sheet in site.Shelf.Species.Species) yield return $"/{tag}/species/{sheet.Id}";
        foreach (var course in site.Shelf.Courses)
        {
            yield return $"/{tag}/courses/{course.Id}";
            yield return $"/{tag}/schemes/{course.Id}/{course.Hash}";
            foreach (var module in course.Modules) yield return $"/{tag}/courses/{course.Id}/{module.Id}";
        }
    }
}
