using Training.Courses;

namespace Training.Scoring;

/// <summary>Finds everything that makes a signed sheet something other than a record of its checklist.</summary>
internal static class ScoresheetCheck
{
    private const int LongestRemarks = 2000;

    public static void Find(Checklist checklist, Scoresheet sheet, ICollection<Problem> problems)
    {
        if (sheet.ChecklistId != checklist.Id || sheet.ChecklistVersion != checklist.Version)
        {
            problems.Add(new(ScoresheetProblems.ChecklistDiffers, Place.Of("checklist"), sheet.ChecklistId, checklist.Id));
        }

        if (!checklist.Subjects.Contains(sheet.Subject)) problems.Add(new(ScoresheetProblems.SubjectNotAllowed, Place.Of("subject")));
        if (sheet.InstructorId == sheet.CandidateId) problems.Add(new(ScoresheetProblems.ScoresThemselves, Place.Of("instructor")));
        if (!sheet.IdentityConfirmed) problems.Add(new(ScoresheetProblems.IdentityNotConfirmed, Place.Of("identity")));
        if (sheet.Try < 1) problems.Add(new(ScoresheetProblems.TryNotCounted, Place.Of("try")));
        if (sheet.Remarks.Length > LongestRemarks) problems.Add(new(ScoresheetProblems.RemarksTooLong, Place.Of("remarks"), $"{LongestRemarks}"));
        if (StepsMatch(checklist, sheet, problems)) FindAroundStop(checklist, sheet, problems);
    }

    private static bool StepsMatch(Checklist checklist, Scoresheet sheet, ICollection<Problem> problems)
    {
        var asked = checklist.Steps.Select(step => step.Id).ToList();
        var given = sheet.Observations.Select(observation => observation.StepId).ToList();
        var missing = asked.Except(given, StringComparer.Ordinal).ToList();
        var unknown = given.Except(asked, StringComparer.Ordinal).ToList();
        foreach (var step in missing) problems.Add(new(ScoresheetProblems.StepMissing, Place.Of($"step {step}"), step));
        foreach (var step in unknown) problems.Add(new(ScoresheetProblems.StepUnknown, Place.Of($"step {step}"), step));
        if (sheet.StoppedAtStep is { } stop && !asked.Contains(stop, StringComparer.Ordinal))
        {
            problems.Add(new(ScoresheetProblems.StepUnknown, Place.Of("stop"), stop));
            return false;
        }

        if (missing.Count + unknown.Count > 0) return false;
        if (asked.SequenceEqual(given)) return true;
        problems.Add(new(ScoresheetProblems.StepOrder, Place.Of("steps")));
        return false;
    }

    private static void FindAroundStop(Checklist checklist, Scoresheet sheet, ICollection<Problem> problems)
    {
        var stop = sheet.StoppedAtStep is null
            ? checklist.Steps.Count
            : checklist.Steps.TakeWhile(step => step.Id != sheet.StoppedAtStep).Count();
        foreach (var (step, observation, place) in checklist.Steps.Zip(sheet.Observations, Enumerable.Range(0, checklist.Steps.Count)))
        {
            var where = Place.Of($"step {step.Id}");
            if (place > stop && observation.Observation != Observation.NotObserved)
            {
                problems.Add(new(ScoresheetProblems.ObservedAfterStop, where, step.Id));
            }

            // Nothing follows the last step, so a failure there needs no stop.
            if (place < stop && place < checklist.Steps.Count - 1 && StepMark.FailsCritically(step, observation.Observation))
            {
                problems.Add(new(ScoresheetProblems.NotStopped, where, step.Id));
            }

            if (place <= stop && stop < checklist.Steps.Count && observation.Observation == Observation.NotObserved)
            {
                problems.Add(new(ScoresheetProblems.StopUnobserved, where, step.Id));
            }
        }
    }
}
