using System.Diagnostics;
using Training.Courses;

namespace Training.Scoring;

/// <summary>Grades a submitted sitting by the keys of the course it was drawn from.</summary>
/// <remarks>Rule: docs/rules.md, "Grading a sitting". Whole-number arithmetic; everything must hold, nothing trades against another.</remarks>
public static class SittingGrader
{
    /// <summary>What a sitting came to, or null where it is not one that this course could have led to.</summary>
    /// <param name="course">The snapshot that the draw names.</param>
    /// <param name="sitting">As stored; graded again it gives the same result.</param>
    /// <param name="problems">Receives everything that is impossible about the sitting (<see cref="SittingProblems"/>).</param>
    public static SittingResult? Grade(Course course, Sitting sitting, ICollection<Problem> problems) => Regrade(course, sitting, [], problems);

    /// <summary>What a sitting comes to once questions turned out wrong; without a correction of what was drawn, the same as <see cref="Grade"/>.</summary>
    /// <param name="course">The snapshot that the draw names.</param>
    /// <param name="sitting">As stored.</param>
    /// <param name="corrections">At most one for each text of a question.</param>
    /// <param name="problems">As for <see cref="Grade"/>.</param>
    /// <exception cref="ArgumentException">The key of a correction does not fit the question that was shown.</exception>
    public static SittingResult? Regrade(
        Course course, Sitting sitting, IReadOnlyCollection<KeyCorrection> corrections, ICollection<Problem> problems)
    {
        var alreadyThere = problems.Count;
        new SittingCheck(course, sitting, problems).Run();
        if (problems.Count > alreadyThere) return null;

        var pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        var answers = sitting.Answers.ToDictionary(answer => answer.QuestionId, StringComparer.Ordinal);
        var corrected = corrections.ToDictionary(correction => (correction.QuestionId, correction.Version));
        var marked = sitting.Draw.Questions
            .Select(drawn => pool[drawn.QuestionId])
            .Select(question => MarkBy(question, corrected.GetValueOrDefault((question.Id, question.Version))))
            .ToList();
        var counted = marked.Where(one => one.Mark is not Mark.LeftOut).ToList();

        var topics = course.Quiz.Blueprint.Select(row => TopicOf(row.Topic)).ToList();
        var points = topics.Sum(topic => topic.Points);
        var reasons = Reasons(course.Quiz, points, topics, counted);
        var questions = marked.Select(one => new QuestionResult(one.Question.Id, one.KeyVersion, one.Mark)).ToList();
        return new(course.Hash, reasons.Count == 0, points, counted.Count, topics, questions, reasons);

        TopicResult TopicOf(string topic)
        {
            var asked = counted.Where(one => one.Question.Topic == topic).ToList();
            return new(topic, asked.Count(one => one.Mark is Mark.Right), asked.Count);
        }

        Marked MarkBy(Question question, KeyCorrection? correction)
        {
            var answer = answers.GetValueOrDefault(question.Id);
            return correction switch
            {
                null => new(question, question.Version, MarkOf(question, answer, sitting, course.Quiz)),
                KeyCorrection.LeaveOut => new(question, question.Version, Mark.LeftOut),
                KeyCorrection.OtherKey other when KeyCorrection.Fits(question, other.By) =>
                    new(question, other.By.Version, MarkOf(other.By, answer, sitting, course.Quiz)),
                _ => throw new ArgumentException($"The other key does not fit question {question.Id}.", nameof(corrections)),
            };
        }
    }

    /// <summary>Marks one answer by the key alone, as practice does: no clock, no sitting.</summary>
    /// <param name="question">The question that was shown.</param>
    /// <param name="answer">An answer in which <see cref="AnswerCheck"/> finds nothing; null where none was given.</param>
    /// <returns>Right, wrong or blank; never late.</returns>
    public static Mark MarkOf(Question question, Answer? answer)
    {
        // Several answers with none chosen says as little as no answer; the other types cannot be empty.
        if (answer is null or { OptionIds.Count: 0, Number: null }) return Mark.Blank;
        return IsRight(question.Key, answer) ? Mark.Right : Mark.Wrong;
    }

    private static Mark MarkOf(Question question, Answer? answer, Sitting sitting, Quiz quiz)
    {
        if (answer is not null && TimeLimit.IsLate(quiz, sitting.StartedAt, answer.SavedAt)) return Mark.Late;
        return MarkOf(question, answer);
    }

    // The check has seen to it that the answer fits the type and names no option twice.
    private static bool IsRight(QuestionKey key, Answer answer) => key switch
    {
        QuestionKey.One one => answer.OptionIds[0] == one.OptionId,
        QuestionKey.Several several => answer.OptionIds.ToHashSet(StringComparer.Ordinal).SetEquals(several.OptionIds),
        QuestionKey.Order order => answer.OptionIds.SequenceEqual(order.OptionIds, StringComparer.Ordinal),
        // Bounds instead of a difference: what somebody types may be so large that the difference overflows.
        QuestionKey.Number number => answer.Number >= number.Value - number.Tolerance && answer.Number <= number.Value + number.Tolerance,
        QuestionKey.Match match => answer.OptionIds.ToHashSet(StringComparer.Ordinal).SetEquals(match.Pairs.Select(pair => pair.ToString())),
        QuestionKey.Spot spot => answer.OptionIds[0] == spot.RegionId,
        _ => throw new UnreachableException(),
    };

    private static List<SittingReason> Reasons(
        Quiz quiz, int points, List<TopicResult> topics, List<Marked> marked)
    {
        var reasons = new List<SittingReason>();
        // Of nothing, nothing would be enough: who was asked no question that counts has shown nothing.
        if (marked.Count == 0 || points * 100 < quiz.PassPercent * marked.Count)
            reasons.Add(new SittingReason.BelowPass(points, marked.Count, quiz.PassPercent));
        reasons.AddRange(topics
            .Zip(quiz.Blueprint, (topic, row) => (Topic: topic, row.PassPercent))
            .Where(both => both.Topic.Points * 100 < both.PassPercent * both.Topic.MaxPoints)
            .Select(both => new SittingReason.TopicBelowPass(both.Topic.Topic, both.Topic.Points, both.Topic.MaxPoints, both.PassPercent)));
        reasons.AddRange(marked
            .Where(one => one.Question.IsCritical && one.Mark is not Mark.Right)
            .Select(one => new SittingReason.CriticalMissed(one.Question.Id)));
        return reasons;
    }

    private readonly record struct Marked(Question Question, string KeyVersion, Mark Mark);
}
