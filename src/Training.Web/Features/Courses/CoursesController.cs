using Microsoft.AspNetCore.Mvc;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Courses;

/// <summary>The courses, open to everybody: what a scheme asks, and its modules to read.</summary>
public sealed class CoursesController(RecordsContext records, CourseShelf shelf) : Controller
{
    /// <summary>A course: the rules of its scheme and its modules.</summary>
    [HttpGet("/{language:language}/courses/{courseId}")]
    public IActionResult Course(string courseId)
    {
        var course = shelf.Find(courseId);
        return course is null ? NotFound() : View(CoursePage.Of(course, shelf.Courses, shelf.FindComing(courseId), HttpContext.PageLanguageOf()));
    }

    /// <summary>One module to read. Whoever is signed in reads it as it is for their site.</summary>
    [HttpGet("/{language:language}/courses/{courseId}/{moduleId}")]
    public async Task<IActionResult> Module(string courseId, string moduleId, CancellationToken cancellation)
    {
        if (shelf.Find(courseId) is not { } course) return NotFound();
        var (visitor, language) = (HttpContext.FindVisitor(), HttpContext.PageLanguageOf());
        // The page of a site is for the one who read it: no cache on the way keeps it for another.
        if (visitor is not null) Response.Headers.CacheControl = "private, no-cache";
        var place = await ReadersPlace.OfAsync(records, shelf.Species, visitor, language, cancellation);
        return ModuleView.Find(course, moduleId, place, language) is { } page ? View(page) : NotFound();
    }
}
