using Microsoft.AspNetCore.Mvc;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Courses;

/// <summary>The courses, open to everybody: what a scheme asks, and its modules to read.</summary>
public sealed class CoursesController(CourseShelf shelf) : Controller
{
    /// <summary>A course: the rules of its scheme and its modules.</summary>
    [HttpGet("/{language:language}/courses/{courseId}")]
    public IActionResult Course(string courseId)
    {
        var course = shelf.Find(courseId);
        return course is null ? NotFound() : View(CoursePage.Of(course, shelf.Courses, HttpContext.PageLanguageOf()));
    }

    /// <summary>One module to read.</summary>
    [HttpGet("/{language:language}/courses/{courseId}/{moduleId}")]
    public IActionResult Module(string courseId, string moduleId)
    {
        var course = shelf.Find(courseId);
        var page = course is null ? null : ModuleView.Find(course, moduleId, HttpContext.PageLanguageOf());
        return page is null ? NotFound() : View(page);
    }
}
