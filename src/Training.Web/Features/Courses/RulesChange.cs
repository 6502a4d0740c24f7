using Training.Courses;

namespace Training.Web.Features.Courses;

/// <summary>What changed rules mean for those who were certified by the rules before.</summary>
/// <param name="From">First day of the changed rules.</param>
/// <param name="IsComing">Announced: that day has not come.</param>
/// <param name="Html">What they do, in the author's words.</param>
/// <param name="By">Last day for what is asked besides; null where nothing is.</param>
/// <param name="Also">What is asked besides.</param>
public sealed record RulesChange(DateOnly From, bool IsComing, string Html, DateOnly? By, IReadOnlyList<Asked> Also)
{
    /// <summary>The change that a text brings; null where its rules took over from none.</summary>
    public static RulesChange? Find(Course course, IReadOnlyList<Course> all, bool isComing, Language language) => course.Scheme.Transition is not { } transition
        ? null
        : new(
            course.Scheme.EffectiveFrom, isComing, course.Scheme.Words[language].TransitionHtml, transition.By,
            [.. transition.Also.Select(asked => Asked.Of(asked, all, language))]);
}
