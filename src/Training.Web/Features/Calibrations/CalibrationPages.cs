using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Calibrations;

/// <summary>What a lead's list of rounds is given.</summary>
/// <param name="Rounds">The newest first.</param>
/// <param name="Titles">By checklist, in the page's language.</param>
/// <param name="Checklists">To choose from: id and title.</param>
/// <param name="Form">A new round, as typed so far.</param>
public sealed record RoundsPage(
    IReadOnlyList<CalibrationProgress> Rounds, IReadOnlyDictionary<string, string> Titles, IReadOnlyList<(string Id, string Title)> Checklists, RoundForm Form);

/// <summary>What the page of a round is given.</summary>
/// <param name="Progress">The round and how far it is.</param>
/// <param name="Checklist">In the text that is scored.</param>
/// <param name="Sheets">What all marked; empty while it is open.</param>
/// <param name="Agreement">Of these; null while it is open.</param>
/// <param name="Names">By person; erased ones are not there.</param>
public sealed record RoundPage(
    CalibrationProgress Progress, Checklist Checklist, IReadOnlyList<PerformanceSheet> Sheets, ScorerAgreement? Agreement,
    IReadOnlyDictionary<Guid, string> Names);

/// <summary>What an instructor's list of rounds is given.</summary>
/// <param name="Rounds">The newest first.</param>
/// <param name="InstructorId">Whose list.</param>
/// <param name="Titles">By checklist, in the page's language.</param>
public sealed record OwnRoundsPage(IReadOnlyList<CalibrationProgress> Rounds, Guid InstructorId, IReadOnlyDictionary<string, string> Titles);

/// <summary>What an instructor's page of a round is given.</summary>
/// <param name="Progress">The round and how far it is.</param>
/// <param name="Checklist">In the text that is scored.</param>
/// <param name="Form">Marks as typed so far; those that were sent once they were.</param>
/// <param name="IsSent">Whether this instructor sent their marks.</param>
/// <param name="Colleagues">What the others marked; empty while the round is open.</param>
public sealed record OwnRoundPage(
    CalibrationProgress Progress, Checklist Checklist, MarksForm Form, bool IsSent, IReadOnlyList<PerformanceSheet> Colleagues);
