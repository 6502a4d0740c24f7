using Training.Courses;

namespace Training.Web.Features.Home;

/// <summary>What the front page is given.</summary>
/// <param name="Courses">In the order of the shelf.</param>
/// <param name="IsNew">Whether nobody at all can sign in: whoever started the server becomes the first lead.</param>
public sealed record HomePage(IReadOnlyList<HomePage.Entry> Courses, bool IsNew)
{
    /// <summary>One course of the list.</summary>
    /// <param name="Id">For its address.</param>
    /// <param name="Title">What the paper calls it.</param>
    /// <param name="Kind">Certificate of training, or certification.</param>
    /// <param name="Validity">How long the paper holds.</param>
    /// <param name="Modules">How many parts there are to read.</param>
    /// <param name="Minutes">About how long reading takes in all.</param>
    /// <param name="Practicals">How many practicals its grant asks for.</param>
    public sealed record Entry(string Id, string Title, SchemeKind Kind, Duration Validity, int Modules, int Minutes, int Practicals);

    /// <summary>The list in one language.</summary>
    public static HomePage Of(IEnumerable<Course> courses, Language language, bool isNew) => new([.. courses.Select(course => new Entry(
        course.Id,
        course.Scheme.Words[language].Title,
        course.Scheme.Kind,
        course.Scheme.Terms.Validity,
        course.Modules.Count,
        course.Modules.Sum(module => module.Minutes),
        course.Scheme.Grant.Count(requirement => requirement is Requirement.PassedPractical)))], isNew);
}
