using System.Diagnostics;
using System.Globalization;
using Training.Courses;
using Training.Scoring;
using Training.Web.Features.Sittings;
using Training.Web.Shelf;

namespace Training.Web.Features.Practice;

/// <summary>What a page of practice is given. Nothing of it is kept: its address holds the round.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Round">The seed that the order of questions stands for.</param>
/// <param name="Number">Place in the round, from 1.</param>
/// <param name="Count">Of how many.</param>
/// <param name="Asked">The question, with what was answered.</param>
/// <param name="Told">What to tell after an answer; null before it.</param>
public sealed record PracticePage(
    string CourseId, string CourseTitle, ulong Round, int Number, int Count, ShownQuestion Asked, PracticeAnswer? Told)
{
    /// <summary>A question to answer.</summary>
    /// <param name="course">Which course.</param>
    /// <param name="round">The seed.</param>
    /// <param name="number">From 1; not more than the pool has.</param>
    /// <param name="language">In which language.</param>
    /// <param name="posted">What was posted, or null.</param>
    /// <param name="fault">Why it cannot be marked, or null.</param>
    public static PracticePage Of(
        Course course, ulong round, int number, Language language, AnswerForm? posted = null, AnswerFault? fault = null)
    {
        var drawn = PracticeRound.From(course, round)[number - 1];
        return new(
            course.Id,
            course.Scheme.Words[language].Title,
            round,
            number,
            course.Questions.Count,
            ShownQuestion.Of(QuestionOf(course, round, number), drawn, language, posted ?? new(), fault),
            null);
    }

    /// <summary>The question of the page told about, with what to tell.</summary>
    /// <param name="course">Which course.</param>
    /// <param name="answer">What was answered; null where nothing was.</param>
    /// <param name="language">In which language.</param>
    public PracticePage Telling(Course course, Answer? answer, Language language) =>
        this with { Told = PracticeAnswer.Of(course, QuestionOf(course, Round, Number), Asked, answer, language) };

    /// <summary>The question at a place of a round.</summary>
    public static Question QuestionOf(Course course, ulong round, int number)
    {
        var id = PracticeRound.From(course, round)[number - 1].QuestionId;
        return course.Questions.Single(question => question.Id == id);
    }
}

/// <summary>What practice tells about an answer: everything, since nothing depends on it.</summary>
/// <param name="Mark">Right, wrong or blank.</param>
/// <param name="RightHtml">What is right, as safe HTML; for steps in their order, for pairs each with its match.</param>
/// <param name="RightNumber">The number on the figure of a spot; null for other types.</param>
/// <param name="ExplanationHtml">Why, as safe HTML.</param>
/// <param name="PassageTitle">The passage to reread.</param>
/// <param name="PassageAddress">Where it stands.</param>
public sealed record PracticeAnswer(
    Mark Mark, IReadOnlyList<string> RightHtml, int? RightNumber, string ExplanationHtml, string PassageTitle, string PassageAddress)
{
    /// <summary>What to tell about an answer to a question.</summary>
    public static PracticeAnswer Of(Course course, Question question, ShownQuestion asked, Answer? answer, Language language)
    {
        var words = question.Words[language];
        var (moduleId, sectionId) = question.Passage;
        var page = course.Modules.Single(module => module.Id == moduleId).Pages[language];
        return new(
            SittingGrader.MarkOf(question, answer),
            question.Key switch
            {
                QuestionKey.One one => [words.OptionHtml[one.OptionId]],
                QuestionKey.Several several => [.. several.OptionIds.Select(id => words.OptionHtml[id])],
                QuestionKey.Order order => [.. order.OptionIds.Select(id => words.OptionHtml[id])],
                QuestionKey.Number number => [string.Create(CultureInfo.InvariantCulture, $"{number.Value} {System.Net.WebUtility.HtmlEncode(number.Unit)}")],
                QuestionKey.Match match => [.. match.Pairs.Select(pair => $"{words.OptionHtml[pair.OptionId]}: {System.Net.WebUtility.HtmlEncode(words.MatchText[pair.MatchId])}")],
                QuestionKey.Spot spot => [words.OptionHtml[spot.RegionId]],
                _ => throw new UnreachableException(),
            },
            question.Key is QuestionKey.Spot marked ? asked.Options.Single(option => option.Id == marked.RegionId).Number : null,
            words.ExplanationHtml,
            page.Sections.FirstOrDefault(section => section.Id == sectionId)?.Title ?? page.Title,
            CourseAddresses.OfModule(language, course.Id, moduleId, sectionId));
    }
}
