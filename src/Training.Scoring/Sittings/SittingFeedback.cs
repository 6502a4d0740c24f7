using Training.Courses;

namespace Training.Scoring;

/// <summary>What a candidate may be told of one question not answered right: where to reread, never the key.</summary>
/// <param name="Topic">Id of the topic.</param>
/// <param name="Passage">What to reread.</param>
/// <param name="IsCritical">Whether the question was critical: the page then quotes the right action in the module's words.</param>
public sealed record Reread(string Topic, Passage Passage, bool IsCritical);

/// <summary>What a certification quiz tells after it was graded.</summary>
public static class SittingFeedback
{
    /// <summary>One entry for each passage to reread, critical ones first, then in the order shown; a passage is named once.</summary>
    public static IReadOnlyList<Reread> For(Course course, SittingResult result)
    {
        var pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        return
        [
            .. result.Questions
                .Where(question => question.Mark != Mark.Right)
                .Select(question => pool[question.QuestionId])
                .OrderByDescending(question => question.IsCritical)
                .DistinctBy(question => question.Passage)
                .Select(question => new Reread(question.Topic, question.Passage, question.IsCritical)),
        ];
    }
}
