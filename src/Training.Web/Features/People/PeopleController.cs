using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Shared;
using Training.Web.Languages;

namespace Training.Web.Features.People;

/// <summary>The people of the programme: find, add, and see one.</summary>
public sealed class PeopleController(RecordsContext records, PersonReading reading, IStringLocalizer<PersonText> localizer) : Controller
{
    private const int LongestSearch = 200;

    private readonly IStringLocalizer<PersonText> Text = localizer;

    /// <summary>People by name or badge, and the form for somebody new.</summary>
    [HttpGet("/{language:language}/programme/people")]
    public async Task<IActionResult> List(string? search, int? page, CancellationToken cancellation) =>
        View(await PageAsync(search, page, NewForm(), cancellation));

    /// <summary>Adds somebody with their work. The same form again is the same person.</summary>
    [HttpPost("/{language:language}/programme/people")]
    public async Task<IActionResult> Add(PersonForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        if (await ReadAsync(form, cancellation) is not { } person) return this.Mend("List", await PageAsync(null, null, form, cancellation));
        if (await records.RegisterAsync(person, cancellation) is not Kept.Refused refused) return this.SeeOther(Person(person.Id));

        foreach (var problem in refused.Problems) ModelState.Add(FieldOf(problem), problem);
        var answer = this.Mend("List", await PageAsync(null, null, form, cancellation));
        if (refused.Problems.Any(problem => problem.Code == RecordsProblems.OtherContent)) Response.StatusCode = StatusCodes.Status409Conflict;
        return answer;
    }

    /// <summary>One person: standing, results with their hats, work, sign-in.</summary>
    [HttpGet("/{language:language}/programme/people/{personId:guid}")]
    public async Task<IActionResult> Show(Guid personId, CancellationToken cancellation) =>
        await FindAsync(personId, null, cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Where the person works from a day on.</summary>
    [HttpPost("/{language:language}/programme/people/{personId:guid}/employments")]
    public async Task<IActionResult> AddWork(Guid personId, WorkForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation)) return NotFound();
        var (site, badge, startsOn) = (await FindSiteAsync(form.SiteId, cancellation), ReadBadge(form.Badge), ReadDay(form.StartsOn));
        if (ModelState.IsValid && site is not null && startsOn is { } day)
        {
            if (await records.KeepAsync(new NewWork(personId, day, site.EmployerId, badge, site.Id), cancellation) is not Kept.Refused refused)
                return this.SeeOther(Person(personId));
            foreach (var problem in refused.Problems) ModelState.Add(FieldOf(problem), problem);
        }

        return await FindAsync(personId, form, cancellation) is { } page ? this.Mend("Show", page) : NotFound();
    }

    private PersonForm NewForm() => new()
    {
        Id = Guid.CreateVersion7(), StartsOn = HttpContext.Visitor().Today.Iso(), Language = HttpContext.PageLanguageOf().Tag(),
    };

    private string Person(Guid personId) => $"/{HttpContext.PageLanguageOf().Tag()}/programme/people/{personId}";

    private Task<PersonPage?> FindAsync(Guid personId, WorkForm? form, CancellationToken cancellation) =>
        reading.FindAsync(personId, HttpContext.Visitor().PersonId, HttpContext.PageLanguageOf(), form, null, cancellation);

    private async Task<PeoplePage> PageAsync(string? search, int? page, PersonForm form, CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        var sought = FormValues.ReadLine(search);
        if (sought.Length > LongestSearch) sought = sought[..LongestSearch];
        var found = await records.FindPeopleAsync(sought, today, cancellation);
        var turning = Turning.To(
            page, found.Count, $"/{HttpContext.PageLanguageOf().Tag()}/programme/people?search={Uri.EscapeDataString(sought)}&");
        var shown = found.Skip(turning.Before).Take(Turning.Rows).ToList();
        var ids = shown.ConvertAll(one => one.PersonId);
        var badges = await records.BadgesOfAsync(ids, today, cancellation);
        var appointed = (await records.Appointments.AsNoTracking()
                .Where(row => ids.Contains(row.PersonId) && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today)).ToListAsync(cancellation))
            .ToLookup(row => row.PersonId, row => row.Role);
        return new(
            sought, found.Count,
            [.. shown.Select(one => new PersonLine(one.PersonId, one.Name, [.. badges[one.PersonId]], [.. appointed[one.PersonId].Order()]))], turning,
            await records.SiteChoicesAsync(cancellation), form);
    }

    private async Task<NewPerson?> ReadAsync(PersonForm form, CancellationToken cancellation)
    {
        var name = ModelState.ReadLine(nameof(form.Name), form.Name, Bounds.Name, Text["NameMissing"]);
        var language = LanguageTags.Find(form.Language);
        if (language is null) ModelState.AddModelError(nameof(form.Language), Text["LanguageMissing"]);
        var isOwn = form.Work == PersonForm.Own;
        var (site, badge) = isOwn ? (null, "") : (await FindSiteAsync(form.SiteId, cancellation), ReadBadge(form.Badge));
        var startsOn = ReadDay(form.StartsOn);
        if (!ModelState.IsValid || startsOn is not { } day || language is not { } spoken) return null;
        return new(form.Id, name, spoken, day, site is null ? null : new(site.EmployerId, badge, site.Id));
    }

    private async Task<Records.Site?> FindSiteAsync(Guid? siteId, CancellationToken cancellation)
    {
        var site = await records.Sites.AsNoTracking().SingleOrDefaultAsync(site => site.Id == siteId, cancellation);
        if (site is null) ModelState.AddModelError(nameof(PersonForm.SiteId), Text["SiteMissing"]);
        return site;
    }

    private string ReadBadge(string? typed) => ModelState.ReadLine(nameof(PersonForm.Badge), typed, Bounds.Number, Text["BadgeMissing"]);

    private DateOnly? ReadDay(string? typed)
    {
        var day = FormValues.ReadDay(typed);
        if (day is null) ModelState.AddModelError(nameof(PersonForm.StartsOn), Text["DayMissing"]);
        return day;
    }

    private static string FieldOf(Problem problem) => problem.Code switch
    {
        RecordsProblems.BadgeTaken => nameof(PersonForm.Badge),
        RecordsProblems.SiteUnknown => nameof(PersonForm.SiteId),
        RecordsProblems.OtherContent => nameof(PersonForm.Name),
        _ => nameof(PersonForm.StartsOn),
    };
}
