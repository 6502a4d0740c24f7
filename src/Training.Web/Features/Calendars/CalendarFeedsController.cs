using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Net.Http.Headers;
using Training.Records;
using Training.Web.Provider;

namespace Training.Web.Features.Calendars;

/// <summary>What calendar programs read: no sign-in, the secret in the address is the key.</summary>
public sealed class CalendarFeedsController(RecordsContext records, CalendarWriting writing, OurProvider provider, TimeProvider clock) : Controller
{
    /// <summary>
    /// The calendar as it stands. 404 where no such address was ever made; 410 where it was ended, or who made it may not see this any more:
    /// programs then stop to ask.
    /// </summary>
    /// <remarks>
    /// An <c>ETag</c> and no <c>Last-Modified</c>: what leaves a calendar (somebody moves to another employer) leaves no later date behind, and a
    /// program that asks "since then?" would be told "nothing" for ever.
    /// </remarks>
    [HttpGet("/calendars/{feedSecret}.ics")]
    [EnableRateLimiting(CalendarsSetup.RateLimit)]
    public async Task<IActionResult> Read(string feedSecret, CancellationToken cancellation)
    {
        Response.Headers["X-Robots-Tag"] = "noindex";
        if (feedSecret.Length != AddressSecret.Length || await records.FindFeedAsync(feedSecret, cancellation) is not { } found) return NotFound();
        var today = provider.DayOf(clock.GetUtcNow());
        if (found.EndedAt is not null || !await records.MayStillReadAsync(found.Feed, today, cancellation)) return StatusCode(StatusCodes.Status410Gone);
        var calendar = Encoding.UTF8.GetBytes(await writing.WriteAsync(found.Feed, today, cancellation));
        Response.Headers.CacheControl = "private, max-age=900";
        // File answers 304 where the program has this very file already.
        return File(
            calendar, "text/calendar; charset=utf-8", lastModified: null,
            entityTag: new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(calendar))}\""));
    }
}
