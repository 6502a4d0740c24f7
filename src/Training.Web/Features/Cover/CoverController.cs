using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Cover;

/// <summary>How many current handlers an employer's sites have ahead against what they need, and what they need.</summary>
[Route("/{language:language}/employers/{employerId:guid}/cover")]
public sealed class CoverController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<CoverText> localizer) : Controller
{
    private const int MostCrews = 1_000;

    private readonly IStringLocalizer<CoverText> Text = localizer;

    /// <summary>The next 12 months of every place.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(Guid employerId, CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        return await FindAsync(employerId, new() { Id = Guid.CreateVersion7(clock.GetUtcNow()), StartsOn = today.Iso() }, cancellation) is { } page ? View(page) : NotFound();
    }

    /// <summary>Says what a place needs from a day on.</summary>
    [HttpPost("needs")]
    public async Task<IActionResult> Need(Guid employerId, NeedForm form, CancellationToken cancellation)
    {
        ModelState.Clear(); // what could not be read is told in our own words
        if (await FindAsync(employerId, form, cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        if (Read(form, page) is { } need)
        {
            if (await records.KeepAsync(need, cancellation) is not Kept.Refused refused)
                return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/employers/{employerId}/cover");
            foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Place), problem);
            if (refused.Problems.Any(problem => problem.Code == RecordsProblems.OtherContent))
            {
                Response.StatusCode = StatusCodes.Status409Conflict;
                return View("Show", page);
            }
        }

        return this.Mend("Show", page);
    }

    private CoverNeed? Read(NeedForm form, CoverPage page)
    {
        var place = page.Choices.FirstOrDefault(choice => choice.Value == form.Place);
        if (place is null) ModelState.AddModelError(nameof(form.Place), Text["PlaceMissing"]);
        var scheme = page.Schemes.FirstOrDefault(one => one.Id == form.SchemeId).Id;
        if (scheme is null) ModelState.AddModelError(nameof(form.SchemeId), Text["SchemeMissing"]);
        var isCount = int.TryParse(form.Handlers, NumberStyles.None, CultureInfo.InvariantCulture, out var handlers) && handlers <= CoverNeed.Most;
        if (!isCount) ModelState.AddModelError(nameof(form.Handlers), Text["CountMissing", CoverNeed.Most]);
        var startsOn = FormValues.ReadDay(form.StartsOn);
        if (startsOn is null) ModelState.AddModelError(nameof(form.StartsOn), Text["DayMissing"]);
        if (!ModelState.IsValid || place is null || scheme is null || startsOn is not { } from) return null;
        var parts = place.Value.Split('/');
        return new()
        {
            Id = form.Id, SiteId = Guid.Parse(parts[0]), CrewId = parts.Length > 1 ? Guid.Parse(parts[1]) : null, SchemeId = scheme, Handlers = handlers,
            StartsOn = from, SetById = HttpContext.Visitor().PersonId, KeptAt = clock.GetUtcNow(),
        };
    }

    private async Task<CoverPage?> FindAsync(Guid employerId, NeedForm form, CancellationToken cancellation)
    {
        var (visitor, language) = (HttpContext.Visitor(), HttpContext.PageLanguageOf());
        var employer = await records.EmployersSeenBy(visitor).AsNoTracking().SingleOrDefaultAsync(row => row.Id == employerId, cancellation);
        if (employer is null) return null;
        var cover = await records.CoverAsync(employerId, visitor.Today, shelf.Courses, language, cancellation);
        var sites = await records.SitesOfAsync(employerId, cancellation);
        var crews = await (from crew in records.Crews
                           join site in records.Sites on crew.SiteId equals site.Id
                           where site.EmployerId == employerId
                           orderby crew.NameKey
                           select new { crew.Id, crew.SiteId, crew.Name }).Take(MostCrews).ToListAsync(cancellation);
        Guid[] setters = [.. cover.Places.SelectMany(place => place.Place.Needs).Select(need => need.SetById).Distinct()];
        return new(
            employerId, employer.Name, cover, await records.NamesOfAsync(setters, visitor.Today, cancellation),
            [
                .. sites.SelectMany(site => crews.Where(crew => crew.SiteId == site.Id)
                    .Select(crew => new PlaceChoice($"{site.Id}/{crew.Id}", site.Name, crew.Name)).Prepend(new($"{site.Id}", site.Name, null))),
            ],
            [.. shelf.Used.OrderByDescending(course => course.Scheme.Kind).Select(course => (course.Scheme.Id, course.Scheme.Words[language].Title))], form);
    }
}
