using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace Training.Web.Features.Health;

/// <summary>The health of the server, part by part, at <c>/healthz</c>: docs/settings.md, "Health".</summary>
public static class HealthSetup
{
    private const string Database = "database";

    /// <summary>Adds the checks.</summary>
    public static IServiceCollection AddHealth(this IServiceCollection services)
    {
        services.AddHealthChecks().AddCheck<RecordsHealthCheck>(Database).AddCheck<MailHealthCheck>("mail").AddCheck<DiskHealthCheck>("disk");
        return services;
    }

    /// <summary>Maps the address. 200 where process and database can serve, 503 where not; what else needs somebody is told in words.</summary>
    public static void MapHealth(this WebApplication app) => app.MapHealthChecks("/healthz", new HealthCheckOptions { ResponseWriter = WriteAsync });

    private static Task WriteAsync(HttpContext context, HealthReport report)
    {
        // That anything answers at all is the health of the process.
        var parts = new Dictionary<string, string>(StringComparer.Ordinal) { ["process"] = Word(HealthStatus.Healthy) };
        foreach (var (name, entry) in report.Entries) parts[name] = Word(entry.Status);
        return context.Response.WriteAsJsonAsync(parts, context.RequestAborted);
    }

    private static string Word(HealthStatus status) => status switch
    {
        HealthStatus.Healthy => "ok",
        HealthStatus.Degraded => "attention",
        HealthStatus.Unhealthy => "down",
    };
}
