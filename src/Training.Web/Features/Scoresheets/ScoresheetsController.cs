using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Scoresheets;

/// <summary>Scoresheets: their start, and what was sent. Marking and signing is <see cref="Scoring.ScoringController"/>.</summary>
public sealed class ScoresheetsController(RecordsContext records, CourseShelf shelf, TimeProvider clock) : Controller
{
    private static readonly HashSet<string> Fields = new(typeof(StartForm).GetProperties().Select(property => property.Name), StringComparer.Ordinal);

    /// <summary>The form before the first step.</summary>
    [HttpGet("/{language:language}/class-days/{classId:guid}/candidates/{personId:guid}/scoresheets")]
    public async Task<IActionResult> Form(Guid classId, Guid personId, string? checklist, string? subject, CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        var start = await records.FindStartAsync(shelf, HttpContext.Visitor(), classId, personId, checklist, now, cancellation);
        if (start is null) return NotFound();
        var plan = await records.FindBitePlanAsync(start.Day.SiteId, cancellation);
        var page = new StartPage(start, new StartForm
        {
            Id = Guid.CreateVersion7(now), Checklist = start.Checklist.Id, Subject = subject, Language = start.CandidateLanguage.Tag(),
            // What is kept is offered; the instructor has the plan on site in hand and corrects it.
            BitePlanCheckedOn = plan?.CheckedOn.Iso(),
        });
        // Else the page says why not, and has no form. What stands in the file may depend on what is chosen below.
        if (IsOpen(start)) Tell(await FileProblemsAsync(start, page.Form, cancellation));
        return View(page);
    }

    /// <summary>Starts a sheet; the same post again leads to the same sheet.</summary>
    [HttpPost("/{language:language}/class-days/{classId:guid}/candidates/{personId:guid}/scoresheets")]
    public async Task<IActionResult> Start(Guid classId, Guid personId, StartForm form, CancellationToken cancellation)
    {
        var (now, visitor) = (clock.GetUtcNow(), HttpContext.Visitor());
        var start = await records.FindStartAsync(shelf, visitor, classId, personId, form.Checklist, now, cancellation);
        if (start is null) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest(); // no form of ours is without
        ModelState.Clear(); // what could not be read is told in our own words
        if (!IsOpen(start)) return this.Mend("Form", new StartPage(start, form));

        var problems = new List<Problem>();
        var sheet = form.Read(start, now, problems);
        // A sheet without marks is graded as incomplete; what grading refuses about its head is refused before the first step.
        ScoresheetGrader.Grade(
            start.Course, sheet.ToScoresheet(start.Checklist, now, visitor.Name), new(start.Day.HeldOn, start.ModelPass), problems);
        problems.AddRange(await FileProblemsAsync(start, form, cancellation));
        Tell(problems);
        if (problems.Count > 0) return this.Mend("Form", new StartPage(start, form));

        var kept = await records.StartAsync(sheet, form.Choice, start.Today, cancellation);
        if (kept is not Kept.Refused refused) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/scoresheets/{sheet.Id}");
        Tell(refused.Problems);
        // Somebody else may have started meanwhile: the form shows what can be chosen now.
        start = await records.FindStartAsync(shelf, visitor, classId, personId, form.Checklist, now, cancellation) ?? start;
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("Form", new StartPage(start, form));
    }

    /// <summary>What the visitor signed, newest first.</summary>
    [HttpGet("/{language:language}/sent-scoresheets")]
    public async Task<IActionResult> Sent(CancellationToken cancellation) =>
        View(await records.SentScoresheetsOfAsync(HttpContext.Visitor(), cancellation));

    private Task<IReadOnlyList<Problem>> FileProblemsAsync(Start start, StartForm form, CancellationToken cancellation) => records.SheetProblemsAsync(
        start.InstructorId, start.CandidateId, start.Course.Id, form.ReadSubject(), LanguageTags.Find(form.Language ?? "") ?? start.CandidateLanguage,
        start.Day.HeldOn, cancellation);

    private bool IsOpen(Start start)
    {
        if (start.IsOneself) Tell([new(ScoresheetProblems.ScoredThemselves, Place.Of("instructor"))]);
        else if (!start.IsToday) Tell([new(ScoresheetFormProblems.NotToday, Place.Of("class"), Written.Date(start.Day.HeldOn))]);
        return ModelState.IsValid;
    }

    private void Tell(IEnumerable<Problem> problems) => ModelState.AddProblems(problems, Fields, HttpContext.PageLanguageOf().Culture());
}
