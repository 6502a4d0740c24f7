using Microsoft.AspNetCore.RateLimiting;
using Training.Web.Features.Verify;

namespace Training.Web.Features.BitePlans;

/// <summary>What bite plans are made of.</summary>
public static class BitePlansSetup
{
    /// <summary>Name of the limit on reading plans without a sign-in.</summary>
    public const string RateLimit = "bite-plans";

    /// <summary>How often one network may read plans in a minute: a whole crew on one satellite link, and a hospital, are never refused.</summary>
    public const int ReadsPerMinute = 120;

    /// <summary>Adds the reading of plans and the limit for strangers.</summary>
    public static IServiceCollection AddBitePlans(this IServiceCollection services)
    {
        services.AddScoped<BitePlanReading>();
        services.Configure<RateLimiterOptions>(limiter => limiter.AddPolicy(RateLimit, context => VerifySetup.PerMinute(context, ReadsPerMinute)));
        return services;
    }
}
