using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps what the provider says of itself, and reads what serves.</summary>
public static class ProviderKeeping
{
    /// <summary>The details that serve, or null where no lead wrote any: then those of the settings do.</summary>
    public static Task<ProviderDetails?> FindProviderDetailsAsync(this RecordsContext records, CancellationToken cancellation) =>
        records.ProviderDetails.AsNoTracking().OrderByDescending(row => row.SinceAt).ThenByDescending(row => row.Id).FirstOrDefaultAsync(cancellation);

    /// <summary>Keeps details; the same form again changes nothing.</summary>
    public static async Task KeepAsync(this RecordsContext records, ProviderDetails details, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, details);

    /// <summary>Keeps that an address is right; again changes nothing.</summary>
    public static async Task KeepAsync(this RecordsContext records, AddressConfirmation confirmation, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, confirmation);
}
