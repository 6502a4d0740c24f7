using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Sites;

/// <summary>A site of an employer: where it lies, and whom to call from it.</summary>
[Route("/{language:language}/programme/sites/{siteId:guid}")]
public sealed class SitesController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<SiteText> localizer) : Controller
{
    private readonly IStringLocalizer<SiteText> Text = localizer;

    /// <summary>The site.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(Guid siteId, CancellationToken cancellation) =>
        await FindAsync(siteId, null, cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Keeps whom to call, as checked today.</summary>
    [HttpPost("emergency-numbers")]
    public async Task<IActionResult> KeepNumbers(Guid siteId, EmergencyNumbersForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        if (await FindAsync(siteId, form, cancellation) is not { } page) return NotFound();
        var numbers = form.Read(page.Site, HttpContext.Visitor().PersonId, clock.GetUtcNow(), ModelState, Text["Missing"]);
        if (!ModelState.IsValid) return this.Mend("Show", page);
        await records.KeepAsync(numbers, cancellation);
        return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/sites/{siteId}");
    }

    private async Task<SitePage?> FindAsync(Guid siteId, EmergencyNumbersForm? typed, CancellationToken cancellation)
    {
        var site = await records.Sites.AsNoTracking().SingleOrDefaultAsync(row => row.Id == siteId, cancellation);
        if (site is null) return null;
        var employer = await records.Employers.Where(row => row.Id == site.EmployerId).Select(row => row.Name).SingleAsync(cancellation);
        var numbers = await records.FindEmergencyNumbersAsync(siteId, cancellation);
        var today = DecisionDay.On(clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(site.Zone));
        var names = await records.NamesOfAsync(numbers is null ? [] : [numbers.LeadId], today, cancellation);
        return new(site, employer, numbers, numbers is null ? null : names.GetValueOrDefault(numbers.LeadId),
            (await records.FindSiteSpeciesAsync(siteId, cancellation))?.SpeciesIds.Count, await records.FindBitePlanAsync(siteId, cancellation), today,
            typed ?? FormOf(site, numbers, today));
    }

    private EmergencyNumbersForm FormOf(Records.Site site, EmergencyNumbers? numbers, DateOnly today)
    {
        var form = new EmergencyNumbersForm();
        form.Fill(numbers, new(shelf.Guidance, site.Region, today, HttpContext.PageLanguageOf()));
        return form;
    }
}
