using Training.Records;

namespace Training.Web.Features.Sites;

/// <summary>What the page of a site is given.</summary>
/// <param name="Site">Which.</param>
/// <param name="Employer">Name of its employer.</param>
/// <param name="Numbers">Whom to call, as it serves; null where nobody wrote it.</param>
/// <param name="CheckedBy">Who checked them; null where the name was erased or nobody did.</param>
/// <param name="Species">How many kinds of snakes are named for it; null where nobody named any.</param>
/// <param name="Plan">Its bite plan; null where nobody wrote one.</param>
/// <param name="Today">The date there.</param>
/// <param name="Form">As it serves, as advised for the region, or as typed.</param>
public sealed record SitePage(Records.Site Site, string Employer, EmergencyNumbers? Numbers, string? CheckedBy, int? Species, BitePlan? Plan, DateOnly Today, EmergencyNumbersForm Form);
