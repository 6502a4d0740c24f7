using Training.Courses;

namespace Training.Scoring;

/// <summary>Grades marks about a recorded demonstration, which is watched to its end whatever happens in it.</summary>
/// <remarks>Rule: docs/rules.md, "Calibration". Whole-number arithmetic, as for a practical.</remarks>
public static class RecordedDemonstration
{
    /// <summary>
    /// Failed where a critical step is failed or points are too few; incomplete where a step was not seen and nothing failed; else passed.
    /// </summary>
    /// <param name="checklist">What was scored.</param>
    /// <param name="marks">By step; one that is not there was not seen.</param>
    public static PracticalOutcome OutcomeOf(Checklist checklist, IReadOnlyDictionary<string, Observation> marks)
    {
        var seen = checklist.Steps.Select(step => (Step: step, Mark: marks.GetValueOrDefault(step.Id, Observation.NotObserved))).ToList();
        if (seen.Exists(one => ScoresheetGrader.StopsAt(one.Step, one.Mark))) return PracticalOutcome.Failed;
        if (seen.Exists(one => one.Mark is Observation.NotObserved)) return PracticalOutcome.Incomplete;
        var points = seen.Sum(one => ScoresheetGrader.PointsOf(one.Step, one.Mark));
        return points * 100 >= checklist.PassPercent * 2 * seen.Count ? PracticalOutcome.Passed : PracticalOutcome.Failed;
    }
}
