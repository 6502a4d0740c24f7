using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Mail;

namespace Training.Web.Features.MailAddresses;

/// <summary>A programme lead keeps where mail reaches somebody.</summary>
[Route("/{language:language}/programme/people/{personId:guid}/mail-address")]
public sealed class MailAddressesController(RecordsContext records, TimeProvider clock, IStringLocalizer<MailAddressText> text) : Controller
{
    /// <summary>The address, and what is known against it.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(Guid personId, CancellationToken cancellation) =>
        await FindAsync(personId, null, cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Keeps another address, or none. The same one again says that mail reaches it after all.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Keep(Guid personId, string? address, CancellationToken cancellation)
    {
        ModelState.Clear();
        var typed = FormValues.ReadLine(address);
        if (typed.Length > 0 && !MailAddressSyntax.IsOne(typed))
        {
            ModelState.AddModelError("address", text["NotAnAddress"]);
            return await FindAsync(personId, typed, cancellation) is { } page ? this.Mend("Show", page) : NotFound();
        }

        return await records.KeepMailAddressAsync(personId, typed.Length == 0 ? null : typed, cancellation) ? Back(personId) : NotFound();
    }

    /// <summary>Keeps that mail to the address came back. The same again changes nothing.</summary>
    [HttpPost("returns")]
    public async Task<IActionResult> ReportReturn(Guid personId, CancellationToken cancellation)
    {
        if (await FindAsync(personId, null, cancellation) is not { } page) return NotFound();
        if (page.Kept is { } kept) await records.KeepUnreachableAsync(personId, kept, text["CameBack"], clock.GetUtcNow(), cancellation);
        return Back(personId);
    }

    private IActionResult Back(Guid personId) => this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/people/{personId}/mail-address");

    private async Task<MailAddressPage?> FindAsync(Guid personId, string? typed, CancellationToken cancellation)
    {
        var person = await records.Persons.AsNoTracking().SingleOrDefaultAsync(row => row.Id == personId, cancellation);
        if (person is null) return null;
        var names = await records.NamesOfAsync([personId], HttpContext.Visitor().Today, cancellation);
        var answer = await records.UnreachableAddresses.Where(row => row.PersonId == personId && row.Address == person.MailAddress)
            .Select(row => row.Answer).FirstOrDefaultAsync(cancellation);
        return new(personId, names.GetValueOrDefault(personId), person.MailAddress, answer, typed ?? person.MailAddress);
    }
}
