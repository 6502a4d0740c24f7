using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>An address that was made, as a lead's page lists it.</summary>
/// <param name="Address">Which.</param>
/// <param name="EndedAt">Since when it no longer answers, UTC; null while it does.</param>
public sealed record MadeBitePlanAddress(BitePlanAddress Address, DateTimeOffset? EndedAt);

/// <summary>Keeps bite plans and the addresses at which strangers read them, and reads what serves.</summary>
public static class BitePlanKeeping
{
    /// <summary>Most addresses of one site, ended ones included.</summary>
    public const int MostAddresses = 50;

    /// <summary>Keeps a plan and the numbers that were checked with it, both or neither; the same form again changes nothing.</summary>
    /// <exception cref="ArgumentException">They are of two sites.</exception>
    public static async Task KeepAsync(this RecordsContext records, BitePlan plan, EmergencyNumbers numbers, CancellationToken cancellation)
    {
        if (plan.SiteId != numbers.SiteId) throw new ArgumentException("A plan and its numbers are of one site.", nameof(numbers));
        await records.TryInsertAsync(cancellation, plan, numbers);
    }

    /// <summary>The plan that serves at a site, or null where nobody wrote one.</summary>
    public static Task<BitePlan?> FindBitePlanAsync(this RecordsContext records, Guid siteId, CancellationToken cancellation) =>
        records.BitePlans.AsNoTracking().Where(plan => plan.SiteId == siteId)
            .OrderByDescending(plan => plan.KeptAt).ThenByDescending(plan => plan.Id).FirstOrDefaultAsync(cancellation);

    /// <summary>The plans that serve at these sites, by site; a site without one is not among them.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="siteIds">A page's worth: at most a few hundred.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyDictionary<Guid, BitePlan>> BitePlansOfAsync(this RecordsContext records, IReadOnlyList<Guid> siteIds, CancellationToken cancellation)
    {
        var ids = siteIds.Distinct().ToList();
        var rows = await records.BitePlans.AsNoTracking().Where(plan => ids.Contains(plan.SiteId)
            && !records.BitePlans.Any(newer => newer.SiteId == plan.SiteId && newer.KeptAt > plan.KeptAt)).ToListAsync(cancellation);
        return rows.GroupBy(plan => plan.SiteId).ToDictionary(site => site.Key, site => site.OrderByDescending(plan => plan.Id).First());
    }

    /// <summary>Keeps an address. False where it was made before by the same form: its secret is not known any more.</summary>
    public static Task<bool> TryKeepAsync(this RecordsContext records, BitePlanAddress address, CancellationToken cancellation) =>
        records.TryInsertAsync(cancellation, address);

    /// <summary>Ends an address; the first time stays.</summary>
    public static Task EndAsync(this RecordsContext records, BitePlanAddressEnd end, CancellationToken cancellation) => records.TryInsertAsync(cancellation, end);

    /// <summary>The addresses of a site's plan, newest first.</summary>
    public static async Task<IReadOnlyList<MadeBitePlanAddress>> BitePlanAddressesAsync(this RecordsContext records, Guid siteId, CancellationToken cancellation) =>
        await WithEnds(records, records.BitePlanAddresses.Where(address => address.SiteId == siteId)).Take(MostAddresses).ToListAsync(cancellation);

    /// <summary>The address with that secret; null where there is none.</summary>
    public static Task<MadeBitePlanAddress?> FindBitePlanAddressAsync(this RecordsContext records, string secret, CancellationToken cancellation)
    {
        var hash = AddressSecret.HashOf(secret);
        return WithEnds(records, records.BitePlanAddresses.Where(address => address.SecretHash == hash)).SingleOrDefaultAsync(cancellation);
    }

    // Newest first.
    private static IQueryable<MadeBitePlanAddress> WithEnds(RecordsContext records, IQueryable<BitePlanAddress> addresses) =>
        from address in addresses.AsNoTracking()
        join end in records.BitePlanAddressEnds on address.Id equals end.AddressId into ends
        from end in ends.DefaultIfEmpty()
        orderby address.MadeAt descending, address.Id descending
        select new MadeBitePlanAddress(address, end == null ? (DateTimeOffset?)null : end.EndedAt);
}
