using Training.Records;

namespace Training.Web.Features.Decisions;

/// <summary>Every decision that waits.</summary>
/// <param name="Today">The lead's.</param>
/// <param name="Waiting">One page of them, longest first.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Names">By person.</param>
/// <param name="Titles">By scheme.</param>
/// <param name="Turning">Where in the list.</param>
public sealed record DecisionsPage(
    DateOnly Today,
    IReadOnlyList<WaitingDecision> Waiting,
    int Count,
    IReadOnlyDictionary<Guid, string> Names,
    IReadOnlyDictionary<string, string> Titles,
    Shared.Turning Turning);
