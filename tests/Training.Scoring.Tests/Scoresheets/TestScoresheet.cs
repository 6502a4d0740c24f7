using Training.Courses;

namespace Training.Scoring.Tests;

/// <summary>Invented scoresheets of an invented checklist.</summary>
internal static class TestScoresheet
{
    public static readonly DateTimeOffset SignedAt = new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero);
    public static readonly Guid Candidate = Guid.Parse("0195f000-0000-7000-8000-000000000001");
    public static readonly Guid Instructor = Guid.Parse("0195f000-0000-7000-8000-000000000002");
    public static readonly Guid Watcher = Guid.Parse("0195f000-0000-7000-8000-000000000003");
    public static readonly Guid EarlierPass = Guid.Parse("0195f000-0000-7000-8000-000000000004");

    public static readonly Guid Hook = Guid.Parse("0195f000-0000-7000-8000-000000000005");
    public static readonly Guid HookInspection = Guid.Parse("0195f000-0000-7000-8000-000000000006");

    /// <summary>Five steps, 70 % passes: plain; prompt allowed; critical; critical with a prompt allowed; plain.</summary>
    public static Checklist Checklist { get; } = TestCourse.Checklist(
        70,
        new("look", "inspect-kit", IsCritical: false, MayBePrompted: false, "F-TEST-01"),
        new("call", "inspect-kit", IsCritical: false, MayBePrompted: true, "F-TEST-01"),
        new("reach", "step-back", IsCritical: true, MayBePrompted: false, "F-TEST-01"),
        new("lid", "step-back", IsCritical: true, MayBePrompted: true, "F-TEST-01"),
        new("report", "step-back", IsCritical: false, MayBePrompted: false, "F-TEST-01"));

    public static Course Course { get; } = TestCourse.WithChecklist(Checklist);

    /// <summary>On the model, everything done unprompted.</summary>
    public static Scoresheet AllDone { get; } = Of("ddddd");

    /// <summary>On a live snake, everything done and every condition met.</summary>
    public static Scoresheet Live { get; } = AllDone with
    {
        Subject = Subject.Live,
        Live = new("TEST-PERMIT-1", new DateOnly(2026, 2, 1), SignedAt.AddHours(-2), Watcher, EarlierPass),
    };

    public static ScoresheetContext Context { get; } = new(
        new DateOnly(2026, 3, 2), new ModelPass(EarlierPass, Candidate, "move-to-bucket", SignedAt.AddHours(-4)));

    /// <summary>One letter a step: d done, p after a prompt, n not done, - not observed.</summary>
    public static Scoresheet Of(string letters, string? stoppedAt = null, Checklist? checklist = null)
    {
        checklist ??= Checklist;
        return new(
            Guid.NewGuid(),
            Guid.NewGuid(),
            Candidate,
            Instructor,
            TestCourse.Hash,
            checklist.Id,
            checklist.Version,
            Subject.Model,
            1,
            [.. checklist.Steps.Zip(letters, (step, letter) => new StepObservation(step.Id, ObservationOf(letter)))],
            stoppedAt,
            null,
            new("Dry sand, low sun, light wind", 24, "H-2, T-5, B-1", [new(Hook, HookInspection)]),
            Language.English,
            true,
            SignedAt,
            "Winifred Oakley",
            "");
    }

    public static Observation ObservationOf(char letter) => letter switch
    {
        'd' => Observation.Done,
        'p' => Observation.DoneAfterPrompt,
        'n' => Observation.NotDone,
        _ => Observation.NotObserved,
    };

    /// <summary>Grades what must be acceptable.</summary>
    public static ScoresheetResult Grade(Scoresheet sheet, Course? course = null)
    {
        var problems = new List<Problem>();
        var result = ScoresheetGrader.Grade(course ?? Course, sheet, Context, problems);
        Assert.Empty(problems);
        Assert.NotNull(result);
        return result;
    }

    /// <summary>The codes and places, as <c>code @ part</c>, of what must be refused.</summary>
    public static IReadOnlyList<string> Refusals(Scoresheet sheet, Course? course = null, ScoresheetContext? context = null)
    {
        var problems = new List<Problem>();
        Assert.Null(ScoresheetGrader.Grade(course ?? Course, sheet, context ?? Context, problems));
        return [.. problems.Select(problem => $"{problem.Code} @ {problem.Place.Part}")];
    }
}
