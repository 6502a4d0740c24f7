using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Sittings;

/// <summary>What the page before a quiz is given.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Questions">How many are drawn.</param>
/// <param name="Needed">How many must be right.</param>
/// <param name="PassPercent">The same as a share.</param>
/// <param name="Critical">How many of them are critical.</param>
/// <param name="TimeLimitMinutes">Null where nothing is timed.</param>
/// <param name="Topics">In blueprint order.</param>
/// <param name="Open">The sitting to go on with, or null.</param>
/// <param name="Tries">Submitted sittings of this quiz, the latest first.</param>
/// <param name="NewId">The id of the sitting that the form starts.</param>
/// <param name="Today">The date at the visitor's site.</param>
/// <param name="IsOpen">False while too few questions were accepted to draw from.</param>
/// <param name="RenewsFrom">First day on which a pass would renew what the visitor holds; null where one counts today.</param>
/// <param name="Rules">When a failed quiz may be tried again, or null: at any time.</param>
/// <param name="Retest">Whether the visitor may try today.</param>
public sealed record QuizPage(
    string CourseId,
    string CourseTitle,
    int Questions,
    int Needed,
    int PassPercent,
    int Critical,
    int? TimeLimitMinutes,
    IReadOnlyList<QuizTopic> Topics,
    OpenSitting? Open,
    IReadOnlyList<SentSitting> Tries,
    Guid NewId,
    DateOnly Today,
    bool IsOpen,
    DateOnly? RenewsFrom,
    RetestRules? Rules,
    Retest Retest)
{
    /// <summary>The page in one language.</summary>
    /// <param name="course">Its rules and words.</param>
    /// <param name="asked">The course with the questions that may be drawn.</param>
    /// <param name="language">In which language.</param>
    /// <param name="open">The visitor's open sittings.</param>
    /// <param name="sent">The visitor's submitted sittings, the latest first.</param>
    /// <param name="newId">For the form.</param>
    /// <param name="today">At the visitor's site.</param>
    /// <param name="step">What comes next for the visitor.</param>
    /// <param name="retest">Whether the visitor may try today.</param>
    public static QuizPage Of(
        Course course, Course asked, Language language, IEnumerable<OpenSitting> open, IEnumerable<SentSitting> sent, Guid newId, DateOnly today, NextStep step,
        Retest retest)
    {
        var questions = course.Quiz.Blueprint.Sum(row => row.Questions);
        return new(
            course.Id,
            course.Scheme.Words[language].Title,
            questions,
            PassMarks.OfPercent(course.Quiz.PassPercent, questions),
            course.Quiz.PassPercent,
            course.Quiz.Blueprint.Sum(row => row.Critical),
            course.Quiz.TimeLimitMinutes,
            [.. course.Quiz.Blueprint.Select(row => new QuizTopic(
                course.Words[language].Topics[row.Topic], row.Questions, row.Critical, PassMarks.OfPercent(row.PassPercent, row.Questions)))],
            open.FirstOrDefault(sitting => sitting.QuizId == course.Quiz.Id),
            [.. sent.Where(sitting => sitting.QuizId == course.Quiz.Id)],
            newId,
            today,
            asked.Gaps().Count == 0,
            (step as NextStep.NothingDue)?.WindowOpensOn,
            course.Quiz.Retest,
            retest);
    }
}

/// <summary>One topic of a quiz.</summary>
/// <param name="Title">In the page's language.</param>
/// <param name="Questions">How many are drawn.</param>
/// <param name="Critical">How many of them are critical.</param>
/// <param name="Needed">How many must be right; 0 where the topic has no minimum of its own.</param>
public sealed record QuizTopic(string Title, int Questions, int Critical, int Needed);
