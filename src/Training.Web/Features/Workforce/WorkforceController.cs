using Microsoft.AspNetCore.Mvc;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Cover;
using Training.Web.Features.Shared;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Workforce;

/// <summary>An employer's own people: who lapses and what to do, the training matrix, and the evidence about each.</summary>
[Route("/{language:language}/employers/{employerId:guid}")]
public sealed class WorkforceController(RecordsContext records, CourseShelf shelf, MatrixFile file) : Controller
{
    /// <summary>How things stand: who lapses before a day that the visitor chooses, worst first.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Today(Guid employerId, string? before, string? site, CancellationToken cancellation)
    {
        var employer = await records.FindEmployerAsync(HttpContext.Visitor(), employerId, cancellation);
        if (employer is null || !employer.TryFindSite(site, out var siteId)) return NotFound();
        var filter = TodayFilter.Read(before, siteId, employer.Today);
        var page = await TodayPage.ReadAsync(records, employer, filter, shelf, HttpContext.PageLanguageOf(), cancellation) with
        {
            Cover = await records.CoverAsync(employerId, employer.Today, shelf.Courses, HttpContext.PageLanguageOf(), cancellation),
        };
        return filter.Refused is null ? View(page) : this.Mend("Today", page);
    }

    /// <summary>The training matrix, 50 people a page.</summary>
    [HttpGet("matrix")]
    public async Task<IActionResult> Matrix(Guid employerId, MatrixForm form, int page, CancellationToken cancellation)
    {
        var matrix = await FindMatrixAsync(employerId, form, cancellation);
        if (matrix is null) return NotFound();
        var shown = Math.Clamp(page, 1, matrix.Pages);
        return View(new MatrixPage(
            matrix, shown, await matrix.RowsOfAsync(records, shown, cancellation),
            matrix.Filter.SiteId is { } siteId ? await records.CrewsOfAsync(siteId, cancellation) : []));
    }

    /// <summary>All of the training matrix that the filter admits, as a file.</summary>
    [HttpGet("matrix.csv")]
    [HttpGet("matrix.xlsx")]
    public async Task<IActionResult> MatrixSheet(Guid employerId, MatrixForm form, CancellationToken cancellation)
    {
        var matrix = await FindMatrixAsync(employerId, form, cancellation);
        return matrix is null
            ? NotFound()
            : await this.SheetAsync(file.Of(matrix, records, cancellation), $"training-matrix-{matrix.Employer.Today.Iso()}", cancellation);
    }

    /// <summary>One person: standing, periods, decisions, results, certificates.</summary>
    [HttpGet("people/{personId:guid}")]
    public async Task<IActionResult> Person(Guid employerId, Guid personId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var person = await records.FindEmployedAsync(visitor, employerId, personId, cancellation);
        if (person is null) return NotFound();
        var evidence = await records.EvidenceOfAsync(person, visitor.Today, cancellation);
        var classes = await ClassDays.ReadAsync(records, employerId, [personId], visitor.Today, cancellation);
        return View(WorkerPage.Of(employerId, evidence, shelf, classes, visitor.Today, HttpContext.PageLanguageOf()) with
        {
            Holds = [.. Certification.Holds.On(await records.HoldsOfAsync(personId, cancellation), visitor.Today)],
        });
    }

    private async Task<Matrix?> FindMatrixAsync(Guid employerId, MatrixForm form, CancellationToken cancellation)
    {
        var employer = await records.FindEmployerAsync(HttpContext.Visitor(), employerId, cancellation);
        return employer is not null && form.Read(employer) is { } filter
            ? await Workforce.Matrix.FindAsync(records, employer, filter, shelf, HttpContext.PageLanguageOf(), cancellation)
            : null;
    }
}
