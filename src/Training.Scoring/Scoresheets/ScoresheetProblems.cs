namespace Training.Scoring;

/// <summary>Why a scoresheet is refused. Nothing of a refused sheet is graded.</summary>
public static class ScoresheetProblems
{
    /// <summary>Scored against another version of the checklist.</summary>
    public const string ChecklistDiffers = "scoresheet.checklist-differs";

    /// <summary>A step of the checklist is missing on the sheet. Arguments: step.</summary>
    public const string StepMissing = "scoresheet.step-missing";

    /// <summary>A step on the sheet that the checklist does not have. Arguments: step.</summary>
    public const string StepUnknown = "scoresheet.step-unknown";

    /// <summary>The steps stand in another order, or one stands twice.</summary>
    public const string StepOrder = "scoresheet.step-order";

    /// <summary>The checklist is not made for this subject.</summary>
    public const string SubjectNotAllowed = "scoresheet.subject-not-allowed";

    /// <summary>Candidate and instructor are one person.</summary>
    public const string ScoresThemselves = "scoresheet.scores-themselves";

    /// <summary>The candidate's identity was not confirmed.</summary>
    public const string IdentityNotConfirmed = "scoresheet.identity-not-confirmed";

    /// <summary>The try is not 1 or more.</summary>
    public const string TryNotCounted = "scoresheet.try-not-counted";

    /// <summary>The remarks are too long. Arguments: greatest length.</summary>
    public const string RemarksTooLong = "scoresheet.remarks-too-long";

    /// <summary>A critical step was failed and the practical went on. Arguments: step.</summary>
    public const string NotStopped = "scoresheet.not-stopped";

    /// <summary>A step after the stop was observed. Arguments: step.</summary>
    public const string ObservedAfterStop = "scoresheet.observed-after-stop";

    /// <summary>The step of the stop was itself not observed, or a step before it was not. Arguments: step.</summary>
    public const string StopUnobserved = "scoresheet.stop-unobserved";

    /// <summary>A live sheet without its conditions.</summary>
    public const string LiveConditionsMissing = "scoresheet.live-conditions-missing";

    /// <summary>Live conditions on a sheet scored on a model.</summary>
    public const string LiveConditionsOnModel = "scoresheet.live-conditions-on-model";

    /// <summary>No permit number.</summary>
    public const string PermitMissing = "scoresheet.permit-missing";

    /// <summary>The bite plan was checked after the sheet, or too long before it. Arguments: greatest age in days.</summary>
    public const string BitePlanNotCurrent = "scoresheet.bite-plan-not-current";

    /// <summary>Communications were not tested in the hours before the signature. Arguments: hours.</summary>
    public const string CommunicationsNotTested = "scoresheet.communications-not-tested";

    /// <summary>The watcher is the candidate or the scorer.</summary>
    public const string WatcherNotApart = "scoresheet.watcher-not-apart";

    /// <summary>No earlier pass on the model by this candidate with this checklist.</summary>
    public const string ModelPassMissing = "scoresheet.model-pass-missing";
}
