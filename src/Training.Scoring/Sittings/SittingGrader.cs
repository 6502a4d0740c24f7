using System.Diagnostics;
using Training.Courses;

namespace Training.Scoring;

/// <summary>Grades a submitted sitting against the snapshot that it was drawn from.</summary>
/// <remarks>Rule: docs/rules.md, "Grading a sitting". Whole-number arithmetic; conjunctive: no score rescues a missed critical question.</remarks>
public static class SittingGrader
{
    /// <summary>Grades it, or says everything that makes it no answer to its quiz.</summary>
    /// <param name="course">The snapshot named by the draw.</param>
    /// <param name="sitting">As submitted.</param>
    /// <param name="problems">Receives one problem for each thing that is wrong.</param>
    /// <returns>Null where a problem was found; nothing is graded in part.</returns>
    public static SittingResult? Grade(Course course, Sitting sitting, ICollection<Problem> problems)
    {
        var before = problems.Count;
        SittingCheck.Find(course, sitting, problems);
        if (problems.Count > before) return null;

        var pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        var answers = sitting.Answers.ToDictionary(answer => answer.QuestionId, StringComparer.Ordinal);
        var closesAt = course.Quiz.TimeLimitMinutes is { } minutes ? sitting.StartedAt.AddMinutes(minutes) : DateTimeOffset.MaxValue;
        var questions = sitting.Draw.Questions
            .Select(drawn => new QuestionResult(
                drawn.QuestionId, drawn.QuestionVersion, MarkOf(pool[drawn.QuestionId], answers.GetValueOrDefault(drawn.QuestionId), closesAt)))
            .ToList();
        return Result(course, pool, questions);
    }

    /// <summary>Whether the answer is what the key says; order, case and number form as docs/rules.md states.</summary>
    /// <exception cref="ArgumentException">The answer is of a form that the key does not take; practice and grading check that first.</exception>
    public static bool IsRight(QuestionKey key, Answer answer) => key switch
    {
        QuestionKey.One one => answer.OptionIds.SequenceEqual([one.OptionId]),
        QuestionKey.Several several => several.OptionIds.ToHashSet(StringComparer.Ordinal).SetEquals(answer.OptionIds),
        QuestionKey.Order order => order.OptionIds.SequenceEqual(answer.OptionIds),
        QuestionKey.Number number => answer.Number is { } given
            ? Math.Abs(given - number.Value) <= number.Tolerance
            : throw new ArgumentException("A number question needs a number.", nameof(answer)),
        _ => throw new UnreachableException(),
    };

    // An answer saved at the limit itself was saved in time.
    private static Mark MarkOf(Question question, Answer? answer, DateTimeOffset closesAt) => answer switch
    {
        null => Mark.Blank,
        _ when answer.SavedAt > closesAt => Mark.Late,
        _ => IsRight(question.Key, answer) ? Mark.Right : Mark.Wrong,
    };

    private static SittingResult Result(Course course, Dictionary<string, Question> pool, List<QuestionResult> questions)
    {
        var topics = course.Quiz.Blueprint.Select(row => OfTopic(row.Topic, [.. questions.Where(q => pool[q.QuestionId].Topic == row.Topic)])).ToList();
        var points = Points(questions);
        var reasons = new List<SittingReason>();
        if (!Share.Reaches(points, questions.Count, course.Quiz.PassPercent))
        {
            reasons.Add(new SittingReason.BelowPass(points, questions.Count, course.Quiz.PassPercent));
        }

        reasons.AddRange(course.Quiz.Blueprint.Zip(topics)
            .Where(pair => !Share.Reaches(pair.Second.Points, pair.Second.MaxPoints, pair.First.PassPercent))
            .Select(pair => new SittingReason.TopicBelowPass(pair.First.Topic, pair.Second.Points, pair.Second.MaxPoints, pair.First.PassPercent)));
        reasons.AddRange(questions
            .Where(question => question.Mark != Mark.Right && pool[question.QuestionId].IsCritical)
            .Select(question => new SittingReason.CriticalMissed(question.QuestionId)));
        return new SittingResult(course.Hash, reasons.Count == 0, points, questions.Count, topics, questions, reasons);
    }

    private static TopicResult OfTopic(string topic, List<QuestionResult> questions) => new(topic, Points(questions), questions.Count);

    private static int Points(List<QuestionResult> questions) => questions.Count(question => question.Mark == Mark.Right);
}
