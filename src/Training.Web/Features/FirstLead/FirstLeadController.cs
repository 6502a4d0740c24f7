using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Certification;
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
        if (throttle.WaitOf(Throttled, device: null, asker) is { } wait) return Wait(form, wait);
        var (name, signInName) = (ReadName(form.FullName), ReadSignInName(form.Name));
        await passwords.LookAsync(ModelState, account: null, signInName, form.NewPassword, form.Again);
        if (!ModelState.IsValid) return this.Mend("Form", form);

        var now = clock.GetUtcNow();
        var account = new Account
        {
            Id = Guid.CreateVersion7(), PersonId = Guid.CreateVersion7(), UserName = signInName, NormalizedUserName = KeyText.Of(signInName),
        };
        account.PasswordHash = hasher.HashPassword(account, form.NewPassword!); // not null: it was looked at above
        var today = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(provider.Zone));
        var lead = new Records.FirstLead(account, name, HttpContext.PageLanguageOf(), today);
        if (!await records.MakeFirstLeadAsync(lead, OneTimeCode.HashOf(form.Code ?? ""), now, cancellation))
        {
            throttle.Fail(Throttled, device: null, asker);
            ModelState.AddModelError(nameof(form.Code), Text["CodeDoesNotWork"]);
            return this.Mend("Form", form);
        }

        await HttpContext.BeginSessionAsync(records, account.Id, now);
        return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/first-day");
    }

    private string ReadName(string? typed)
    {
        var name = FormValues.ReadLine(typed);
        if (name.Length is 0 or > Bounds.Name) ModelState.AddModelError(nameof(FirstLeadForm.FullName), Text["NameLength", Bounds.Name]);
        return name;
    }

    private string ReadSignInName(string? typed)
    {
        var name = FormValues.ReadLine(typed);
        if (name.Length is 0 or > Bounds.SignInName) ModelState.AddModelError(nameof(FirstLeadForm.Name), Text["SignInNameLength", Bounds.SignInName]);
        return name;
    }

    private ViewResult Wait(FirstLeadForm form, TimeSpan wait)
    {
        Response.StatusCode = StatusCodes.Status429TooManyRequests;
        Response.Headers.RetryAfter = ((int)Math.Ceiling(wait.TotalSeconds)).ToString(System.Globalization.CultureInfo.InvariantCulture);
        ModelState.AddModelError(nameof(form.Code), Text["Wait", Written.Minutes((int)Math.Ceiling(wait.TotalMinutes))]);
        return View("Form", form);
    }
}
