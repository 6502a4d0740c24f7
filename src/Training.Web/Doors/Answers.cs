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
