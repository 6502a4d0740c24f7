using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using Training.Records;

namespace Training.Web.Features.Health;

/// <summary>Whether the database answers a question about papers: connected but without our tables is not healthy.</summary>
public sealed class RecordsHealthCheck(IDbContextFactory<RecordsContext> factory) : IHealthCheck
{
    /// <inheritdoc/>
    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            await using var records = await factory.CreateDbContextAsync(cancellationToken);
            await records.Papers.AnyAsync(cancellationToken);
            return HealthCheckResult.Healthy();
        }
        catch (Exception e) when (e is DbException or InvalidOperationException or TimeoutException)
        {
            // EF wraps a lost connection in InvalidOperationException where it gave up retrying.
            return HealthCheckResult.Unhealthy(exception: e);
        }
    }
}
