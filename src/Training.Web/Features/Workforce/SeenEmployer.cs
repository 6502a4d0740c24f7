using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Doors;

namespace Training.Web.Features.Workforce;

/// <summary>An employer whose people the visitor may see, on the visitor's today.</summary>
/// <param name="Id">Which.</param>
/// <param name="Name">Its name.</param>
/// <param name="Today">The day.</param>
/// <param name="Sites">Its sites, by name.</param>
public sealed record SeenEmployer(Guid Id, string Name, DateOnly Today, IReadOnlyList<Records.Site> Sites)
{
    /// <summary>A site of this employer; another's looks the same as none.</summary>
    /// <param name="typed">What came in the address; empty for all sites.</param>
    /// <param name="siteId">The site; null for all.</param>
    /// <returns>False where there is no such site of theirs.</returns>
    public bool TryFindSite(string? typed, out Guid? siteId)
    {
        siteId = null;
        if (string.IsNullOrEmpty(typed)) return true;
        siteId = Sites.FirstOrDefault(site => site.Id.ToString() == typed)?.Id;
        return siteId is not null;
    }
}

/// <summary>Finds employers, starting from what the visitor may see.</summary>
public static class SeenEmployers
{
    /// <summary>The employer; null where the visitor may not see it. What its people hold is then read by its id.</summary>
    public static async Task<SeenEmployer?> FindEmployerAsync(
        this RecordsContext records, Visitor visitor, Guid employerId, CancellationToken cancellation)
    {
        var employer = await records.EmployersSeenBy(visitor).AsNoTracking().SingleOrDefaultAsync(row => row.Id == employerId, cancellation);
        return employer is null ? null : new(employer.Id, employer.Name, visitor.Today, await records.SitesOfAsync(employerId, cancellation));
    }
}
