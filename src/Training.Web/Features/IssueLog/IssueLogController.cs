using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Net.Http.Headers;
using Training.Certification;
using Training.Documents.IssueLog;
using Training.Records;
using Training.Web.Features.Verify;
using Training.Web.Provider;

namespace Training.Web.Features.IssueLog;

/// <summary>The log of what was issued: a page in plain words, and for whoever watches it heads, leaves and proofs as JSON (docs/log.md).</summary>
[EnableRateLimiting(IssueLogSetup.RateLimit)]
public sealed class IssueLogController(RecordsContext records, OurProvider provider, TimeProvider clock) : Controller
{
    /// <summary>Most heads in one answer.</summary>
    public const int MostHeads = 100;

    /// <summary>Most leaves in one answer.</summary>
    public const int MostEntries = 1000;

    // A paper has a handful of events in its life; their proofs share most of their nodes.
    private const int MostLeavesOfPaper = 50;

    // What can still change, and what cannot.
    private const string Briefly = "public, max-age=60";
    private const string Long = "public, max-age=86400, immutable";

    /// <summary>What the log is, how keys are kept, and how old the newest head is.</summary>
    [HttpGet("/{language:language}/log")]
    public async Task<IActionResult> Show(CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        var head = await records.FindNewestHeadAsync(cancellation);
        return View(head is null ? null : new IssueLogPage(
            head.Size, Convert.ToHexStringLower(head.Root), TimeZoneInfo.ConvertTimeBySystemTimeZoneId(head.At, provider.Zone), now - head.At));
    }

    /// <summary>The newest signed head; 404 before the first.</summary>
    [HttpGet("/log/head")]
    public async Task<IActionResult> Head(CancellationToken cancellation)
    {
        if (await records.FindNewestHeadAsync(cancellation) is not { } head) return NotFound();
        return ForEverybody(PublishedHead.Of(head), Briefly);
    }

    /// <summary>Signed heads, newest first.</summary>
    /// <param name="before">Milliseconds since 1970: heads signed earlier than that; without it, the newest.</param>
    /// <param name="cancellation">Ends the wait.</param>
    [HttpGet("/log/heads")]
    public async Task<IActionResult> Heads(long? before, CancellationToken cancellation)
    {
        if (!ModelState.IsValid || before < 0 || before > PublishedHead.LastTimestamp) return BadRequest();
        var heads = await records.HeadsAsync(before is { } at ? DateTimeOffset.FromUnixTimeMilliseconds(at) : null, MostHeads, cancellation);
        return ForEverybody(new PublishedHeads([.. heads.Select(PublishedHead.Of)]), Briefly);
    }

    /// <summary>Leaves in their order; none from the end on.</summary>
    /// <param name="from">Index of the first.</param>
    /// <param name="count">How many, 1 to <see cref="MostEntries"/>; without it, so many.</param>
    /// <param name="cancellation">Ends the wait.</param>
    [HttpGet("/log/entries")]
    public async Task<IActionResult> Entries(long from, int? count, CancellationToken cancellation)
    {
        if (!ModelState.IsValid || from < 0 || count is < 1 or > MostEntries) return BadRequest();
        var asked = count ?? MostEntries;
        var leaves = await records.LogLeavesAsync(from, asked, cancellation);
        return ForEverybody(new PublishedEntries(from, [.. leaves.Select(leaf => Convert.ToHexStringLower(leaf.Leaf))]), leaves.Count == asked ? Long : Briefly);
    }

    /// <summary>That the log of one size begins like the log of another, larger one.</summary>
    [HttpGet("/log/consistency")]
    public async Task<IActionResult> Consistency(long from, long to, CancellationToken cancellation)
    {
        if (!ModelState.IsValid || from < 1 || to < from || to > await records.LogSizeAsync(cancellation)) return BadRequest();
        var nodes = await records.NodesAsync(ConsistencyProof.NodesFor(from, to), cancellation);
        return ForEverybody(new PublishedConsistency(from, to, [.. ConsistencyProof.Make(from, to, nodes).Path.Select(hash => hash.ToString())]), Long);
    }

    /// <summary>The leaves about the paper of a serial, opened and proven against the newest head.</summary>
    [HttpGet("/log/proofs/{serial}")]
    [EnableRateLimiting(VerifySetup.RateLimit)]
    public async Task<IActionResult> Proofs(string serial, CancellationToken cancellation)
    {
        // Whoever holds the serial may know; nobody else learns it from a cache or a search engine.
        Response.Headers.CacheControl = "no-store";
        Response.Headers["X-Robots-Tag"] = "noindex, nofollow";
        if (!Serial.TryParse(serial, out var read) || await records.FindNewestHeadAsync(cancellation) is not { } head) return NotFound();
        if (!await records.Papers.AnyAsync(paper => paper.Serial == read.Value, cancellation)) return NotFound();
        var leaves = OpenToStrangers(await records.OpenedLeavesAsync(read.Value, cancellation)).Take(MostLeavesOfPaper).ToList();
        var asked = leaves.Where(leaf => leaf.Index < head.Size).SelectMany(leaf => InclusionProof.NodesFor(leaf.Index, head.Size)).Distinct().ToList();
        var nodes = await records.NodesAsync(asked, cancellation);
        return Json(new PublishedProofs(read.Value, PublishedHead.Of(head), [.. leaves.Select(leaf => PublishedLeaf.Of(leaf, head.Size, nodes))]));
    }

    private JsonResult ForEverybody(object answer, string caching)
    {
        // Any page may read it, any cache may keep it, and it speaks no language.
        Response.Headers.AccessControlAllowOrigin = "*";
        Response.Headers.CacheControl = caching;
        Response.Headers.Remove(HeaderNames.Vary);
        return Json(answer);
    }

    // No more than the check page tells: a suspension that is over shows nowhere, so its leaves stay closed.
    private static IEnumerable<OpenedLeaf> OpenToStrangers(IReadOnlyList<OpenedLeaf> leaves)
    {
        var last = leaves.LastOrDefault(leaf => leaf.Entry.Event is IssueEvent.Suspended or IssueEvent.Reinstated or IssueEvent.Withdrawn);
        return leaves.Where(leaf => leaf.Entry.Event switch
        {
            IssueEvent.Issued or IssueEvent.Superseded or IssueEvent.Withdrawn => true,
            IssueEvent.Suspended => leaf == last,
            IssueEvent.Reinstated => false,
        });
    }
}
