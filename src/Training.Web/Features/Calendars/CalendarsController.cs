using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Settings;

namespace Training.Web.Features.Calendars;

/// <summary>Makes and ends addresses of calendars: of an employer's lapses and classes, and of an instructor's own classes.</summary>
public sealed class CalendarsController(RecordsContext records, TrainingOptions options, TimeProvider clock) : Controller
{
    /// <summary>The addresses of an employer's calendar.</summary>
    [HttpGet("/{language:language}/employers/{employerId:guid}/calendar")]
    public async Task<IActionResult> ForEmployer(Guid employerId, CancellationToken cancellation) =>
        await FindEmployerAsync(employerId, cancellation) is { } name ? View("Show", await PageAsync(employerId, name, cancellation)) : NotFound();

    /// <summary>Makes an address of an employer's calendar.</summary>
    [HttpPost("/{language:language}/employers/{employerId:guid}/calendar/addresses")]
    public async Task<IActionResult> MakeForEmployer(Guid employerId, Guid id, CancellationToken cancellation) =>
        await FindEmployerAsync(employerId, cancellation) is { } name ? await MakeAsync(id, employerId, name, cancellation) : NotFound();

    /// <summary>Ends an address of an employer's calendar, whoever made it.</summary>
    [HttpPost("/{language:language}/employers/{employerId:guid}/calendar/addresses/{feedId:guid}/end")]
    public async Task<IActionResult> EndForEmployer(Guid employerId, Guid feedId, CancellationToken cancellation) =>
        await FindEmployerAsync(employerId, cancellation) is not null
        && await records.CalendarFeeds.AnyAsync(feed => feed.Id == feedId && feed.EmployerId == employerId, cancellation)
            ? await EndAsync(feedId, $"employers/{employerId}/calendar", cancellation)
            : NotFound();

    /// <summary>The addresses of the visitor's own classes.</summary>
    [HttpGet("/{language:language}/my/calendar")]
    public async Task<IActionResult> Mine(CancellationToken cancellation) => View("Show", await PageAsync(null, null, cancellation));

    /// <summary>Makes an address of the visitor's own classes.</summary>
    [HttpPost("/{language:language}/my/calendar/addresses")]
    public Task<IActionResult> MakeMine(Guid id, CancellationToken cancellation) => MakeAsync(id, null, null, cancellation);

    /// <summary>Ends an address of the visitor's own classes.</summary>
    [HttpPost("/{language:language}/my/calendar/addresses/{feedId:guid}/end")]
    public async Task<IActionResult> EndMine(Guid feedId, CancellationToken cancellation)
    {
        var me = HttpContext.Visitor().PersonId;
        return await records.CalendarFeeds.AnyAsync(feed => feed.Id == feedId && feed.EmployerId == null && feed.PersonId == me, cancellation)
            ? await EndAsync(feedId, "my/calendar", cancellation)
            : NotFound();
    }

    // The page is the answer: the secret is kept nowhere, so a redirect could not show it.
    private async Task<IActionResult> MakeAsync(Guid id, Guid? employerId, string? name, CancellationToken cancellation)
    {
        if (id == Guid.Empty) return BadRequest();
        var page = await PageAsync(employerId, name, cancellation);
        if (page.Feeds.Count >= CalendarFeedKeeping.Most) return this.Mend("Show", page with { IsFull = true });
        var secret = AddressSecret.New();
        var isNew = await records.TryKeepAsync(
            new CalendarFeed
            {
                Id = id, SecretHash = AddressSecret.HashOf(secret), PersonId = HttpContext.Visitor().PersonId, EmployerId = employerId,
                Language = HttpContext.PageLanguageOf(), MadeAt = clock.GetUtcNow(),
            },
            cancellation);
        Response.Headers.CacheControl = "no-store";
        page = await PageAsync(employerId, name, cancellation);
        return View("Show", isNew ? page with { Made = options.PublicPage($"calendars/{secret}.ics") } : page with { WasMadeBefore = true });
    }

    private async Task<IActionResult> EndAsync(Guid feedId, string page, CancellationToken cancellation)
    {
        await records.EndAsync(new CalendarFeedEnd { FeedId = feedId, EndedAt = clock.GetUtcNow(), EndedById = HttpContext.Visitor().PersonId }, cancellation);
        return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/{page}");
    }

    private Task<string?> FindEmployerAsync(Guid employerId, CancellationToken cancellation) =>
        records.EmployersSeenBy(HttpContext.Visitor()).Where(employer => employer.Id == employerId).Select(employer => (string?)employer.Name).SingleOrDefaultAsync(cancellation);

    private async Task<CalendarPage> PageAsync(Guid? employerId, string? name, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var feeds = await records.FeedsAsync(employerId, visitor.PersonId, cancellation);
        var names = await records.NamesOfAsync(feeds.Select(made => made.Feed.PersonId), visitor.Today, cancellation);
        return new(employerId, name, TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone), feeds, names, Guid.CreateVersion7());
    }
}
