using Microsoft.Extensions.Diagnostics.HealthChecks;
using Training.Web.Settings;

namespace Training.Web.Features.Health;

/// <summary>Whether the data folder can be written, and has room left.</summary>
public sealed class DiskHealthCheck(TrainingOptions options) : IHealthCheck
{
    /// <summary>Bytes: with less left somebody should make room. A busy day writes a small part of it.</summary>
    public const long LeastFree = 200L * 1024 * 1024;

    /// <inheritdoc/>
    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        var folder = Path.GetFullPath(options.DataFolder);
        // A name of its own: two checks at once, and two servers on one folder, do not meet.
        var probe = Path.Combine(folder, $".health-{Guid.CreateVersion7():N}");
        try
        {
            await File.WriteAllBytesAsync(probe, [0], cancellationToken);
            File.Delete(probe);
            return new DriveInfo(folder).AvailableFreeSpace < LeastFree ? HealthCheckResult.Degraded() : HealthCheckResult.Healthy();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return HealthCheckResult.Degraded(exception: e);
        }
    }
}
