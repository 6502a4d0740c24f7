using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Decisions;
using Training.Web.Features.Sanctions;
using Training.Web.Features.TrainingChanges;

namespace Training.Web.Features.People;

/// <summary>Everything that a lead sees of one person.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">Today's; null where it was erased.</param>
/// <param name="Language">They are written to in it.</param>
/// <param name="MailAddress">Where mail reaches them, or null.</param>
/// <param name="Day">Where they work, and which day it is there.</param>
/// <param name="LeadId">Who looks.</param>
/// <param name="Work">Newest first.</param>
/// <param name="Holdings">What they hold or held, by scheme.</param>
/// <param name="Decidable">Certifications on the shelf, for a decision.</param>
/// <param name="Results">Newest first.</param>
/// <param name="Changes">What the person learnt and is no longer so.</param>
/// <param name="SignInName">What they sign in with, or null.</param>
/// <param name="Words">Says reasons, names and titles.</param>
/// <param name="Sites">To choose from.</param>
/// <param name="WorkForm">As typed.</param>
/// <param name="SanctionForm">As typed; empty where nothing was refused.</param>
public sealed record PersonPage(
    Guid PersonId,
    string? Name,
    Language Language,
    string? MailAddress,
    PersonDay Day,
    Guid LeadId,
    IReadOnlyList<WorkLine> Work,
    IReadOnlyList<Holding> Holdings,
    IReadOnlyList<string> Decidable,
    IReadOnlyList<ResultLine> Results,
    IReadOnlyList<TrainingChange> Changes,
    string? SignInName,
    DecisionWords Words,
    IReadOnlyList<SiteChoice> Sites,
    WorkForm WorkForm,
    SanctionForm SanctionForm)
{
    /// <summary>Holds that touch today.</summary>
    public IReadOnlyList<Hold> Holds { get; init; } = [];
}

/// <summary>Where somebody works or worked.</summary>
public sealed record WorkLine(string Employer, string? Badge, string? Site, DateOnly StartsOn, DateOnly? EndsOn);

/// <summary>One certification as it stands.</summary>
/// <param name="Held">All of it.</param>
/// <param name="Kept">The same with the rows that it is told from; null where nothing was ever held.</param>
/// <param name="Standing">Today's.</param>
/// <param name="ExpiresOn">Last day of the period that counts.</param>
/// <param name="OpenSuspension">That nobody settled yet, or null.</param>
/// <param name="Proposal">A withdrawal that waits for a second lead, or null.</param>
/// <param name="Decisions">Newest first.</param>
public sealed record Holding(
    HeldCertification Held, KeptCertification? Kept, Standing? Standing, DateOnly? ExpiresOn, Suspension? OpenSuspension, OpenProposal? Proposal,
    IReadOnlyList<DecisionLine> Decisions);

/// <summary>One decision, granted or not.</summary>
/// <param name="IsGranted">Whether a period was opened.</param>
/// <param name="On">Its day.</param>
/// <param name="LeadId">Who; null where the rule decided.</param>
/// <param name="Serial">Of the paper, or null.</param>
/// <param name="IsForMachines">Whether the paper can be fetched as files for programs.</param>
/// <param name="Reasons">Why not yet.</param>
/// <param name="RestsOn">The results it rests on, each with who taught and who scored.</param>
/// <param name="Exceptions">From the separation of hats that it relied on, as written then.</param>
public sealed record DecisionLine(
    bool IsGranted, DateOnly On, Guid? LeadId, string? Serial, bool IsForMachines, IReadOnlyList<DecisionReason> Reasons, IReadOnlyList<ResultLine> RestsOn,
    IReadOnlyList<SeparationException> Exceptions);

/// <summary>One result with its three hats.</summary>
/// <param name="Result">What it came to.</param>
/// <param name="TaughtBy">Who had taught the person by that day.</param>
/// <param name="DecidedBy">Leads of the decisions that rest on it; null stands for the rule.</param>
public sealed record ResultLine(PersonResult Result, IReadOnlyList<Guid> TaughtBy, IReadOnlyList<Guid?> DecidedBy);
