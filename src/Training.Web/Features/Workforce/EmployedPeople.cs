using Training.Certification;
using Training.Records;

namespace Training.Web.Features.Workforce;

/// <summary>An employer's people on the visitor's today, and what they hold.</summary>
/// <param name="EmployerId">Whose.</param>
/// <param name="EmployerName">Its name.</param>
/// <param name="Today">The day.</param>
/// <param name="Sites">The employer's sites, by name.</param>
/// <param name="People">By name in the page's language; those whose name was erased last.</param>
/// <param name="Held">What each of them holds or held, by person.</param>
public sealed record EmployedPeople(
    Guid EmployerId,
    string EmployerName,
    DateOnly Today,
    IReadOnlyList<Records.Site> Sites,
    IReadOnlyList<EmployedPerson> People,
    ILookup<Guid, HeldCertification> Held)
{
    /// <summary>The same with the people of one site only; of all where it is null.</summary>
    public EmployedPeople At(Guid? siteId) => siteId is null ? this : this with { People = [.. People.Where(person => person.SiteId == siteId)] };

    /// <summary>How somebody stands today under a scheme; null where they never held it.</summary>
    public Standing? StandingOf(Guid personId, string schemeId) =>
        FindHeld(personId, schemeId) is { } held ? Standings.On(held, Today) : null;

    /// <summary>What somebody holds or held under a scheme, or null.</summary>
    public HeldCertification? FindHeld(Guid personId, string schemeId) => Held[personId].FirstOrDefault(held => held.SchemeId == schemeId);
}
