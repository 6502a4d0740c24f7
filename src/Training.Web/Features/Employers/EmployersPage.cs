namespace Training.Web.Features.Employers;

/// <summary>All employers, and the form of a new one.</summary>
public sealed record EmployersPage(IReadOnlyList<EmployerLine> Employers, EmployerForm Form);

/// <summary>One employer in the list.</summary>
/// <param name="Id">For addresses.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sites">How many sites.</param>
/// <param name="People">How many people work there today.</param>
public sealed record EmployerLine(Guid Id, string Name, int Sites, int People);

/// <summary>One employer with its sites, and the form of a new one.</summary>
/// <param name="Id">For addresses.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sites">By name.</param>
/// <param name="Zones">Every zone there is, to choose from.</param>
/// <param name="Form">As typed.</param>
public sealed record EmployerPage(Guid Id, string Name, IReadOnlyList<SiteLine> Sites, IReadOnlyList<string> Zones, SiteForm Form);

/// <summary>One site in the list.</summary>
public sealed record SiteLine(string Name, string Zone, string Region, int People);
