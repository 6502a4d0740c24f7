using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Features.Seats;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Classes;

/// <summary>What a lead changes about a class: its day, hours and seats, who no longer comes, what its people are to know. The page is the class's.</summary>
[Route("/{language:language}/programme/classes/{classId:guid}")]
public sealed class ClassChangesController(RecordsContext records, CourseShelf shelf, TimeProvider clock, IStringLocalizer<ClassText> localizer) : Controller
{
    private readonly IStringLocalizer<ClassText> Text = localizer;

    /// <summary>Moves the class or changes its seats.</summary>
    [HttpPost("changes")]
    public async Task<IActionResult> Change(Guid classId, ChangeForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        if (await records.FindClassAsync(classId, cancellation) is not { } day) return NotFound();
        var plan = Read(form, day);
        var reason = ModelState.ReadLine(nameof(form.ChangeReason), form.ChangeReason, Bounds.Conditions, Text["ReasonMissing"]);
        var problems = new List<Problem>();
        if (ModelState.IsValid && plan is not null)
            (await records.ChangeAsync(form.Id, classId, plan, LeadId, reason, clock.GetUtcNow(), cancellation)).IsKept(problems);
        return await AnswerAsync(classId, new() { Change = form }, nameof(form.ToOn), problems, cancellation);
    }

    /// <summary>Cancels the class.</summary>
    [HttpPost("cancellation")]
    public async Task<IActionResult> Cancel(Guid classId, CancellationForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        var reason = ModelState.ReadLine(nameof(form.CancelReason), form.CancelReason, Bounds.Conditions, Text["ReasonMissing"]);
        var problems = new List<Problem>();
        if (ModelState.IsValid)
        {
            var row = new ClassCancellation { ClassId = classId, CancelledAt = clock.GetUtcNow(), CancelledById = LeadId, Reason = reason };
            (await records.CancelAsync(row, cancellation)).IsKept(problems);
        }

        return await AnswerAsync(classId, new() { Cancellation = form }, nameof(form.CancelReason), problems, cancellation);
    }

    /// <summary>Keeps what the people of the class are to know before it.</summary>
    [HttpPost("briefings")]
    public async Task<IActionResult> Brief(Guid classId, BriefingForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        var place = ReadText(nameof(form.MeetingPlace), FormValues.ReadLine(form.MeetingPlace), Bounds.MeetingPlace);
        var kit = ReadText(nameof(form.Kit), Lines(form.Kit), Bounds.Reason);
        var weather = ReadText(nameof(form.Weather), Lines(form.Weather), Bounds.Reason);
        var problems = new List<Problem>();
        if (ModelState.IsValid) (await records.BriefAsync(form.Id, classId, place, kit, weather, LeadId, clock.GetUtcNow(), cancellation)).IsKept(problems);
        return await AnswerAsync(classId, new() { Briefing = form }, nameof(form.MeetingPlace), problems, cancellation);
    }

    /// <summary>Gives somebody's seat back.</summary>
    [HttpPost("returns")]
    public async Task<IActionResult> GiveBack(Guid classId, ReturnForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty || form.PersonId is not { } personId) return BadRequest();
        ModelState.Clear();
        var reason = ModelState.ReadLine(nameof(form.Reason), form.Reason, Bounds.Conditions, Text["ReasonMissing"]);
        var problems = new List<Problem>();
        if (ModelState.IsValid) (await records.GiveBackAsync(form.Id, classId, personId, LeadId, reason, clock.GetUtcNow(), cancellation)).IsKept(problems);
        return await AnswerAsync(classId, new() { RefusedPersonId = personId }, nameof(form.Reason), problems, cancellation);
    }

    /// <summary>Takes somebody off the waiting list.</summary>
    [HttpPost("waiting-ends")]
    public async Task<IActionResult> StopWaiting(Guid classId, WaitingEndForm form, CancellationToken cancellation)
    {
        if (form.PersonId is not { } personId) return BadRequest();
        if (await records.FindClassAsync(classId, cancellation) is null) return NotFound();
        await records.StopWaitingAsync(classId, personId, LeadId, clock.GetUtcNow(), cancellation);
        return this.SeeOther(Address(classId));
    }

    private Guid LeadId => HttpContext.Visitor().PersonId;

    private string Address(Guid classId) => $"/{HttpContext.PageLanguageOf().Tag()}/programme/classes/{classId}";

    private ClassPlan? Read(ChangeForm form, ClassLine day)
    {
        var on = FormValues.ReadDay(form.ToOn);
        if (on is null) ModelState.AddModelError(nameof(form.ToOn), Text["DayMissing"]);
        var startsAt = ClassHours.ReadTime(form.ToStartsAt);
        if (startsAt is null) ModelState.AddModelError(nameof(form.ToStartsAt), Text["StartMissing"]);
        var minutes = ClassHours.ReadMinutes(form.ToHours);
        if (minutes is null) ModelState.AddModelError(nameof(form.ToHours), Text["HoursMissing"]);
        var seats = ClassHours.ReadSeats(form.ToSeats);
        if (seats is null) ModelState.AddModelError(nameof(form.ToSeats), Text["SeatsMissing", ClassHours.MostSeats]);
        if (on is not { } heldOn || startsAt is not { } start || minutes is not { } length || seats is not { } count) return null;
        if (ClassHours.IsSkipped(heldOn, start, day.Zone)) ModelState.AddModelError(nameof(form.ToStartsAt), Text["StartSkipped"]);
        return new(heldOn, start, length, count);
    }

    private string ReadText(string field, string text, int most)
    {
        if (text.Length > most) ModelState.AddModelError(field, Written.TooLong(most, text.Length));
        return text;
    }

    // A line each, none empty: browsers send CRLF.
    private static string Lines(string? typed) =>
        string.Join('\n', (typed ?? "").Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    private async Task<IActionResult> AnswerAsync(
        Guid classId, ClassPageForms forms, string field, IReadOnlyList<Problem> problems, CancellationToken cancellation)
    {
        foreach (var problem in problems) ModelState.Add(field, problem);
        if (ModelState.IsValid) return this.SeeOther(Address(classId));
        var titles = shelf.Courses.Titles(HttpContext.PageLanguageOf());
        return await records.FindClassPageAsync(classId, forms, titles, clock.GetUtcNow(), cancellation) is { } page
            ? this.MendOrDispute("/Features/Classes/Show.cshtml", page, problems)
            : NotFound();
    }
}
