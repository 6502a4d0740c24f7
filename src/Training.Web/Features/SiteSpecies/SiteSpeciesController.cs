using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.Species;
using Training.Web.Languages;
using Training.Web.Places;
using Training.Web.Shelf;

namespace Training.Web.Features.SiteSpecies;

/// <summary>Which snakes live at a site: what its people read and are asked follows it.</summary>
[Route("/{language:language}/programme/sites/{siteId:guid}/species")]
public sealed class SiteSpeciesController(RecordsContext records, CourseShelf shelf, TimeProvider clock) : Controller
{
    /// <summary>The list that serves, or what the sources suggest for the state.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(Guid siteId, CancellationToken cancellation)
    {
        if (await records.Sites.AsNoTracking().SingleOrDefaultAsync(row => row.Id == siteId, cancellation) is not { } site) return NotFound();
        var (language, visitor) = (HttpContext.PageLanguageOf(), HttpContext.Visitor());
        var kept = await records.FindSiteSpeciesAsync(siteId, cancellation);
        var groups = SiteSpeciesPage.GroupsOf(shelf.Species, site.Region);
        var ticked = kept?.SpeciesIds ?? SiteSpeciesPage.Suggested(groups).Select(sheet => sheet.Id);
        var names = await records.NamesOfAsync(kept is null ? [] : [kept.LeadId], visitor.Today, cancellation);
        var snakes = SnakesOfPlace.Of(shelf.Species.SheetsOf(kept));
        return View(new SiteSpeciesPage(
            siteId, site.Name, Regions.NameOf(site.Region, language), Guid.CreateVersion7(),
            [.. groups.Where(group => group.Sheets.Count > 0).Select(group => (group.Presence, (IReadOnlyList<SheetLink>)[.. group.Sheets.Select(sheet => SheetLink.To(sheet, language))]))],
            ticked.ToHashSet(StringComparer.Ordinal),
            kept is null ? null : DecisionDay.On(kept.KeptAt, TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone)),
            kept is null ? null : names.GetValueOrDefault(kept.LeadId),
            [.. shelf.Used.Select(course => (course.Scheme.Words[language].Title, course.Questions.Count - course.AskedAt(snakes).Questions.Count))]));
    }

    /// <summary>Keeps the list as ticked.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Keep(Guid siteId, SiteSpeciesForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        if (!await records.Sites.AnyAsync(row => row.Id == siteId, cancellation)) return NotFound();
        var list = new Records.SiteSpecies
        {
            Id = form.Id, SiteId = siteId, LeadId = HttpContext.Visitor().PersonId, KeptAt = clock.GetUtcNow(),
            // In the order of the library; what has no sheet cannot be named.
            SpeciesIds = [.. shelf.Species.Species.Where(sheet => sheet.IsVenomous).Select(sheet => sheet.Id).Where(form.SpeciesIds.Contains)],
        };
        var before = await records.FindSiteSpeciesAsync(siteId, cancellation);
        await records.KeepAsync(list, cancellation);
        var site = $"/{HttpContext.PageLanguageOf().Tag()}/programme/sites/{siteId}";
        return this.SeeOther(AddedTo(before, list) is { Length: > 0 } added
            ? $"{site}/events?cause={ReviewCause.NewSpecies}&what={Uri.EscapeDataString(added)}"
            : $"{site}/species");
    }

    // What the site's handlers may not be trained on, by name. Before the first list, and after one that was taken back, everything is taught.
    private string AddedTo(Records.SiteSpecies? before, Records.SiteSpecies list) => before is null or { SpeciesIds.Count: 0 } || before.Id == list.Id
        ? ""
        : string.Join(", ", list.SpeciesIds.Except(before.SpeciesIds).Select(shelf.Species.Find).OfType<SpeciesSheet>()
            .Select(sheet => sheet.Words[HttpContext.PageLanguageOf()].Name));
}
