using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.ClassDays;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.SignInSheets;

/// <summary>The paper of a class: for its instructors, and for every lead.</summary>
public sealed class SignInSheetsController(RecordsContext records, CourseShelf shelf, TrainingOptions options) : Controller
{
    /// <summary>For an instructor of the class.</summary>
    [HttpGet("/{language:language}/class-days/{classId:guid}/sign-in-sheet")]
    public async Task<IActionResult> ForInstructor(Guid classId, CancellationToken cancellation) =>
        await records.FindClassDayAsync(HttpContext.Visitor(), classId, cancellation) is null ? NotFound() : await ShowAsync(classId, cancellation);

    /// <summary>For a lead.</summary>
    [HttpGet("/{language:language}/programme/classes/{classId:guid}/sign-in-sheet")]
    public Task<IActionResult> ForLead(Guid classId, CancellationToken cancellation) => ShowAsync(classId, cancellation);

    private async Task<IActionResult> ShowAsync(Guid classId, CancellationToken cancellation)
    {
        var language = HttpContext.PageLanguageOf();
        var address = options.PublicPage($"{language.Tag()}/class-days/{classId}");
        return await records.FindSignInSheetAsync(classId, shelf.Courses.Titles(language), address, cancellation) is { } page ? View("Show", page) : NotFound();
    }
}
