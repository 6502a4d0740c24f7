using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Courses;
using Training.Web.Features.Lives;

namespace Training.Web.Features.MyTraining;

/// <summary>What the visitor's page of one course is given.</summary>
/// <param name="Line">How the visitor stands and what comes next.</param>
/// <param name="Parts">In reading order.</param>
/// <param name="Tries">Submitted sittings of its quiz, the latest first.</param>
/// <param name="IsQuizAsked">Whether its quiz is asked now and not met.</param>
/// <param name="Practicals">Sheets about the visitor on its checklists, the latest first.</param>
/// <param name="HasPractical">Whether the scheme asks for a practical at all.</param>
/// <param name="Changes">What changed rules mean for the visitor, with what is done of it.</param>
/// <param name="Life">The history of what the visitor holds or held; null where nothing was ever held.</param>
public sealed record MyCoursePage(
    SchemeLine Line,
    IReadOnlyList<PartLine> Parts,
    IReadOnlyList<SentSitting> Tries,
    bool IsQuizAsked,
    IReadOnlyList<PracticalLine> Practicals,
    bool HasPractical,
    IReadOnlyList<OwnChange> Changes,
    LifeView? Life)
{
    /// <summary>The first part that was not read, where the quiz that it prepares for is asked; null otherwise.</summary>
    public PartLine? NextToRead => IsQuizAsked ? Parts.FirstOrDefault(part => part.ReadOn is null) : null;

    /// <summary>The page of one course.</summary>
    /// <param name="course">Which.</param>
    /// <param name="line">How the visitor stands under its scheme.</param>
    /// <param name="file">Everything of the visitor.</param>
    /// <param name="read">Parts that the visitor read.</param>
    /// <param name="sent">The visitor's submitted sittings.</param>
    /// <param name="changes">What changed rules mean for the visitor.</param>
    /// <param name="life">The history, or null.</param>
    /// <param name="zone">IANA zone of the visitor.</param>
    /// <param name="language">Of the page.</param>
    public static MyCoursePage Of(
        Course course, SchemeLine line, CaseFile file, IReadOnlyList<ReadModule> read, IEnumerable<SentSitting> sent,
        IReadOnlyList<OwnChange> changes, LifeView? life,
        string zone, Language language)
    {
        var readAt = read.ToDictionary(part => part.ModuleId, part => part.LastReadAt, StringComparer.Ordinal);
        var there = TimeZoneInfo.FindSystemTimeZoneById(zone);
        return new(
            line,
            [.. course.Modules.Select((module, index) => new PartLine(
                index + 1,
                ModuleLink.To(module, language),
                readAt.TryGetValue(module.Id, out var at) ? DecisionDay.On(at, there) : null,
                module.IsOfSite))],
            [.. sent.Where(sitting => sitting.QuizId == course.Quiz.Id)],
            line.Step.Requirements.Any(state => state is { IsMet: false, Requirement: Requirement.PassedQuiz quiz } && quiz.QuizId == course.Quiz.Id),
            [.. file.Evidence.OfType<Evidence.OfPractical>()
                .Where(sheet => course.Checklists.Any(list => list.Id == sheet.ChecklistId))
                .OrderByDescending(sheet => sheet.On).ThenByDescending(sheet => sheet.ResultId)
                .Select(sheet => new PracticalLine(
                    course.Checklists.First(list => list.Id == sheet.ChecklistId).Words[language].Title, sheet.Subject, sheet.Outcome, sheet.On))],
            course.Scheme.Grant.Concat(course.Scheme.Renewal).Any(requirement => requirement is Requirement.PassedPractical or Requirement.Practised),
            changes,
            life);
    }
}

/// <summary>One part to read.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Link">Id, title and minutes.</param>
/// <param name="ReadOn">The day in the visitor's zone; null where it was not read, or not at the visitor's site.</param>
/// <param name="IsOfSite">Whether it is about the visitor's site.</param>
public sealed record PartLine(int Number, ModuleLink Link, DateOnly? ReadOn, bool IsOfSite);

/// <summary>One scoresheet about the visitor.</summary>
/// <param name="Title">Of the checklist.</param>
/// <param name="Subject">On what.</param>
/// <param name="Outcome">What it came to.</param>
/// <param name="On">The day that it counts as.</param>
public sealed record PracticalLine(string Title, Subject Subject, PracticalOutcome Outcome, DateOnly On);
