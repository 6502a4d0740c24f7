using System.Globalization;
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
public sealed class ClassesController(RecordsContext records, CourseShelf shelf, IStringLocalizer<ClassText> localizer) : Controller
{
    private const int MostSeats = 200;
    private const int MostEmployers = 1000;

    private readonly IStringLocalizer<ClassText> Text = localizer;

    /// <summary>Classes to come, past ones, and the form of a new one.</summary>
    [HttpGet("/{language:language}/programme/classes")]
    public async Task<IActionResult> List(CancellationToken cancellation) =>
        View(await ListAsync(new() { Id = Guid.CreateVersion7(), Seats = "12" }, cancellation));

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

    /// <summary>Gives somebody a seat, by badge.</summary>
    [HttpPost("/{language:language}/programme/classes/{classId:guid}/attendances")]
    public async Task<IActionResult> Attend(Guid classId, AttendanceForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        var badge = FormValues.ReadLine(form.Badge);
        var personId = form.EmployerId is { } employerId && badge.Length > 0
            ? await records.FindPersonByBadgeAsync(employerId, badge, cancellation)
            : null;
        if (personId is { } found) return await AnswerAsync(classId, form, nameof(form.Badge), await records.AttendAsync(classId, found, cancellation), cancellation);
        ModelState.AddModelError(nameof(form.Badge), badge.Length == 0 ? Text["BadgeMissing"] : Text["BadgeUnknown", badge]);
        return await MendAsync(classId, form, cancellation);
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

    private async Task<ClassPage?> FindAsync(Guid classId, AttendanceForm form, CancellationToken cancellation)
    {
        if (await records.FindClassAsync(classId, cancellation) is not { } day) return null;
        var appointed = records.Appointments
            .Where(row => row.Role == AppointedRole.Instructor && row.StartsOn <= day.HeldOn && (row.EndsOn == null || row.EndsOn >= day.HeldOn))
            .Select(row => row.PersonId);
        var employers = await records.Employers.OrderBy(employer => employer.Name != day.Employer).ThenBy(employer => employer.NameKey)
            .Take(MostEmployers).Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        return new(
            day, shelf.Courses.Titles(HttpContext.PageLanguageOf()).Of(day.CourseId),
            await records.ChoicesAsync(
                records.ClassTeachings.Where(row => row.ClassId == classId).Select(row => row.InstructorId), day.HeldOn, cancellation),
            await records.ChoicesAsync(
                records.ClassScorers.Where(row => row.ClassId == classId).Select(row => row.InstructorId), day.HeldOn, cancellation),
            await records.ChoicesAsync(
                records.ClassAttendances.Where(row => row.ClassId == classId).Select(row => row.PersonId), day.HeldOn, cancellation),
            await records.ChoicesAsync(appointed, day.HeldOn, cancellation),
            employers.ConvertAll(employer => (employer.Id, employer.Name)), form);
    }

    private async Task<IActionResult> AnswerAsync(Guid classId, AttendanceForm form, string field, Kept kept, CancellationToken cancellation)
    {
        if (kept is not Kept.Refused refused) return this.SeeOther(Class(classId));
        foreach (var problem in refused.Problems) ModelState.Add(field, problem);
        return await MendAsync(classId, form, cancellation);
    }

    private async Task<IActionResult> MendAsync(Guid classId, AttendanceForm form, CancellationToken cancellation) =>
        await FindAsync(classId, form, cancellation) is { } page ? this.Mend("Show", page) : NotFound();

    private async Task<ClassRecord?> ReadAsync(ClassForm form, CancellationToken cancellation)
    {
        var course = form.CourseId is null ? null : shelf.FindUsed(form.CourseId);
        if (course is null) ModelState.AddModelError(nameof(form.CourseId), Text["CourseMissing"]);
        var isSite = form.SiteId is { } siteId && await records.Sites.AnyAsync(site => site.Id == siteId, cancellation);
        if (!isSite) ModelState.AddModelError(nameof(form.SiteId), Text["SiteMissing"]);
        var heldOn = FormValues.ReadDay(form.HeldOn);
        if (heldOn is null) ModelState.AddModelError(nameof(form.HeldOn), Text["DayMissing"]);
        var isSeats = int.TryParse(form.Seats, NumberStyles.None, CultureInfo.InvariantCulture, out var seats) && seats is >= 1 and <= MostSeats;
        if (!isSeats) ModelState.AddModelError(nameof(form.Seats), Text["SeatsMissing", MostSeats]);
        return ModelState.IsValid && course is not null && form.SiteId is { } site && heldOn is { } day
            ? new() { Id = form.Id, SiteId = site, HeldOn = day, CourseId = course.Id, Capacity = seats }
            : null;
    }
}
