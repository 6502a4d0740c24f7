using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Doors;

/// <summary>What sign-in is made of.</summary>
public static class DoorsSetup
{
    /// <summary>Characters, alone and without a second factor (NIST SP 800-63B-4).</summary>
    public const int LeastPassword = 15;

    /// <summary>Characters; far above the 64 that must be allowed, and bounded because hashing is dear.</summary>
    public const int MostPassword = 200;

    // OWASP's figure for PBKDF2 with SHA-512, from memory.
    private const int HashRounds = 210_000;

    /// <summary>Adds accounts, cookies, and the check of every form.</summary>
    public static IServiceCollection AddDoors(this IServiceCollection services)
    {
        services.AddSingleton<SessionCookie>();
        services.AddSingleton<SignInThrottle>();
        services.AddSingleton<KnownDevices>();
        services.AddDataProtection().SetApplicationName("training");
        services.AddOptions<KeyManagementOptions>().Configure<IDbContextFactory<RecordsContext>>(
            (keys, factory) => keys.XmlRepository = new KeyRepository(factory));

        services.AddIdentityCore<Account>(identity =>
        {
            identity.Password = new PasswordOptions
            {
                RequiredLength = LeastPassword, RequiredUniqueChars = 1,
                RequireDigit = false, RequireLowercase = false, RequireUppercase = false, RequireNonAlphanumeric = false,
            };
            identity.User.AllowedUserNameCharacters = null!; // null allows every character: names are people's own
        }).AddUserStore<UserOnlyStore<Account, RecordsContext, Guid>>().AddPasswordValidator<KnownPasswords>();
        services.AddSingleton<ILookupNormalizer, SignInNames>();
        services.Configure<PasswordHasherOptions>(hasher => hasher.IterationCount = HashRounds);

        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie();
        services.AddOptions<CookieAuthenticationOptions>(CookieAuthenticationDefaults.AuthenticationScheme).Configure<SessionCookie, TimeProvider>(
            (cookies, names, clock) =>
            {
                Protect(cookies.Cookie, names, names.Name);
                cookies.TimeProvider = clock;
                cookies.ExpireTimeSpan = Sessions.Longest;
                cookies.SlidingExpiration = false;
            });
        services.AddOptions<Microsoft.AspNetCore.Antiforgery.AntiforgeryOptions>().Configure<SessionCookie>(
            (forms, names) => Protect(forms.Cookie, names, names.FormName));
        services.Configure<MvcOptions>(mvc => mvc.Filters.Add(new AutoValidateAntiforgeryTokenAttribute()));
        return services;
    }

    private static void Protect(CookieBuilder cookie, SessionCookie names, string name)
    {
        cookie.Name = name;
        cookie.HttpOnly = true;
        cookie.Path = "/";
        cookie.IsEssential = true;
        cookie.SameSite = SameSiteMode.Lax;
        cookie.SecurePolicy = names.IsSecure ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;
    }
}
