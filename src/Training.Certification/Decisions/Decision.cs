using Training.Courses;
using Training.Scoring;

namespace Training.Certification;

/// <summary>A result that a decision may rest on. A closed family; each points to its stored result, nothing is copied but what the rules read.</summary>
public abstract record Evidence
{
    private Evidence()
    {
    }

    /// <summary>Id of the stored result.</summary>
    public required Guid ResultId { get; init; }

    /// <summary>Whose.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>The calendar day of the sitting or sheet, in the zone of the decision.</summary>
    public required DateOnly On { get; init; }

    /// <summary>A graded sitting.</summary>
    public sealed record OfQuiz : Evidence
    {
        /// <summary>Which quiz.</summary>
        public required string QuizId { get; init; }

        /// <summary>Whether it was passed.</summary>
        public required bool IsPassed { get; init; }
    }

    /// <summary>A graded scoresheet. Sheets of one class, checklist, subject and try are one try, scored by several.</summary>
    public sealed record OfPractical : Evidence
    {
        /// <summary>At which class.</summary>
        public required Guid ClassId { get; init; }

        /// <summary>Which try at that class, from 1.</summary>
        public required int Try { get; init; }

        /// <summary>Which checklist.</summary>
        public required string ChecklistId { get; init; }

        /// <summary>On what.</summary>
        public required Subject Subject { get; init; }

        /// <summary>What it came to.</summary>
        public required PracticalOutcome Outcome { get; init; }

        /// <summary>Who scored it.</summary>
        public required Guid ScorerId { get; init; }

        /// <summary>The written reason why this scorer may count although they taught the person within two years; null where none was recorded.</summary>
        public string? SeparationReason { get; init; }
    }
}

/// <summary>One fact of the who-taught-whom register.</summary>
/// <param name="ClassId">The class.</param>
/// <param name="PersonId">Who was taught.</param>
/// <param name="InstructorId">Who taught.</param>
/// <param name="On">The day.</param>
public sealed record Teaching(Guid ClassId, Guid PersonId, Guid InstructorId, DateOnly On);

/// <summary>Everything that a decision is made from; nothing else can change its outcome.</summary>
/// <param name="PersonId">About whom.</param>
/// <param name="Scheme">The rules in force on the day.</param>
/// <param name="Evidence">All results of the person, passed or not; order means nothing.</param>
/// <param name="TaughtBy">All who taught the person.</param>
/// <param name="Held">All certifications of the person, this scheme's included where there is one.</param>
public sealed record CaseFile(
    Guid PersonId,
    Scheme Scheme,
    IReadOnlyList<Evidence> Evidence,
    IReadOnlyList<Teaching> TaughtBy,
    IReadOnlyList<HeldCertification> Held);

/// <summary>Who decides. A closed family.</summary>
public abstract record Decider
{
    private Decider()
    {
    }

    /// <summary>The published rule itself; certificates of training only.</summary>
    public sealed record Rule : Decider;

    /// <summary>A named programme lead.</summary>
    public sealed record Lead(Guid PersonId) : Decider;
}

/// <summary>What was decided. A closed family.</summary>
public abstract record Decision
{
    private Decision()
    {
    }

    /// <summary>Certified for a first time, again after everything else ended, or renewed.</summary>
    /// <param name="Route">Grant or renewal.</param>
    /// <param name="Period">The period that it opens.</param>
    /// <param name="RestsOn">Ids of the results it rests on, in the order of the scheme's requirements.</param>
    /// <param name="Exceptions">Recorded exceptions from the separation of hats that it relied on; shown in the evidence.</param>
    public sealed record Granted(Route Route, Period Period, IReadOnlyList<Guid> RestsOn, IReadOnlyList<SeparationException> Exceptions) : Decision;

    /// <summary>Not yet: all reasons, never only the first.</summary>
    /// <param name="Route">Grant or renewal.</param>
    /// <param name="Reasons">At least one, in the order of docs/rules.md, "Decisions".</param>
    public sealed record NotYet(Route Route, IReadOnlyList<DecisionReason> Reasons) : Decision
    {
        /// <summary>Whether a lead refused, with a reason of their own among <see cref="Reasons"/>.</summary>
        public bool IsRefusal => Reasons.Any(reason => reason is DecisionReason.RefusedByLead);
    }
}

/// <summary>Which list of requirements was asked.</summary>
public enum Route
{
    /// <summary>The requirements for the first certification, or the full course again.</summary>
    Grant,

    /// <summary>The requirements for renewal.</summary>
    Renewal,
}

/// <summary>An exception from "the scorer did not teach that person within two years", with its written reason.</summary>
public sealed record SeparationException(Guid ResultId, Guid ScorerId, string Reason);

/// <summary>Why a decision is "not yet". A closed family.</summary>
public abstract record DecisionReason
{
    private DecisionReason()
    {
    }

    /// <summary>No result for this requirement.</summary>
    public sealed record Missing(Requirement Requirement) : DecisionReason;

    /// <summary>Results exist, none of them passed.</summary>
    public sealed record NotPassed(Requirement Requirement, Guid LatestResultId) : DecisionReason;

    /// <summary>The latest pass is too old: it counted through <paramref name="CountedThrough"/>.</summary>
    public sealed record TooOld(Requirement Requirement, Guid ResultId, DateOnly CountedThrough) : DecisionReason;

    /// <summary>The latest pass is dated before the renewal window opened; it stays on record and renews nothing.</summary>
    public sealed record BeforeWindow(Requirement Requirement, Guid ResultId, DateOnly WindowOpensOn) : DecisionReason;

    /// <summary>Too few tries on the model count as practice within the span.</summary>
    /// <param name="Requirement">What was asked.</param>
    /// <param name="Counted">How many count; fewer than asked.</param>
    public sealed record PractisedTooLittle(Requirement Requirement, int Counted) : DecisionReason;

    /// <summary>A scheme that must be held is not current on the day; no standing where it was never held.</summary>
    public sealed record NotHeld(string SchemeId, Standing? Standing) : DecisionReason;

    /// <summary>The pass cannot count: another scorer failed the same try.</summary>
    /// <param name="Requirement">What was asked.</param>
    /// <param name="ResultId">The pass.</param>
    /// <param name="OtherResultId">The failure; of several the one with the smallest id.</param>
    public sealed record ScorersDisagree(Requirement Requirement, Guid ResultId, Guid OtherResultId) : DecisionReason;

    /// <summary>The pass cannot count: its scorer taught the person within two years and no reason was recorded.</summary>
    public sealed record ScorerTaught(Requirement Requirement, Guid ResultId, Guid ScorerId, DateOnly TaughtOn) : DecisionReason;

    /// <summary>The pass cannot count: scorer and candidate are one person (found out when two records of one person are joined).</summary>
    public sealed record ScoredThemselves(Requirement Requirement, Guid ResultId) : DecisionReason;

    /// <summary>The decider is the person, taught the person, or scored what it would rest on.</summary>
    public sealed record DeciderNotIndependent(Guid DeciderId, Hat Hat) : DecisionReason;

    /// <summary>A certification needs a named lead.</summary>
    public sealed record LeadRequired : DecisionReason;

    /// <summary>The window is not open yet; the pass is kept as evidence.</summary>
    public sealed record TooEarly(DateOnly WindowOpensOn) : DecisionReason;

    /// <summary>Nothing renews or is granted while suspended.</summary>
    public sealed record WhileSuspended(DateOnly SuspendedOn) : DecisionReason;

    /// <summary>The day of a withdrawal is withdrawn to its end; a new period can be decided from the next day on.</summary>
    public sealed record OnDayOfWithdrawal(DateOnly WithdrawnOn) : DecisionReason;

    /// <summary>The rules are not in force on the day.</summary>
    public sealed record RulesNotInForce(DateOnly EffectiveFrom) : DecisionReason;

    /// <summary>A lead who may decide refused, and wrote why; the last of the reasons.</summary>
    public sealed record RefusedByLead(string Reason) : DecisionReason;
}

/// <summary>What somebody did for a result.</summary>
public enum Hat
{
    /// <summary>It is about themselves.</summary>
    Candidate,

    /// <summary>Taught.</summary>
    Taught,

    /// <summary>Scored.</summary>
    Scored,
}
