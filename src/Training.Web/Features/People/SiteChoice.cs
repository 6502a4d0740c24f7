using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Features.People;

/// <summary>A site to choose, under its employer.</summary>
public sealed record SiteChoice(Guid SiteId, string Site, Guid EmployerId, string Employer);

/// <summary>Reads the sites there are.</summary>
public static class SiteChoices
{
    private const int Most = 1000;

    /// <summary>All sites, by employer and name.</summary>
    public static async Task<IReadOnlyList<SiteChoice>> SiteChoicesAsync(this RecordsContext records, CancellationToken cancellation) =>
        await (from site in records.Sites
               join employer in records.Employers on site.EmployerId equals employer.Id
               orderby employer.NameKey, site.NameKey
               select new SiteChoice(site.Id, site.Name, employer.Id, employer.Name)).Take(Most).ToListAsync(cancellation);
}
