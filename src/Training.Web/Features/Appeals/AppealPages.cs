using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Appeals;

/// <summary>The appeals of the visitor, and what they may contest.</summary>
/// <param name="Today">In the provider's zone.</param>
/// <param name="Own">Newest first.</param>
/// <param name="Contestables">Newest first.</param>
/// <param name="Words">Says what is contested.</param>
public sealed record MyAppealsPage(DateOnly Today, IReadOnlyList<AppealCase> Own, IReadOnlyList<Contestable> Contestables, AppealWords Words);

/// <summary>The form of an appeal.</summary>
/// <param name="Thing">What is contested; null for a complaint.</param>
/// <param name="Form">As typed.</param>
/// <param name="DecideBy">Last day for the decision if it is sent today.</param>
/// <param name="Words">Says what is contested.</param>
public sealed record AppealFormPage(ContestedThing? Thing, AppealForm Form, DateOnly DecideBy, AppealWords Words);

/// <summary>One appeal as its appellant sees it.</summary>
/// <param name="Case">All of it.</param>
/// <param name="Today">In the provider's zone.</param>
/// <param name="Leads">Who may decide it; nobody where it is decided.</param>
/// <param name="Words">Says what is contested, and names.</param>
public sealed record MyAppealPage(AppealCase Case, DateOnly Today, IReadOnlyList<Guid> Leads, AppealWords Words);

/// <summary>The appeals of everybody, for leads.</summary>
/// <param name="Today">In the provider's zone.</param>
/// <param name="Open">Due first first.</param>
/// <param name="Rested">What had rested on results set aside.</param>
/// <param name="Decided">Newest first.</param>
/// <param name="Words">Says what is contested, and names.</param>
public sealed record AppealsPage(
    DateOnly Today, IReadOnlyList<AppealCase> Open, IReadOnlyList<RestedCase> Rested, IReadOnlyList<AppealCase> Decided, AppealWords Words);

/// <summary>One appeal as a lead sees it.</summary>
/// <param name="Case">All of it.</param>
/// <param name="Today">In the provider's zone.</param>
/// <param name="Leads">Who may decide it.</param>
/// <param name="Bonds">Why the visitor may not decide; empty where they may.</param>
/// <param name="IsOwn">It is the visitor's own.</param>
/// <param name="HasAddress">Whether mail reaches the appellant.</param>
/// <param name="Rested">What had rested on the result that it set aside; null where nothing, or a lead has looked.</param>
/// <param name="Similar">Decided ones about the same quiz, checklist or scheme, newest first.</param>
/// <param name="Form">As typed.</param>
/// <param name="Look">As typed.</param>
/// <param name="Words">Says what is contested, and names.</param>
public sealed record AppealCasePage(
    AppealCase Case, DateOnly Today, IReadOnlyList<Guid> Leads, IReadOnlyList<Problem> Bonds, bool IsOwn, bool HasAddress, RestedCase? Rested,
    IReadOnlyList<AppealCase> Similar, AppealOutcomeForm Form, LookForm Look, AppealWords Words);
