using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Sittings;

/// <summary>What the page before sending is given.</summary>
/// <param name="SittingId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Questions">In the order shown.</param>
/// <param name="KeptBefore">The answer that was just kept, or null.</param>
public sealed record ReviewPage(Guid SittingId, string CourseTitle, IReadOnlyList<ReviewedQuestion> Questions, KeptLine? KeptBefore)
{
    /// <summary>How many questions have an answer.</summary>
    public int Answered => Questions.Count(question => question.Kept is not null);

    /// <summary>Numbers of the questions without one.</summary>
    public IReadOnlyList<int> Empty => [.. Questions.Where(question => question.Kept is null).Select(question => question.Number)];

    /// <summary>The page in one language.</summary>
    public static ReviewPage Of(Course course, KeptSitting sitting, Language language, int? keptBefore)
    {
        var pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        return new(
            sitting.Id,
            course.Scheme.Words[language].Title,
            [.. sitting.Draw.Questions.Select((drawn, index) => new ReviewedQuestion(
                index + 1, pool[drawn.QuestionId].Words[language].StemHtml, KeptLine.Find(sitting, index + 1)))],
            keptBefore is { } before ? KeptLine.Find(sitting, before) : null);
    }
}

/// <summary>One question before sending.</summary>
/// <param name="Number">Place, from 1.</param>
/// <param name="StemHtml">What is asked, as safe HTML.</param>
/// <param name="Kept">Its last answer, or null where it is empty.</param>
public sealed record ReviewedQuestion(int Number, string StemHtml, KeptLine? Kept);
