using Training.Courses;

namespace Training.Scoring;

/// <summary>What a certification quiz tells about one question that was not answered right: where to reread, never the key.</summary>
/// <param name="QuestionId">Which question.</param>
/// <param name="Topic">Its topic.</param>
/// <param name="Passage">The section to reread; it holds the right action in the module's words.</param>
/// <param name="Mark">Wrong, blank or late.</param>
/// <param name="IsCritical">True: missing it alone fails the quiz.</param>
/// <remarks>Rule: docs/rules.md, "Grading a sitting". Neither key nor options nor explanation can be reached from here.</remarks>
public sealed record SittingFeedback(string QuestionId, string Topic, Passage Passage, Mark Mark, bool IsCritical)
{
    /// <summary>One entry for each question that was not answered right, in the order shown; empty where all were.</summary>
    /// <exception cref="ArgumentException">The result was graded with another snapshot of the course.</exception>
    public static IReadOnlyList<SittingFeedback> For(Course course, SittingResult result)
    {
        if (result.CourseHash != course.Hash) throw new ArgumentException("Graded with another snapshot.", nameof(result));
        var pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        return result.Questions
            .Where(marked => marked.Mark is not (Mark.Right or Mark.LeftOut))
            .Select(marked => Of(pool[marked.QuestionId], marked.Mark))
            .ToList();
    }

    private static SittingFeedback Of(Question question, Mark mark) =>
        new(question.Id, question.Topic, question.Passage, mark, question.IsCritical);
}
