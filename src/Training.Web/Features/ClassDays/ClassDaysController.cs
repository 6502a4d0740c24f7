using Microsoft.AspNetCore.Mvc;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Shelf;

namespace Training.Web.Features.ClassDays;

/// <summary>The instructor's own class days, and who waits there.</summary>
public sealed class ClassDaysController(RecordsContext records, CourseShelf shelf, TimeProvider clock) : Controller
{
    /// <summary>All class days ahead, and those just gone.</summary>
    [HttpGet("/{language:language}/class-days")]
    public async Task<IActionResult> List(CancellationToken cancellation) =>
        View(await records.ClassDaysOfAsync(HttpContext.Visitor(), cancellation));

    /// <summary>One class day: each candidate with what they have and what comes next.</summary>
    [HttpGet("/{language:language}/class-days/{classId:guid}")]
    public async Task<IActionResult> Show(Guid classId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var day = await records.FindClassDayAsync(visitor, classId, cancellation);
        return day is null ? NotFound() : View(await records.ClassDayPageAsync(day, shelf.Find(day.CourseId), visitor, clock.GetUtcNow(), cancellation));
    }
}
