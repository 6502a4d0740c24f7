using System.Globalization;
using Training.Courses;

namespace Training.Scoring;

/// <summary>Finds what may not stand on any scoresheet. Rule: docs/rules.md, "Practicals".</summary>
internal sealed class ScoresheetCheck(Checklist checklist, Scoresheet sheet, ICollection<Problem> problems)
{
    public void Run()
    {
        CheckHead();
        CheckConditions(sheet.Conditions);
        CheckTime();
        CheckText(sheet.SignedName, ScoresheetGrader.GreatestSignedNameLength, nameof(sheet.SignedName),
            ScoresheetProblems.SignedNameMissing, ScoresheetProblems.SignedNameTooLong);
        var alreadyThere = problems.Count;
        CheckSteps();

        // Before or after a stop means something only where the steps stand as the checklist has them.
        if (problems.Count == alreadyThere) CheckStop();
    }

    private void CheckHead()
    {
        if (!checklist.Subjects.Contains(sheet.Subject))
        {
            Report(ScoresheetProblems.SubjectNotAllowed, nameof(sheet.Subject), sheet.Subject.ToString());
        }

        if (sheet.InstructorId == sheet.CandidateId) Report(ScoresheetProblems.ScoredThemselves, nameof(sheet.InstructorId));
        if (!sheet.IdentityConfirmed) Report(ScoresheetProblems.IdentityNotConfirmed, nameof(sheet.IdentityConfirmed));
        if (sheet.Try < 1) Report(ScoresheetProblems.TryNotPositive, nameof(sheet.Try), Text(sheet.Try));
        if (sheet.Remarks.Length > ScoresheetGrader.GreatestRemarksLength)
        {
            Report(
                ScoresheetProblems.RemarksTooLong, nameof(sheet.Remarks), Text(sheet.Remarks.Length), Text(ScoresheetGrader.GreatestRemarksLength));
        }
    }

    private void CheckConditions(PracticalConditions conditions)
    {
        CheckText(conditions.Surroundings, ScoresheetGrader.GreatestConditionsLength, nameof(conditions.Surroundings),
            ScoresheetProblems.SurroundingsMissing, ScoresheetProblems.SurroundingsTooLong);
        if (conditions.AirTemperature is < ScoresheetGrader.LowestAirTemperature or > ScoresheetGrader.HighestAirTemperature)
        {
            Report(ScoresheetProblems.AirTemperatureUnbelievable, nameof(conditions.AirTemperature), Text(conditions.AirTemperature.Value),
                Text(ScoresheetGrader.LowestAirTemperature), Text(ScoresheetGrader.HighestAirTemperature));
        }

        CheckText(conditions.Kit, ScoresheetGrader.GreatestConditionsLength, nameof(conditions.Kit),
            ScoresheetProblems.KitMissing, ScoresheetProblems.KitTooLong);
    }

    // A time belongs to a drill with a limit that was seen whole, and to nothing else: no handling step is ever timed.
    private void CheckTime()
    {
        var isTimed = checklist.TimeLimitMinutes is not null && sheet.IsWhole;
        if (isTimed && sheet.Seconds is null) Report(ScoresheetProblems.SecondsMissing, nameof(sheet.Seconds));
        if (!isTimed && sheet.Seconds is not null) Report(ScoresheetProblems.SecondsUnexpected, nameof(sheet.Seconds));
        if (sheet.Seconds is < 1 or > ScoresheetGrader.MostSeconds)
        {
            Report(ScoresheetProblems.SecondsUnbelievable, nameof(sheet.Seconds), Text(sheet.Seconds.Value), Text(ScoresheetGrader.MostSeconds));
        }
    }

    private void CheckText(string text, int greatestLength, string part, string missing, string tooLong)
    {
        if (string.IsNullOrWhiteSpace(text)) Report(missing, part);
        else if (text.Length > greatestLength) Report(tooLong, part, Text(text.Length), Text(greatestLength));
    }

    private void CheckSteps()
    {
        var expected = checklist.Steps.Select(step => step.Id).ToList();
        var seen = sheet.Observations.Select(observation => observation.StepId).ToList();
        var before = problems.Count;
        foreach (var id in seen.Except(expected, StringComparer.Ordinal)) ReportStep(ScoresheetProblems.StepUnknown, id, id);
        foreach (var id in expected.Except(seen, StringComparer.Ordinal)) ReportStep(ScoresheetProblems.StepMissing, id, id);
        foreach (var id in expected.Where(id => seen.Count(other => other == id) > 1)) ReportStep(ScoresheetProblems.StepRepeated, id, id);
        if (sheet.StoppedAtStep is { } stop && !expected.Contains(stop, StringComparer.Ordinal))
        {
            Report(ScoresheetProblems.StopUnknown, nameof(sheet.StoppedAtStep), stop);
        }

        if (problems.Count > before) return;
        foreach (var (want, got) in expected.Zip(seen).Where(pair => pair.First != pair.Second).Take(1))
        {
            ReportStep(ScoresheetProblems.StepsOutOfOrder, got, want);
        }
    }

    private void CheckStop()
    {
        string? stop = null;
        foreach (var (step, seen) in checklist.Steps.Zip(sheet.Observations))
        {
            if (stop is not null)
            {
                if (seen.Observation is not Observation.NotObserved) ReportStep(ScoresheetProblems.ObservedAfterStop, step.Id, step.Id, stop);
                continue;
            }

            if (step.Id == sheet.StoppedAtStep)
            {
                stop = step.Id;
            }
            else if (ScoresheetGrader.StopsAt(step, seen.Observation))
            {
                ReportStep(ScoresheetProblems.NotStopped, step.Id, step.Id);
            }
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private void ReportStep(string code, string stepId, params string[] arguments) => Report(code, $"step {stepId}", arguments);

    private void Report(string code, string part, params string[] arguments) => problems.Add(new(code, Place.Of(part), arguments));
}
