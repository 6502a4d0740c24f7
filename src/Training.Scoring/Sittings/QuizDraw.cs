using Training.Courses;

namespace Training.Scoring;

/// <summary>Draws a quiz by its blueprint.</summary>
/// <remarks>Rule: docs/rules.md, "Draws". What is drawn is stored; the seed only explains it.</remarks>
public static class QuizDraw
{
    /// <summary>Draws from the course's pool: for each topic exactly as many critical and other questions as its blueprint row says.</summary>
    /// <param name="course">A checked course: its pool is large enough for its blueprint.</param>
    /// <param name="seed">Same course, same seed, same draw.</param>
    public static Draw From(Course course, ulong seed)
    {
        var chance = new SplitMix64(seed);
        var drawn = course.Quiz.Blueprint.SelectMany(row => OfTopic(course, row, chance)).ToList();
        return new Draw(course.Hash, course.Quiz.Id, seed, [.. chance.Shuffle(drawn).Select(question => Shown(question, chance))]);
    }

    private static IEnumerable<Question> OfTopic(Course course, BlueprintRow row, SplitMix64 chance)
    {
        var pool = course.Questions.Where(question => question.Topic == row.Topic).ToLookup(question => question.IsCritical);
        var critical = chance.Shuffle([.. pool[true]]).Take(row.Critical).ToList();
        var other = chance.Shuffle([.. pool[false]]).Take(row.Questions - row.Critical).ToList();
        return [.. critical, .. other];
    }

    private static DrawnQuestion Shown(Question question, SplitMix64 chance)
    {
        var options = chance.Shuffle(question.OptionIds);
        // Steps shown in the right order would give the answer away: draw their order again. A checked order question has three steps or more.
        while (question.Key is QuestionKey.Order key && options.SequenceEqual(key.OptionIds)) options = chance.Shuffle(question.OptionIds);
        return new DrawnQuestion(question.Id, question.Version, options);
    }
}
