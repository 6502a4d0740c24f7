using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.SignIn;
using Training.Web.Features.Verify;
using Training.Web.Languages;
using Training.Web.Provider;

namespace Training.Web.Features.FirstLead;

/// <summary>The first programme lead of an empty database: whoever has the code of the console. Once there is an account, this page does not exist.</summary>
public sealed class FirstLeadController(
    RecordsContext records, NewPasswords passwords, IPasswordHasher<Account> hasher, SignInThrottle throttle, OurProvider provider, TimeProvider clock,
    IStringLocalizer<FirstLeadText> localizer) : Controller
{
    private const string Address = "/{language:language}/first-lead";

    // One count for all: there is only one code to guess.
    private const string Throttled = "first lead";

    private readonly IStringLocalizer<FirstLeadText> Text = localizer;

    /// <summary>The form.</summary>
    [HttpGet(Address)]
    public async Task<IActionResult> Form(CancellationToken cancellation) =>
        await records.IsWithoutAccountsAsync(cancellation) ? View(new FirstLeadForm()) : NotFound();

    /// <summary>Makes the lead, signs them in and leads to the first day.</summary>
    [HttpPost(Address)]
    public async Task<IActionResult> Become(FirstLeadForm form, CancellationToken cancellation)
    {
        if (!await records.IsWithoutAccountsAsync(cancellation)) return NotFound();
        ModelState.Clear();
        var asker = VerifySetup.Asker(HttpContext.Connection.RemoteIpAddress);
        if (throttle.WaitOf(Throttled, device: null, asker) is { } wait)
            return this.Wait("Form", form, wait, nameof(form.Code), Text["Wait", Written.Minutes((int)Math.Ceiling(wait.TotalMinutes))]);
        var name = ModelState.ReadLine(nameof(form.FullName), form.FullName, Bounds.Name, Text["NameMissing"]);
        var signInName = ModelState.ReadLine(nameof(form.Name), form.Name, Bounds.SignInName, Text["SignInNameMissing"]);
        await passwords.LookAsync(ModelState, account: null, signInName, form.NewPassword, form.Again);
        if (!ModelState.IsValid) return this.Mend("Form", form);

        var now = clock.GetUtcNow();
        var account = new Account
        {
            Id = Guid.CreateVersion7(), PersonId = Guid.CreateVersion7(), UserName = signInName, NormalizedUserName = KeyText.Of(signInName),
        };
        account.PasswordHash = hasher.HashPassword(account, form.NewPassword!); // not null: it was looked at above
        var lead = new Records.FirstLead(account, name, HttpContext.PageLanguageOf(), provider.DayOf(now));
        if (!await records.MakeFirstLeadAsync(lead, OneTimeCode.HashOf(form.Code ?? ""), now, cancellation))
        {
            throttle.Fail(Throttled, device: null, asker);
            ModelState.AddModelError(nameof(form.Code), Text["CodeDoesNotWork"]);
            return this.Mend("Form", form);
        }

        await HttpContext.BeginSessionAsync(records, account.Id, now);
        return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/first-day");
    }
}
