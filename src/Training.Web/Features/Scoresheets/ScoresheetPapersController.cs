using Microsoft.AspNetCore.Mvc;
using Training.Documents.Scoresheets;
using Training.Web.Doors;
using Training.Web.Features.Shared;
using Training.Web.Languages;

namespace Training.Web.Features.Scoresheets;

/// <summary>A scoresheet as it was signed, to print: for who scored it, and for every lead.</summary>
public sealed class ScoresheetPapersController(ScoresheetPaperReading reading, PrintedPapers papers) : Controller
{
    /// <summary>One that the visitor signed.</summary>
    [HttpGet("/{language:language}/scoresheets/{sheetId:guid}/signed.pdf")]
    public Task<IActionResult> Own(Guid sheetId, CancellationToken cancellation) => PrintAsync(sheetId, HttpContext.Visitor().PersonId, cancellation);

    /// <summary>Anybody's.</summary>
    [HttpGet("/{language:language}/programme/scoresheets/{sheetId:guid}/signed.pdf")]
    public Task<IActionResult> ForLead(Guid sheetId, CancellationToken cancellation) => PrintAsync(sheetId, instructorId: null, cancellation);

    private async Task<IActionResult> PrintAsync(Guid sheetId, Guid? instructorId, CancellationToken cancellation) =>
        await reading.FindAsync(sheetId, instructorId, HttpContext.PageLanguageOf(), cancellation) is { } page
            ? papers.Answer(this, page, ScoresheetPageChecks.CanPrint, ScoresheetWriter.Write, $"scoresheet-{page.ScoredOn.Iso()}.pdf")
            : NotFound();
}
