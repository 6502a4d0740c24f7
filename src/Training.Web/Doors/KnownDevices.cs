using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;

namespace Training.Web.Doors;

/// <summary>Remembers, in a protected cookie of the device, which accounts signed in on it. It opens nothing; it only tells a crew's tablet from a stranger.</summary>
public sealed class KnownDevices(IDataProtectionProvider protection, SessionCookie cookie)
{
    // A crew tablet is passed round; the oldest drops out.
    private const int MostAccounts = 40;

    private static readonly TimeSpan Remembered = TimeSpan.FromDays(400);

    private readonly IDataProtector protector = protection.CreateProtector("known-device/1");

    /// <summary>The device's own id where the account signed in on it before; else null.</summary>
    public string? Find(HttpContext context, Guid accountId) =>
        Read(context) is { } known && known.Accounts.Contains(accountId) ? known.Device : null;

    /// <summary>Notes that the account signed in here.</summary>
    public void Remember(HttpContext context, Guid accountId)
    {
        var known = Read(context) ?? (Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)), []);
        Guid[] accounts = [accountId, .. known.Accounts.Where(other => other != accountId).Take(MostAccounts - 1)];
        var text = string.Join(' ', [known.Device, .. accounts.Select(id => id.ToString("N"))]);
        context.Response.Cookies.Append(cookie.DeviceName, protector.Protect(text), new CookieOptions
        {
            HttpOnly = true, Secure = cookie.IsSecure, SameSite = SameSiteMode.Strict, Path = "/", MaxAge = Remembered, IsEssential = true,
        });
    }

    private (string Device, Guid[] Accounts)? Read(HttpContext context)
    {
        if (context.Request.Cookies[cookie.DeviceName] is not { } text) return null;
        try
        {
            var parts = protector.Unprotect(text).Split(' ');
            return (parts[0], [.. parts[1..].Select(Guid.Parse)]);
        }
        catch (CryptographicException)
        {
            return null; // another server's, or made up: a stranger
        }
    }
}
