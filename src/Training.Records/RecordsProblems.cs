using Training.Courses;

namespace Training.Records;

/// <summary>Codes of the problems that the records find.</summary>
public static class RecordsProblems
{
    /// <summary>No such person. Argument: the id.</summary>
    public const string PersonUnknown = "records.person-unknown";

    /// <summary>This text of the course was never kept. Argument: the hash.</summary>
    public const string SnapshotUnknown = "records.snapshot-unknown";

    /// <summary>The round of calibration is closed: everybody sees the marks by now.</summary>
    public const string RoundClosed = "records.round-closed";

    /// <summary>This instructor sent other marks before; the first ones stand.</summary>
    public const string CalibratedAlready = "records.calibrated-already";

    /// <summary>A lead would conclude a case about what they hold themselves.</summary>
    public const string OwnCase = "records.own-case";

    /// <summary>The site has no such crew. Argument: the id.</summary>
    public const string CrewUnknown = "records.crew-unknown";

    /// <summary>The plan was accepted: it is changed no more.</summary>
    public const string PlanAccepted = "records.plan-accepted";

    /// <summary>Somebody changed the plan in the meantime.</summary>
    public const string PlanChanged = "records.plan-changed";

    /// <summary>A run would make no paper.</summary>
    public const string NothingToPrint = "records.nothing-to-print";

    /// <summary>A run would make too many papers. Argument: how many it may.</summary>
    public const string TooManyPapers = "records.too-many-papers";

    /// <summary>No such class. Argument: the id.</summary>
    public const string ClassUnknown = "records.class-unknown";

    /// <summary>The same id came with other content; both are kept. Argument: the id.</summary>
    public const string OtherContent = "records.other-content";

    /// <summary>The answer came after its sitting was submitted; what was submitted stands.</summary>
    public const string SittingSubmitted = "records.sitting-submitted";

    /// <summary>This try of this candidate was already scored by this instructor on another sheet; both are kept. Argument: the try.</summary>
    public const string TryScored = "records.try-scored";

    /// <summary>Another piece of kit has this label. Argument: the label.</summary>
    public const string KitLabelTaken = "records.kit-label-taken";

    /// <summary>This scoresheet was started with other entries, which stay. Argument: the id.</summary>
    public const string StartedOtherwise = "records.started-otherwise";

    /// <summary>The number of the try went to another instructor. Argument: the number.</summary>
    public const string TryTaken = "records.try-taken";

    /// <summary>The try cannot be scored a second time by this instructor. Argument: its number.</summary>
    public const string NoSecondScoring = "records.no-second-scoring";

    /// <summary>The scoresheet is signed: nothing more can be marked on it.</summary>
    public const string SignedAlready = "records.signed-already";

    /// <summary>The practical was stopped: nothing more can be marked until the stop is taken back. Argument: the step.</summary>
    public const string StoppedAlready = "records.stopped-already";

    /// <summary>The candidate does not attend the class. Argument: the id.</summary>
    public const string NotInClass = "records.not-in-class";

    /// <summary>The instructor is no scorer of the class. Argument: the id.</summary>
    public const string NotAScorer = "records.not-a-scorer";

    /// <summary>A written reason for scoring somebody whom one taught is given by the scorer or by a lead. Arguments: the id, the day.</summary>
    public const string NotTheScorerNorALead = "records.not-the-scorer-nor-a-lead";

    /// <summary>The instructor and the candidate are one person.</summary>
    public const string ScoresOneself = "records.scores-oneself";

    /// <summary>The instructor was not appointed on that day. Arguments: the id, the day.</summary>
    public const string NotAnInstructor = "records.not-an-instructor";

    /// <summary>The programme lead was not appointed on that day. Arguments: the id, the day.</summary>
    public const string NotALead = "records.not-a-lead";

    /// <summary>A live sheet needs an earlier pass of the same candidate at the same checklist on the model.</summary>
    public const string ModelPassMissing = "records.model-pass-missing";

    /// <summary>A decision names a result that is not there or is another person's. Argument: the id.</summary>
    public const string ResultUnknown = "records.result-unknown";

    /// <summary>The certification got another period meanwhile; read the case again and decide again. Argument: the number.</summary>
    public const string PeriodTaken = "records.period-taken";

    /// <summary>The person holds nothing under that scheme. Argument: the scheme.</summary>
    public const string NothingHeld = "records.nothing-held";

    /// <summary>There is an open suspension already. Argument: its first day.</summary>
    public const string SuspendedAlready = "records.suspended-already";

    /// <summary>There is no open suspension to end.</summary>
    public const string NotSuspended = "records.not-suspended";

    /// <summary>The reinstatement lies before the suspension. Argument: the suspension's first day.</summary>
    public const string BeforeSuspension = "records.before-suspension";

    /// <summary>A withdrawal needs two different leads.</summary>
    public const string SecondLeadRequired = "records.second-lead-required";

    /// <summary>A lead suspends, reinstates or withdraws what they hold themselves.</summary>
    public const string LeadAboutOneself = "records.lead-about-oneself";

    /// <summary>A withdrawal of that period is proposed already. Argument: the day of the proposal.</summary>
    public const string ProposedAlready = "records.proposed-already";

    /// <summary>The last period is withdrawn already. Argument: the day of the withdrawal.</summary>
    public const string WithdrawnAlready = "records.withdrawn-already";

    /// <summary>No such proposal. Argument: the id.</summary>
    public const string ProposalUnknown = "records.proposal-unknown";

    /// <summary>The proposal was confirmed or taken back before. Argument: the day of it.</summary>
    public const string ProposalSettled = "records.proposal-settled";

    /// <summary>Only whoever proposed a withdrawal takes it back.</summary>
    public const string NotTheProposer = "records.not-the-proposer";

    /// <summary>The deadline lies before the first day of the suspension. Argument: that first day.</summary>
    public const string DeadlineBeforeStart = "records.deadline-before-start";

    /// <summary>No such employer. Argument: the id.</summary>
    public const string EmployerUnknown = "records.employer-unknown";

    /// <summary>No such site of that employer. Argument: the id.</summary>
    public const string SiteUnknown = "records.site-unknown";

    /// <summary>Another one has the name already. Argument: the name.</summary>
    public const string NameTaken = "records.name-taken";

    /// <summary>Somebody else changed the person in the same moment.</summary>
    public const string PersonChanged = "records.person-changed";

    /// <summary>Every seat of the class is taken. Argument: the seats.</summary>
    public const string ClassFull = "records.class-full";

    /// <summary>The class does not take place.</summary>
    public const string ClassCancelled = "records.class-cancelled";

    /// <summary>The day of the class has come or gone. Argument: the day.</summary>
    public const string ClassOver = "records.class-over";

    /// <summary>A scoresheet of the class was signed: its day stays.</summary>
    public const string ClassScored = "records.class-scored";

    /// <summary>The person has no seat at the class.</summary>
    public const string NoSeat = "records.no-seat";

    /// <summary>A scoresheet of the class is about the person: they were there.</summary>
    public const string SeatScored = "records.seat-scored";

    /// <summary>The person has a seat at the class already.</summary>
    public const string SeatedAlready = "records.seated-already";

    /// <summary>A seat is free: nobody needs to wait.</summary>
    public const string SeatFree = "records.seat-free";

    /// <summary>More people have a seat than there would be seats. Argument: how many have one.</summary>
    public const string SeatsTaken = "records.seats-taken";

    /// <summary>The class would be held on a day that is over. Argument: the day.</summary>
    public const string DayOver = "records.day-over";

    /// <summary>Nothing about the class would change.</summary>
    public const string NothingChanges = "records.nothing-changes";

    /// <summary>The day of the class is not there yet. Argument: the day.</summary>
    public const string ClassNotYet = "records.class-not-yet";

    /// <summary>The dates overlap a row that is there. Argument: that row's first day.</summary>
    public const string Overlap = "records.overlap";

    /// <summary>The last day lies before the first.</summary>
    public const string EndsBeforeStart = "records.ends-before-start";

    /// <summary>The badge number names somebody at that employer already. Argument: the number.</summary>
    public const string BadgeTaken = "records.badge-taken";

    /// <summary>Two rows of a roster name one person by two badge numbers of theirs. Arguments: the second number, the line of the first row.</summary>
    public const string RosterNamesTwice = "records.roster-names-twice";

    /// <summary>The employer's people changed since the difference was made that is to be applied.</summary>
    public const string RosterChanged = "records.roster-changed";

    /// <summary>Only a decision that granted a period has a paper.</summary>
    public const string NothingGranted = "records.nothing-granted";

    /// <summary>The revision before this one was never issued. Argument: the revision.</summary>
    public const string RevisionSkipped = "records.revision-skipped";

    /// <summary>The name to print is not this person's, or was erased.</summary>
    public const string NameUnknown = "records.name-unknown";

    /// <summary>There is nothing of that kind about this person to contest.</summary>
    public const string NothingToContest = "records.nothing-to-contest";

    /// <summary>This result or decision was contested before; what comes of that stands. Argument: the day it was received.</summary>
    public const string ContestedBefore = "records.contested-before";

    /// <summary>No such appeal. Argument: the id.</summary>
    public const string AppealUnknown = "records.appeal-unknown";

    /// <summary>Another lead took the appeal up. Argument: the day.</summary>
    public const string TakenUpBefore = "records.taken-up-before";

    /// <summary>Nobody took the appeal up yet.</summary>
    public const string NotTakenUp = "records.not-taken-up";

    /// <summary>The appeal was decided before. Argument: the day.</summary>
    public const string AppealDecidedBefore = "records.appeal-decided-before";

    /// <summary>Outcome and remedy do not go together.</summary>
    public const string RemedyUnfit = "records.remedy-unfit";

    /// <summary>It is the lead's own appeal.</summary>
    public const string OwnAppeal = "records.own-appeal";

    /// <summary>The lead taught the appellant. Argument: the last day of it.</summary>
    public const string TaughtAppellant = "records.taught-appellant";

    /// <summary>The lead scored the appellant. Argument: the last day of it.</summary>
    public const string ScoredAppellant = "records.scored-appellant";

    /// <summary>The lead made the decision that is contested.</summary>
    public const string MadeContestedDecision = "records.made-contested-decision";

    /// <summary>The lead made the decision that is to be made anew after an appeal.</summary>
    public const string AnewByAnother = "records.anew-by-another";

    /// <summary>The result was not set aside, or nothing had rested on it.</summary>
    public const string NothingSetAside = "records.nothing-set-aside";

    /// <summary>A lead looked at it before. Argument: the day.</summary>
    public const string LookedBefore = "records.looked-before";

    /// <summary>The candidate said their word to this sheet before.</summary>
    public const string WordGiven = "records.word-given";

    /// <summary>No such entry in that instructor's file.</summary>
    public const string EntryUnknown = "records.entry-unknown";

    /// <summary>A lead writes in their own file as an instructor.</summary>
    public const string OwnInstructorFile = "records.own-instructor-file";

    /// <summary>A lead has not made the instructor's file yet.</summary>
    public const string NoInstructorFile = "records.no-instructor-file";

    /// <summary>No competence to teach that course on the day. Argument: the course.</summary>
    public const string NotCompetentToTeach = "records.not-competent-to-teach";

    /// <summary>No competence to score that course on the day. Argument: the course.</summary>
    public const string NotCompetentToScore = "records.not-competent-to-score";

    /// <summary>No competence to score that course on a model on the day. Argument: the course.</summary>
    public const string NotCompetentOnModel = "records.not-competent-on-model";

    /// <summary>No competence to score that course on a live snake on the day. Argument: the course.</summary>
    public const string NotCompetentLive = "records.not-competent-live";

    /// <summary>The competence ended. Arguments: the course, its last day.</summary>
    public const string CompetenceOver = "records.competence-over";

    /// <summary>The instructor does not score in the language of the instructions.</summary>
    public const string LanguageNotTheirs = "records.language-not-theirs";

    /// <summary>The instructor never stated that nothing stands in the way.</summary>
    public const string StatementMissing = "records.statement-missing";

    /// <summary>The instructor's statement no longer counts. Argument: its last day.</summary>
    public const string StatementOver = "records.statement-over";

    /// <summary>A conflict with the candidate. Argument: since when.</summary>
    public const string ConflictWithCandidate = "records.conflict-with-candidate";

    /// <summary>A conflict with the employer. Argument: since when.</summary>
    public const string ConflictWithEmployer = "records.conflict-with-employer";

    /// <summary>No such review.</summary>
    public const string ReviewUnknown = "records.review-unknown";

    /// <summary>A conclusion before the day on which the review was opened. Argument: that day.</summary>
    public const string BeforeReview = "records.before-review";

    /// <summary>The review was concluded before, in other words or by another lead. Argument: the day.</summary>
    public const string ReviewConcluded = "records.review-concluded";

    /// <summary>The candidate is on hold: no live snake until a lead has reviewed.</summary>
    public const string CandidateOnHold = "records.candidate-on-hold";

    internal static Problem At(string part, string code, params IReadOnlyList<string> arguments) => new(code, Place.Of(part), arguments);
}
