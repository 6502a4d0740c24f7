using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Corrections;

/// <summary>When a question turns out wrong: see who would pass or fail anew, then grade again, then look at the certifications that rest on it.</summary>
public sealed class CorrectionsController(
    RecordsContext records, CourseShelf shelf, CorrectionReading corrections, Regrading regrading, TimeProvider clock,
    IStringLocalizer<CorrectionText> localizer) : Controller
{
    private readonly IStringLocalizer<CorrectionText> Text = localizer;

    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>Corrections of a course so far.</summary>
    [HttpGet("/{language:language}/programme/courses/{courseId}/corrections")]
    public async Task<IActionResult> List(string courseId, CancellationToken cancellation) =>
        shelf.Find(courseId) is { } course
            ? View(new CorrectionsPage(courseId, course.Scheme.Words[Language].Title, await records.CorrectionsOfAsync(courseId, cancellation)))
            : NotFound();

    /// <summary>Chooses what is to be done, and shows what it would change; nothing is kept.</summary>
    [HttpGet("/{language:language}/programme/courses/{courseId}/corrections/new")]
    public async Task<IActionResult> New(string courseId, CorrectionForm form, CancellationToken cancellation)
    {
        // Without a question there is nothing to correct yet: the list says where a correction starts.
        if (string.IsNullOrEmpty(form.Question)) return Redirect($"/{Language.Tag()}/programme/courses/{courseId}/corrections");
        return await FindAsync(courseId, form, cancellation) is (var course, { } shown) ? View(await PageAsync(course, shown, form, cancellation)) : NotFound();
    }

    /// <summary>Keeps the correction and grades again.</summary>
    [HttpPost("/{language:language}/programme/courses/{courseId}/corrections")]
    public async Task<IActionResult> Create(string courseId, CorrectionForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        if (await FindAsync(courseId, form, cancellation) is not (var course, { } shown)) return NotFound();
        if (form.Remedy is not { } remedy || (remedy == CorrectionRemedy.OtherKey && FindPresent(course, shown) is null)) return BadRequest();
        ModelState.Clear();
        var reason = ModelState.ReadLine(nameof(form.Reason), form.Reason, Bounds.Reason, Text["ReasonMissing"]);
        if (!ModelState.IsValid) return this.Mend("New", await PageAsync(course, shown, form, cancellation));

        var by = remedy == CorrectionRemedy.OtherKey ? course : null;
        var now = clock.GetUtcNow();
        var correction = new KeyCorrectionRecord
        {
            Id = form.Id, CourseId = course.Id, QuizId = course.Quiz.Id, QuestionId = shown.Id, QuestionVersion = shown.Version, Remedy = remedy,
            ByHash = by?.Hash, ByVersion = by?.Questions.Single(question => question.Id == shown.Id).Version, Reason = reason,
            LeadId = HttpContext.Visitor().PersonId, MadeAt = now,
        };
        if (!await records.KeepAsync(correction, SetAside(course, correction), cancellation))
        {
            // The same form again is the same correction; with other entries, the first one stands.
            var kept = await FindAsync(form.Id, cancellation);
            if (kept is null || !kept.IsAs(correction)) return Conflict();
            correction = kept;
        }

        await regrading.ApplyAsync(records, correction, cancellation);
        return this.SeeOther($"/{Language.Tag()}/programme/corrections/{correction.Id}");
    }

    /// <summary>What a correction changed, and what it leaves to be looked at.</summary>
    [HttpGet("/{language:language}/programme/corrections/{correctionId:guid}")]
    public async Task<IActionResult> Show(Guid correctionId, CancellationToken cancellation) =>
        await FindAsync(correctionId, cancellation) is { } correction ? View("Show", await PageAsync(correction, cancellation)) : NotFound();

    /// <summary>Goes on where the grading was broken off.</summary>
    [HttpPost("/{language:language}/programme/corrections/{correctionId:guid}/regrading")]
    public async Task<IActionResult> Regrade(Guid correctionId, CancellationToken cancellation)
    {
        if (await FindAsync(correctionId, cancellation) is not { } correction) return NotFound();
        await regrading.ApplyAsync(records, correction, cancellation);
        return this.SeeOther($"/{Language.Tag()}/programme/corrections/{correctionId}");
    }

    /// <summary>Keeps what a lead concluded about a certification that rests on a changed result.</summary>
    [HttpPost("/{language:language}/programme/corrections/{correctionId:guid}/cases/{decisionId:guid}")]
    public async Task<IActionResult> Conclude(Guid correctionId, Guid decisionId, ConclusionForm form, CancellationToken cancellation)
    {
        if (await FindAsync(correctionId, cancellation) is not { } correction) return NotFound();
        var visitor = HttpContext.Visitor();
        var cases = await records.OpenCorrectionCasesAsync(visitor.Today, cancellation);
        if (!cases.Any(one => one.CorrectionId == correctionId && one.DecisionId == decisionId))
            return this.SeeOther($"/{Language.Tag()}/programme/corrections/{correctionId}");
        ModelState.Clear();
        var conclusion = ModelState.ReadLine(decisionId.ToString(), form.Conclusion, Bounds.Reason, Text["ConclusionMissing"]);
        if (ModelState.IsValid)
        {
            foreach (var problem in await records.ConcludeAsync(
                new() { CorrectionId = correctionId, DecisionId = decisionId, LeadId = visitor.PersonId, Conclusion = conclusion, ConcludedAt = clock.GetUtcNow() },
                cancellation))
            {
                ModelState.Add(decisionId.ToString(), problem);
            }
        }

        return ModelState.IsValid
            ? this.SeeOther($"/{Language.Tag()}/programme/corrections/{correctionId}")
            : this.Mend("Show", await PageAsync(correction, cancellation));
    }

    private static Question? FindPresent(Course course, Question shown) =>
        course.Questions.FirstOrDefault(question => question.Version != shown.Version && KeyCorrection.Fits(shown, question));

    // What serves and is wrong must not be drawn again; an earlier text is drawn by nobody.
    private static QuestionReview? SetAside(Course course, KeyCorrectionRecord correction) =>
        course.Questions.Any(question => question.Id == correction.QuestionId && question.Version == correction.QuestionVersion)
            ? new()
            {
                FormId = correction.Id, CourseId = course.Id, QuestionId = correction.QuestionId, QuestionVersion = correction.QuestionVersion,
                Outcome = ReviewOutcome.SetAside, ReviewerId = correction.LeadId, ReviewedAt = correction.MadeAt,
            }
            : null;

    private async Task<(Course Course, Question? Shown)> FindAsync(string courseId, CorrectionForm form, CancellationToken cancellation)
    {
        if (shelf.Find(courseId) is not { } course) return default;
        return (course, await corrections.FindAskedAsync(records, course, form.Question ?? "", form.Version ?? "", cancellation));
    }

    private Task<KeyCorrectionRecord?> FindAsync(Guid correctionId, CancellationToken cancellation) =>
        records.KeyCorrections.AsNoTracking().SingleOrDefaultAsync(correction => correction.Id == correctionId, cancellation);

    private async Task<NewCorrectionPage> PageAsync(Course course, Question shown, CorrectionForm form, CancellationToken cancellation)
    {
        var present = FindPresent(course, shown);
        KeyCorrection? correction = form.Remedy switch
        {
            CorrectionRemedy.LeaveOut => new KeyCorrection.LeaveOut(shown.Id, shown.Version),
            CorrectionRemedy.OtherKey when present is not null => new KeyCorrection.OtherKey(shown.Id, shown.Version, present),
            CorrectionRemedy.OtherKey or null => null,
        };
        var preview = correction is null ? null : await regrading.PreviewAsync(records, course, correction, cancellation);
        var names = await records.NamesOfAsync(
            (preview?.Changed ?? []).Take(CorrectionQueries.Most).Select(one => one.PersonId), HttpContext.Visitor().Today, cancellation);
        if (form.Id == Guid.Empty) form.Id = Guid.CreateVersion7();
        return new(course.Id, course.Scheme.Words[Language].Title, form, shown, present, preview, names);
    }

    private async Task<CorrectionPage> PageAsync(KeyCorrectionRecord correction, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var changed = await records.RegradedAsync(correction.Id, cancellation);
        var cases = (await records.OpenCorrectionCasesAsync(visitor.Today, cancellation)).Where(one => one.CorrectionId == correction.Id).ToList();
        var names = await records.NamesOfAsync(
            [correction.LeadId, .. changed.Select(one => one.PersonId), .. cases.Select(one => one.PersonId)], visitor.Today, cancellation);
        var titles = shelf.Courses.Titles(Language);
        return new(
            titles.Of(correction.CourseId), correction, names.GetValueOrDefault(correction.LeadId),
            await records.CountNotYetRegradedAsync(correction, cancellation), changed, cases, names, titles, visitor.PersonId);
    }
}
