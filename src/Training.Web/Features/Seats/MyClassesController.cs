using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Seats;

/// <summary>A person's own seats: which classes are ahead, and saying that one cannot come.</summary>
[Route("/{language:language}/my/classes")]
public sealed class MyClassesController(RecordsContext records, CourseShelf shelf, TimeProvider clock) : Controller
{
    private const string Page = "/Features/Seats/Mine.cshtml";

    /// <summary>All classes ahead.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Mine(CancellationToken cancellation) => View(Page, await PageAsync(cancellation));

    /// <summary>Gives the visitor's own seat back; nobody has to say why.</summary>
    [HttpPost("{classId:guid}/returns")]
    public async Task<IActionResult> GiveBack(Guid classId, ReturnForm form, CancellationToken cancellation)
    {
        var me = HttpContext.Visitor().PersonId;
        if (!await records.ClassAttendances.AnyAsync(seat => seat.ClassId == classId && seat.PersonId == me, cancellation)) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        var problems = new List<Problem>();
        if (this.ReadReason(form) is { } reason)
            (await records.GiveBackAsync(form.Id, classId, me, me, reason.Length == 0 ? null : reason, clock.GetUtcNow(), cancellation)).IsKept(problems);
        foreach (var problem in problems) ModelState.Add(nameof(form.Reason), problem);
        if (ModelState.IsValid) return this.SeeOther(Address);
        var page = await PageAsync(cancellation);
        return this.MendOrDispute(Page, page with { Refused = (classId, form) }, problems);
    }

    /// <summary>Takes the visitor off a waiting list.</summary>
    [HttpPost("{classId:guid}/waiting-ends")]
    public async Task<IActionResult> StopWaiting(Guid classId, CancellationToken cancellation)
    {
        var me = HttpContext.Visitor().PersonId;
        if (!await records.ClassWaitings.AnyAsync(row => row.ClassId == classId && row.PersonId == me, cancellation)) return NotFound();
        await records.StopWaitingAsync(classId, me, me, clock.GetUtcNow(), cancellation);
        return this.SeeOther(Address);
    }

    private string Address => $"/{HttpContext.PageLanguageOf().Tag()}/my/classes";

    private Task<MyClassesPage> PageAsync(CancellationToken cancellation) =>
        records.MyClassesAsync(HttpContext.Visitor(), shelf.Courses.Titles(HttpContext.PageLanguageOf()), cancellation);
}
