using System.Diagnostics;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;
using Training.Certification;
using Training.Courses;
using Training.Documents.Signatures;
using Training.Records;
using Training.Web.Demo;
using Training.Web.Features.Verify;
using Training.Web.Keys;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.PaperFiles;

/// <summary>Tells whether a PDF that somebody brings is one that we issued. Nothing of it is kept or logged, its name included.</summary>
public sealed class PaperFilesController(RecordsContext records, CoursesByHash courses, IssuerKeys keys, DemoMark demo, TimeProvider clock) : Controller
{
    // Each may hold a file of 20 MB: so many at a time bound the memory, whoever sends.
    private const int MostAtOnce = 4;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private static readonly SemaphoreSlim Places = new(MostAtOnce);

    /// <summary>Where the switch of languages leads from a verdict: the file is gone, the form is there.</summary>
    [HttpGet("/verify/file")]
    [HttpGet("/{language:language}/verify/file")]
    public IActionResult Form() => Redirect($"/{HttpContext.PageLanguageOf().Tag()}/verify#file-check");

    /// <summary>Judges the file of the form.</summary>
    /// <remarks>
    /// It changes nothing and knows nobody, so a forged post gains nothing and no cookie is set for a token. It has no parameters: to bind one, the
    /// framework would read the whole form first, and large files to disk.
    /// </remarks>
    [HttpPost("/verify/file")]
    [HttpPost("/{language:language}/verify/file")]
    [IgnoreAntiforgeryToken]
    [EnableRateLimiting(VerifySetup.RateLimit)]
    public async Task<IActionResult> Check()
    {
        Response.Headers.CacheControl = "no-store";
        Response.Headers["X-Robots-Tag"] = "noindex, nofollow";
        if (!await Places.WaitAsync(Patience, HttpContext.RequestAborted)) return Refuse(FileRefusal.Busy);
        try
        {
            using var arrival = CancellationTokenSource.CreateLinkedTokenSource(HttpContext.RequestAborted);
            arrival.CancelAfter(Patience);
            return await FileReading.ReadAsync(Request, arrival.Token) switch
            {
                SentFile.Read file => View("Show", await JudgeAsync(file.Bytes, HttpContext.RequestAborted)),
                SentFile.Missing => Refuse(FileRefusal.Missing),
                SentFile.TooLarge => Refuse(FileRefusal.TooLarge),
                _ => throw new UnreachableException(),
            };
        }
        catch (OperationCanceledException) when (!HttpContext.RequestAborted.IsCancellationRequested)
        {
            return Refuse(FileRefusal.TooSlow);
        }
        finally
        {
            Places.Release();
        }
    }

    private async Task<FilePage> JudgeAsync(ReadOnlyMemory<byte> file, CancellationToken cancellation)
    {
        // What we issued is known by its hash, also where it was issued before papers were signed.
        if (await records.FindSerialOfFileAsync(Convert.ToHexStringLower(SHA256.HashData(file.Span)), cancellation) is { } issued)
            return new(FileVerdict.Issued, await FindPaperAsync(issued, cancellation));
        return SignedPdf.Check(file.Span, keys.Signers) switch
        {
            PdfVerdict.Genuine genuine => await JudgeAsync(genuine, cancellation),
            PdfVerdict.Changed => new(FileVerdict.Changed, null),
            PdfVerdict.Extended => new(FileVerdict.Extended, null),
            PdfVerdict.Truncated => new(FileVerdict.Truncated, null),
            PdfVerdict.NotCanonical => new(FileVerdict.Rewritten, null),
            PdfVerdict.UnknownSigner => new(FileVerdict.UnknownSigner, null),
            PdfVerdict.NotSigned => new(FileVerdict.NotSigned, null),
            PdfVerdict.NotAPdf => new(FileVerdict.NotAPdf, null),
            _ => throw new UnreachableException(),
        };
    }

    // Every file that we issue is kept, so one that is not has a story: erased from the register, or signed by whoever has our key.
    private async Task<FilePage> JudgeAsync(PdfVerdict.Genuine genuine, CancellationToken cancellation)
    {
        var isBelieved = keys.NotBelievedSince(genuine.Signer) is null;
        var paper = isBelieved && genuine.Serial is { } serial ? await FindPaperAsync(serial, cancellation) : null;
        return new(paper is null ? FileVerdict.NotInRegister : FileVerdict.Signed, paper);
    }

    private async Task<VerifyPage?> FindPaperAsync(string serial, CancellationToken cancellation) =>
        Serial.TryParse(serial, out var read) && await records.FindPaperAsync(read, courses, cancellation) is { } paper
            ? VerifyPage.Of(read, paper, clock.GetUtcNow(), demo, HttpContext.PageLanguageOf())
            : null;

    private ViewResult Refuse(FileRefusal refusal)
    {
        Response.StatusCode = refusal switch
        {
            FileRefusal.Missing => StatusCodes.Status422UnprocessableEntity,
            FileRefusal.TooLarge => StatusCodes.Status413PayloadTooLarge,
            FileRefusal.TooSlow => StatusCodes.Status408RequestTimeout,
            FileRefusal.Busy => StatusCodes.Status503ServiceUnavailable,
        };
        return View("Refused", refusal);
    }
}
