using Training.Courses;

namespace Training.Scoring;

/// <summary>What an instructor saw at one step.</summary>
public enum Observation
{
    /// <summary>Done, unprompted.</summary>
    Done,

    /// <summary>Done after a prompt.</summary>
    DoneAfterPrompt,

    /// <summary>Not done.</summary>
    NotDone,

    /// <summary>Not observed: after a stop, or missed by the instructor.</summary>
    NotObserved,
}

/// <summary>One instructor's record of one try of one candidate at one checklist, signed.</summary>
/// <param name="Id">Made by the form before there is signal.</param>
/// <param name="ClassId">The class day that it belongs to.</param>
/// <param name="CandidateId">Who was assessed.</param>
/// <param name="InstructorId">Who scored.</param>
/// <param name="CourseHash">Snapshot that the checklist comes from.</param>
/// <param name="ChecklistId">Which checklist.</param>
/// <param name="ChecklistVersion"><see cref="Checklist.Version"/> as scored against.</param>
/// <param name="Subject">Model or live snake.</param>
/// <param name="Try">1 for the first try of the day, 2 for the second …</param>
/// <param name="Observations">One a step, in the checklist's order.</param>
/// <param name="StoppedAtStep">Id of the step at which it was stopped, or null.</param>
/// <param name="Live">What a live sheet needs besides; null on a model.</param>
/// <param name="Conditions">In what surroundings and with what kit it was scored.</param>
/// <param name="Language">The language in which the instructions were read.</param>
/// <param name="IdentityConfirmed">The instructor looked at the candidate's identification.</param>
/// <param name="SignedAt">UTC.</param>
/// <param name="SignedName">The name that the instructor typed to sign, 1 to 200 characters.</param>
/// <param name="Remarks">Free text, at most 2,000 characters; never changes the outcome.</param>
/// <param name="Impression">Of the performance as a whole; null where it was not seen whole, and on sheets from before it was asked.</param>
/// <param name="InstructionsReadAt">When the instructor said that the standard instructions were read, UTC; null on sheets from before it was asked.</param>
/// <param name="Seconds">How long a drill with a time limit took; null where nothing is timed, and where it was not seen whole.</param>
public sealed record Scoresheet(
    Guid Id,
    Guid ClassId,
    Guid CandidateId,
    Guid InstructorId,
    string CourseHash,
    string ChecklistId,
    string ChecklistVersion,
    Subject Subject,
    int Try,
    IReadOnlyList<StepObservation> Observations,
    string? StoppedAtStep,
    LiveConditions? Live,
    PracticalConditions Conditions,
    Language Language,
    bool IdentityConfirmed,
    DateTimeOffset SignedAt,
    string SignedName,
    string Remarks,
    Impression? Impression = null,
    DateTimeOffset? InstructionsReadAt = null,
    int? Seconds = null)
{
    /// <summary>Every step was observed and nothing was stopped, so that the performance can be judged as a whole.</summary>
    public bool IsWhole => StoppedAtStep is null && Observations.All(step => step.Observation is not Observation.NotObserved);
}

/// <summary>One step's observation.</summary>
public sealed record StepObservation(string StepId, Observation Observation);

/// <summary>What must stand before a live snake is used (docs/rules.md, "Practicals").</summary>
/// <param name="PermitNumber">The permit under which the animal is held or caught.</param>
/// <param name="BitePlanCheckedOn">When the site's bite plan was last checked.</param>
/// <param name="CommunicationsTestedAt">When the call for help was tried, UTC.</param>
/// <param name="WatcherId">The person who watches: neither candidate nor scorer.</param>
/// <param name="ModelPassId">The earlier passed scoresheet on the model, same candidate and checklist.</param>
public sealed record LiveConditions(
    string PermitNumber,
    DateOnly BitePlanCheckedOn,
    DateTimeOffset CommunicationsTestedAt,
    Guid WatcherId,
    Guid ModelPassId);

/// <summary>What a graded scoresheet came to.</summary>
public enum PracticalOutcome
{
    /// <summary>Enough points and every critical step passed.</summary>
    Passed,

    /// <summary>Complete or stopped, and not enough.</summary>
    Failed,

    /// <summary>A step was not observed and the practical was not stopped: nothing is decided, the practical is repeated.</summary>
    Incomplete,
}

/// <summary>What grading a scoresheet found.</summary>
/// <param name="ChecklistVersion">What it was graded against.</param>
/// <param name="Outcome">Passed, failed or incomplete.</param>
/// <param name="Points">2 done, 1 prompted where the step allows it, 0 otherwise.</param>
/// <param name="MaxPoints">2 a step.</param>
/// <param name="Reasons">All reasons why it is not passed; empty for a pass.</param>
public sealed record ScoresheetResult(
    string ChecklistVersion,
    PracticalOutcome Outcome,
    int Points,
    int MaxPoints,
    IReadOnlyList<ScoresheetReason> Reasons);

/// <summary>Why a scoresheet is not passed. A closed family.</summary>
public abstract record ScoresheetReason
{
    private ScoresheetReason()
    {
    }

    /// <summary>Too few points.</summary>
    public sealed record BelowPass(int Points, int MaxPoints, int PassPercent) : ScoresheetReason;

    /// <summary>A drill took longer than its limit; a reason of its own, whatever the points.</summary>
    public sealed record OverTime(int Seconds, int LimitSeconds) : ScoresheetReason;

    /// <summary>A critical step was not done as it must be.</summary>
    public sealed record CriticalStepFailed(string StepId) : ScoresheetReason;

    /// <summary>The practical was stopped at this step.</summary>
    public sealed record Stopped(string StepId) : ScoresheetReason;

    /// <summary>This step was not observed although nothing was stopped.</summary>
    public sealed record StepNotObserved(string StepId) : ScoresheetReason;
}
