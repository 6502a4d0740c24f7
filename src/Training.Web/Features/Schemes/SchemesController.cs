using Microsoft.AspNetCore.Mvc;
using Training.Records;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Schemes;

/// <summary>Versions of schemes, open to everybody and for ever: where a credential says that its criteria stand.</summary>
public sealed class SchemesController(RecordsContext records, CoursesByHash courses, CourseShelf shelf) : Controller
{
    /// <summary>One version, by the hash of the course's text. The address without a language is the one in credentials.</summary>
    [HttpGet("/schemes/{schemeId}/{hash}")]
    [HttpGet("/{language:language}/schemes/{schemeId}/{hash}")]
    public async Task<IActionResult> Show(string schemeId, string hash, CancellationToken cancellation)
    {
        // What is remembered by hash is remembered with the id: the address must name both as they were kept.
        if (await records.FindCourseIdAsync(hash, cancellation) != schemeId) return NotFound();
        var course = await courses.FindAsync(records, schemeId, hash, cancellation);
        return course is null ? NotFound() : View(SchemePage.Of(course, shelf.Courses, HttpContext.PageLanguageOf()));
    }
}
