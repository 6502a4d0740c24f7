using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Reviews;

/// <summary>A lead enters what happened beyond encounters: something new at a site, or an event about a person.</summary>
[Route("/{language:language}/programme")]
public sealed class ReviewEventsController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<ReviewText> localizer) : Controller
{
    private const string SiteForm = "/Features/Reviews/Site.cshtml";
    private const string PersonForm = "/Features/Reviews/Person.cshtml";

    private readonly IStringLocalizer<ReviewText> Text = localizer;

    /// <summary>What can be new at a site.</summary>
    public static IReadOnlyList<ReviewCause> OfSite { get; } = [ReviewCause.NewTool, ReviewCause.NewSpecies];

    /// <summary>What can be entered about a person.</summary>
    public static IReadOnlyList<ReviewCause> OfPerson { get; } = [ReviewCause.NewSite, ReviewCause.GuidanceChanged, ReviewCause.Other];

    /// <summary>The form of something new at a site, with its current handlers.</summary>
    [HttpGet("sites/{siteId:guid}/events")]
    public async Task<IActionResult> NewAtSite(Guid siteId, ReviewCause? cause, string? what, CancellationToken cancellation)
    {
        ModelState.Clear();
        var form = new SiteEventForm { Id = Guid.CreateVersion7(clock.GetUtcNow()), Cause = cause, Words = what };
        return await SitePageAsync(siteId, form, cancellation) is { } page ? View(SiteForm, page.Page) : NotFound();
    }

    /// <summary>Keeps it, with a review and a hold of each current handler who is not trained on it.</summary>
    [HttpPost("sites/{siteId:guid}/events")]
    public async Task<IActionResult> KeepAtSite(Guid siteId, SiteEventForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await SitePageAsync(siteId, form, cancellation) is not var (page, today)) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        var words = ReviewsController.ReadWords(ModelState, nameof(form.Words), form.Words, Text["WordsMissing"]);
        if (form.Cause is not { } cause || !OfSite.Contains(cause)) ModelState.AddModelError(nameof(form.Cause), Text["CauseMissing"]);
        if (!ModelState.IsValid) return this.Mend(SiteForm, page);
        var entry = Entry(form.Id, form.Cause!.Value, siteId, null, words!, today); // neither null: read without a problem
        var untrained = page.Handlers.Select(person => person.PersonId).Except(form.Trained);
        return await records.KeepAsync(entry, untrained, cancellation) is Kept.Refused refused ? Conflict(refused, SiteForm, page) : ToReviews();
    }

    /// <summary>The form of an event about a person.</summary>
    [HttpGet("people/{personId:guid}/events")]
    public async Task<IActionResult> NewAboutPerson(Guid personId, ReviewCause? cause, CancellationToken cancellation)
    {
        ModelState.Clear();
        var form = new PersonEventForm { Id = Guid.CreateVersion7(clock.GetUtcNow()), Cause = cause };
        return await PersonPageAsync(personId, form, cancellation) is { } page ? View(PersonForm, page) : NotFound();
    }

    /// <summary>Keeps it, with a review of them; a hold only where it is something else than the two named, and the lead says so.</summary>
    [HttpPost("people/{personId:guid}/events")]
    public async Task<IActionResult> KeepAboutPerson(Guid personId, PersonEventForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await PersonPageAsync(personId, form, cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        var words = ReviewsController.ReadWords(ModelState, nameof(form.Words), form.Words, Text["WordsMissing"]);
        if (form.Cause is not { } cause || !OfPerson.Contains(cause)) ModelState.AddModelError(nameof(form.Cause), Text["CauseMissing"]);
        if (!ModelState.IsValid) return this.Mend(PersonForm, page);
        var (visitor, now) = (HttpContext.Visitor(), clock.GetUtcNow());
        var site = await records.FindSiteAsync(personId, visitor.Today, cancellation);
        var today = site is null ? visitor.Today : DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(site.Zone));
        var entry = Entry(form.Id, form.Cause!.Value, site?.Id, personId, words!, today); // neither null: read without a problem
        var weight = form is { Cause: ReviewCause.Other, Hold: true } ? ReviewWeight.Hold : ReviewWeight.ReviewOnly;
        return await records.KeepAsync(entry, weight, cancellation) is Kept.Refused refused ? Conflict(refused, PersonForm, page) : ToReviews();
    }

    private EnteredEvent Entry(Guid id, ReviewCause cause, Guid? siteId, Guid? personId, string words, DateOnly today) => new()
    {
        Id = id, Cause = cause, SiteId = siteId, PersonId = personId, Words = words, LeadId = HttpContext.Visitor().PersonId, EnteredOn = today,
        KeptAt = clock.GetUtcNow(),
    };

    private ViewResult Conflict(Kept.Refused refused, string view, object page)
    {
        foreach (var problem in refused.Problems) ModelState.Add("Words", problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View(view, page);
    }

    private IActionResult ToReviews() => this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/reviews");

    private async Task<(SiteEventPage Page, DateOnly Today)?> SitePageAsync(Guid siteId, SiteEventForm form, CancellationToken cancellation)
    {
        if (await records.Sites.AsNoTracking().SingleOrDefaultAsync(row => row.Id == siteId, cancellation) is not { } site) return null;
        var today = DecisionDay.On(clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(site.Zone));
        return (new(siteId, site.Name, await records.HandlersAtAsync(siteId, today, shelf.Certifications(), cancellation), form), today);
    }

    private async Task<PersonEventPage?> PersonPageAsync(Guid personId, PersonEventForm form, CancellationToken cancellation)
    {
        if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation)) return null;
        var names = await records.NamesOfAsync([personId], HttpContext.Visitor().Today, cancellation);
        return new(personId, names.GetValueOrDefault(personId), form);
    }
}
