using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Demo;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Verify;

/// <summary>The public check of a certificate: by serial only, never by name.</summary>
public sealed class VerifyController(
    RecordsContext records, CoursesByHash courses, OurProvider provider, DemoMark demo, TimeProvider clock) : Controller
{
    // Far longer than any serial with its hyphens: what is typed beyond it is not worth carrying around.
    private const int MostCharacters = 40;

    /// <summary>The form; with a serial, leads to the address of that check.</summary>
    [HttpGet("/verify")]
    [HttpGet("/{language:language}/verify")]
    public IActionResult Form(string? serial)
    {
        if (string.IsNullOrWhiteSpace(serial)) return View();
        var address = Serial.TryParse(serial, out var read) ? read.Value : Uri.EscapeDataString(Shorten(serial));
        return Redirect($"/{HttpContext.PageLanguageOf().Tag()}/verify/{address}");
    }

    /// <summary>What the register says of one serial. The address without a language is the one in QR codes.</summary>
    [HttpGet("/verify/{serial}")]
    [HttpGet("/{language:language}/verify/{serial}")]
    [EnableRateLimiting(VerifySetup.RateLimit)]
    public async Task<IActionResult> Show(string serial, CancellationToken cancellation)
    {
        // A name stands on this page: no cache keeps it and no search engine lists it.
        Response.Headers.CacheControl = "no-store";
        Response.Headers["X-Robots-Tag"] = "noindex, nofollow";
        var now = clock.GetUtcNow();
        if (!Serial.TryParse(serial, out var read)) return NotFoundView(Verdict.NotASerial, Shorten(serial), now);
        var paper = await records.FindPaperAsync(read, courses, cancellation);
        return paper is null
            ? NotFoundView(Verdict.Unknown, read.ToString(), now)
            : View(VerifyPage.Of(read, paper, now, demo, HttpContext.PageLanguageOf()));
    }

    private static string Shorten(string typed) => typed.Trim() is { Length: > MostCharacters } text ? text[..MostCharacters] : typed.Trim();

    private ViewResult NotFoundView(Verdict verdict, string serial, DateTimeOffset now)
    {
        Response.StatusCode = StatusCodes.Status404NotFound;
        return View(new VerifyPage(verdict, serial, TimeZoneInfo.ConvertTimeBySystemTimeZoneId(now, provider.Zone), null));
    }
}
