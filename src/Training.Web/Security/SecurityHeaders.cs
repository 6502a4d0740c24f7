using Microsoft.Net.Http.Headers;
using Training.Web.Languages;

namespace Training.Web.Security;

/// <summary>The headers that every answer carries.</summary>
public static class SecurityHeaders
{
    // Our own files alone: no inline script or style, nothing from another origin; figures are inline SVG drawn with classes.
    private const string ContentSecurityPolicy =
        "default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; object-src 'none'; frame-ancestors 'none'";

    /// <summary>Adds them, also to refusals and static files.</summary>
    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        // At the start of the answer: the exception handler wipes headers that were set before.
        context.Response.OnStarting(() =>
        {
            var headers = context.Response.Headers;
            headers.ContentSecurityPolicy = ContentSecurityPolicy;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "same-origin";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            // Only the check of certificates may ask for the camera, to scan a code.
            headers["Permissions-Policy"] = $"camera=({(context.PageAddressOf().IsVerify ? "self" : "")}), geolocation=(), microphone=()";
            if (context.Request.IsHttps) headers[HeaderNames.StrictTransportSecurity] = "max-age=31536000";
            return Task.CompletedTask;
        });
        return next(context);
    });
}
