using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Home;

/// <summary>The front page.</summary>
public sealed class HomeController(RecordsContext records, CourseShelf shelf) : Controller
{
    /// <summary>Leads to the front page in the language that the browser asks for.</summary>
    [HttpGet("/")]
    public IActionResult Welcome() => Redirect($"/{HttpContext.PageLanguageOf().Tag()}");

    /// <summary>Says what this is, lists the courses, and checks a certificate.</summary>
    [HttpGet("/{language:language}")]
    public async Task<IActionResult> Show(CancellationToken cancellation) =>
        View(HomePage.Of(shelf.Used, HttpContext.PageLanguageOf(), await records.IsWithoutAccountsAsync(cancellation)));
}
