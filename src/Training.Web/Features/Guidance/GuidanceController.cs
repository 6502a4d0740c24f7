using Microsoft.AspNetCore.Mvc;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Guidance;

/// <summary>The dated values that training rests on: what is in force, what it replaced, and every place that a change would touch.</summary>
public sealed class GuidanceController(CourseShelf shelf) : Controller
{
    /// <summary>All of it.</summary>
    [HttpGet("/{language:language}/programme/guidance")]
    public IActionResult List() => View(GuidancePage.Of(shelf.LastReading, HttpContext.Visitor().Today, HttpContext.PageLanguageOf()));
}
