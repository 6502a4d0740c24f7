using Microsoft.AspNetCore.RateLimiting;
using Training.Web.Features.Verify;

namespace Training.Web.Features.Calendars;

/// <summary>What calendars are made of.</summary>
public static class CalendarsSetup
{
    /// <summary>Name of the limit on reading calendars.</summary>
    public const string RateLimit = "calendars";

    /// <summary>How often one network may read calendars in a minute: programs look every few hours, an office of many shares one address.</summary>
    public const int ReadsPerMinute = 60;

    /// <summary>Adds the writer of calendars and the limit on reading them; what a refusal says is set beside the check of certificates.</summary>
    public static IServiceCollection AddCalendars(this IServiceCollection services)
    {
        services.AddScoped<CalendarWriting>();
        services.Configure<RateLimiterOptions>(limiter => limiter.AddPolicy(RateLimit, context => VerifySetup.PerMinute(context, ReadsPerMinute)));
        return services;
    }
}
