using System.Diagnostics;
using Training.Courses;

namespace Training.Web.Features.Courses;

/// <summary>What the page of a course is given.</summary>
/// <param name="Id">For addresses.</param>
/// <param name="Hash">Names the version of its text.</param>
/// <param name="Scheme">Its rules.</param>
/// <param name="Words">Their words in the page's language.</param>
/// <param name="Modules">In reading order.</param>
/// <param name="Grant">What the first paper asks, in the scheme's order.</param>
/// <param name="Renewal">What a renewal asks, in the scheme's order.</param>
/// <param name="PassMarks">Of its own quiz and checklists, and where each comes from.</param>
/// <param name="Changes">What changed rules mean for those certified before: of the rules in force, then of those announced.</param>
public sealed record CoursePage(
    string Id,
    string Hash,
    Scheme Scheme,
    SchemeWords Words,
    IReadOnlyList<ModuleLink> Modules,
    IReadOnlyList<Asked> Grant,
    IReadOnlyList<Asked> Renewal,
    IReadOnlyList<PassMark> PassMarks,
    IReadOnlyList<RulesChange> Changes)
{
    /// <summary>The page in one language.</summary>
    /// <param name="course">Which course.</param>
    /// <param name="all">All courses: a requirement may name a scheme, quiz or checklist of another.</param>
    /// <param name="coming">The text whose rules are announced, or null.</param>
    /// <param name="language">In which language.</param>
    public static CoursePage Of(Course course, IReadOnlyList<Course> all, Course? coming, Language language) => new(
        course.Id,
        course.Hash,
        course.Scheme,
        course.Scheme.Words[language],
        [.. course.Modules.Select(module => ModuleLink.To(module, language))],
        [.. course.Scheme.Grant.Select(requirement => Asked.Of(requirement, all, language))],
        [.. course.Scheme.Renewal.Select(requirement => Asked.Of(requirement, all, language))],
        PassMark.Of(course, language),
        [.. new[] { RulesChange.Find(course, all, isComing: false, language), coming is null ? null : RulesChange.Find(coming, all, isComing: true, language) }.OfType<RulesChange>()]);
}

/// <summary>What a quiz or checklist is passed with.</summary>
/// <param name="Title">Of the checklist; null for the quiz.</param>
/// <param name="Percent">Whole percent of the points.</param>
/// <param name="Cut">Where it comes from; null where the provider set it without a panel.</param>
/// <param name="ReasonHtml">Why, in the page's language; empty without a panel.</param>
public sealed record PassMark(string? Title, int Percent, Cut? Cut, string ReasonHtml)
{
    /// <summary>All of a course, its quiz first.</summary>
    public static IReadOnlyList<PassMark> Of(Course course, Language language)
    {
        var reasons = course.Scheme.Words[language].CutHtml;
        return
        [
            new(null, course.Quiz.PassPercent, course.Quiz.Cut, reasons.GetValueOrDefault(course.Quiz.Id, "")),
            .. course.Checklists.Select(checklist => new PassMark(
                checklist.Words[language].Title, checklist.PassPercent, checklist.Cut, reasons.GetValueOrDefault(checklist.Id, ""))),
        ];
    }
}

/// <summary>One requirement with the names and figures that its sentence needs. A closed family.</summary>
public abstract record Asked
{
    private Asked()
    {
    }

    /// <summary>A quiz of so many questions.</summary>
    public sealed record Quiz(string Title, int Questions, int PassPercent, Duration GreatestAge) : Asked;

    /// <summary>A practical of so many steps.</summary>
    public sealed record Practical(string Title, int Steps, int PassPercent, Subject On, Duration GreatestAge) : Asked;

    /// <summary>So many tries on the model within a span.</summary>
    public sealed record Practice(string Title, int Times, Duration Within) : Asked;

    /// <summary>Another scheme.</summary>
    public sealed record Held(string CourseId, string Title) : Asked;

    /// <summary>Looks up what a requirement names; the name itself where its course is not on the shelf just now.</summary>
    public static Asked Of(Requirement requirement, IReadOnlyList<Course> all, Language language) => requirement switch
    {
        Requirement.PassedQuiz asked => all.FirstOrDefault(c => c.Quiz.Id == asked.QuizId) is { } course
            ? new Quiz(course.Scheme.Words[language].Title, course.Quiz.Blueprint.Sum(row => row.Questions), course.Quiz.PassPercent, asked.GreatestAge)
            : new Quiz(asked.QuizId, 0, 0, asked.GreatestAge),
        Requirement.PassedPractical asked => all.SelectMany(c => c.Checklists).FirstOrDefault(c => c.Id == asked.ChecklistId) is { } checklist
            ? new Practical(checklist.Words[language].Title, checklist.Steps.Count, checklist.PassPercent, asked.Subject, asked.GreatestAge)
            : new Practical(asked.ChecklistId, 0, 0, asked.Subject, asked.GreatestAge),
        Requirement.Practised asked => new Practice(
            all.SelectMany(c => c.Checklists).FirstOrDefault(c => c.Id == asked.ChecklistId)?.Words[language].Title ?? asked.ChecklistId,
            asked.Times, asked.Within),
        Requirement.Holds asked => new Held(
            asked.SchemeId,
            all.FirstOrDefault(c => c.Id == asked.SchemeId)?.Scheme.Words[language].Title ?? asked.SchemeId),
        _ => throw new UnreachableException(),
    };
}
