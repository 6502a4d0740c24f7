using Training.Courses;

namespace Training.Scoring;

/// <summary>Draws a quiz from a course's pool by its blueprint.</summary>
/// <remarks>Rule: docs/rules.md, "Draws". The order in which the generator is asked is a contract: the same seed shows the same quiz.</remarks>
public static class QuizDraw
{
    /// <summary>The quiz that a seed stands for: which questions, in which order, with their options in which order.</summary>
    /// <param name="course">A checked course: its pool covers its blueprint.</param>
    /// <param name="seed">From a secure generator where the draw must not be guessed.</param>
    /// <exception cref="ArgumentException">The pool is smaller than the blueprint: the course was never checked.</exception>
    public static Draw From(Course course, ulong seed)
    {
        var random = new SplitMix64(seed);
        var drawn = new List<Question>();
        foreach (var row in course.Quiz.Blueprint)
        {
            drawn.AddRange(Take(course, row, isCritical: true, row.Critical, random));
            drawn.AddRange(Take(course, row, isCritical: false, row.Questions - row.Critical, random));
        }

        var order = drawn.ToArray();
        random.Shuffle<Question>(order);
        var shown = order.Select(question => new DrawnQuestion(question.Id, question.Version, ShuffleOptions(question, random))).ToArray();
        return new(course.Hash, course.Quiz.Id, seed, shown);
    }

    private static Question[] Take(Course course, BlueprintRow row, bool isCritical, int count, SplitMix64 random)
    {
        var pool = course.Questions.Where(question => question.Topic == row.Topic && question.IsCritical == isCritical).ToArray();
        if (pool.Length < count)
        {
            throw new ArgumentException($"The pool of topic {row.Topic} is smaller than the blueprint asks.", nameof(course));
        }

        random.Shuffle<Question>(pool);
        return pool[..count];
    }

    internal static string[] ShuffleOptions(Question question, SplitMix64 random)
    {
        if (question.Key is QuestionKey.Match match) return [.. Shuffled(question.OptionIds, random), .. Shuffled(match.MatchIds, random)];
        var options = question.OptionIds.ToArray();
        do
        {
            random.Shuffle<string>(options);
        }
        while (ShowsItsKey(question, options));
        return options;
    }

    private static string[] Shuffled(IReadOnlyList<string> ids, SplitMix64 random)
    {
        var shuffled = ids.ToArray();
        random.Shuffle<string>(shuffled);
        return shuffled;
    }

    // Somebody who leaves the steps as they are has not ordered them. A single step has no other order.
    private static bool ShowsItsKey(Question question, string[] options) =>
        question.Key is QuestionKey.Order order && options.Length > 1 && options.SequenceEqual(order.OptionIds, StringComparer.Ordinal);
}
