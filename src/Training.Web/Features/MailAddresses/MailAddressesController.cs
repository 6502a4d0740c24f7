using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using MimeKit;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

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
        if (typed.Length > 0 && !IsAddress(typed))
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

    // One mailbox and nothing around it: no name, no second address.
    private static bool IsAddress(string typed) =>
        typed.Length <= Bounds.MailAddress && MailboxAddress.TryParse(typed, out var mailbox) && mailbox.Address == typed
        && typed.LastIndexOf('@') is var at && at > 0 && typed.IndexOf('.', at) > at + 1;

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
