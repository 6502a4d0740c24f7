using Microsoft.AspNetCore.HttpOverrides;
using Training.Web.Settings;

namespace Training.Web.Security;

/// <summary>Believes forwarded addresses from the proxies that the operator named, and from nobody else.</summary>
public static class TrustedProxies
{
    /// <summary>Must come first: rate limits and HSTS depend on who really asks, and how.</summary>
    public static WebApplication UseTrustedProxies(this WebApplication app)
    {
        var forwarded = new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto };
        // The framework believes loopback by default; a visitor on the machine itself is a visitor.
        forwarded.KnownProxies.Clear();
        forwarded.KnownIPNetworks.Clear();
        foreach (var proxy in SettingsReader.Proxies(app.Services.GetRequiredService<TrainingOptions>())) forwarded.KnownProxies.Add(proxy);
        if (forwarded.KnownProxies.Count > 0) app.UseForwardedHeaders(forwarded);
        // The operator says that visitors come by https; what ends the encryption may well speak http to this server. Cookies must
        // never leave without it, and a browser that came another way refuses them.
        if (app.Services.GetRequiredService<TrainingOptions>().PublicAddress?.Scheme == Uri.UriSchemeHttps)
        {
            app.Use((context, next) =>
            {
                context.Request.Scheme = Uri.UriSchemeHttps;
                return next(context);
            });
        }

        return app;
    }
}
