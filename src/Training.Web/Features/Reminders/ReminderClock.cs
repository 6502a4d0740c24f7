using Hangfire;

namespace Training.Web.Features.Reminders;

/// <summary>Starts a round of reminders every ten minutes, and one when the program starts: what fell due while it was down is due now.</summary>
public sealed class ReminderClock(IRecurringJobManager jobs) : IHostedService
{
    private const string Name = "reminders";

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        jobs.AddOrUpdate<ReminderJob>(Name, job => job.RunAsync(CancellationToken.None), "*/10 * * * *");
        jobs.Trigger(Name);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
