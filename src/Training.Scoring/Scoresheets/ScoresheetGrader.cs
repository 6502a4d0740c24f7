using Training.Courses;

namespace Training.Scoring;

/// <summary>Grades a signed scoresheet by the checklist it was scored against.</summary>
/// <remarks>Rule: docs/rules.md, "Practicals". Whole-number arithmetic; no points make up for a critical step.</remarks>
public static class ScoresheetGrader
{
    /// <summary>Most characters that remarks may have.</summary>
    public const int GreatestRemarksLength = 2000;

    /// <summary>Most characters that the surroundings may have, and the kit.</summary>
    public const int GreatestConditionsLength = 500;

    /// <summary>Most characters that a signature may have.</summary>
    public const int GreatestSignedNameLength = 200;

    /// <summary>Most characters that a permit number may have.</summary>
    public const int GreatestPermitNumberLength = 60;

    /// <summary>Most seconds that a drill is believed to take: two hours. Our rule.</summary>
    public const int MostSeconds = 7200;

    /// <summary>Lowest air temperature that is believed, in °C. Our rule: beyond it, and beyond 60, it is a slip of the finger.</summary>
    public const int LowestAirTemperature = -50;

    /// <summary>Highest air temperature that is believed, in °C.</summary>
    public const int HighestAirTemperature = 60;

    /// <summary>How long before the day of a live sheet the bite plan may last have been checked, that day included. Our rule.</summary>
    public static Duration BitePlanGreatestAge { get; } = new(12, DurationUnit.Months);

    /// <summary>How long before signing a live sheet the call for help may last have been tried, inclusive. Our rule.</summary>
    public static TimeSpan CommunicationsTestGreatestAge { get; } = TimeSpan.FromHours(24);

    /// <summary>What a scoresheet came to, or null where it may not stand.</summary>
    /// <param name="course">The snapshot that the sheet names.</param>
    /// <param name="sheet">As signed; graded again it gives the same result.</param>
    /// <param name="context">The day in the site's zone, and for a live sheet the pass on the model.</param>
    /// <param name="problems">Receives everything that is refused about the sheet (<see cref="ScoresheetProblems"/>).</param>
    /// <exception cref="ArgumentOutOfRangeException">The day of the context is no zone's day at the instant of signing.</exception>
    public static ScoresheetResult? Grade(Course course, Scoresheet sheet, ScoresheetContext context, ICollection<Problem> problems)
    {
        ThrowIfAnotherDay(sheet, context);
        var checklist = FindChecklist(course, sheet, problems);
        if (checklist is null) return null;

        var alreadyThere = problems.Count;
        new ScoresheetCheck(checklist, sheet, problems).Run();
        new LiveCheck(sheet, context, problems).Run();
        return problems.Count > alreadyThere ? null : Score(checklist, sheet);
    }

    /// <summary>True where this mark stops the practical: a critical step was observed and not done as it must be.</summary>
    public static bool StopsAt(ChecklistStep step, Observation observation) =>
        step.IsCritical && observation is not Observation.NotObserved && !Passes(step, observation);

    /// <summary>True where this observation passes the step as a critical one: done, or prompted where the step allows a prompt.</summary>
    internal static bool Passes(ChecklistStep step, Observation observation) => observation switch
    {
        Observation.Done => true,
        Observation.DoneAfterPrompt => step.MayBePrompted,
        Observation.NotDone => false,
        Observation.NotObserved => false,
    };

    // Zones lie between UTC−12 and UTC+14, so that the day is the UTC day or a neighbour of it.
    private static void ThrowIfAnotherDay(Scoresheet sheet, ScoresheetContext context)
    {
        var apart = context.SignedOn.DayNumber - DateOnly.FromDateTime(sheet.SignedAt.UtcDateTime).DayNumber;
        if (apart is < -1 or > 1) throw new ArgumentOutOfRangeException(nameof(context), context.SignedOn, "Not the day of the signature.");
    }

    // Against another snapshot or version every step would be a finding, and none of them would help.
    private static Checklist? FindChecklist(Course course, Scoresheet sheet, ICollection<Problem> problems)
    {
        if (sheet.CourseHash != course.Hash)
        {
            problems.Add(new(ScoresheetProblems.CourseMismatch, Place.Of(nameof(sheet.CourseHash)), sheet.CourseHash, course.Hash));
            return null;
        }

        var checklist = course.Checklists.FirstOrDefault(checklist => checklist.Id == sheet.ChecklistId);
        if (checklist is null)
        {
            problems.Add(new(ScoresheetProblems.ChecklistUnknown, Place.Of(nameof(sheet.ChecklistId)), sheet.ChecklistId));
            return null;
        }

        if (checklist.Version == sheet.ChecklistVersion) return checklist;
        problems.Add(new(
            ScoresheetProblems.ChecklistVersionMismatch, Place.Of(nameof(sheet.ChecklistVersion)), sheet.ChecklistVersion, checklist.Version));
        return null;
    }

    private static ScoresheetResult Score(Checklist checklist, Scoresheet sheet)
    {
        var scored = checklist.Steps.Zip(sheet.Observations, (step, seen) => (Step: step, seen.Observation)).ToList();
        var points = scored.Sum(one => PointsOf(one.Step, one.Observation));
        var maxPoints = 2 * scored.Count;
        var reasons = Reasons(checklist, sheet, scored, points, maxPoints);
        return new(checklist.Version, OutcomeOf(sheet, reasons), points, maxPoints, reasons);
    }

    internal static int PointsOf(ChecklistStep step, Observation observation) => observation switch
    {
        Observation.Done => 2,
        Observation.DoneAfterPrompt => step.MayBePrompted ? 1 : 0,
        Observation.NotDone => 0,
        Observation.NotObserved => 0,
    };

    private static List<ScoresheetReason> Reasons(
        Checklist checklist, Scoresheet sheet, List<(ChecklistStep Step, Observation Observation)> scored, int points, int maxPoints)
    {
        var missed = scored
            .TakeWhile(one => one.Step.Id != sheet.StoppedAtStep)
            .Where(one => one.Observation is Observation.NotObserved)
            .Select(one => new ScoresheetReason.StepNotObserved(one.Step.Id))
            .ToList();

        // Where nothing is decided, too few points are no reason: the missed step might have earned them.
        if (sheet.StoppedAtStep is null && missed.Count > 0) return [.. missed];

        var reasons = new List<ScoresheetReason>();
        if (points * 100 < checklist.PassPercent * maxPoints)
        {
            reasons.Add(new ScoresheetReason.BelowPass(points, maxPoints, checklist.PassPercent));
        }

        if (sheet.Seconds is { } seconds && checklist.TimeLimitSeconds is { } limit && seconds > limit)
        {
            reasons.Add(new ScoresheetReason.OverTime(seconds, limit));
        }

        reasons.AddRange(scored
            .Where(one => one.Step.IsCritical && one.Observation is not Observation.NotObserved && !Passes(one.Step, one.Observation))
            .Select(one => new ScoresheetReason.CriticalStepFailed(one.Step.Id)));
        if (sheet.StoppedAtStep is not null) reasons.Add(new ScoresheetReason.Stopped(sheet.StoppedAtStep));
        reasons.AddRange(missed);
        return reasons;
    }

    private static PracticalOutcome OutcomeOf(Scoresheet sheet, List<ScoresheetReason> reasons)
    {
        if (reasons.Count == 0) return PracticalOutcome.Passed;
        var isUndecided = sheet.StoppedAtStep is null && reasons.Exists(reason => reason is ScoresheetReason.StepNotObserved);
        return isUndecided ? PracticalOutcome.Incomplete : PracticalOutcome.Failed;
    }
}
