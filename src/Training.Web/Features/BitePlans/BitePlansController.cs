using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Documents.BitePlans;
using Training.Documents.Fonts;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.BitePlans;

/// <summary>Leads check a site's bite plan, and make addresses at which a hospital or a gate reads it.</summary>
[Route("/{language:language}/programme/sites/{siteId:guid}/bite-plan")]
public sealed class BitePlansController(
    RecordsContext records, BitePlanReading reading, CourseShelf shelf, FontFaces faces, TrainingOptions options, TimeProvider clock,
    IStringLocalizer<BitePlanText> localizer) : Controller
{
    private readonly IStringLocalizer<BitePlanText> Text = localizer;

    private string Tag => HttpContext.PageLanguageOf().Tag();

    /// <summary>The form, filled in with what serves.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Edit(Guid siteId, CancellationToken cancellation) =>
        await FindAsync(siteId, null, cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Keeps the plan and whom to call, as checked today.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Keep(Guid siteId, BitePlanForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear(); // what could not be read is told in our own words
        if (await FindAsync(siteId, form, cancellation) is not { } page) return NotFound();
        var numbers = form.Read(page.Site, HttpContext.Visitor().PersonId, clock.GetUtcNow(), ModelState, Text["Missing"]);
        var plan = new BitePlanFormReading(ModelState, Text).Read(form, numbers);
        if (ModelState.IsValid) await CheckAsync(page.Site, plan, numbers, cancellation);
        if (!ModelState.IsValid) return this.Mend("Edit", page);
        await records.KeepAsync(plan, numbers, cancellation);
        return this.SeeOther($"/{Tag}/sites/{siteId}/bite-plan");
    }

    /// <summary>Makes an address at which the plan is read without a sign-in. The page is the answer: the secret is kept nowhere.</summary>
    [HttpPost("addresses")]
    public async Task<IActionResult> MakeAddress(Guid siteId, Guid id, string? madeFor, CancellationToken cancellation)
    {
        if (id == Guid.Empty) return BadRequest();
        if (await FindAsync(siteId, null, cancellation) is not { } page) return NotFound();
        var line = ModelState.ReadLine("MadeFor", madeFor, Bounds.Name, Text["Missing"]);
        if (page.Addresses.Count >= BitePlanKeeping.MostAddresses) ModelState.AddModelError("MadeFor", Text["Full", BitePlanKeeping.MostAddresses]);
        if (page.Plan is null) ModelState.AddModelError("MadeFor", Text["PlanFirst"]);
        if (!ModelState.IsValid) return this.Mend("Edit", page with { MadeFor = madeFor });
        var secret = AddressSecret.New();
        var address = new BitePlanAddress
        {
            Id = id, SecretHash = AddressSecret.HashOf(secret), SiteId = siteId, MadeFor = line, LeadId = HttpContext.Visitor().PersonId, MadeAt = clock.GetUtcNow(),
        };
        var isNew = await records.TryKeepAsync(address, cancellation);
        page = await FindAsync(siteId, null, cancellation) ?? throw new InvalidOperationException($"Site {siteId} went away.");
        return View("Edit", isNew ? page with { Made = options.PublicPage($"bite-plans/{secret}") } : page with { WasMadeBefore = true });
    }

    /// <summary>Ends an address, whoever made it.</summary>
    [HttpPost("addresses/{addressId:guid}/end")]
    public async Task<IActionResult> EndAddress(Guid siteId, Guid addressId, CancellationToken cancellation)
    {
        if (!await records.BitePlanAddresses.AnyAsync(address => address.Id == addressId && address.SiteId == siteId, cancellation)) return NotFound();
        await records.EndAsync(new BitePlanAddressEnd { AddressId = addressId, EndedAt = clock.GetUtcNow(), EndedById = HttpContext.Visitor().PersonId }, cancellation);
        return this.SeeOther($"/{Tag}/programme/sites/{siteId}/bite-plan");
    }

    // Kept only if it can be printed in every language: an emergency is no time to find out.
    private async Task CheckAsync(Records.Site site, BitePlan plan, EmergencyNumbers numbers, CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        foreach (var language in LanguageTags.All)
            BitePlanChecks.CanPrintAlsoOverdue(await reading.ComposeAsync(site, plan, numbers, language, cancellation), faces, problems);
        foreach (var problem in problems.DistinctBy(problem => (problem.Code, problem.Place))) ModelState.Add("Plan", problem);
    }

    private async Task<BitePlanEditPage?> FindAsync(Guid siteId, BitePlanForm? typed, CancellationToken cancellation)
    {
        if (await records.Sites.AsNoTracking().SingleOrDefaultAsync(row => row.Id == siteId, cancellation) is not { } site) return null;
        var employer = await records.Employers.Where(row => row.Id == site.EmployerId).Select(row => row.Name).SingleAsync(cancellation);
        var plan = await records.FindBitePlanAsync(siteId, cancellation);
        var addresses = await records.BitePlanAddressesAsync(siteId, cancellation);
        var today = DecisionDay.On(clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(site.Zone));
        var names = await records.NamesOfAsync(addresses.Select(made => made.Address.LeadId), HttpContext.Visitor().Today, cancellation);
        var form = typed ?? await FormOfAsync(site, plan, today, cancellation);
        return new(site, employer, today, plan, addresses, names, form, Guid.CreateVersion7());
    }

    private async Task<BitePlanForm> FormOfAsync(Records.Site site, BitePlan? plan, DateOnly today, CancellationToken cancellation)
    {
        var form = new BitePlanForm
        {
            Coordinates = plan is null ? null : MapPoints.Written(plan.Latitude, plan.Longitude),
            AccessWords = plan?.AccessWords,
            ReviewOn = BitePlanFormReading.LastReview(today).Iso(),
            Hospitals = [.. (plan?.Hospitals ?? []).Select(HospitalForm.Of)],
        };
        form.Fill(await records.FindEmergencyNumbersAsync(site.Id, cancellation), new(shelf.Guidance, site.Region, today, HttpContext.PageLanguageOf()));
        return form;
    }
}
