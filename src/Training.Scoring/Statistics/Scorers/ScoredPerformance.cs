using Training.Courses;

namespace Training.Scoring;

/// <summary>One go at a checklist, live or recorded, with the sheets of everybody who scored it without seeing the others'.</summary>
/// <param name="Id">Tells performances apart; says nothing of the candidate.</param>
/// <param name="On">Its day.</param>
/// <param name="Sheets">At most one for each scorer.</param>
public sealed record ScoredPerformance(Guid Id, DateOnly On, IReadOnlyList<PerformanceSheet> Sheets)
{
    /// <summary>Whether two scorers or more can be compared.</summary>
    public bool IsCompared => Sheets.Count > 1;
}

/// <summary>What one scorer wrote about a performance.</summary>
/// <param name="ScorerId">Who.</param>
/// <param name="Marks">By step; a step that was not observed is not there.</param>
/// <param name="Outcome">What it came to.</param>
public sealed record PerformanceSheet(Guid ScorerId, IReadOnlyDictionary<string, Observation> Marks, PracticalOutcome Outcome)
{
    /// <summary>The mark of a step as a number of the scale (0 not done, 1 after a prompt, 2 done), or null where it was not observed.</summary>
    public int? Number(string stepId) => Marks.TryGetValue(stepId, out var mark) ? NumberOf(mark) : null;

    /// <summary>Whether a critical step was passed, or null where it was not observed.</summary>
    public bool? Passes(ChecklistStep step) =>
        Marks.TryGetValue(step.Id, out var mark) && mark is not Observation.NotObserved ? ScoresheetGrader.Passes(step, mark) : null;

    private static int? NumberOf(Observation mark) => mark switch
    {
        Observation.NotDone => 0,
        Observation.DoneAfterPrompt => 1,
        Observation.Done => 2,
        Observation.NotObserved => null,
    };
}
