using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Records;
using Training.Web.Doors;

namespace Training.Web.Features.SignInCodes;

/// <summary>A lead starts somebody's first sign-in, or another one when the password is forgotten, and never learns the password.</summary>
public sealed class SignInCodesController(
    RecordsContext records, UserManager<Account> accounts, TimeProvider clock, IStringLocalizer<SignInCodeText> text) : Controller
{
    private const string Address = "/{language:language}/programme/people/{personId:guid}/sign-in-code";

    /// <summary>Says what a code is for, and asks for a sign-in name where there is none yet.</summary>
    [HttpGet(Address)]
    public async Task<IActionResult> Form(Guid personId, CancellationToken cancellation) =>
        await FindAsync(personId, cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Makes the code and shows it, this once; earlier codes stop working.</summary>
    [HttpPost(Address)]
    public async Task<IActionResult> Make(Guid personId, string? signInName, CancellationToken cancellation)
    {
        if (await FindAsync(personId, cancellation) is not { } page) return NotFound();
        var account = await records.Accounts.AsNoTracking().SingleOrDefaultAsync(row => row.PersonId == personId, cancellation);
        if (account is null)
        {
            account = new Account { Id = Guid.CreateVersion7(), PersonId = personId, UserName = (signInName ?? "").Trim() };
            if (account.UserName.Length is 0 or > Bounds.SignInName) ModelState.AddModelError("SignInName", text["NameLength", Bounds.SignInName]);
            else if (!(await accounts.CreateAsync(account)).Succeeded) ModelState.AddModelError("SignInName", text["NameTaken"]);
            if (!ModelState.IsValid) return this.Mend("Form", page with { SignInName = account.UserName });
        }

        var now = clock.GetUtcNow();
        var code = await records.MakeCodeAsync(account.Id, HttpContext.Visitor().PersonId, now, cancellation);
        return View("Made", page with { SignInName = account.UserName!, HasAccount = true, Code = code }); // not null: the column is required
    }

    private async Task<SignInCodePage?> FindAsync(Guid personId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindNameAsync(personId, visitor.Today, cancellation) is not { } name) return null;
        var known = await records.Accounts.Where(account => account.PersonId == personId).Select(account => account.UserName).SingleOrDefaultAsync(cancellation);
        var endsAt = TimeZoneInfo.ConvertTimeBySystemTimeZoneId(clock.GetUtcNow() + OneTimeCode.Lasts, visitor.Zone);
        return new(personId, name.Text ?? "", known ?? SignInNames.Suggest(name.Text ?? ""), known is not null, Code: null, endsAt);
    }
}
