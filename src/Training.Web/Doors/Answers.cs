using System.Globalization;
using Microsoft.AspNetCore.Mvc;

namespace Training.Web.Doors;

/// <summary>How actions answer a form.</summary>
public static class Answers
{
    /// <summary>Done: see the page at <paramref name="path"/> (303, so that reloading it repeats nothing).</summary>
    public static IActionResult SeeOther(this ControllerBase controller, string path) => new SeeOtherResult(controller.Url.Content(path));

    /// <summary>Not kept as it is: the form again with everything typed and what to mend (422).</summary>
    public static ViewResult Mend(this Controller controller, string view, object page)
    {
        controller.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return controller.View(view, page);
    }

    /// <summary>Too many tries: the form again, with the time to wait (429).</summary>
    /// <param name="controller">Which answers.</param>
    /// <param name="view">The form's.</param>
    /// <param name="page">With everything typed.</param>
    /// <param name="wait">How long.</param>
    /// <param name="field">Beside which field it is told.</param>
    /// <param name="words">In words.</param>
    public static ViewResult Wait(this Controller controller, string view, object page, TimeSpan wait, string field, string words)
    {
        controller.Response.StatusCode = StatusCodes.Status429TooManyRequests;
        controller.Response.Headers.RetryAfter = ((int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        controller.ModelState.AddModelError(field, words);
        return controller.View(view, page);
    }

    private sealed class SeeOtherResult(string path) : IActionResult
    {
        public Task ExecuteResultAsync(ActionContext context)
        {
            context.HttpContext.Response.Headers.Location = path;
            context.HttpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
            return Task.CompletedTask;
        }
    }
}
