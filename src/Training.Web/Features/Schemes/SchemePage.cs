using Training.Courses;
using Training.Web.Features.Courses;

namespace Training.Web.Features.Schemes;

/// <summary>One version of a scheme's rules, as its page shows it.</summary>
/// <param name="Id">For addresses.</param>
/// <param name="Hash">Names the version.</param>
/// <param name="Scheme">Its rules.</param>
/// <param name="Words">Their words in the page's language.</param>
/// <param name="Grant">What the first paper asks, in the scheme's order.</param>
/// <param name="Renewal">What a renewal asks, in the scheme's order.</param>
/// <param name="ServedHash">Version that is served now; null where the course is not.</param>
public sealed record SchemePage(
    string Id, string Hash, Scheme Scheme, SchemeWords Words, IReadOnlyList<Asked> Grant, IReadOnlyList<Asked> Renewal, string? ServedHash)
{
    /// <summary>Characters of the version on papers.</summary>
    public const int ShortLength = Documents.Credentials.CompactClaims.VersionLength;

    /// <summary>The page in one language.</summary>
    /// <param name="course">As it was kept.</param>
    /// <param name="served">All courses of today: a requirement may name something of another, which is told by its name of today.</param>
    /// <param name="language">In which language.</param>
    public static SchemePage Of(Course course, IReadOnlyList<Course> served, Language language)
    {
        // Its own quiz and checklists are those of its own text.
        Course[] all = [course, .. served.Where(other => other.Id != course.Id)];
        return new(
            course.Id, course.Hash, course.Scheme, course.Scheme.Words[language],
            [.. course.Scheme.Grant.Select(requirement => Asked.Of(requirement, all, language))],
            [.. course.Scheme.Renewal.Select(requirement => Asked.Of(requirement, all, language))],
            served.FirstOrDefault(other => other.Id == course.Id)?.Hash);
    }
}
