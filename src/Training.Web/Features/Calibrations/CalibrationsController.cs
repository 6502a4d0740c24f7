using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Calibrations;

/// <summary>Rounds in which all instructors score the same recorded demonstration: opened and closed by leads, marked by instructors.</summary>
public sealed class CalibrationsController(
    RecordsContext records, CourseShelf shelf, CoursesByHash courses, TimeProvider clock, IStringLocalizer<CalibrationText> localizer) : Controller
{
    private readonly IStringLocalizer<CalibrationText> Text = localizer;

    private Language Language => HttpContext.PageLanguageOf();

    private Guid VisitorId => HttpContext.Visitor().PersonId;

    /// <summary>All rounds, and the form of a new one.</summary>
    [HttpGet("/{language:language}/programme/calibrations")]
    public async Task<IActionResult> Rounds(CancellationToken cancellation) =>
        View("Rounds", await RoundsAsync(new() { Id = Guid.CreateVersion7() }, cancellation));

    /// <summary>Opens a round.</summary>
    [HttpPost("/{language:language}/programme/calibrations")]
    public async Task<IActionResult> Open(RoundForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        var course = shelf.Courses.FirstOrDefault(course => course.Checklists.Any(checklist => checklist.Id == form.ChecklistId));
        if (course is null) ModelState.AddModelError(nameof(form.ChecklistId), Text["ChecklistMissing"]);
        var title = ModelState.ReadLine(nameof(form.Title), form.Title, Bounds.Name, Text["TitleMissing"]);
        var recording = ModelState.ReadLine(nameof(form.Recording), form.Recording, Bounds.Conditions, Text["RecordingMissing"]);
        if (course is null || !ModelState.IsValid) return this.Mend("Rounds", await RoundsAsync(form, cancellation));

        await records.OpenAsync(
            new()
            {
                Id = form.Id, CourseId = course.Id, CourseHash = course.Hash, ChecklistId = form.ChecklistId!, Title = title, Recording = recording,
                LeadId = VisitorId, OpenedAt = clock.GetUtcNow(),
            },
            cancellation);
        return this.SeeOther($"/{Language.Tag()}/programme/calibrations/{form.Id}");
    }

    /// <summary>One round: who sent marks, and once it is closed what all marked.</summary>
    [HttpGet("/{language:language}/programme/calibrations/{roundId:guid}")]
    public async Task<IActionResult> Round(Guid roundId, CancellationToken cancellation)
    {
        if (await FindAsync(roundId, cancellation) is not ({ } progress, { } checklist)) return NotFound();
        IReadOnlyList<PerformanceSheet> sheets = progress.IsOpen ? [] : await records.CalibrationSheetsAsync(roundId, cancellation);
        var agreement = progress.IsOpen
            ? null
            : ScorerAgreement.Of(checklist, [new(roundId, DateOnly.FromDateTime(progress.Round.OpenedAt.UtcDateTime), sheets)]);
        var names = await records.NamesOfAsync([progress.Round.LeadId, .. progress.SentBy], HttpContext.Visitor().Today, cancellation);
        return View("Round", new RoundPage(progress, checklist, sheets, agreement, names));
    }

    /// <summary>Closes a round: from then on everybody sees what all marked.</summary>
    [HttpPost("/{language:language}/programme/calibrations/{roundId:guid}/closing")]
    public async Task<IActionResult> Close(Guid roundId, CancellationToken cancellation)
    {
        if (await FindAsync(roundId, cancellation) is not ({ } progress, _)) return NotFound();
        await records.CloseAsync(new() { RoundId = progress.Round.Id, LeadId = VisitorId, ClosedAt = clock.GetUtcNow() }, cancellation);
        return this.SeeOther($"/{Language.Tag()}/programme/calibrations/{roundId}");
    }

    /// <summary>An instructor's rounds.</summary>
    [HttpGet("/{language:language}/calibrations")]
    public async Task<IActionResult> OwnRounds(CancellationToken cancellation) =>
        View("OwnRounds", new OwnRoundsPage(await records.CalibrationsAsync(cancellation), VisitorId, shelf.Courses.Titles(Language)));

    /// <summary>The marks of one round: to give, or as they were given.</summary>
    [HttpGet("/{language:language}/calibrations/{roundId:guid}")]
    public async Task<IActionResult> OwnRound(Guid roundId, CancellationToken cancellation) =>
        await FindAsync(roundId, cancellation) is ({ } progress, { } checklist)
            ? View("OwnRound", await OwnRoundAsync(progress, checklist, new() { Id = Guid.CreateVersion7() }, cancellation))
            : NotFound();

    /// <summary>Sends the marks. They stand as they are sent.</summary>
    [HttpPost("/{language:language}/calibrations/{roundId:guid}/marks")]
    public async Task<IActionResult> Send(Guid roundId, MarksForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        if (await FindAsync(roundId, cancellation) is not ({ } progress, { } checklist)) return NotFound();
        ModelState.Clear();
        foreach (var step in form.Missing(checklist)) ModelState.AddModelError(step.Id, Text["MarkMissing"]);
        if (ModelState.IsValid)
        {
            var marks = checklist.Steps.ToDictionary(step => step.Id, step => form.Marks[step.Id], StringComparer.Ordinal);
            var sheet = new CalibrationSheet
            {
                Id = form.Id, RoundId = roundId, InstructorId = VisitorId, Outcome = RecordedDemonstration.OutcomeOf(checklist, marks),
                SentAt = clock.GetUtcNow(),
                Marks = [.. marks.Select(mark => new CalibrationMark { SheetId = form.Id, StepId = mark.Key, Observation = mark.Value })],
            };
            foreach (var problem in await records.KeepAsync(sheet, cancellation)) ModelState.Add("Top", problem);
        }

        return ModelState.IsValid
            ? this.SeeOther($"/{Language.Tag()}/calibrations/{roundId}")
            : this.Mend("OwnRound", await OwnRoundAsync(progress, checklist, form, cancellation));
    }

    private async Task<(CalibrationProgress? Progress, Checklist? Checklist)> FindAsync(Guid roundId, CancellationToken cancellation)
    {
        if (await records.FindCalibrationAsync(roundId, cancellation) is not { } progress) return default;
        var course = await courses.FindAsync(records, progress.Round.CourseId, progress.Round.CourseHash, cancellation);
        return (progress, course?.Checklists.FirstOrDefault(checklist => checklist.Id == progress.Round.ChecklistId));
    }

    private async Task<RoundsPage> RoundsAsync(RoundForm form, CancellationToken cancellation) => new(
        await records.CalibrationsAsync(cancellation),
        shelf.Courses.Titles(Language),
        [.. shelf.Courses.SelectMany(course => course.Checklists).Select(checklist => (checklist.Id, checklist.Words[Language].Title))],
        form);

    private async Task<OwnRoundPage> OwnRoundAsync(CalibrationProgress progress, Checklist checklist, MarksForm form, CancellationToken cancellation)
    {
        var isSent = progress.SentBy.Contains(VisitorId);
        if (!isSent && progress.IsOpen) return new(progress, checklist, form, isSent, []);
        var sheets = await records.CalibrationSheetsAsync(progress.Round.Id, cancellation);
        if (sheets.FirstOrDefault(sheet => sheet.ScorerId == VisitorId) is { } own) form.Marks = own.Marks.ToDictionary(StringComparer.Ordinal);
        // While the round is open nobody learns what a colleague marked.
        return new(progress, checklist, form, isSent, progress.IsOpen ? [] : [.. sheets.Where(sheet => sheet.ScorerId != VisitorId)]);
    }
}
