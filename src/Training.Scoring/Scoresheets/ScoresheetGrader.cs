using Training.Courses;

namespace Training.Scoring;

/// <summary>Grades a signed scoresheet against the checklist version that it was scored with.</summary>
/// <remarks>Rule: docs/rules.md, "Practicals".</remarks>
public static class ScoresheetGrader
{
    /// <summary>Grades it, or says everything that makes it no record of its checklist.</summary>
    /// <param name="checklist">The version named by the sheet.</param>
    /// <param name="sheet">As signed.</param>
    /// <param name="modelPass">The earlier pass on the model that a live sheet names, looked up in the records; null where there is none or it is not needed.</param>
    /// <param name="problems">Receives one problem for each thing that is wrong.</param>
    /// <returns>Null where a problem was found.</returns>
    public static ScoresheetResult? Grade(Checklist checklist, Scoresheet sheet, ModelPass? modelPass, ICollection<Problem> problems)
    {
        var before = problems.Count;
        ScoresheetCheck.Find(checklist, sheet, problems);
        LiveCheck.Find(sheet, modelPass, problems);
        return problems.Count > before ? null : Result(checklist, sheet);
    }

    private static ScoresheetResult Result(Checklist checklist, Scoresheet sheet)
    {
        var seen = checklist.Steps.Zip(sheet.Observations, (step, observation) => (Step: step, observation.Observation)).ToList();
        var points = seen.Sum(step => StepMark.Points(step.Step, step.Observation));
        var max = seen.Count * StepMark.Most;
        var critical = seen.Where(step => StepMark.FailsCritically(step.Step, step.Observation)).ToList();
        var unseen = sheet.StoppedAtStep is null ? seen.Where(step => step.Observation == Observation.NotObserved).ToList() : [];

        var reasons = new List<ScoresheetReason>();
        if (sheet.StoppedAtStep is { } stop) reasons.Add(new ScoresheetReason.Stopped(stop));
        reasons.AddRange(critical.Select(step => new ScoresheetReason.CriticalStepFailed(step.Step.Id)));
        reasons.AddRange(unseen.Select(step => new ScoresheetReason.StepNotObserved(step.Step.Id)));

        // Points of a sheet that nobody saw whole say nothing, so they are no reason.
        if (unseen.Count == 0 && !Share.Reaches(points, max, checklist.PassPercent))
        {
            reasons.Add(new ScoresheetReason.BelowPass(points, max, checklist.PassPercent));
        }

        return new ScoresheetResult(checklist.Version, Outcome(reasons, critical.Count, unseen.Count), points, max, reasons);
    }

    // A critical step that was failed is failed, whatever else was not seen.
    private static PracticalOutcome Outcome(List<ScoresheetReason> reasons, int failedCritically, int unseen) =>
        reasons.Count == 0 ? PracticalOutcome.Passed
        : unseen > 0 && failedCritically == 0 ? PracticalOutcome.Incomplete
        : PracticalOutcome.Failed;
}
