using Hangfire;
using Microsoft.AspNetCore.RateLimiting;
using Training.Web.Features.Verify;

namespace Training.Web.Features.IssueLog;

/// <summary>What the log of what was issued is made of.</summary>
public static class IssueLogSetup
{
    /// <summary>Name of the limit on reading the log.</summary>
    public const string RateLimit = "log";

    /// <summary>How often one network may read in a minute: a million leaves take a bit more than three.</summary>
    public const int ReadsPerMinute = 300;

    /// <summary>Adds the job that signs heads and the limit on reading; what a refusal says is set beside the check of certificates.</summary>
    public static IServiceCollection AddIssueLog(this IServiceCollection services)
    {
        services.AddSingleton<TreeHeadJob>();
        services.Configure<RateLimiterOptions>(limiter => limiter.AddPolicy(RateLimit, context => VerifySetup.PerMinute(context, ReadsPerMinute)));
        return services;
    }

    /// <summary>The clock of the job; beside that of the reminders, whose storage it shares.</summary>
    public static IServiceCollection AddTreeHeadClock(this IServiceCollection services)
    {
        services.AddHangfireServer(server =>
        {
            server.WorkerCount = 1;
            server.Queues = [TreeHeadClock.Queue];
        });
        services.AddHostedService<TreeHeadClock>();
        return services;
    }
}
