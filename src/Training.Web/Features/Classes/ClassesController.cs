using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.People;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Classes;

/// <summary>Classes: when and where, who teaches, who scores, who has a seat.</summary>
public sealed class ClassesController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<ClassText> localizer) : Controller
{
    private const int MostSeats = ClassHours.MostSeats;

    private readonly IStringLocalizer<ClassText> Text = localizer;

    /// <summary>Classes to come, past ones, and the form of a new one.</summary>
    [HttpGet("/{language:language}/programme/classes")]
    public async Task<IActionResult> List(CancellationToken cancellation) =>
        View(await ListAsync(new() { Id = Guid.CreateVersion7(), Seats = "12", StartsAt = Written.Time(ClassRecord.UsualStart), Hours = ClassHours.Text(ClassRecord.UsualMinutes) }, cancellation));

    /// <summary>Adds a class.</summary>
    [HttpPost("/{language:language}/programme/classes")]
    public async Task<IActionResult> Add(ClassForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        if (await ReadAsync(form, cancellation) is { } day)
        {
            if (await records.KeepAsync(day, cancellation) is not Kept.Refused refused) return this.SeeOther(Class(form.Id));
            foreach (var problem in refused.Problems) ModelState.Add(nameof(form.SiteId), problem);
        }

        return this.Mend("List", await ListAsync(form, cancellation));
    }

    /// <summary>One class.</summary>
    [HttpGet("/{language:language}/programme/classes/{classId:guid}")]
    public async Task<IActionResult> Show(Guid classId, CancellationToken cancellation) =>
        await FindAsync(classId, new(), cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Gives somebody a seat, by badge; a place in line where every seat is taken and they are to wait.</summary>
    [HttpPost("/{language:language}/programme/classes/{classId:guid}/attendances")]
    public async Task<IActionResult> Attend(Guid classId, AttendanceForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        var badge = FormValues.ReadLine(form.Badge);
        var personId = form.EmployerId is { } employerId && badge.Length > 0
            ? await records.FindPersonByBadgeAsync(employerId, badge, cancellation)
            : null;
        var forms = new ClassPageForms { Seat = form };
        if (personId is { } found)
        {
            var kept = form.IsWaiting && form.Id != Guid.Empty
                ? await records.WaitAsync(form.Id, classId, found, HttpContext.Visitor().PersonId, clock.GetUtcNow(), cancellation)
                : await records.AttendAsync(classId, found, cancellation);
            return await AnswerAsync(classId, forms, nameof(form.Badge), kept, cancellation);
        }

        ModelState.AddModelError(nameof(form.Badge), badge.Length == 0 ? Text["BadgeMissing"] : Text["BadgeUnknown", badge]);
        return await MendAsync(classId, forms, cancellation);
    }

    /// <summary>Notes who teaches.</summary>
    [HttpPost("/{language:language}/programme/classes/{classId:guid}/teachers")]
    public Task<IActionResult> Teach(Guid classId, InstructorForm form, CancellationToken cancellation) =>
        AddInstructorAsync(classId, form, "TeacherId", id => records.TeachAsync(classId, id, cancellation), cancellation);

    /// <summary>Notes who may score.</summary>
    [HttpPost("/{language:language}/programme/classes/{classId:guid}/scorers")]
    public Task<IActionResult> LetScore(Guid classId, InstructorForm form, CancellationToken cancellation) =>
        AddInstructorAsync(classId, form, "ScorerId", id => records.LetScoreAsync(classId, id, cancellation), cancellation);

    private async Task<IActionResult> AddInstructorAsync(
        Guid classId, InstructorForm form, string field, Func<Guid, Task<Kept>> keep, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (form.InstructorId is { } instructorId) return await AnswerAsync(classId, new(), field, await keep(instructorId), cancellation);
        ModelState.AddModelError(field, Text["InstructorMissing"]);
        return await MendAsync(classId, new(), cancellation);
    }

    private string Class(Guid id) => $"/{HttpContext.PageLanguageOf().Tag()}/programme/classes/{id}";

    private async Task<ClassesPage> ListAsync(ClassForm form, CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        return new(
            today, await records.ClassesFromAsync(today, cancellation), await records.ClassesBeforeAsync(today, cancellation),
            shelf.Courses.Titles(HttpContext.PageLanguageOf()), [.. shelf.Used.Select(course => course.Id)],
            await records.SiteChoicesAsync(cancellation), form);
    }

    private Task<ClassPage?> FindAsync(Guid classId, ClassPageForms forms, CancellationToken cancellation) =>
        records.FindClassPageAsync(classId, forms, shelf.Courses.Titles(HttpContext.PageLanguageOf()), clock.GetUtcNow(), cancellation);

    private async Task<IActionResult> AnswerAsync(Guid classId, ClassPageForms forms, string field, Kept kept, CancellationToken cancellation)
    {
        if (kept is not Kept.Refused refused) return this.SeeOther(Class(classId));
        foreach (var problem in refused.Problems) ModelState.Add(field, problem);
        return await MendAsync(classId, forms, cancellation);
    }

    private async Task<IActionResult> MendAsync(Guid classId, ClassPageForms forms, CancellationToken cancellation) =>
        await FindAsync(classId, forms, cancellation) is { } page ? this.Mend("Show", page) : NotFound();

    private async Task<ClassRecord?> ReadAsync(ClassForm form, CancellationToken cancellation)
    {
        var course = form.CourseId is null ? null : shelf.FindUsed(form.CourseId);
        if (course is null) ModelState.AddModelError(nameof(form.CourseId), Text["CourseMissing"]);
        var zone = form.SiteId is { } siteId
            ? await records.Sites.Where(site => site.Id == siteId).Select(site => (string?)site.Zone).SingleOrDefaultAsync(cancellation)
            : null;
        if (zone is null) ModelState.AddModelError(nameof(form.SiteId), Text["SiteMissing"]);
        var heldOn = FormValues.ReadDay(form.HeldOn);
        if (heldOn is null) ModelState.AddModelError(nameof(form.HeldOn), Text["DayMissing"]);
        var seats = ClassHours.ReadSeats(form.Seats);
        if (seats is null) ModelState.AddModelError(nameof(form.Seats), Text["SeatsMissing", MostSeats]);
        var startsAt = ClassHours.ReadTime(form.StartsAt);
        if (startsAt is null) ModelState.AddModelError(nameof(form.StartsAt), Text["StartMissing"]);
        var minutes = ClassHours.ReadMinutes(form.Hours);
        if (minutes is null) ModelState.AddModelError(nameof(form.Hours), Text["HoursMissing"]);
        if (heldOn is { } on && startsAt is { } at && zone is not null && ClassHours.IsSkipped(on, at, zone))
            ModelState.AddModelError(nameof(form.StartsAt), Text["StartSkipped"]);
        return ModelState.IsValid && course is not null && form.SiteId is { } site && heldOn is { } day && startsAt is { } start && minutes is { } length && seats is { } count
            ? new() { Id = form.Id, SiteId = site, HeldOn = day, StartsAt = start, LengthMinutes = length, CourseId = course.Id, Capacity = count }
            : null;
    }
}
