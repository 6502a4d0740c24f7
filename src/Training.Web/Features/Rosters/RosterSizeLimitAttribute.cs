using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.ViewFeatures;

namespace Training.Web.Features.Rosters;

/// <summary>Answers a form with a file that is too large before anything of it is read (413).</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class RosterSizeLimitAttribute : Attribute, IAuthorizationFilter
{
    /// <summary>The form around the file: its token, its id, its separators.</summary>
    public const int MostBytes = RosterReader.MostBytes + (64 * 1024);

    // So much is thrown away unread, so that a browser that is still sending sees the answer and not a broken connection.
    private const long MostDiscarded = 128L * 1024 * 1024;

    /// <inheritdoc/>
    public void OnAuthorization(AuthorizationFilterContext context)
    {
        // The token against forged posts is checked after this and would read the whole form first.
        if (!(context.HttpContext.Request.ContentLength > MostBytes)) return;
        if (context.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size) size.MaxRequestBodySize = MostDiscarded;
        context.Result = new ViewResult
        {
            ViewName = "TooLarge",
            StatusCode = StatusCodes.Status413PayloadTooLarge,
            ViewData = new ViewDataDictionary(new EmptyModelMetadataProvider(), context.ModelState),
        };
    }
}
