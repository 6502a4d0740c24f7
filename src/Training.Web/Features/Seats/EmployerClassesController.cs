using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Seats;

/// <summary>An employer books its own people on the classes at its sites.</summary>
[Route("/{language:language}/employers/{employerId:guid}/classes")]
public sealed class EmployerClassesController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<SeatsText> localizer) : Controller
{
    private const string ListPage = "/Features/Seats/List.cshtml";
    private const string ClassPage = "/Features/Seats/Class.cshtml";

    private readonly IStringLocalizer<SeatsText> Text = localizer;

    /// <summary>All classes ahead.</summary>
    [HttpGet("")]
    public async Task<IActionResult> List(Guid employerId, CancellationToken cancellation) =>
        await records.FindEmployerClassesAsync(HttpContext.Visitor(), employerId, Titles, cancellation) is { } page ? View(ListPage, page) : NotFound();

    /// <summary>One class: who of the employer's people comes, and who waits.</summary>
    [HttpGet("{classId:guid}")]
    public async Task<IActionResult> Class(Guid employerId, Guid classId, CancellationToken cancellation) =>
        await PageAsync(employerId, classId, new() { Id = Guid.CreateVersion7() }, null, cancellation) is { } page ? View(ClassPage, page) : NotFound();

    /// <summary>Gives somebody of the employer's a seat, or a place in line where every seat is taken.</summary>
    [HttpPost("{classId:guid}/seats")]
    public async Task<IActionResult> Seat(Guid employerId, Guid classId, SeatForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (!await records.IsClassSeenAsync(visitor, employerId, classId, cancellation)) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        var badge = FormValues.ReadLine(form.Badge);
        var found = badge.Length == 0 ? null : await records.FindPersonByBadgeAsync(employerId, badge, cancellation);
        var problems = new List<Problem>();
        if (found is { } personId && await records.IsPersonSeenAsync(visitor, employerId, personId, cancellation))
        {
            var kept = await records.AttendAsync(classId, personId, cancellation);
            if (kept is Kept.Refused { Problems: [{ Code: RecordsProblems.ClassFull }] })
                kept = await records.WaitAsync(form.Id, classId, personId, visitor.PersonId, clock.GetUtcNow(), cancellation);
            kept.IsKept(problems);
            foreach (var problem in problems) ModelState.Add(nameof(form.Badge), problem);
        }
        else
        {
            ModelState.AddModelError(nameof(form.Badge), badge.Length == 0 ? Text["BadgeMissing"] : Text["BadgeUnknown", badge]);
        }

        return await AnswerAsync(employerId, classId, form, null, problems, cancellation);
    }

    /// <summary>Gives the seat of somebody of the employer's back.</summary>
    [HttpPost("{classId:guid}/returns")]
    public async Task<IActionResult> GiveBack(Guid employerId, Guid classId, ReturnForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (!await records.IsClassSeenAsync(visitor, employerId, classId, cancellation)) return NotFound();
        if (form.Id == Guid.Empty || form.PersonId is not { } personId) return BadRequest();
        if (!await records.IsPersonSeenAsync(visitor, employerId, personId, cancellation)) return NotFound();
        ModelState.Clear();
        var problems = new List<Problem>();
        if (this.ReadReason(form) is { Length: > 0 } reason)
        {
            (await records.GiveBackAsync(form.Id, classId, personId, visitor.PersonId, reason, clock.GetUtcNow(), cancellation)).IsKept(problems);
            foreach (var problem in problems) ModelState.Add(nameof(form.Reason), problem);
        }
        else if (ModelState.IsValid)
        {
            ModelState.AddModelError(nameof(form.Reason), Text["ReasonMissing"]);
        }

        return await AnswerAsync(employerId, classId, new() { Id = Guid.CreateVersion7() }, personId, problems, cancellation);
    }

    /// <summary>Takes somebody of the employer's off the waiting list.</summary>
    [HttpPost("{classId:guid}/waiting-ends")]
    public async Task<IActionResult> StopWaiting(Guid employerId, Guid classId, WaitingEndForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (!await records.IsClassSeenAsync(visitor, employerId, classId, cancellation)) return NotFound();
        if (form.PersonId is not { } personId) return BadRequest();
        if (!await records.IsPersonSeenAsync(visitor, employerId, personId, cancellation)) return NotFound();
        await records.StopWaitingAsync(classId, personId, visitor.PersonId, clock.GetUtcNow(), cancellation);
        return this.SeeOther(Address(employerId, classId));
    }

    private IReadOnlyDictionary<string, string> Titles => shelf.Courses.Titles(HttpContext.PageLanguageOf());

    private async Task<IActionResult> AnswerAsync(
        Guid employerId, Guid classId, SeatForm form, Guid? refused, List<Problem> problems, CancellationToken cancellation)
    {
        if (ModelState.IsValid) return this.SeeOther(Address(employerId, classId));
        return await PageAsync(employerId, classId, form, refused, cancellation) is { } page ? this.MendOrDispute(ClassPage, page, problems) : NotFound();
    }

    private Task<EmployerClassPage?> PageAsync(Guid employerId, Guid classId, SeatForm form, Guid? refused, CancellationToken cancellation) =>
        records.FindEmployerClassAsync(HttpContext.Visitor(), employerId, classId, Titles, form, refused, cancellation);

    private string Address(Guid employerId, Guid classId) => $"/{HttpContext.PageLanguageOf().Tag()}/employers/{employerId}/classes/{classId}";
}
