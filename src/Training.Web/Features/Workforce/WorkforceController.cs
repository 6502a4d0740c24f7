using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Training.Records;
using Training.Web.Doors;
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
        var workforce = await records.FindWorkforceAsync(HttpContext.Visitor(), employerId, cancellation);
        if (workforce is null || !TryFindSite(workforce, site, out var siteId)) return NotFound();
        var page = TodayPage.Of(workforce.At(siteId), TodayFilter.Read(before, siteId, workforce.Today));
        Guid[] people = [.. page.Lines.Select(line => line.Person.PersonId).Distinct()];
        var files = await records.PersonFilesAsync(people, cancellation);
        var classes = await ClassDays.ReadAsync(records, employerId, people, workforce.Today, cancellation);
        page = page.WithSteps(files, shelf, classes, HttpContext.PageLanguageOf());
        return page.Filter.Refused is null ? View(page) : this.Mend("Today", page);
    }

    /// <summary>The training matrix, 50 people a page.</summary>
    [HttpGet("matrix")]
    public async Task<IActionResult> Matrix(Guid employerId, MatrixForm form, int page, CancellationToken cancellation)
    {
        var matrix = await FindMatrixAsync(employerId, form, cancellation);
        return matrix is null ? NotFound() : View(new MatrixPage(matrix, Math.Clamp(page, 1, matrix.Pages)));
    }

    /// <summary>The whole training matrix as a file.</summary>
    [HttpGet("matrix.csv")]
    public async Task<IActionResult> MatrixCsv(Guid employerId, MatrixForm form, CancellationToken cancellation)
    {
        var matrix = await FindMatrixAsync(employerId, form, cancellation);
        if (matrix is null) return NotFound();
        var day = matrix.Workforce.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return File(file.Write(matrix), "text/csv; charset=utf-8", $"training-matrix-{day}.csv");
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
        return View(WorkerPage.Of(employerId, evidence, shelf, classes, visitor.Today, HttpContext.PageLanguageOf()));
    }

    private async Task<Matrix?> FindMatrixAsync(Guid employerId, MatrixForm form, CancellationToken cancellation)
    {
        var workforce = await records.FindWorkforceAsync(HttpContext.Visitor(), employerId, cancellation);
        if (workforce is null || !TryFindSite(workforce, form.Site, out var siteId) || !form.TryReadStanding(out var standing)) return null;
        var schemeId = string.IsNullOrEmpty(form.Scheme) ? null : form.Scheme;
        return Workforce.Matrix.Of(workforce, new(siteId, schemeId, standing), shelf, HttpContext.PageLanguageOf());
    }

    // A site of another employer looks the same as none.
    private static bool TryFindSite(EmployedPeople workforce, string? typed, out Guid? siteId)
    {
        siteId = null;
        if (string.IsNullOrEmpty(typed)) return true;
        siteId = workforce.Sites.FirstOrDefault(site => site.Id.ToString() == typed)?.Id;
        return siteId is not null;
    }
}
