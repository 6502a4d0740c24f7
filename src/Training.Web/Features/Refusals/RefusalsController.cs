using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;

namespace Training.Web.Features.Refusals;

/// <summary>The page behind every answer that is not what was asked for; says nothing about how the program works.</summary>
public sealed class RefusalsController : Controller
{
    /// <summary>Rendered in place of an empty answer with this status; by its own address it is not there.</summary>
    /// <remarks>A post that was refused comes here with its method: its token was asked for before, or was not needed.</remarks>
    [IgnoreAntiforgeryToken]
    [Route("/refusals/{status:int}")]
    public IActionResult Show(int status)
    {
        var isRefusal = HttpContext.Features.Get<IStatusCodeReExecuteFeature>() is not null
            || HttpContext.Features.Get<IExceptionHandlerFeature>() is not null;
        Response.StatusCode = isRefusal ? status : StatusCodes.Status404NotFound;
        return View(Response.StatusCode);
    }
}
