using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using Training.Records;

namespace Training.Web.Features.Health;

/// <summary>Whether mails go out: one that waits after a failed try is told, and so is one given up lately. Read from the records; nobody is called.</summary>
public sealed class MailHealthCheck(IDbContextFactory<RecordsContext> factory, TimeProvider clock) : IHealthCheck
{
    /// <summary>A mail that was given up is told so long; by then somebody has looked, or the leads' page goes on telling it.</summary>
    public static readonly TimeSpan Told = TimeSpan.FromDays(2);

    /// <inheritdoc/>
    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        var since = clock.GetUtcNow() - Told;
        try
        {
            await using var records = await factory.CreateDbContextAsync(cancellationToken);
            var isStuck = await records.OutgoingMails.AnyAsync(
                mail => mail.SentAt == null && ((mail.GivenUpAt == null && mail.FailedTries > 0) || mail.GivenUpAt > since), cancellationToken);
            return isStuck ? HealthCheckResult.Degraded() : HealthCheckResult.Healthy();
        }
        catch (Exception e) when (e is DbException or InvalidOperationException or TimeoutException)
        {
            // That the database does not answer is told by its own check; of mail nothing is known then.
            return HealthCheckResult.Degraded(exception: e);
        }
    }
}
