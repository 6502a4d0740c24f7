using Hangfire;

namespace Training.Web.Features.IssueLog;

/// <summary>Looks every five minutes whether a head is due, and once when the program starts.</summary>
/// <remarks>In a queue of its own: a round of reminders may wait for a mail server, and a head does not wait for that.</remarks>
public sealed class TreeHeadClock(IRecurringJobManager jobs) : IHostedService
{
    /// <summary>Name of the queue.</summary>
    public const string Queue = "log";

    private const string Name = "log heads";

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        jobs.AddOrUpdate<TreeHeadJob>(Name, Queue, job => job.RunAsync(CancellationToken.None), "*/5 * * * *");
        jobs.Trigger(Name);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
