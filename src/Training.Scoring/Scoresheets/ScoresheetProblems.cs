namespace Training.Scoring;

/// <summary>Why a scoresheet is refused. A step that was not done is no problem, it earns nothing.</summary>
public static class ScoresheetProblems
{
    /// <summary>The sheet was scored against another snapshot. Arguments: the sheet's hash, the course's hash.</summary>
    public const string CourseMismatch = "scoresheet.course-mismatch";

    /// <summary>The course has no such checklist. Argument: its id.</summary>
    public const string ChecklistUnknown = "scoresheet.checklist-unknown";

    /// <summary>The checklist was scored in another version. Arguments: the sheet's version, the course's version.</summary>
    public const string ChecklistVersionMismatch = "scoresheet.checklist-version-mismatch";

    /// <summary>The checklist may not be scored on this subject. Argument: <c>Model</c> or <c>Live</c>.</summary>
    public const string SubjectNotAllowed = "scoresheet.subject-not-allowed";

    /// <summary>The instructor is the candidate.</summary>
    public const string ScoredThemselves = "scoresheet.scored-themselves";

    /// <summary>The candidate's identification was not looked at.</summary>
    public const string IdentityNotConfirmed = "scoresheet.identity-not-confirmed";

    /// <summary>Tries count from 1. Argument: the number given.</summary>
    public const string TryNotPositive = "scoresheet.try-not-positive";

    /// <summary>The remarks are too long. Arguments: their length, the greatest length.</summary>
    public const string RemarksTooLong = "scoresheet.remarks-too-long";

    /// <summary>Nothing is said of ground, light and weather.</summary>
    public const string SurroundingsMissing = "scoresheet.surroundings-missing";

    /// <summary>The text on ground, light and weather is too long. Arguments: its length, the greatest length.</summary>
    public const string SurroundingsTooLong = "scoresheet.surroundings-too-long";

    /// <summary>No such air temperature is believed. Arguments: the temperature, the lowest and the highest that are, in °C.</summary>
    public const string AirTemperatureUnbelievable = "scoresheet.air-temperature-unbelievable";

    /// <summary>The kit that was used is not named.</summary>
    public const string KitMissing = "scoresheet.kit-missing";

    /// <summary>The text on the kit is too long. Arguments: its length, the greatest length.</summary>
    public const string KitTooLong = "scoresheet.kit-too-long";

    /// <summary>The sheet names no piece of the register of kit.</summary>
    public const string KitNotRegistered = "scoresheet.kit-not-registered";

    /// <summary>Nobody typed a name to sign.</summary>
    public const string SignedNameMissing = "scoresheet.signed-name-missing";

    /// <summary>The name typed to sign is too long. Arguments: its length, the greatest length.</summary>
    public const string SignedNameTooLong = "scoresheet.signed-name-too-long";

    /// <summary>A drill with a time limit does not say how long it took.</summary>
    public const string SecondsMissing = "scoresheet.seconds-missing";

    /// <summary>A time is given where nothing is timed, or where the drill was not seen whole.</summary>
    public const string SecondsUnexpected = "scoresheet.seconds-unexpected";

    /// <summary>No drill takes so long, or none at all. Arguments: the seconds, the most that are believed.</summary>
    public const string SecondsUnbelievable = "scoresheet.seconds-unbelievable";

    /// <summary>Nobody said that the standard instructions were read to the candidate.</summary>
    public const string InstructionsNotRead = "scoresheet.instructions-not-read";

    /// <summary>Every step was observed and no overall impression is said.</summary>
    public const string ImpressionMissing = "scoresheet.impression-missing";

    /// <summary>An overall impression is said of a practical that was not seen whole.</summary>
    public const string ImpressionOfAPart = "scoresheet.impression-of-a-part";

    /// <summary>The checklist has no such step. Argument: its id.</summary>
    public const string StepUnknown = "scoresheet.step-unknown";

    /// <summary>A step has no observation. Argument: its id.</summary>
    public const string StepMissing = "scoresheet.step-missing";

    /// <summary>A step has more than one observation. Argument: its id.</summary>
    public const string StepRepeated = "scoresheet.step-repeated";

    /// <summary>The steps are not in the checklist's order; the place is the first that is not. Argument: the step expected there.</summary>
    public const string StepsOutOfOrder = "scoresheet.steps-out-of-order";

    /// <summary>The step at which it was stopped is not in the checklist. Argument: its id.</summary>
    public const string StopUnknown = "scoresheet.stop-unknown";

    /// <summary>A critical step failed and the practical was not stopped there. Argument: the step.</summary>
    public const string NotStopped = "scoresheet.not-stopped";

    /// <summary>A step after the stop was observed. Arguments: the step, the step of the stop.</summary>
    public const string ObservedAfterStop = "scoresheet.observed-after-stop";

    /// <summary>A live sheet says nothing of its conditions.</summary>
    public const string LiveConditionsMissing = "scoresheet.live-conditions-missing";

    /// <summary>A sheet on the model has conditions of a live one.</summary>
    public const string LiveConditionsOnModel = "scoresheet.live-conditions-on-model";

    /// <summary>The permit number is blank.</summary>
    public const string PermitNumberMissing = "scoresheet.permit-number-missing";

    /// <summary>The permit number is too long. Arguments: its length, the greatest length.</summary>
    public const string PermitNumberTooLong = "scoresheet.permit-number-too-long";

    /// <summary>The bite plan was checked after the day of the sheet. Arguments: both dates, yyyy-MM-dd.</summary>
    public const string BitePlanInFuture = "scoresheet.bite-plan-in-future";

    /// <summary>The bite plan was checked too long ago. Arguments: when it was, the earliest day that counts, yyyy-MM-dd.</summary>
    public const string BitePlanTooOld = "scoresheet.bite-plan-too-old";

    /// <summary>The call for help was not tried within the 24 hours before signing.</summary>
    public const string CommunicationsNotTested = "scoresheet.communications-not-tested";

    /// <summary>Nobody is named as watcher.</summary>
    public const string WatcherMissing = "scoresheet.watcher-missing";

    /// <summary>The watcher is the candidate or the scorer.</summary>
    public const string WatcherTakesPart = "scoresheet.watcher-takes-part";

    /// <summary>No passed sheet on the model is known by this id. Argument: the id.</summary>
    public const string ModelPassUnknown = "scoresheet.model-pass-unknown";

    /// <summary>The pass on the model is another candidate's. Argument: its id.</summary>
    public const string ModelPassOfAnother = "scoresheet.model-pass-of-another";

    /// <summary>The pass on the model is on another checklist. Arguments: its id, its checklist.</summary>
    public const string ModelPassOnAnotherChecklist = "scoresheet.model-pass-on-another-checklist";

    /// <summary>The pass on the model was not signed before the live sheet. Argument: its id.</summary>
    public const string ModelPassNotEarlier = "scoresheet.model-pass-not-earlier";
}
