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
}
