using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Verify;
using Training.Web.Languages;

namespace Training.Web.Features.SignIn;

/// <summary>The way in and out.</summary>
public sealed class SignInController(
    RecordsContext records, PasswordCheck passwords, NewPasswords newPasswords, SignInThrottle throttle, KnownDevices devices, TimeProvider clock,
    IStringLocalizer<SignInText> text) : Controller
{
    /// <summary>The form. <c>unkept</c>: what was sent a moment ago could not be kept, since nobody was signed in.</summary>
    [HttpGet("/{language:language}/sign-in")]
    public async Task<IActionResult> Form(string? back, int unkept, CancellationToken cancellation)
    {
        if (HttpContext.FindVisitor() is not null && unkept == 0) return Redirect(Tag("/start"));
        // Nobody can sign in to an empty database; whoever started it becomes its first lead.
        if (await records.IsWithoutAccountsAsync(cancellation)) return Redirect(Tag("/first-lead"));
        return View(new SignInForm { Back = back, Unkept = unkept == 1 });
    }

    /// <summary>Signs in, and leads to where the visitor wanted to go.</summary>
    [HttpPost("/{language:language}/sign-in")]
    public async Task<IActionResult> Enter(SignInForm form, CancellationToken cancellation)
    {
        var account = await passwords.FindAccountAsync(form.Name);
        var attempt = AttemptOf(form.Name, account);
        if (throttle.WaitOf(attempt.Name, attempt.Device, attempt.Address) is { } wait) return Wait("Form", form, wait);
        if (!await passwords.IsRightAsync(account, form.Password, isKnownDevice: attempt.Device is not null))
        {
            throttle.Fail(attempt.Name, attempt.Device, attempt.Address);
            ModelState.AddModelError(nameof(form.Password), text["DoNotMatch"]);
            return this.Mend("Form", form);
        }

        await EnterAsync(account!); // not null: a password of nobody is never right
        return this.SeeOther(Url.IsLocalUrl(form.Back) ? form.Back! : Tag("/start"));
    }

    /// <summary>Leads everybody to their own first page.</summary>
    [HttpGet("/{language:language}/start")]
    public async Task<IActionResult> Start(CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (visitor.Is(Role.ProgrammeLead)) return Redirect(Tag("/programme"));
        if (visitor.Is(Role.Employer))
        {
            var employer = await records.Employers.Where(row => visitor.EmployerIds.Contains(row.Id)).OrderBy(row => row.NameKey)
                .Select(row => row.Id).FirstAsync(cancellation);
            return Redirect(Tag($"/employers/{employer}"));
        }

        return Redirect(Tag(visitor.Is(Role.Instructor) ? "/class-days" : "/my"));
    }

    /// <summary>Ends this sign-in, on the server too: a copied cookie is worth nothing afterwards.</summary>
    [HttpPost("/{language:language}/sign-out")]
    public async Task<IActionResult> Leave(CancellationToken cancellation)
    {
        await records.EndSessionAsync(HttpContext.Visitor().SessionId, clock.GetUtcNow(), cancellation);
        await HttpContext.DropSessionCookieAsync();
        Response.Headers["Clear-Site-Data"] = "\"cache\"";
        return this.SeeOther(Tag(""));
    }

    /// <summary>The form for the first sign-in, and for a forgotten password.</summary>
    [HttpGet("/{language:language}/first-sign-in")]
    public IActionResult First() => View(new FirstSignInForm());

    /// <summary>Uses the code up and keeps the chosen password.</summary>
    [HttpPost("/{language:language}/first-sign-in")]
    public async Task<IActionResult> Choose(FirstSignInForm form, CancellationToken cancellation)
    {
        var account = await passwords.FindAccountAsync(form.Name);
        var attempt = AttemptOf(form.Name, account: null);
        if (throttle.WaitOf(attempt.Name, attempt.Device, attempt.Address) is { } wait) return Wait("First", form, wait);
        await newPasswords.LookAsync(ModelState, account, form.Name, form.NewPassword, form.Again);
        if (!ModelState.IsValid) return this.Mend("First", form);

        var now = clock.GetUtcNow();
        if (account is null || !await records.SpendCodeAsync(account.Id, form.Code ?? "", now, cancellation))
        {
            throttle.Fail(attempt.Name, attempt.Device, attempt.Address);
            ModelState.AddModelError(nameof(form.Code), text["CodeDoesNotWork"]);
            return this.Mend("First", form);
        }

        await passwords.SetAsync(account, form.NewPassword!); // not null: it was looked at above
        await records.EndOtherSessionsAsync(account.Id, exceptId: null, now, cancellation);
        await EnterAsync(account);
        return this.SeeOther(Tag("/start"));
    }

    /// <summary>The form for another password.</summary>
    [HttpGet("/{language:language}/my/password")]
    public IActionResult Password() => View(new PasswordForm());

    /// <summary>Keeps another password; every other sign-in of the account ends.</summary>
    [HttpPost("/{language:language}/my/password")]
    public async Task<IActionResult> Change(PasswordForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var account = await passwords.GetAccountAsync(visitor.AccountId);
        var attempt = AttemptOf(account.UserName, account);
        if (throttle.WaitOf(attempt.Name, attempt.Device, attempt.Address) is { } wait) return Wait("Password", form, wait);
        await newPasswords.LookAsync(ModelState, account, account.UserName, form.NewPassword, form.Again);
        if (!await passwords.IsRightAsync(account, form.Current, isKnownDevice: true))
        {
            throttle.Fail(attempt.Name, attempt.Device, attempt.Address);
            ModelState.AddModelError(nameof(form.Current), text["CurrentIsWrong"]);
        }

        if (!ModelState.IsValid) return this.Mend("Password", form);
        await passwords.SetAsync(account, form.NewPassword!); // not null: it was looked at above
        await records.EndOtherSessionsAsync(account.Id, visitor.SessionId, clock.GetUtcNow(), cancellation);
        return View("PasswordChanged");
    }

    private async Task EnterAsync(Account account)
    {
        devices.Remember(HttpContext, account.Id);
        await HttpContext.BeginSessionAsync(records, account.Id, clock.GetUtcNow());
    }

    private (string Name, string? Device, string Address) AttemptOf(string? name, Account? account) => (
        KeyText.Of(name ?? ""),
        account is null ? null : devices.Find(HttpContext, account.Id),
        VerifySetup.Asker(HttpContext.Connection.RemoteIpAddress));

    private ViewResult Wait(string view, object form, TimeSpan wait) =>
        this.Wait(view, form, wait, "Name", text["Wait", Written.Minutes((int)Math.Ceiling(wait.TotalMinutes))]);

    private string Tag(string path) => $"/{HttpContext.PageLanguageOf().Tag()}{path}";
}
