using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps which snakes live at a site, and reads what serves.</summary>
public static class SiteSpeciesKeeping
{
    /// <summary>Keeps the list of a site; the same form again changes nothing.</summary>
    public static async Task KeepAsync(this RecordsContext records, SiteSpecies list, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, list);

    /// <summary>The list that serves at a site, or null where nobody wrote any.</summary>
    public static Task<SiteSpecies?> FindSiteSpeciesAsync(this RecordsContext records, Guid siteId, CancellationToken cancellation) =>
        records.SiteSpecies.AsNoTracking().Where(row => row.SiteId == siteId)
            .OrderByDescending(row => row.KeptAt).ThenByDescending(row => row.Id).FirstOrDefaultAsync(cancellation);

    /// <summary>The lists that serve at these sites, by site; a site without one is not among them.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="siteIds">A page's worth: at most a few hundred.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyDictionary<Guid, SiteSpecies>> SiteSpeciesOfAsync(
        this RecordsContext records, IReadOnlyList<Guid> siteIds, CancellationToken cancellation)
    {
        var ids = siteIds.Distinct().ToList();
        var rows = await records.SiteSpecies.AsNoTracking().Where(row => ids.Contains(row.SiteId)
            && !records.SiteSpecies.Any(newer => newer.SiteId == row.SiteId && newer.KeptAt > row.KeptAt)).ToListAsync(cancellation);
        return rows.GroupBy(row => row.SiteId).ToDictionary(site => site.Key, site => site.OrderByDescending(row => row.Id).First());
    }
}
