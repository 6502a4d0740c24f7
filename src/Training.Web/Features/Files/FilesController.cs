using Microsoft.AspNetCore.Mvc;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Shared;
using Training.Web.Features.Workforce;
using Training.Web.Languages;

namespace Training.Web.Features.Files;

/// <summary>What an employer takes along: tables for a spreadsheet, and the folder for an auditor.</summary>
[Route("/{language:language}/employers/{employerId:guid}")]
public sealed class FilesController(RecordsContext records, EmployerTables tables, TimeProvider clock) : Controller
{
    private const int MostFolders = 20;

    /// <summary>What there is to take along, and what is in it.</summary>
    [HttpGet("files")]
    public async Task<IActionResult> Show(Guid employerId, FilesForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var employer = await records.FindEmployerAsync(visitor, employerId, cancellation);
        if (employer is null || !employer.TryFindSite(form.Site, out var siteId)) return NotFound();
        var isGood = form.TryReadDays(employer.Today, out var from, out var through);
        var made = await records.AuditFoldersAsync(employerId, MostFolders, cancellation);
        var page = new FilesPage(
            employer, form, siteId, isGood, from, through, Guid.CreateVersion7(clock.GetUtcNow()), visitor.Is(Role.ProgrammeLead), made,
            await records.NamesOfAsync(made.Select(folder => folder.MadeById), employer.Today, cancellation), TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone));
        return page.DaysAreGood ? View(page) : this.Mend("Show", page);
    }

    /// <summary>Who lapses, as on the first page for the same day and site.</summary>
    [HttpGet("lapses.csv")]
    [HttpGet("lapses.xlsx")]
    public async Task<IActionResult> Lapses(Guid employerId, string? before, string? site, CancellationToken cancellation)
    {
        var employer = await records.FindEmployerAsync(HttpContext.Visitor(), employerId, cancellation);
        if (employer is null || !employer.TryFindSite(site, out var siteId)) return NotFound();
        var filter = TodayFilter.Read(before, siteId, employer.Today);
        if (filter.Refused is not null) return NotFound();
        return await this.SheetAsync(
            tables.Lapses(records, employer, filter, HttpContext.PageLanguageOf(), cancellation), $"lapses-before-{filter.Before.Iso()}", cancellation);
    }

    /// <summary>Class days of a span.</summary>
    [HttpGet("classes.csv")]
    [HttpGet("classes.xlsx")]
    public Task<IActionResult> Classes(Guid employerId, FilesForm form, CancellationToken cancellation) =>
        SpanAsync(employerId, form, "class-days", tables.Classes, cancellation);

    /// <summary>Results and decisions of a span.</summary>
    [HttpGet("evidence.csv")]
    [HttpGet("evidence.xlsx")]
    public Task<IActionResult> Evidence(Guid employerId, FilesForm form, CancellationToken cancellation) =>
        SpanAsync(employerId, form, "evidence", tables.Evidence, cancellation);

    private async Task<IActionResult> SpanAsync(
        Guid employerId, FilesForm form, string name,
        Func<RecordsContext, SeenEmployer, DateOnly, DateOnly, Guid?, Training.Courses.Language, CancellationToken, SheetTable> table, CancellationToken cancellation)
    {
        var employer = await records.FindEmployerAsync(HttpContext.Visitor(), employerId, cancellation);
        if (employer is null || !employer.TryFindSite(form.Site, out var siteId) || !form.TryReadDays(employer.Today, out var from, out var through)) return NotFound();
        return await this.SheetAsync(
            table(records, employer, from, through, siteId, HttpContext.PageLanguageOf(), cancellation), $"{name}-{from.Iso()}-{through.Iso()}", cancellation);
    }
}
