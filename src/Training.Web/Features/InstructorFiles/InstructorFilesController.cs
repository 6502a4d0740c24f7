using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.InstructorFiles;

/// <summary>The files of instructors: what each may teach and score, and what stands in the way. Kept by leads, read and confirmed by themselves.</summary>
public sealed class InstructorFilesController(
    RecordsContext records, CourseShelf shelf, InstructorReading reading, TimeProvider clock, IStringLocalizer<InstructorText> localizer) : Controller
{
    private readonly IStringLocalizer<InstructorText> Text = localizer;

    /// <summary>All instructors, with what ends soon.</summary>
    [HttpGet("/{language:language}/programme/instructors")]
    public async Task<IActionResult> List(CancellationToken cancellation) => View(await reading.ListAsync(HttpContext.PageLanguageOf(), cancellation));

    /// <summary>One file, with its forms.</summary>
    [HttpGet("/{language:language}/programme/instructors/{personId:guid}")]
    public async Task<IActionResult> Show(Guid personId, CancellationToken cancellation) =>
        await reading.FindAsync(personId, VisitorId, HttpContext.PageLanguageOf(), null, null, cancellation) is { } page ? View(page) : NotFound();

    /// <summary>The visitor's own file.</summary>
    [HttpGet("/{language:language}/my/instructor-file")]
    public async Task<IActionResult> Own(CancellationToken cancellation) =>
        View("Show", await reading.FindAsync(VisitorId, VisitorId, HttpContext.PageLanguageOf(), null, null, cancellation));

    /// <summary>Keeps that the visitor states that nothing else stands in the way.</summary>
    [HttpPost("/{language:language}/my/instructor-file/statements")]
    public async Task<IActionResult> State(Guid id, CancellationToken cancellation)
    {
        if (id == Guid.Empty) return BadRequest();
        await records.KeepAsync(new InstructorStatement { Id = id, PersonId = VisitorId, StatedOn = reading.Today, KeptAt = clock.GetUtcNow() }, cancellation);
        return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/my/instructor-file");
    }

    /// <summary>Writes competence down.</summary>
    [HttpPost("/{language:language}/programme/instructors/{personId:guid}/competences")]
    public async Task<IActionResult> Add(Guid personId, CompetenceForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (form.Id == Guid.Empty) return BadRequest();
        var rows = Read(personId, form);
        return rows.Count == 0 || !ModelState.IsValid
            ? await MendAsync(personId, form, null, cancellation)
            : await AnswerAsync(personId, await records.KeepAsync(rows, reading.Today, cancellation), nameof(form.For), form, null, cancellation);
    }

    /// <summary>Ends a competence today.</summary>
    [HttpPost("/{language:language}/programme/instructors/{personId:guid}/competence-ends")]
    public async Task<IActionResult> End(Guid personId, EntryEndForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (ReadText(form.EndReason, nameof(form.EndReason), Text["ReasonMissing"]) is not { } reason) return await MendAsync(personId, null, null, cancellation);
        var end = new InstructorCompetenceEnd { CompetenceId = form.EntryId, EndsOn = reading.Today, Reason = reason, LeadId = VisitorId, KeptAt = clock.GetUtcNow() };
        return await AnswerAsync(personId, await records.EndAsync(personId, end, reading.Today, cancellation), nameof(form.EndReason), null, null, cancellation);
    }

    /// <summary>Writes a conflict down.</summary>
    [HttpPost("/{language:language}/programme/instructors/{personId:guid}/conflicts")]
    public async Task<IActionResult> AddConflict(Guid personId, ConflictForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (form.Id == Guid.Empty) return BadRequest();
        var words = ReadText(form.Words, nameof(form.Words), Text["WordsMissing"]);
        var startsOn = FormValues.ReadDay(form.ConflictStartsOn);
        if (startsOn is null) ModelState.AddModelError(nameof(form.ConflictStartsOn), Text["DayMissing"]);
        if (form.EmployerId is null) ModelState.AddModelError(nameof(form.EmployerId), Text["EmployerMissing"]);
        var badge = FormValues.ReadLine(form.Badge);
        Guid? other = badge.Length > 0 && form.EmployerId is { } of ? await records.FindPersonByBadgeAsync(of, badge, cancellation) : null;
        if (badge.Length > 0 && other is null) ModelState.AddModelError(nameof(form.Badge), Text["BadgeUnknown", badge]);
        if (words is null || startsOn is not { } from || !ModelState.IsValid) return await MendAsync(personId, null, form, cancellation);
        var row = new InstructorConflict
        {
            Id = form.Id, PersonId = personId, OtherPersonId = other, EmployerId = other is null ? form.EmployerId : null, Words = words, StartsOn = from, LeadId = VisitorId,
            KeptAt = clock.GetUtcNow(),
        };
        return await AnswerAsync(personId, await records.KeepAsync(row, reading.Today, cancellation), nameof(form.Words), null, form, cancellation);
    }

    /// <summary>Ends a conflict today.</summary>
    [HttpPost("/{language:language}/programme/instructors/{personId:guid}/conflict-ends")]
    public async Task<IActionResult> EndConflict(Guid personId, EntryEndForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (ReadText(form.EndReason, nameof(form.EndReason), Text["ReasonMissing"]) is not { } reason) return await MendAsync(personId, null, null, cancellation);
        var end = new InstructorConflictEnd { ConflictId = form.EntryId, EndsOn = reading.Today, Reason = reason, LeadId = VisitorId, KeptAt = clock.GetUtcNow() };
        return await AnswerAsync(personId, await records.EndAsync(personId, end, reading.Today, cancellation), nameof(form.EndReason), null, null, cancellation);
    }

    private Guid VisitorId => HttpContext.Visitor().PersonId;

    private List<InstructorCompetence> Read(Guid personId, CompetenceForm form)
    {
        var evidence = ReadText(form.Evidence, nameof(form.Evidence), Text["EvidenceMissing"]);
        var (from, through) = (FormValues.ReadDay(form.StartsOn), FormValues.ReadDay(form.EndsOn));
        if (from is null) ModelState.AddModelError(nameof(form.StartsOn), Text["DayMissing"]);
        if (through is null) ModelState.AddModelError(nameof(form.EndsOn), Text["DayMissing"]);
        var course = form.CourseId is { } id ? shelf.Find(id) : null;
        if (course is null) ModelState.AddModelError(nameof(form.CourseId), Text["CourseMissing"]);
        var what = (from duty in Enum.GetValues<Duty>() from subject in Enum.GetValues<Subject>() where form.For.Contains($"{duty}-{subject}") select (duty, subject)).ToList();
        if (what.Count == 0) ModelState.AddModelError(nameof(form.For), Text["ForMissing"]);
        if (evidence is null || course is null || from is not { } startsOn || through is not { } endsOn) return [];
        return what.ConvertAll(one => new InstructorCompetence
        {
            Id = Guid.CreateVersion7(), EntryId = form.Id, PersonId = personId, CourseId = course.Id, Duty = one.duty, Subject = one.subject, StartsOn = startsOn, EndsOn = endsOn,
            Evidence = evidence, LeadId = VisitorId, KeptAt = clock.GetUtcNow(),
        });
    }

    private string? ReadText(string? typed, string field, string missing)
    {
        var text = typed?.Trim() ?? "";
        if (text.Length is > 0 and <= Bounds.Reason) return text;
        ModelState.AddModelError(field, text.Length == 0 ? missing : Written.TooLong(Bounds.Reason, text.Length));
        return null;
    }

    private async Task<IActionResult> AnswerAsync(
        Guid personId, Kept kept, string field, CompetenceForm? form, ConflictForm? conflict, CancellationToken cancellation)
    {
        if (kept is not Kept.Refused refused) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/instructors/{personId}");
        foreach (var problem in refused.Problems) ModelState.Add(field, problem);
        var answer = await MendAsync(personId, form, conflict, cancellation);
        if (refused.Problems.Any(problem => problem.Code == RecordsProblems.OtherContent)) Response.StatusCode = StatusCodes.Status409Conflict;
        return answer;
    }

    private async Task<IActionResult> MendAsync(Guid personId, CompetenceForm? form, ConflictForm? conflict, CancellationToken cancellation) =>
        await reading.FindAsync(personId, VisitorId, HttpContext.PageLanguageOf(), form, conflict, cancellation) is { } page ? this.Mend("Show", page) : NotFound();
}
