using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Encounters;

/// <summary>A lead reads all encounters, and says what came of those that name a species or a course.</summary>
[Route("/{language:language}/programme")]
public sealed class EncounterCasesController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<EncounterText> localizer) : Controller
{
    private const int MostSites = 1000;

    private readonly IStringLocalizer<EncounterText> Text = localizer;

    /// <summary>What asks for a look, counts by month and site, and the list, filtered.</summary>
    [HttpGet("encounters")]
    public async Task<IActionResult> List(EncounterFilterForm form, CancellationToken cancellation)
    {
        ModelState.Clear(); // what could not be read is no filter
        var today = HttpContext.Visitor().Today;
        var sites = await records.Sites.OrderBy(site => site.NameKey).Take(MostSites).Select(site => new { site.Id, site.Name }).ToListAsync(cancellation);
        var page = await records.EncountersPageAsync(
            records.Encounters, form.Read(today), "/programme", null, today, sites.ConvertAll(site => (site.Id, site.Name)), Words(), cancellation);
        return View("/Features/Encounters/All.cshtml", page with { ToLookAt = await ToLookAtAsync(cancellation) });
    }

    /// <summary>The list as a file.</summary>
    [HttpGet("encounters.csv")]
    public async Task<IActionResult> Csv(EncounterFilterForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        var today = HttpContext.Visitor().Today;
        var lines = await records.EncountersAsync(records.Encounters, form.Read(today), EncounterQueries.Most, cancellation);
        return File(EncounterFile.Write(lines, Words()), "text/csv; charset=utf-8", $"encounters-{today.Iso()}.csv");
    }

    /// <summary>One encounter: all that was reported, who handled it and what they held that day, what it opened.</summary>
    [HttpGet("encounters/{encounterId:guid}")]
    public async Task<IActionResult> Show(Guid encounterId, CancellationToken cancellation) =>
        await PageAsync(encounterId, new() { Id = encounterId }, cancellation) is { } page ? View("/Features/Encounters/Case.cshtml", page) : NotFound();

    /// <summary>Keeps what the lead found about the species or the course. The first one's words stay.</summary>
    [HttpPost("encounters/{encounterId:guid}/look")]
    public async Task<IActionResult> Look(Guid encounterId, EncounterWordsForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await PageAsync(encounterId, form, cancellation) is not { } page) return NotFound();
        var words = ModelState.ReadLine(nameof(form.Words), form.Words, Bounds.Reason, Text["WordsMissing"]);
        if (!ModelState.IsValid) return this.Mend("/Features/Encounters/Case.cshtml", page);
        var (visitor, now) = (HttpContext.Visitor(), clock.GetUtcNow());
        var look = new EncounterLook { EncounterId = encounterId, LeadId = visitor.PersonId, LookedOn = visitor.Today, Words = words, KeptAt = now };
        if (await records.KeepAsync(look, cancellation) is not Kept.Refused refused) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/encounters/{encounterId}");
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Words), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("/Features/Encounters/Case.cshtml", page);
    }

    private EncounterWords Words() => new(Text, shelf, HttpContext.PageLanguageOf());

    private async Task<EncounterCasePage?> PageAsync(Guid encounterId, EncounterWordsForm form, CancellationToken cancellation)
    {
        if (await records.FindEncounterAsync(records.Encounters, encounterId, cancellation) is not { } found) return null;
        var encounter = found.Line.Encounter;
        var (certifications, titles) = (shelf.Certifications(), shelf.Courses.Titles(HttpContext.PageLanguageOf()));
        var held = encounter.HandlerId is { } handler ? await records.HeldCertificationsAsync(handler, cancellation) : [];
        var list = await records.FindSiteSpeciesAsync(encounter.SiteId, cancellation);
        var people = found.Additions.Select(row => row.PersonId).Concat(
            new[] { encounter.ReporterId, encounter.HandlerId, found.Look?.LeadId }.OfType<Guid>());
        return new(
            found,
            [.. held.Where(one => certifications.Contains(one.SchemeId)).Select(one => (titles.Of(one.SchemeId), Standings.On(one, encounter.MetOn)))],
            IsOnList(encounter, list),
            await records.NamesOfAsync(people, HttpContext.Visitor().Today, cancellation),
            form,
            Words());
    }

    // What names a course, or a venomous species that is not on the list of its site. Without a list everything is taught there, so nothing is missing.
    private async Task<IReadOnlyList<EncounterLine>> ToLookAtAsync(CancellationToken cancellation)
    {
        var lines = await records.EncountersToLookAtAsync(cancellation);
        var lists = await records.SiteSpeciesOfAsync([.. lines.Select(line => line.Encounter.SiteId)], cancellation);
        return [.. lines.Where(line => line.Encounter.CourseId is not null || !IsOnList(line.Encounter, lists.GetValueOrDefault(line.Encounter.SiteId))).Take(EncountersPage.MostLines)];
    }

    private bool IsOnList(EncounterRecord encounter, Records.SiteSpecies? list) =>
        encounter.SpeciesId is null || shelf.Species.Find(encounter.SpeciesId) is not { IsVenomous: true } || list is null or { SpeciesIds.Count: 0 } || list.SpeciesIds.Contains(encounter.SpeciesId);
}
