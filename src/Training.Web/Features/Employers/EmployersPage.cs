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
/// <param name="Form">As typed.</param>
public sealed record EmployerPage(Guid Id, string Name, IReadOnlyList<SiteLine> Sites, SiteForm Form);

/// <summary>One site in the list.</summary>
/// <param name="Id">For addresses.</param>
/// <param name="Name">Its name.</param>
/// <param name="Zone">IANA time zone.</param>
/// <param name="Region">Region of its guidance.</param>
/// <param name="People">How many people work there today.</param>
/// <param name="HasNumbers">Whether somebody wrote down whom to call from there.</param>
public sealed record SiteLine(Guid Id, string Name, string Zone, string Region, int People, bool HasNumbers);
