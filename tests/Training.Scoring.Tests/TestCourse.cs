using Training.Courses;

namespace Training.Scoring.Tests;

/// <summary>Invented courses, built by hand: these tests need no reader and no words.</summary>
internal static class TestCourse
{
    public const string Hash = "course-hash";

    // Before the courses that are made with it.
    private static Scheme Scheme { get; } = new(
        "test-course",
        SchemeKind.CertificateOfTraining,
        new DateOnly(2026, 1, 1),
        new DateOnly(2027, 12, 31),
        Separation.None,
        new Terms(new(24, DurationUnit.Months), new(90, DurationUnit.Days), new(30, DurationUnit.Days)),
        [new(30, DurationUnit.Days)],
        [],
        [],
        new Dictionary<Language, SchemeWords>());

    /// <summary>Three topics, each with six plain and three critical questions of all four types; ten questions are drawn, 80 % passes.</summary>
    public static Course Mixed { get; } = Of(
        new Quiz("mixed-quiz", 80, null, [new("meeting", 4, 1, 50), new("distances", 3, 0, 0), new("bite", 3, 2, 67)]),
        [.. from topic in new[] { "meeting", "distances", "bite" } from number in Enumerable.Range(1, 9) select MixedQuestion(topic, number)]);

    /// <summary>As <see cref="Mixed"/>, with a time limit of 30 minutes.</summary>
    public static Course Timed { get; } = Mixed with { Quiz = Mixed.Quiz with { TimeLimitMinutes = 30 } };

    /// <summary>Six questions of pairs and six with a spot by turns, the last two of each critical; five are drawn, two of them critical.</summary>
    /// <remarks>Apart from <see cref="Mixed"/>, whose draws were pinned before these types were there.</remarks>
    public static Course Marked { get; } = Of(
        new Quiz("marked-quiz", 80, null, [new("meeting", 5, 2, 0)]),
        [.. from number in Enumerable.Range(1, 6) from question in new[] { Pairs($"match-{number}", number > 4), Spot($"spot-{number}", number > 4) } select question]);

    public static Course Of(Quiz quiz, params Question[] questions) => new(
        "test-course",
        Hash,
        Scheme,
        [.. questions.Select(question => question.Topic).Distinct(StringComparer.Ordinal)],
        ["step-back"],
        [],
        questions,
        quiz,
        [],
        new Dictionary<Language, CourseWords>(),
        []);

    /// <summary>A course whose quiz draws all of these questions; they share one topic.</summary>
    public static Course DrawingAll(int passPercent, params Question[] questions) => Of(
        new Quiz("all-quiz", passPercent, null, [new("meeting", questions.Length, questions.Count(question => question.IsCritical), 0)]),
        questions);

    public static Course WithChecklist(Checklist checklist) => Mixed with { Checklists = [checklist] };

    public static Question Question(string id, QuestionKey key, string[] options, string topic = "meeting", bool isCritical = false) => new(
        id,
        topic,
        "step-back",
        Difficulty.Medium,
        isCritical,
        new Passage(topic, $"about-{id}"),
        "F-TEST-01",
        [],
        options,
        key,
        new Dictionary<Language, QuestionWords>(),
        $"version-of-{id}");

    public static Question Pairs(string id, bool isCritical = false) =>
        Question(id, new QuestionKey.Match(["p", "q", "r", "s"], [new("a", "q"), new("b", "p"), new("c", "s")]), ["a", "b", "c"], isCritical: isCritical);

    public static Question Spot(string id, bool isCritical = false) =>
        Question(id, new QuestionKey.Spot("b", "figures/place.svg", []), ["a", "b", "c", "d"], isCritical: isCritical);

    public static Checklist Checklist(int passPercent, params ChecklistStep[] steps) => new(
        "move-to-bucket", passPercent, [Subject.Model, Subject.Live], steps, new Dictionary<Language, ChecklistWords>(), "checklist-version");

    private static Question MixedQuestion(string topic, int number)
    {
        var id = $"{topic}-{number}";
        var isCritical = number > 6;
        return (number % 4) switch
        {
            0 => Question(id, new QuestionKey.Number(130, 5, "cm"), [], topic, isCritical),
            1 => Question(id, new QuestionKey.One("b"), ["a", "b", "c", "d"], topic, isCritical),
            2 => Question(id, new QuestionKey.Several(["a", "c"]), ["a", "b", "c", "d"], topic, isCritical),
            _ => Question(id, new QuestionKey.Order(["c", "a", "b"]), ["a", "b", "c"], topic, isCritical),
        };
    }
}
