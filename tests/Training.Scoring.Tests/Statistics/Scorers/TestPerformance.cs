using Training.Courses;

namespace Training.Scoring.Tests;

/// <summary>Invented performances on a checklist of twenty steps, of which the third is critical.</summary>
internal static class TestPerformance
{
    public static readonly Guid Ana = new("00000000-0000-0000-0000-000000000001");
    public static readonly Guid Ben = new("00000000-0000-0000-0000-000000000002");
    public static readonly Guid Cruz = new("00000000-0000-0000-0000-000000000003");
    public static readonly Guid Dora = new("00000000-0000-0000-0000-000000000004");

    public static Checklist Checklist { get; } = TestCourse.Checklist(
        80, [.. Enumerable.Range(1, 20).Select(step => new ChecklistStep($"s{step}", "step-back", IsCritical: step == 3, MayBePrompted: step != 3, "F-TEST-01"))]);

    /// <summary>A performance; each sheet has a letter a step: d done, p prompted, n not done, - not observed.</summary>
    public static ScoredPerformance Of(DateOnly on, params (Guid Scorer, string Letters)[] sheets) =>
        new(Guid.NewGuid(), on, [.. sheets.Select(sheet => Sheet(sheet.Scorer, sheet.Letters))]);

    /// <summary>One sheet; passed where the critical step is done and no step is missing.</summary>
    public static PerformanceSheet Sheet(Guid scorer, string letters)
    {
        var marks = letters.Select((letter, place) => (Id: $"s{place + 1}", Mark: letter switch
        {
            'd' => Observation.Done,
            'p' => Observation.DoneAfterPrompt,
            'n' => Observation.NotDone,
            _ => Observation.NotObserved,
        })).ToDictionary(one => one.Id, one => one.Mark, StringComparer.Ordinal);
        return new(scorer, marks, marks.GetValueOrDefault("s3") is Observation.Done ? PracticalOutcome.Passed : PracticalOutcome.Failed);
    }

    /// <summary>Twenty letters: so many prompted at the end, else done.</summary>
    public static string Prompted(int count) => new string('d', 20 - count) + new string('p', count);
}
