using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.PracticalStatistics;

/// <summary>What scoresheets say about a checklist and about those who score it, for programme leads.</summary>
[Route("/{language:language}/programme/courses/{courseId}/checklists/{checklistId}/statistics")]
public sealed class PracticalStatisticsController(
    RecordsContext records, CourseShelf shelf, IStringLocalizer<PracticalStatisticsText> text) : Controller
{
    private const string Csv = "text/csv; charset=utf-8";

    /// <summary>Steps, agreement, severity.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(string courseId, string checklistId, CancellationToken cancellation)
    {
        if (Find(courseId, checklistId) is not ({ } course, { } checklist)) return NotFound();
        var performances = await records.PerformancesAsync(checklistId, cancellation);
        var scorers = performances.SelectMany(performance => performance.Sheets).Select(sheet => sheet.ScorerId).Distinct();
        var names = await records.NamesOfAsync(scorers, HttpContext.Visitor().Today, cancellation);
        return View(PracticalStatisticsPage.Of(course, checklist, performances, names, HttpContext.PageLanguageOf(), text));
    }

    /// <summary>Every mark of every sheet.</summary>
    [HttpGet("marks.csv")]
    public async Task<IActionResult> Marks(string courseId, string checklistId, CancellationToken cancellation) =>
        Find(courseId, checklistId).Checklist is { } checklist
            ? File(PracticalFiles.WriteMarks(checklist, await records.PerformancesAsync(checklistId, cancellation)), Csv, $"{checklistId}-marks.csv")
            : NotFound();

    /// <summary>What its columns mean.</summary>
    [HttpGet("codebook.csv")]
    public IActionResult Codebook(string courseId, string checklistId) =>
        Find(courseId, checklistId).Checklist is null ? NotFound() : File(PracticalFiles.WriteCodebook(), Csv, "codebook.csv");

    private (Course? Course, Checklist? Checklist) Find(string courseId, string checklistId)
    {
        var course = shelf.Find(courseId);
        return (course, course?.Checklists.FirstOrDefault(checklist => checklist.Id == checklistId));
    }
}
