using Training.Records;
using Training.Web.Features.Shared;

namespace Training.Web.Features.People;

/// <summary>People found, and the form for somebody new.</summary>
/// <param name="Search">What was looked for, or empty.</param>
/// <param name="Count">How many were found.</param>
/// <param name="Rows">One page of them, by name.</param>
/// <param name="Turning">Where in the list.</param>
/// <param name="Sites">To choose from.</param>
/// <param name="Form">As typed.</param>
public sealed record PeoplePage(
    string Search, int Count, IReadOnlyList<PersonLine> Rows, Turning Turning, IReadOnlyList<SiteChoice> Sites, PersonForm Form);

/// <summary>Somebody in a list.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">Today's; null where it was erased.</param>
/// <param name="Badge">Today's numbers, with their employers.</param>
/// <param name="Appointed">What they are appointed to today.</param>
public sealed record PersonLine(Guid PersonId, string? Name, IReadOnlyList<string> Badge, IReadOnlyList<AppointedRole> Appointed);
