using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Seats;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.ClassDays;

/// <summary>Who came to a class, as its instructors say: on the day, or afterwards from the sign-in sheet.</summary>
[Route("/{language:language}/class-days/{classId:guid}")]
public sealed class PresencesController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<ClassDaysText> localizer) : Controller
{
    private readonly IStringLocalizer<ClassDaysText> Text = localizer;

    /// <summary>Keeps whether somebody with a seat came.</summary>
    [HttpPost("presences")]
    public async Task<IActionResult> Mark(Guid classId, PresenceForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindClassDayAsync(visitor, classId, cancellation) is not { } day) return NotFound();
        if (form.Id == Guid.Empty || form.PersonId is not { } personId) return BadRequest();
        ModelState.Clear();
        var reason = FormValues.ReadLine(form.Reason);
        if (reason.Length > Bounds.Conditions) ModelState.AddModelError(nameof(form.Reason), Written.TooLong(Bounds.Conditions, reason.Length));
        var problems = new List<Problem>();
        if (ModelState.IsValid)
        {
            (await records.MarkAsync(
                form.Id, classId, personId, form.IsAbsent ? Presence.DidNotCome : Presence.Came, reason.Length == 0 ? null : reason, visitor.PersonId,
                clock.GetUtcNow(), cancellation)).IsKept(problems);
        }

        return await AnswerAsync(day, nameof(form.Reason), problems, page => page with { RefusedPersonId = personId }, cancellation);
    }

    /// <summary>Seats somebody of the site's employer who came without a seat, and keeps that they came. The seats are the limit here too.</summary>
    [HttpPost("arrivals")]
    public async Task<IActionResult> Arrive(Guid classId, ArrivalForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindClassDayAsync(visitor, classId, cancellation) is not { } day) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        var (badge, now, problems) = (FormValues.ReadLine(form.Badge), clock.GetUtcNow(), new List<Problem>());
        if (DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(day.Zone)) < day.HeldOn)
            problems.Add(new(RecordsProblems.ClassNotYet, Place.Of("class"), day.HeldOn.ToString("O", System.Globalization.CultureInfo.InvariantCulture)));
        else if (await FindByBadgeAsync(classId, badge, cancellation) is not { } personId)
            ModelState.AddModelError(nameof(form.Badge), badge.Length == 0 ? Text["BadgeMissing"] : Text["BadgeUnknown", badge]);
        else if ((await records.AttendAsync(classId, personId, cancellation)).IsKept(problems))
            (await records.MarkAsync(form.Id, classId, personId, Presence.Came, null, visitor.PersonId, now, cancellation)).IsKept(problems);
        return await AnswerAsync(day, nameof(form.Badge), problems, page => page with { Arrival = form }, cancellation);
    }

    private async Task<Guid?> FindByBadgeAsync(Guid classId, string badge, CancellationToken cancellation)
    {
        if (badge.Length == 0) return null;
        var employerId = await (from one in records.Classes
                                where one.Id == classId
                                join site in records.Sites on one.SiteId equals site.Id
                                select site.EmployerId).SingleAsync(cancellation);
        return await records.FindPersonByBadgeAsync(employerId, badge, cancellation);
    }

    private async Task<IActionResult> AnswerAsync(
        ClassDay day, string field, List<Problem> problems, Func<ClassDayPage, ClassDayPage> with, CancellationToken cancellation)
    {
        foreach (var problem in problems) ModelState.Add(field, problem);
        if (ModelState.IsValid) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/class-days/{day.Id}");
        var page = await records.ClassDayPageAsync(day, shelf.Find(day.CourseId), HttpContext.Visitor(), clock.GetUtcNow(), cancellation);
        return this.MendOrDispute("/Features/ClassDays/Show.cshtml", with(page), problems);
    }
}
