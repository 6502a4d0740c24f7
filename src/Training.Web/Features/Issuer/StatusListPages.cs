using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using Training.Documents.Credentials;
using Training.Records;
using Training.Web.Keys;

namespace Training.Web.Features.Issuer;

/// <summary>Writes the status lists from the records. One is kept for a minute, so that a crowd at the door costs what one visitor costs.</summary>
public sealed class StatusListPages(IDbContextFactory<RecordsContext> factory, IssuerKeys keys, TimeProvider clock) : IDisposable
{
    /// <summary>How long after its instant a list may be kept by others: a withdrawal shows after so long at the latest.</summary>
    public static readonly TimeSpan RefreshAfter = TimeSpan.FromMinutes(15);

    /// <summary>How long a list may be relied on at all: a gate without a network for a week goes on.</summary>
    public static readonly TimeSpan ValidFor = TimeSpan.FromDays(7);

    private static readonly TimeSpan Kept = TimeSpan.FromMinutes(1);

    private readonly ConcurrentDictionary<StatusPurpose, StatusListPage> pages = new();
    private readonly SemaphoreSlim writing = new(1);

    /// <summary>The list of a purpose.</summary>
    public async Task<StatusListPage> ReadAsync(StatusPurpose purpose, CancellationToken cancellation)
    {
        if (FindKept(purpose) is { } page) return page;
        await writing.WaitAsync(cancellation);
        try
        {
            return FindKept(purpose) ?? (pages[purpose] = await WriteAsync(purpose, cancellation));
        }
        finally
        {
            writing.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => writing.Dispose();

    private StatusListPage? FindKept(StatusPurpose purpose) =>
        pages.TryGetValue(purpose, out var page) && clock.GetUtcNow() - page.AsOf < Kept && page.Kid == keys.Credentials.Public.Kid ? page : null;

    private async Task<StatusListPage> WriteAsync(StatusPurpose purpose, CancellationToken cancellation)
    {
        var (asOf, key) = (clock.GetUtcNow(), keys.Credentials);
        await using var records = await factory.CreateDbContextAsync(cancellation);
        var set = purpose switch
        {
            StatusPurpose.Revocation => await records.RevokedPlacesAsync(asOf, cancellation),
            StatusPurpose.Suspension => await records.SuspendedPlacesAsync(asOf, cancellation),
        };
        // After the places: a paper that was issued meanwhile can only make the list longer.
        var list = StatusList.Of(StatusList.SizeFor(await records.PlacesGivenAsync(cancellation)), set);
        return new(StatusListCredential.Write(keys.Issuer, purpose, list, asOf, RefreshAfter, ValidFor, key), asOf, key.Public.Kid);
    }
}
