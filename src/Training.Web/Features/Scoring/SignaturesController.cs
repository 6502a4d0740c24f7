using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.Scoresheets;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Scoring;

/// <summary>The sign-off of a scoresheet: what is posted is what was on the screen, and that is what is kept.</summary>
public sealed class SignaturesController(RecordsContext records, CoursesByHash courses, TimeProvider clock) : Controller
{
    private const string Views = "~/Features/Scoring/";

    private static readonly HashSet<string> Typed = new(
        [nameof(SignOffForm.Impression), nameof(SignOffForm.Seconds), nameof(SignOffForm.Remarks), nameof(SignOffForm.SignedName)], StringComparer.Ordinal);

    /// <summary>All marks and particulars as they would be signed, and the signature.</summary>
    [HttpGet("/{language:language}/scoresheets/{sheetId:guid}/sign-off")]
    public async Task<IActionResult> Form(Guid sheetId, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is not { } sheet) return NotFound();
        if (sheet.IsSigned || !sheet.IsRead) return Redirect(Address(sheetId));
        var scoresheet = sheet.Started.ToScoresheet(sheet.Checklist, clock.GetUtcNow(), HttpContext.Visitor().Name);
        return View(Views + "SignOff.cshtml", new SignOffPage(sheet, SignOffForm.Of(scoresheet), await GradeAsync(sheet, scoresheet, cancellation)));
    }

    /// <summary>Signs and keeps. The same content again is the stored sheet; other content is kept beside it and answered 409.</summary>
    [HttpPost("/{language:language}/scoresheets/{sheetId:guid}/signature")]
    public async Task<IActionResult> Sign(Guid sheetId, SignOffForm form, CancellationToken cancellation)
    {
        if (await FindAsync(sheetId, cancellation) is not { } sheet) return NotFound();
        if (!ModelState.IsValid) return BadRequest(); // only hidden fields can be unreadable, and no page of ours makes them so

        var now = clock.GetUtcNow();
        var first = await records.FindScoresheetAsync(sheetId, cancellation);
        // A repeat may come days later: it is looked at as of the first signature, or a test call would seem too old.
        var scoresheet = form.Read(sheet.Started, first?.Sheet.SignedAt ?? now);
        var problems = new List<Problem>();
        await records.SignAsync(sheet, scoresheet, now, problems, cancellation);
        if (problems.Count == 0) return this.SeeOther(Address(sheetId));
        if (problems.Exists(problem => problem.Code is RecordsProblems.OtherContent or RecordsProblems.TryScored))
        {
            Response.StatusCode = StatusCodes.Status409Conflict;
            return View(Views + "Disputed.cshtml", new DisputedPage(sheet, problems.Exists(problem => problem.Code == RecordsProblems.OtherContent)));
        }

        ModelState.AddProblems(problems, Typed, HttpContext.PageLanguageOf().Culture());
        return this.Mend(Views + "SignOff.cshtml", new SignOffPage(sheet, form, await GradeAsync(sheet, scoresheet, cancellation)));
    }

    // Whether it can be signed is said before the name and the time are typed, so it is graded with the visitor's name and the limit in their places.
    private Task<ScoresheetResult?> GradeAsync(OpenSheet sheet, Scoresheet scoresheet, CancellationToken cancellation) => records.GradeAsync(
        sheet.Course,
        scoresheet with { SignedName = HttpContext.Visitor().Name, Seconds = scoresheet.IsWhole ? sheet.Checklist.TimeLimitSeconds : null },
        sheet.Zone, [], cancellation);

    private Task<OpenSheet?> FindAsync(Guid sheetId, CancellationToken cancellation) =>
        records.FindOpenSheetAsync(courses, HttpContext.Visitor(), sheetId, cancellation);

    private string Address(Guid sheetId) => $"/{HttpContext.PageLanguageOf().Tag()}/scoresheets/{sheetId}";
}
