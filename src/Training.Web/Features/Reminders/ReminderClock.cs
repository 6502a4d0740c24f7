using Hangfire;
using Training.Web.Features.PaperRuns;

namespace Training.Web.Features.Reminders;

/// <summary>
/// Starts a round of reminders every ten minutes and the papers of runs every minute, and both when the program starts: what fell due while it was
/// down is due now.
/// </summary>
public sealed class ReminderClock(IRecurringJobManager jobs) : IHostedService
{
    private const string Name = "reminders";
    private const string PaperRuns = "paper-runs";

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        jobs.AddOrUpdate<ReminderJob>(Name, job => job.RunAsync(CancellationToken.None), "*/10 * * * *");
        jobs.AddOrUpdate<PaperRunJob>(PaperRuns, job => job.RunAsync(CancellationToken.None), "* * * * *");
        jobs.Trigger(Name);
        jobs.Trigger(PaperRuns);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
