using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Provider;

/// <summary>Reads what leads chose for the whole site (its name, its courses) at start, after each change, and every few seconds: another node may have changed it.</summary>
public sealed class ProviderWatch(
    IDbContextFactory<RecordsContext> factory, OurProvider provider, CourseShelf shelf, TimeProvider clock, ILogger<ProviderWatch> log) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(5);
    private bool isComplaining;

    /// <summary>Serving begins with what is known.</summary>
    public override async Task StartAsync(CancellationToken cancellationToken)
    {
        await ReadAsync(cancellationToken);
        await base.StartAsync(cancellationToken);
    }

    /// <summary>Reads now; where the records cannot be reached, what was read before keeps serving.</summary>
    public async Task ReadAsync(CancellationToken cancellation)
    {
        try
        {
            await using var records = await factory.CreateDbContextAsync(cancellation);
            provider.Take(await records.FindProviderDetailsAsync(cancellation));
            shelf.Choose((await records.FindCourseChoiceAsync(cancellation))?.CourseIds);
            isComplaining = false;
        }
        catch (Exception e) when (e is DbException or InvalidOperationException or TimeoutException)
        {
            // Once, not every few seconds until somebody restarts the database.
            if (!isComplaining) Log.ChoicesUnreadable(log, e);
            isComplaining = true;
        }
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Pause, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken)) await ReadAsync(stoppingToken);
    }
}
