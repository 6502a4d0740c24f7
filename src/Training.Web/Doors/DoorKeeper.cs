using Training.Courses;
using Training.Records;
using Training.Web.Languages;
using Training.Web.Provider;

namespace Training.Web.Doors;

/// <summary>Stands at every address: reads who is asking, looks the address up in <see cref="DoorTable"/>, and lets through whom its rows name.</summary>
public static class DoorKeeper
{
    private static readonly ILookup<(string Method, string Pattern), Door> ByAddress =
        DoorTable.Rows.ToLookup(door => (door.Method, Spelled(door.Pattern)));

    /// <summary>After routing and authentication, before anything answers.</summary>
    public static IApplicationBuilder UseDoors(this IApplicationBuilder app) => app.Use(async (context, next) =>
    {
        if (context.GetEndpoint() is not RouteEndpoint endpoint)
        {
            await next(context);
            return;
        }

        await ReadVisitorAsync(context);
        var rows = Rows(endpoint, context.Request.Method);
        if (rows.Any(row => row.Whose == Whose.Public))
        {
            await next(context);
            return;
        }

        // What stands behind a door is somebody's: no cache keeps it, also not for the way back after a sign-out.
        context.Response.Headers.CacheControl = "no-store";
        var visitor = context.FindVisitor();
        if (visitor is null && rows.Count > 0) SendToSignIn(context);
        else if (visitor is not null && rows.Any(row => row.Roles.Any(visitor.Is))) await next(context);
        else context.Response.StatusCode = StatusCodes.Status404NotFound; // not theirs looks the same as not there
    });

    /// <summary>The rows of an address; empty where somebody forgot it, and then nobody gets in.</summary>
    public static IReadOnlyList<Door> Rows(RouteEndpoint endpoint, string method)
    {
        var pattern = Spelled(endpoint.RoutePattern.RawText ?? "");
        return [.. ByAddress[(method.ToUpperInvariant(), pattern)], .. ByAddress[("*", pattern)]];
    }

    private static async Task ReadVisitorAsync(HttpContext context)
    {
        if (context.User.FindSessionId() is not { } sessionId) return;
        var services = context.RequestServices;
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        var zone = services.GetRequiredService<OurProvider>().Zone;
        context.Items[typeof(Visitor)] = await services.GetRequiredService<RecordsContext>()
            .FindVisitorAsync(sessionId, zone, now, context.RequestAborted);
    }

    // A form that was sent after the sign-out cannot be kept for nobody; its sender is told so, and led back to the page it was on.
    private static void SendToSignIn(HttpContext context)
    {
        var isForm = !HttpMethods.IsGet(context.Request.Method);
        var back = isForm ? PageBefore(context.Request) : context.Request.Path + context.Request.QueryString;
        var query = QueryString.Create("back", back).Add(isForm ? QueryString.Create("unkept", "1") : QueryString.Empty);
        context.Response.Redirect($"/{context.PageLanguageOf().Tag()}/sign-in{query}");
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
    }

    private static string PageBefore(HttpRequest request) =>
        Uri.TryCreate(request.Headers.Referer, UriKind.Absolute, out var page) && page.Authority == request.Host.Value ? page.PathAndQuery : request.Path;

    private static string Spelled(string pattern) => pattern.Trim('/');
}
