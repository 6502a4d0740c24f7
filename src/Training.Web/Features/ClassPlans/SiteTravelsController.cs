using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.ClassPlans;

/// <summary>How long it takes between the sites of an employer.</summary>
[Route("/{language:language}/programme/employers/{employerId:guid}/travels")]
public sealed class SiteTravelsController(RecordsContext records, TimeProvider clock, IStringLocalizer<ClassPlanText> localizer) : Controller
{
    private const string Travels = "~/Features/ClassPlans/Travels.cshtml";

    private readonly IStringLocalizer<ClassPlanText> Text = localizer;

    /// <summary>What is known, and the form.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(Guid employerId, CancellationToken cancellation) =>
        await FindAsync(employerId, new() { Id = Guid.CreateVersion7(clock.GetUtcNow()) }, cancellation) is { } page
            ? View(Travels, page) : NotFound();

    /// <summary>Keeps a way.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Keep(Guid employerId, SiteTravelForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear(); // what could not be read is told in our own words
        if (await FindAsync(employerId, form, cancellation) is not { } page) return NotFound();
        var areTwo = page.Sites.Count(site => site.Id == form.SiteId || site.Id == form.OtherSiteId) == 2;
        if (!areTwo) ModelState.AddModelError(nameof(form.OtherSiteId), Text["TwoSites"]);
        var isCount = int.TryParse(form.Minutes, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) && minutes <= SiteTravel.MostMinutes;
        if (!isCount) ModelState.AddModelError(nameof(form.Minutes), Text["CountMissing", 0, SiteTravel.MostMinutes]);
        if (!ModelState.IsValid || form.SiteId is not { } one || form.OtherSiteId is not { } other) return this.Mend(Travels, page);
        var travel = new SiteTravel { Id = form.Id, SiteId = one, OtherSiteId = other, Minutes = minutes, SetById = HttpContext.Visitor().PersonId, KeptAt = clock.GetUtcNow() };
        if (await records.KeepAsync(travel, cancellation) is not Kept.Refused refused)
            return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/employers/{employerId}/travels");
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Minutes), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View(Travels, page);
    }

    private async Task<SiteTravelsPage?> FindAsync(Guid employerId, SiteTravelForm form, CancellationToken cancellation)
    {
        var employer = await records.Employers.AsNoTracking().SingleOrDefaultAsync(row => row.Id == employerId, cancellation);
        return employer is null
            ? null
            : new(employerId, employer.Name, await records.SitesOfAsync(employerId, cancellation), await records.TravelsAsync(employerId, cancellation), form);
    }
}
