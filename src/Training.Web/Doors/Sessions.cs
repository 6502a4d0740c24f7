using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Doors;

/// <summary>Begins, keeps alive and ends sign-ins. The cookie holds the id of a session and nothing else.</summary>
/// <remarks>Limits: docs/security.md, "Sessions" (NIST SP 800-63B, level 2: 24 hours, and an hour without a request; from memory).</remarks>
public static class Sessions
{
    /// <summary>A session ends so long after its last request.</summary>
    public static readonly TimeSpan Idle = TimeSpan.FromHours(1);

    /// <summary>A session ends so long after it began, used or not.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromHours(24);

    // A row need not be written on every request of a page.
    private static readonly TimeSpan SeenStep = TimeSpan.FromMinutes(1);

    /// <summary>Whether a session has run out.</summary>
    public static bool IsOver(AccountSession session, DateTimeOffset now) =>
        session.EndedAt is not null || now - session.SeenAt >= Idle || now - session.StartedAt >= Longest;

    /// <summary>Begins a session and hands out its cookie. A new one at every sign-in: what the browser had before is worth nothing afterwards.</summary>
    public static async Task BeginSessionAsync(this HttpContext context, RecordsContext records, Guid accountId, DateTimeOffset now)
    {
        var session = new AccountSession { Id = Guid.NewGuid(), AccountId = accountId, StartedAt = now, SeenAt = now };
        records.Add(session);
        await records.SaveChangesAsync(context.RequestAborted);
        var claims = new[] { new Claim(ClaimTypes.NameIdentifier, accountId.ToString()), new Claim(ClaimTypes.Sid, session.Id.ToString()) };
        await context.SignInAsync(
            CookieAuthenticationDefaults.AuthenticationScheme,
            new ClaimsPrincipal(new ClaimsIdentity(claims, CookieAuthenticationDefaults.AuthenticationScheme)));
    }

    /// <summary>Takes the cookie back from the browser; ending the session is <see cref="EndSessionAsync"/>.</summary>
    public static Task DropSessionCookieAsync(this HttpContext context) => context.SignOutAsync(CookieAuthenticationDefaults.AuthenticationScheme);

    /// <summary>The session that a cookie names, or null.</summary>
    public static Guid? FindSessionId(this ClaimsPrincipal principal) =>
        Guid.TryParse(principal.FindFirstValue(ClaimTypes.Sid), out var id) ? id : null;

    /// <summary>Ends one session.</summary>
    public static Task EndSessionAsync(this RecordsContext records, Guid sessionId, DateTimeOffset now, CancellationToken cancellation) =>
        EndAsync(records.AccountSessions.Where(session => session.Id == sessionId), now, cancellation);

    /// <summary>Ends all sessions of an account but one: after a new password, whoever else was in is out.</summary>
    public static Task EndOtherSessionsAsync(
        this RecordsContext records, Guid accountId, Guid? exceptId, DateTimeOffset now, CancellationToken cancellation) =>
        EndAsync(records.AccountSessions.Where(session => session.AccountId == accountId && session.Id != exceptId), now, cancellation);

    internal static async Task KeepAliveAsync(
        this RecordsContext records, AccountSession session, DateTimeOffset now, CancellationToken cancellation)
    {
        if (now - session.SeenAt < SeenStep) return;
        await records.AccountSessions.Where(other => other.Id == session.Id)
            .ExecuteUpdateAsync(set => set.SetProperty(other => other.SeenAt, now), cancellation);
    }

    private static Task<int> EndAsync(IQueryable<AccountSession> sessions, DateTimeOffset now, CancellationToken cancellation) =>
        sessions.Where(session => session.EndedAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(session => session.EndedAt, now), cancellation);
}
