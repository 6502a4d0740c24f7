using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using Training.Web.Settings;

namespace Training.Web.Features.Verify;

/// <summary>What the check of certificates is made of.</summary>
public static class VerifySetup
{
    /// <summary>Name of the limit on checks.</summary>
    public const string RateLimit = "verify";

    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    /// <summary>Adds the limit on checks: so many a minute and address, then 429 with the time to wait.</summary>
    public static IServiceCollection AddVerify(this IServiceCollection services)
    {
        services.AddSingleton<VerifyWords>();
        services.AddRateLimiter(limiter =>
        {
            limiter.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            limiter.OnRejected = (rejected, _) =>
            {
                var wait = rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out var left) ? left : Window;
                rejected.HttpContext.Response.Headers.RetryAfter =
                    Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
                return ValueTask.CompletedTask;
            };
            limiter.AddPolicy(RateLimit, context => PerMinute(context, context.RequestServices.GetRequiredService<TrainingOptions>().Verify.ChecksPerMinute));
        });
        return services;
    }

    /// <summary>So many requests a minute from whoever counts as one.</summary>
    public static RateLimitPartition<string> PerMinute(HttpContext context, int requests) => RateLimitPartition.GetFixedWindowLimiter(
        Asker(context.Connection.RemoteIpAddress), _ => new FixedWindowRateLimiterOptions { PermitLimit = requests, Window = Window, QueueLimit = 0 });

    /// <summary>Who counts as one: an IPv4 address, or the /64 network that one IPv6 subscriber can roam in.</summary>
    public static string Asker(IPAddress? address)
    {
        if (address is null) return "";
        if (address.IsIPv4MappedToIPv6) address = address.MapToIPv4();
        return address.AddressFamily == AddressFamily.InterNetworkV6
            ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8))
            : address.ToString();
    }
}
