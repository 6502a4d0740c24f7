using System.Diagnostics;
using Training.Courses;
using Training.Scoring;

namespace Training.Web.Demo;

/// <summary>Answers a drawn quiz for an invented person, so that the real grading has something real to grade.</summary>
/// <remarks>
/// Chance model: an easy, medium or hard question is answered right with probability 1 / (1 + e^(b − a)), where a is the person's ability and b is
/// −1, 0 or 1 (one-parameter logistic). Directives say exactly what goes wrong instead. Same seed, same draw, same answers.
/// </remarks>
internal static class AnswerModel
{
    public static IReadOnlyList<Answer> Answer(
        Course course, Draw draw, DemoSitting row, IReadOnlyList<DemoHabit> habits, DateTimeOffset startedAt)
    {
        var language = LanguageTags.Find(row.Language) ?? throw new InvalidDataException($"sittings.csv: language '{row.Language}'");
        var chance = new SplitMix64(row.Seed + 1);
        var pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        var drawn = draw.Questions.Select(question => pool[question.QuestionId]).ToList();
        var wrong = Wrong(drawn, row, chance);
        return [.. drawn.Select((question, place) => Given(
            question,
            HabitOf(question, row, habits) ?? (wrong.Contains(question.Id) ? WrongAnswer(question, chance) : RightAnswer(question)),
            language,
            startedAt.AddSeconds(40 * (place + 1))))];
    }

    private static HashSet<string> Wrong(List<Question> drawn, DemoSitting row, SplitMix64 chance) => new(row.Answers switch
    {
        "all-right" => [],
        "one-wrong" => drawn.Where(question => !question.IsCritical).Take(1).Select(question => question.Id),
        "one-critical-wrong" => drawn.Where(question => question.IsCritical).Take(1).Select(question => question.Id),
        "half-right" => drawn.Where((_, place) => place % 2 == 0).Select(question => question.Id),
        "" => drawn.Where(question => Uniform(chance) >= 1 / (1 + Math.Exp(Hardness(question.Difficulty) - row.Ability))).Select(question => question.Id),
        _ => throw new InvalidDataException($"sittings.csv, {row.Sitting}: answers '{row.Answers}'"),
    }, StringComparer.Ordinal);

    // A chance of its own, so that a habit changes no other answer.
    private static (IReadOnlyList<string> Options, decimal? Number)? HabitOf(Question question, DemoSitting row, IReadOnlyList<DemoHabit> habits) =>
        habits.FirstOrDefault(habit => habit.Course == row.Course && habit.Question == question.Id) is { } habit
        && row.Answers.Length == 0 && row.Ability >= habit.AbilityFrom && Uniform(new(row.Seed + 2)) < habit.Share
            ? ([habit.Option], null)
            : null;

    private static double Hardness(Difficulty difficulty) => difficulty switch
    {
        Difficulty.Easy => -1,
        Difficulty.Medium => 0,
        Difficulty.Hard => 1,
    };

    private static double Uniform(SplitMix64 chance) => (chance.NextUInt64() >> 11) * (1.0 / (1UL << 53));

    private static (IReadOnlyList<string> Options, decimal? Number) RightAnswer(Question question) => question.Key switch
    {
        QuestionKey.One one => ([one.OptionId], null),
        QuestionKey.Several several => (several.OptionIds, null),
        QuestionKey.Order order => (order.OptionIds, null),
        QuestionKey.Number number => ([], number.Value),
        QuestionKey.Match match => (PairsOf(match, 0), null),
        QuestionKey.Spot spot => ([spot.RegionId], null),
        _ => throw new UnreachableException(),
    };

    private static (IReadOnlyList<string> Options, decimal? Number) WrongAnswer(Question question, SplitMix64 chance) => question.Key switch
    {
        QuestionKey.One one => ([Pick([.. question.OptionIds.Where(option => option != one.OptionId)], chance)], null),
        QuestionKey.Several several => (several.OptionIds.Count > 1 ? [.. several.OptionIds.Skip(1)] : [.. question.OptionIds], null),
        QuestionKey.Order order => ([.. order.OptionIds.Skip(1), order.OptionIds[0]], null),
        QuestionKey.Number number => ([], number.Value + number.Tolerance + 10),
        QuestionKey.Match match => (PairsOf(match, 1), null),
        QuestionKey.Spot spot => ([Pick([.. question.OptionIds.Where(option => option != spot.RegionId)], chance)], null),
        _ => throw new UnreachableException(),
    };

    /// <summary>The right pairs with their matches moved on by so many options.</summary>
    private static List<string> PairsOf(QuestionKey.Match match, int moved) =>
        [.. match.Pairs.Select((pair, place) => (pair with { MatchId = match.Pairs[(place + moved) % match.Pairs.Count].MatchId }).ToString())];

    private static string Pick(List<string> options, SplitMix64 chance) => options[(int)chance.NextBelow((uint)options.Count)];

    private static Answer Given(
        Question question, (IReadOnlyList<string> Options, decimal? Number) answer, Language language, DateTimeOffset savedAt) =>
        new(question.Id, answer.Options, answer.Number, language, savedAt);
}
