using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.CourseReports;

/// <summary>A course as its files are now, findings or not: its report, and its modules to look at while they are written.</summary>
[Route("/{language:language}/programme/courses/{courseId}")]
public sealed class CourseReportsController(RecordsContext records, CourseShelf shelf) : Controller
{
    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>The report.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(string courseId, CancellationToken cancellation) =>
        FindDraft(courseId) is { } course
            ? View(CourseReportPage.Of(course, shelf.LastReading, await records.ReviewsOfAsync(course, cancellation), Language))
            : NotFound();

    /// <summary>One module as it reads now; the page follows the file while it is open.</summary>
    [HttpGet("modules/{moduleId}/preview")]
    public IActionResult Preview(string courseId, string moduleId) =>
        FindDraft(courseId) is { } course && course.Modules.FirstOrDefault(module => module.Id == moduleId) is { } module
            ? View(PreviewPage.Of(course, module, shelf.Findings, Language))
            : NotFound();

    /// <summary>The draft of the folder; where not even that can be read, the text that serves.</summary>
    private Course? FindDraft(string courseId) => shelf.LastReading.Drafts.FirstOrDefault(course => course.Id == courseId) ?? shelf.Find(courseId);
}
