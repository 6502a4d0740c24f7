using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps whom to call from a site, and reads what serves.</summary>
public static class EmergencyNumbersKeeping
{
    /// <summary>Keeps the numbers of a site; the same form again changes nothing.</summary>
    public static async Task KeepAsync(this RecordsContext records, EmergencyNumbers numbers, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, numbers);

    /// <summary>The numbers that serve at a site, or null where nobody wrote any.</summary>
    public static Task<EmergencyNumbers?> FindEmergencyNumbersAsync(this RecordsContext records, Guid siteId, CancellationToken cancellation) =>
        records.EmergencyNumbers.AsNoTracking().Where(row => row.SiteId == siteId)
            .OrderByDescending(row => row.KeptAt).ThenByDescending(row => row.Id).FirstOrDefaultAsync(cancellation);
}
