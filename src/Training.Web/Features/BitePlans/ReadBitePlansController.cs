using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Documents.BitePlans;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Shared;
using Training.Web.Features.Workforce;
using Training.Web.Languages;

namespace Training.Web.Features.BitePlans;

/// <summary>Bite plans to read: by the people of a site, by their employer, and by whoever has an address that a lead made.</summary>
public sealed class ReadBitePlansController(RecordsContext records, BitePlanReading reading, PrintedPapers papers, TimeProvider clock) : Controller
{
    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>The plans of an employer's sites: which there are, and which are overdue.</summary>
    [HttpGet("/{language:language}/employers/{employerId:guid}/bite-plans")]
    public async Task<IActionResult> List(Guid employerId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindEmployerAsync(visitor, employerId, cancellation) is not { } employer) return NotFound();
        var plans = await records.BitePlansOfAsync([.. employer.Sites.Select(site => site.Id)], cancellation);
        var now = clock.GetUtcNow();
        return View("/Features/BitePlans/List.cshtml", new BitePlanListPage(
            employerId, employer.Name, visitor.Is(Role.ProgrammeLead), [.. employer.Sites.Select(site => new BitePlanRow(site, plans.GetValueOrDefault(site.Id), DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(site.Zone))))]));
    }

    /// <summary>The plan of a site.</summary>
    [HttpGet("/{language:language}/sites/{siteId:guid}/bite-plan")]
    public async Task<IActionResult> Show(Guid siteId, CancellationToken cancellation) =>
        await FindSeenAsync(siteId, cancellation) is { } site ? await PageAsync(site, $"/{Language.Tag()}/sites/{siteId}/bite-plan.pdf", cancellation) : NotFound();

    /// <summary>The plan of a site, to print.</summary>
    [HttpGet("/{language:language}/sites/{siteId:guid}/bite-plan.pdf")]
    public async Task<IActionResult> Print(Guid siteId, CancellationToken cancellation) =>
        await FindSeenAsync(siteId, cancellation) is { } site ? await PaperAsync(site, cancellation) : NotFound();

    /// <summary>The plan of a site, for whoever has its address. 404 where no such address was ever made, 410 where it was ended.</summary>
    [HttpGet("/bite-plans/{planSecret}")]
    [HttpGet("/{language:language}/bite-plans/{planSecret}")]
    [EnableRateLimiting(BitePlansSetup.RateLimit)]
    public async Task<IActionResult> Open(string planSecret, CancellationToken cancellation) =>
        await FindOpenAsync(planSecret, cancellation) is var (site, refusal) && site is not null
            ? await PageAsync(site, $"/{Language.Tag()}/bite-plans/{planSecret}.pdf", cancellation)
            : refusal;

    /// <summary>The same, to print.</summary>
    [HttpGet("/{language:language}/bite-plans/{planSecret}.pdf")]
    [EnableRateLimiting(BitePlansSetup.RateLimit)]
    public async Task<IActionResult> PrintOpen(string planSecret, CancellationToken cancellation) =>
        await FindOpenAsync(planSecret, cancellation) is var (site, refusal) && site is not null ? await PaperAsync(site, cancellation) : refusal;

    private Task<Records.Site?> FindSeenAsync(Guid siteId, CancellationToken cancellation) =>
        records.SitesSeenBy(HttpContext.Visitor()).AsNoTracking().SingleOrDefaultAsync(site => site.Id == siteId, cancellation);

    private async Task<(Records.Site? Site, IActionResult Refusal)> FindOpenAsync(string secret, CancellationToken cancellation)
    {
        // A gate code may stand in it: no cache keeps it, and no search engine lists it.
        Response.Headers.CacheControl = "no-store";
        Response.Headers["X-Robots-Tag"] = "noindex, nofollow";
        if (secret.Length != AddressSecret.Length || await records.FindBitePlanAddressAsync(secret, cancellation) is not { } found) return (null, NotFound());
        if (found.EndedAt is not null) return (null, StatusCode(StatusCodes.Status410Gone));
        return (await records.Sites.AsNoTracking().SingleAsync(site => site.Id == found.Address.SiteId, cancellation), NotFound());
    }

    private async Task<IActionResult> PageAsync(Records.Site site, string paper, CancellationToken cancellation)
    {
        var plan = await reading.FindAsync(site, Language, cancellation);
        return View("/Features/BitePlans/Show.cshtml", new BitePlanShown(site, plan, plan is null ? await records.FindEmergencyNumbersAsync(site.Id, cancellation) : null, paper));
    }

    private async Task<IActionResult> PaperAsync(Records.Site site, CancellationToken cancellation) =>
        await reading.FindAsync(site, Language, cancellation) is { } plan
            ? papers.Answer(this, plan, BitePlanChecks.CanPrint, BitePlanWriter.Write, $"bite-plan-{plan.PrintedOn.Iso()}-{Language.Tag()}.pdf")
            : NotFound();
}
