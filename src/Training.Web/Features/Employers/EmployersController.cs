using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Places;
using Training.Web.Provider;

namespace Training.Web.Features.Employers;

/// <summary>Employers and their sites.</summary>
public sealed class EmployersController(RecordsContext records, OurProvider provider, IStringLocalizer<EmployerText> localizer) : Controller
{
    private const int Most = 1000;

    private readonly IStringLocalizer<EmployerText> Text = localizer;

    /// <summary>All employers.</summary>
    [HttpGet("/{language:language}/programme/employers")]
    public async Task<IActionResult> List(CancellationToken cancellation) =>
        View(new EmployersPage(await EmployersAsync(cancellation), new() { Id = Guid.CreateVersion7() }));

    /// <summary>Adds an employer.</summary>
    [HttpPost("/{language:language}/programme/employers")]
    public async Task<IActionResult> Add(EmployerForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        var name = ReadName(form.Name);
        if (ModelState.IsValid)
        {
            if (await records.KeepAsync(new Employer { Id = form.Id, Name = name }, cancellation) is not Kept.Refused refused)
                return this.SeeOther(Employer(form.Id));
            foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Name), problem);
        }

        return this.Mend("List", new EmployersPage(await EmployersAsync(cancellation), form));
    }

    /// <summary>One employer with its sites.</summary>
    [HttpGet("/{language:language}/programme/employers/{employerId:guid}")]
    public async Task<IActionResult> Show(Guid employerId, CancellationToken cancellation)
    {
        var form = new SiteForm { Id = Guid.CreateVersion7(), Zone = provider.Zone, Region = provider.Region };
        return await FindAsync(employerId, form, cancellation) is { } page ? View(page) : NotFound();
    }

    /// <summary>Adds a site.</summary>
    [HttpPost("/{language:language}/programme/employers/{employerId:guid}/sites")]
    public async Task<IActionResult> AddSite(Guid employerId, SiteForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        if (await FindAsync(employerId, form, cancellation) is not { } page) return NotFound();
        var (name, zone, region) = (ReadName(form.Name), TimeZones.Find(form.Zone), Regions.Find(form.Region));
        if (zone is null) ModelState.AddModelError(nameof(form.Zone), Text["ZoneUnknown"]);
        if (region is null) ModelState.AddModelError(nameof(form.Region), Text["RegionUnknown"]);
        if (ModelState.IsValid && zone is not null && region is not null)
        {
            var site = new Records.Site { Id = form.Id, EmployerId = employerId, Name = name, Zone = zone, Region = region };
            if (await records.KeepAsync(site, cancellation) is not Kept.Refused refused) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/sites/{site.Id}");
            foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Name), problem);
        }

        return this.Mend("Show", page);
    }

    private string Employer(Guid id) => $"/{HttpContext.PageLanguageOf().Tag()}/programme/employers/{id}";

    private async Task<IReadOnlyList<EmployerLine>> EmployersAsync(CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        return await records.Employers.OrderBy(employer => employer.NameKey).Take(Most).Select(employer => new EmployerLine(
            employer.Id, employer.Name, records.Sites.Count(site => site.EmployerId == employer.Id),
            records.Employments.Count(row =>
                row.EmployerId == employer.Id && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today)))).ToListAsync(cancellation);
    }

    private async Task<EmployerPage?> FindAsync(Guid employerId, SiteForm form, CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        var name = await records.Employers.Where(employer => employer.Id == employerId).Select(employer => employer.Name).SingleOrDefaultAsync(cancellation);
        if (name is null) return null;
        var sites = await records.Sites.Where(site => site.EmployerId == employerId).OrderBy(site => site.NameKey).Take(Most)
            .Select(site => new SiteLine(
                site.Id, site.Name, site.Zone, site.Region,
                records.SiteAssignments.Count(row => row.SiteId == site.Id && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today)),
                records.EmergencyNumbers.Any(row => row.SiteId == site.Id))).ToListAsync(cancellation);
        return new(employerId, name, sites, form);
    }

    private string ReadName(string? typed) => ModelState.ReadLine("Name", typed, Bounds.Name, Text["NameMissing"]);
}
