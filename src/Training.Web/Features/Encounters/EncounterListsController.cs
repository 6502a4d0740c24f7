using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Encounters;

/// <summary>Encounters at an employer's sites. Who reported and who handled is not shown here: a report is never held against anybody.</summary>
[Route("/{language:language}/employers/{employerId:guid}")]
public sealed class EncounterListsController(RecordsContext records, CourseShelf shelf, IStringLocalizer<EncounterText> text) : Controller
{
    /// <summary>Counts by month and site, and the list, filtered.</summary>
    [HttpGet("encounters")]
    public async Task<IActionResult> Show(Guid employerId, EncounterFilterForm form, CancellationToken cancellation)
    {
        ModelState.Clear(); // what could not be read is no filter
        var visitor = HttpContext.Visitor();
        var employer = await records.EmployersSeenBy(visitor).AsNoTracking().SingleOrDefaultAsync(row => row.Id == employerId, cancellation);
        if (employer is null) return NotFound();
        var sites = (await records.SitesOfAsync(employerId, cancellation)).Select(site => (site.Id, site.Name)).ToList();
        return View("/Features/Encounters/Employer.cshtml", await records.EncountersPageAsync(
            records.EncountersSeenBy(visitor, employerId), form.Read(visitor.Today), $"/employers/{employerId}", employer.Name, visitor.Today, sites, Words(), cancellation));
    }

    /// <summary>The list as a file.</summary>
    [HttpGet("encounters.csv")]
    public async Task<IActionResult> Csv(Guid employerId, EncounterFilterForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        var visitor = HttpContext.Visitor();
        if (!await records.EmployersSeenBy(visitor).AnyAsync(row => row.Id == employerId, cancellation)) return NotFound();
        var lines = await records.EncountersAsync(
            records.EncountersSeenBy(visitor, employerId), form.Read(visitor.Today), EncounterQueries.Most, cancellation);
        return File(EncounterFile.Write(lines, Words()), "text/csv; charset=utf-8", $"encounters-{visitor.Today.Iso()}.csv");
    }

    private EncounterWords Words() => new(text, shelf, HttpContext.PageLanguageOf());
}
