using Training.Courses;

namespace Training.Scoring.Tests;

/// <summary>A small course made by hand: two topics, every question type, a checklist of five steps.</summary>
internal static class TestCourse
{
    public const string Hash = "c0ffee";

    public static readonly DateTimeOffset Start = new(2026, 3, 2, 15, 0, 0, TimeSpan.Zero);

    public static readonly Guid Candidate = new("00000000-0000-0000-0000-0000000000c1");

    public static readonly Guid Instructor = new("00000000-0000-0000-0000-0000000000a1");

    public static readonly Checklist MoveToBucket = new(
        "move-to-bucket",
        80,
        [Subject.Model, Subject.Live],
        [Step("kit"), Step("watcher", critical: true, prompt: true), Step("tongs", critical: true), Step("lid"), Step("label", prompt: true)],
        Empty<ChecklistWords>(),
        "v1");

    public static Course Course(int pass = 80, int? minutes = null, int bitePass = 50) => new(
        "handler",
        Hash,
        new Scheme("handler", SchemeKind.Certification, new(2024, 1, 1), new(2027, 1, 1), Separation.TeachScoreDecide, Terms, [], [], Empty<SchemeWords>()),
        ["meeting", "bite"],
        ["step-back"],
        [],
        Pool,
        new Quiz("handler-quiz", pass, minutes, [new("meeting", 4, 1, 0), new("bite", 2, 1, bitePass)]),
        [MoveToBucket],
        Empty<CourseWords>());

    public static Question Find(string id) => Pool.Single(question => question.Id == id);

    /// <summary>A draw of this course that shows the questions named, options in the author's order.</summary>
    public static Draw Draw(params string[] ids) =>
        new(Hash, "handler-quiz", 1, [.. ids.Select(id => new DrawnQuestion(id, "v1", Find(id).OptionIds))]);

    public static readonly string[] Standard = ["stop", "kinds", "steps", "reach", "call", "rings"];

    public static Answer Right(string id, int seconds = 30) => Find(id).Key switch
    {
        QuestionKey.One one => Given(id, [one.OptionId], null, seconds),
        QuestionKey.Several several => Given(id, several.OptionIds, null, seconds),
        QuestionKey.Order order => Given(id, order.OptionIds, null, seconds),
        QuestionKey.Number number => Given(id, [], number.Value, seconds),
        _ => throw new InvalidOperationException(),
    };

    public static Answer Given(string id, IReadOnlyList<string> options, decimal? number = null, int seconds = 30) =>
        new(id, options, number, Language.English, Start.AddSeconds(seconds));

    public static Sitting Sitting(params Answer[] answers) =>
        new(Guid.NewGuid(), Candidate, Draw(Standard), Start, Start.AddMinutes(20), answers);

    public static Sitting AllRightBut(params Answer[] others) => Sitting(
        [.. Standard.Where(id => others.All(answer => answer.QuestionId != id)).Select(id => Right(id)), .. others]);

    public static Scoresheet Sheet(params Observation[] seen) => new(
        Guid.NewGuid(), Guid.NewGuid(), Candidate, Instructor, Hash, MoveToBucket.Id, MoveToBucket.Version, Subject.Model, 1,
        [.. MoveToBucket.Steps.Zip(seen, (step, observation) => new StepObservation(step.Id, observation))],
        null, null, Language.English, true, Start, "");

    private static IReadOnlyList<Question> Pool { get; } =
    [
        Ask("stop", "meeting", new QuestionKey.One("back"), ["back", "wait", "prod"], critical: true),
        Ask("quiet", "meeting", new QuestionKey.One("still"), ["still", "safe"], critical: true),
        Ask("kinds", "meeting", new QuestionKey.Several(["pit", "coral"]), ["pit", "coral", "gopher", "rat"]),
        Ask("steps", "meeting", new QuestionKey.Order(["one", "two", "three"]), ["one", "two", "three"]),
        Ask("reach", "meeting", new QuestionKey.Number(110, 1, "cm"), []),
        Ask("place", "meeting", new QuestionKey.One("rock"), ["rock", "road", "roof"]),
        Ask("call", "bite", new QuestionKey.One("emergency"), ["emergency", "office"], critical: true),
        Ask("rings", "bite", new QuestionKey.One("off"), ["off", "on"]),
        Ask("ice", "bite", new QuestionKey.One("never"), ["never", "soon"]),
    ];

    private static Terms Terms => new(new(12, DurationUnit.Months), new(60, DurationUnit.Days), new(30, DurationUnit.Days));

    private static Question Ask(string id, string topic, QuestionKey key, IReadOnlyList<string> options, bool critical = false) => new(
        id, topic, "step-back", Difficulty.Medium, critical, new Passage(topic, id), "F-CP-01", [], options, key, Empty<QuestionWords>(), "v1");

    private static ChecklistStep Step(string id, bool critical = false, bool prompt = false) => new(id, "step-back", critical, prompt, "F-CP-01");

    private static Dictionary<Language, T> Empty<T>() => [];
}
