using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Questions;

/// <summary>How far the review of a course's questions is.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="Title">What the paper calls the course.</param>
/// <param name="Modules">In reading order.</param>
/// <param name="Gaps">What a quiz still lacks; empty where one can be drawn.</param>
/// <param name="Topics">Titles of topics by id.</param>
public sealed record QuestionsPage(
    string CourseId, string Title, IReadOnlyList<ModuleQuestions> Modules, IReadOnlyList<PoolGap> Gaps, IReadOnlyDictionary<string, string> Topics)
{
    /// <summary>Questions that nobody judged as they read now.</summary>
    public int Waiting => Modules.Sum(module => module.Waiting);
}

/// <summary>The questions of one module.</summary>
/// <param name="ModuleId">For addresses.</param>
/// <param name="Title">In the page's language.</param>
/// <param name="Waiting">Not judged as they read now.</param>
/// <param name="Accepted">May be drawn.</param>
/// <param name="NotDrawn">Set aside, resting or withdrawn.</param>
public sealed record ModuleQuestions(string ModuleId, string Title, int Waiting, int Accepted, int NotDrawn);

/// <summary>The questions of a module to read and to judge.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="ModuleId">For addresses.</param>
/// <param name="ModuleTitle">In the page's language.</param>
/// <param name="FormId">Of the review that the form sends.</param>
/// <param name="Questions">In file order.</param>
public sealed record ModuleReviewPage(
    string CourseId, string CourseTitle, string ModuleId, string ModuleTitle, Guid FormId, IReadOnlyList<QuestionToReview> Questions)
{
    /// <summary>Those that nobody judged as they read now.</summary>
    public IEnumerable<Question> Waiting => Questions.Where(one => one.Review is null).Select(one => one.Question);
}

/// <summary>One question with what a review of it came to.</summary>
/// <param name="Question">As it reads now.</param>
/// <param name="Source">Where its fact comes from; null where its module does not cite it.</param>
/// <param name="Review">The newest of this version, or null.</param>
/// <param name="Reviewer">Who judged; null where nobody did or the name was erased.</param>
public sealed record QuestionToReview(Question Question, SourceNote? Source, QuestionReview? Review, string? Reviewer);
