using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Encounters;

/// <summary>Whoever met a snake at work reports it here, and reads what they reported. Help comes first on every page.</summary>
[Route("/{language:language}/encounters")]
public sealed class EncountersController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<EncounterText> localizer) : Controller
{
    private const int MostOwn = 200;
    private const int MostSites = 500;

    private readonly IStringLocalizer<EncounterText> Text = localizer;

    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>What the visitor reported.</summary>
    [HttpGet("")]
    public async Task<IActionResult> List(CancellationToken cancellation) =>
        View(new OwnEncountersPage(await records.EncountersAsync(Own(), new(null, null, null, null), MostOwn, cancellation), Words()));

    /// <summary>Whom to call; then which kind, then the form.</summary>
    [HttpGet("new")]
    public async Task<IActionResult> New(Guid? siteId, EncounterKind? kind, CancellationToken cancellation)
    {
        ModelState.Clear();
        var form = new EncounterForm { Id = Guid.CreateVersion7(clock.GetUtcNow()), SiteId = siteId, Kind = kind };
        if (await PageAsync(form, cancellation) is not { } page) return NotFound();
        form.MetOn = page.Place?.Today.Iso();
        return View(page);
    }

    /// <summary>Keeps a report, with the review and the hold that it opens. The same form again is one report.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Send(EncounterForm form, CancellationToken cancellation)
    {
        ModelState.Clear(); // what could not be read is told in our own words
        if (form.Id == Guid.Empty || form.Kind is not { } kind || !Enum.IsDefined(kind) || form.SiteId is null) return BadRequest();
        if (await PageAsync(form, cancellation) is not { Place: { } place } page) return NotFound();
        var read = new EncounterReading(ModelState, Text, place).Read(form, HttpContext.Visitor().PersonId, clock.GetUtcNow());
        if (read is not var (encounter, relocation)) return this.Mend("New", page);
        if (await records.KeepAsync(encounter, relocation, shelf.Certifications(), cancellation) is not Kept.Refused refused) return this.SeeOther(Address(form.Id));
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Place), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("New", page);
    }

    /// <summary>One report of the visitor, with what was added.</summary>
    [HttpGet("{encounterId:guid}")]
    public async Task<IActionResult> Show(Guid encounterId, CancellationToken cancellation) =>
        await OwnPageAsync(encounterId, new() { Id = Guid.CreateVersion7(clock.GetUtcNow()) }, cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Keeps what the visitor adds to their report; the report itself stays as it was sent.</summary>
    [HttpPost("{encounterId:guid}/additions")]
    public async Task<IActionResult> Add(Guid encounterId, EncounterWordsForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await OwnPageAsync(encounterId, form, cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        if (ReadWords(form.Words) is not { } words) return this.Mend("Show", page);
        var added = new EncounterAddition
        {
            Id = form.Id, EncounterId = encounterId, PersonId = HttpContext.Visitor().PersonId, Words = words, KeptAt = clock.GetUtcNow(),
        };
        if (await records.KeepAsync(added, cancellation) is not Kept.Refused refused) return this.SeeOther(Address(encounterId));
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Words), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("Show", page);
    }

    private IQueryable<EncounterRecord> Own()
    {
        var personId = HttpContext.Visitor().PersonId;
        return records.Encounters.Where(row => row.ReporterId == personId);
    }

    private EncounterWords Words() => new(Text, shelf, Language);

    private string Address(Guid id) => $"/{Language.Tag()}/encounters/{id}";

    private string? ReadWords(string? typed)
    {
        var words = typed?.Trim() ?? "";
        if (words.Length is > 0 and <= Bounds.Reason) return words;
        ModelState.AddModelError(nameof(EncounterWordsForm.Words), words.Length == 0 ? Text["WordsMissing"] : Written.TooLong(Bounds.Reason, words.Length));
        return null;
    }

    private async Task<OwnEncounterPage?> OwnPageAsync(Guid encounterId, EncounterWordsForm form, CancellationToken cancellation) =>
        await records.FindEncounterAsync(Own(), encounterId, cancellation) is { } found ? new(found, form, Words()) : null;

    // Null where the chosen site is not one to report from. Without a choice it is the visitor's own site, or the only one there is.
    private async Task<EncounterFormPage?> PageAsync(EncounterForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var sites = await records.SitesReportedFromBy(visitor).AsNoTracking().OrderBy(site => site.NameKey).Take(MostSites).ToListAsync(cancellation);
        form.SiteId ??= (await records.FindSiteAsync(visitor.PersonId, visitor.Today, cancellation))?.Id ?? (sites is [var only] ? only.Id : null);
        var chosen = sites.Find(site => site.Id == form.SiteId);
        if (chosen is null && form.SiteId is not null) return null;
        return new([.. sites.Select(site => (site.Id, site.Name))], chosen is null ? null : await PlaceAsync(chosen, cancellation), form);
    }

    private async Task<EncounterPlace> PlaceAsync(Records.Site site, CancellationToken cancellation)
    {
        var today = DecisionDay.On(clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(site.Zone));
        var list = (await records.FindSiteSpeciesAsync(site.Id, cancellation))?.SpeciesIds ?? [];
        return new(
            site.Id, site.Name, today, await records.FindEmergencyNumbersAsync(site.Id, cancellation),
            await records.PeopleAtAsync(site.Id, today, cancellation),
            [.. shelf.Species.Species.OrderBy(sheet => !list.Contains(sheet.Id)).ThenBy(sheet => sheet.Words[Language].Name, StringComparer.CurrentCultureIgnoreCase)
                .Select(sheet => (sheet.Id, sheet.Words[Language].Name))],
            [.. shelf.Used.Select(course => (course.Id, course.Scheme.Words[Language].Title))]);
    }
}
