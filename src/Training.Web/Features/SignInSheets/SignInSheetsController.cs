using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Documents.SignInSheets;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.ClassDays;
using Training.Web.Features.Programme;
using Training.Web.Features.Shared;
using Training.Web.Languages;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.SignInSheets;

/// <summary>The paper of a class, as a page and as a file: for its instructors, and for every lead.</summary>
public sealed class SignInSheetsController(RecordsContext records, CourseShelf shelf, TrainingOptions options, PrintedPapers papers) : Controller
{
    /// <summary>For an instructor of the class.</summary>
    [HttpGet("/{language:language}/class-days/{classId:guid}/sign-in-sheet")]
    public async Task<IActionResult> ForInstructor(Guid classId, CancellationToken cancellation) => Shown(await FindOwnAsync(classId, cancellation));

    /// <summary>The same as PDF.</summary>
    [HttpGet("/{language:language}/class-days/{classId:guid}/sign-in-sheet.pdf")]
    public async Task<IActionResult> PaperForInstructor(Guid classId, CancellationToken cancellation) => Printed(await FindOwnAsync(classId, cancellation));

    /// <summary>For a lead.</summary>
    [HttpGet("/{language:language}/programme/classes/{classId:guid}/sign-in-sheet")]
    public async Task<IActionResult> ForLead(Guid classId, CancellationToken cancellation) => Shown(await FindAsync(classId, cancellation));

    /// <summary>The same as PDF.</summary>
    [HttpGet("/{language:language}/programme/classes/{classId:guid}/sign-in-sheet.pdf")]
    public async Task<IActionResult> PaperForLead(Guid classId, CancellationToken cancellation) => Printed(await FindAsync(classId, cancellation));

    private async Task<ClassSheet?> FindOwnAsync(Guid classId, CancellationToken cancellation) =>
        await records.FindClassDayAsync(HttpContext.Visitor(), classId, cancellation) is null ? null : await FindAsync(classId, cancellation);

    private Task<ClassSheet?> FindAsync(Guid classId, CancellationToken cancellation)
    {
        var language = HttpContext.PageLanguageOf();
        var address = options.PublicPage($"{language.Tag()}/class-days/{classId}");
        return records.FindClassSheetAsync(classId, shelf.Courses.Titles(language), address, cancellation);
    }

    private IActionResult Shown(ClassSheet? sheet) => sheet is null ? NotFound() : View("Show", sheet);

    private IActionResult Printed(ClassSheet? sheet) => sheet is null
        ? NotFound()
        : papers.Answer(
            this, sheet.ToPaper(HttpContext.PageLanguageOf(), papers), SignInSheetChecks.CanPrint, SignInSheetWriter.Write,
            $"sign-in-sheet-{sheet.Day.Time.HeldOn.Iso()}.pdf");
}
