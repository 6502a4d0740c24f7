using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Scoring;

/// <summary>One practical, scored step by step: a mark a page, a stop, an undo.</summary>
public sealed class ScoringController(RecordsContext records, CoursesByHash courses, TimeProvider clock) : Controller
{
    /// <summary>Where the sheet is: the instructions before the first mark, the step, the stop, or what was sent.</summary>
    [HttpGet("/{language:language}/scoresheets/{sheetId:guid}")]
    public async Task<IActionResult> Show(Guid sheetId, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is not { } sheet) return NotFound();
        if (sheet.IsSigned) return View("Signed", await records.GetSignedPageAsync(sheet, new() { Id = Guid.CreateVersion7(clock.GetUtcNow()) }, cancellation));
        return !sheet.IsRead || sheet is { Stop: null, Last: null } ? View("Instructions", sheet) : Redirect(Place(sheet));
    }

    /// <summary>Keeps that the instructions were read to the candidate.</summary>
    [HttpPost("/{language:language}/scoresheets/{sheetId:guid}/instructions")]
    public async Task<IActionResult> Read(Guid sheetId, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is null) return NotFound();
        await records.KeepReadAsync(sheetId, clock.GetUtcNow(), cancellation);
        return await GoOnAsync(sheetId, cancellation);
    }

    /// <summary>One step to mark.</summary>
    [HttpGet("/{language:language}/scoresheets/{sheetId:guid}/steps/{number:int}")]
    public async Task<IActionResult> Step(Guid sheetId, int number, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is not { } sheet || sheet.FindStep(number) is not { } step) return NotFound();
        // A stale address (the way back in the browser) leads to where the sheet is now; a step ahead of it cannot be marked yet.
        if (sheet.IsSigned || !sheet.IsRead || sheet.Stop is not null || number > (sheet.Next ?? number)) return Redirect(Place(sheet));
        return View(new StepPage(sheet, number, step, sheet.Checklist.Words[HttpContext.PageLanguageOf()]));
    }

    /// <summary>Keeps the mark of a step; a critical step that fails stops the practical.</summary>
    [HttpPost("/{language:language}/scoresheets/{sheetId:guid}/steps/{number:int}")]
    public async Task<IActionResult> Mark(Guid sheetId, int number, Observation? observation, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is not { } sheet || sheet.FindStep(number) is not { } step) return NotFound();
        if (observation is not { } seen || !Enum.IsDefined(seen)) return BadRequest();
        if (!sheet.IsRead) return this.SeeOther(Place(sheet));
        var mark = new StartedObservation { ScoresheetId = sheetId, StepId = step.Id, Position = number, Observation = seen, SavedAt = clock.GetUtcNow() };
        await records.MarkAsync(mark, ScoresheetGrader.StopsAt(step, seen) ? MarkEffect.Stops : MarkEffect.GoesOn, cancellation);
        return await GoOnAsync(sheetId, cancellation);
    }

    /// <summary>The plain screen of a stop.</summary>
    [HttpGet("/{language:language}/scoresheets/{sheetId:guid}/stop")]
    public async Task<IActionResult> Stop(Guid sheetId, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is not { } sheet) return NotFound();
        return sheet.IsSigned || !sheet.IsRead || sheet.Stop is null ? Redirect(Place(sheet)) : View(sheet);
    }

    /// <summary>Stops the practical at a step.</summary>
    [HttpPost("/{language:language}/scoresheets/{sheetId:guid}/stop")]
    public async Task<IActionResult> Halt(Guid sheetId, int step, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is not { } sheet) return NotFound();
        if (sheet.FindStep(step) is not { } at) return BadRequest();
        await records.StopAsync(sheetId, at.Id, cancellation);
        return await GoOnAsync(sheetId, cancellation);
    }

    /// <summary>Takes back the last mark or the stop, where that was at this step.</summary>
    [HttpPost("/{language:language}/scoresheets/{sheetId:guid}/undo")]
    public async Task<IActionResult> Undo(Guid sheetId, int step, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is not { } sheet) return NotFound();
        if (sheet.FindStep(step) is not { } at) return BadRequest();
        await records.UndoAsync(sheetId, at.Id, cancellation);
        return await GoOnAsync(sheetId, cancellation);
    }

    // What could not be kept (the sheet was signed or stopped meanwhile) shows itself: the page that follows says what stands.
    private async Task<IActionResult> GoOnAsync(Guid sheetId, CancellationToken cancellation) =>
        this.SeeOther(Place((await FindAsync(sheetId, cancellation))!)); // not null: it was there a moment ago, and sheets do not go away

    private Task<OpenSheet?> FindAsync(Guid sheetId, CancellationToken cancellation) =>
        records.FindOpenSheetAsync(courses, HttpContext.Visitor(), sheetId, cancellation);

    private string Place(OpenSheet sheet)
    {
        var address = $"/{HttpContext.PageLanguageOf().Tag()}/scoresheets/{sheet.Started.Id}";
        if (sheet.IsSigned || !sheet.IsRead) return address;
        if (sheet.Stop is not null) return $"{address}/stop";
        return sheet.Next is { } next ? $"{address}/steps/{next}" : $"{address}/sign-off";
    }
}
