using Training.Certification;

namespace Training.Records;

/// <summary>A decision with what must be kept beside it.</summary>
/// <param name="Id">Made by the form or the job before it is kept, so that a repeat is recognised.</param>
/// <param name="PersonId">About whom.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="CourseHash">Snapshot whose rules decided.</param>
/// <param name="Decider">The lead, or the rule.</param>
/// <param name="DecidedOn">The day in <paramref name="Zone"/>.</param>
/// <param name="Zone">IANA time zone, fixed by this decision.</param>
/// <param name="Decision">What was decided.</param>
public sealed record MadeDecision(
    Guid Id,
    Guid PersonId,
    string SchemeId,
    string CourseHash,
    Decider Decider,
    DateOnly DecidedOn,
    string Zone,
    Decision Decision);
