using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.Lives;

/// <summary>Whether somebody was current on a day in the past. A lead asks about anybody, an employer about days on which it employed the person.</summary>
public sealed class LivesController(RecordsContext records, PastStandingReading reading, IStringLocalizer<LifeText> text) : Controller
{
    private const int MostEmployments = 200;

    /// <summary>Asked by a lead.</summary>
    [HttpGet("/{language:language}/programme/people/{personId:guid}/standing")]
    public async Task<IActionResult> OfAnybody(Guid personId, PastStandingForm form, CancellationToken cancellation)
    {
        if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation)) return NotFound();
        var person = $"/{HttpContext.PageLanguageOf().Tag()}/programme/people/{personId}";
        return await AnswerAsync(personId, form, person, person, LifeReader.Lead, day => null, cancellation);
    }

    /// <summary>Asked by an employer about one of its people, also one who has left.</summary>
    [HttpGet("/{language:language}/employers/{employerId:guid}/people/{personId:guid}/standing")]
    public async Task<IActionResult> OfEmployed(Guid employerId, Guid personId, PastStandingForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var employed = await (from employment in records.EmploymentsSeenBy(visitor, employerId)
                              where employment.PersonId == personId
                              orderby employment.StartsOn
                              select employment).AsNoTracking().Take(MostEmployments).ToListAsync(cancellation);
        if (employed.Count == 0) return NotFound();
        var person = $"/{HttpContext.PageLanguageOf().Tag()}/employers/{employerId}/people/{personId}";
        return await AnswerAsync(
            personId, form, person, employed.Exists(row => row.Holds(visitor.Today)) ? person : null, LifeReader.Employer,
            day => employed.Exists(row => row.Holds(day)) ? null : text["NotEmployedThen"].Value, cancellation);
    }

    private async Task<IActionResult> AnswerAsync(
        Guid personId, PastStandingForm form, string person, string? back, LifeReader reader, Func<DateOnly, string?> refuse, CancellationToken cancellation)
    {
        ModelState.Clear();
        var today = HttpContext.Visitor().Today;
        var day = FormValues.ReadDay(form.Day);
        var refused = string.IsNullOrEmpty(form.Day) ? null
            : day is not { } asked ? text["DayUnreadable"].Value
            : asked > today ? text["DayToCome"].Value
            : refuse(asked);
        if (refused is not null) ModelState.AddModelError(nameof(form.Day), refused);
        var empty = new PastStandingPage(
            null, $"{person}/standing", back, reader, today, form, [], new Dictionary<string, string>(), new Dictionary<Guid, string>(), null, null, []);
        var page = await reading.ReadAsync(personId, empty, refused is null ? day : null, HttpContext.PageLanguageOf(), cancellation);
        return refused is null ? View("PastStanding", page) : this.Mend("PastStanding", page);
    }
}
