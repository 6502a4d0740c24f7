using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Places;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Features.Provider;

/// <summary>What the provider is called and where it sits, and the public address of this server.</summary>
[Route("/{language:language}/programme/provider")]
public sealed class ProviderController(
    RecordsContext records, OurProvider provider, ProviderWatch watch, TrainingOptions options, TimeProvider clock,
    IStringLocalizer<ProviderText> localizer) : Controller
{
    private readonly IStringLocalizer<ProviderText> Text = localizer;

    /// <summary>As it serves.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(CancellationToken cancellation)
    {
        var isKept = await records.ProviderDetails.AnyAsync(cancellation);
        return View(await PageAsync(
            new()
            {
                // A name that nobody chose is not offered: it would end on papers.
                Id = Guid.CreateVersion7(), Name = isKept || provider.Name != new ProviderOptions().Name ? provider.Name : "", Address = provider.Address,
                Zone = provider.Zone, Region = provider.Region,
            },
            cancellation));
    }

    /// <summary>Keeps other details. They serve from now on; papers keep what they printed.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Keep(ProviderForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        var name = ModelState.ReadLine(nameof(form.Name), form.Name, Bounds.ProviderName, Text["NameMissing"]);
        var address = ModelState.ReadLine(nameof(form.Address), form.Address, Bounds.ProviderAddress, Text["AddressMissing"]);
        var (zone, region) = (TimeZones.Find(form.Zone), Regions.Find(form.Region));
        if (zone is null) ModelState.AddModelError(nameof(form.Zone), Text["ZoneMissing"]);
        if (region is null) ModelState.AddModelError(nameof(form.Region), Text["RegionMissing"]);
        if (!ModelState.IsValid || zone is null || region is null) return this.Mend("Show", await PageAsync(form, cancellation));

        var details = new ProviderDetails
        {
            Id = form.Id, LeadId = HttpContext.Visitor().PersonId, SinceAt = clock.GetUtcNow(), Name = name, Address = address, Zone = zone, Region = region,
        };
        await records.KeepAsync(details, cancellation);
        await watch.ReadAsync(cancellation);
        return Back();
    }

    /// <summary>Keeps that the address which this server was started with is right.</summary>
    [HttpPost("address-confirmation")]
    public async Task<IActionResult> Confirm(string? address, CancellationToken cancellation)
    {
        // What was on the page: another address may have been set meanwhile.
        if (address != options.PublicPage("").AbsoluteUri) return Back();
        var confirmation = new AddressConfirmation { Address = address, LeadId = HttpContext.Visitor().PersonId, ConfirmedAt = clock.GetUtcNow() };
        await records.KeepAsync(confirmation, cancellation);
        return Back();
    }

    private IActionResult Back() => this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/provider");

    private async Task<ProviderPage> PageAsync(ProviderForm form, CancellationToken cancellation)
    {
        var address = options.PublicPage("");
        return new(
            address, await records.AddressConfirmations.AnyAsync(row => row.Address == address.AbsoluteUri, cancellation),
            await records.ProviderDetails.AnyAsync(cancellation), form);
    }
}
