using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Appeals;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Scoring;

/// <summary>The candidate's own word to a signed sheet: agreed, objected, or not signed. An objection is an appeal.</summary>
public sealed class CandidateWordsController(
    RecordsContext records, CoursesByHash courses, OurProvider provider, AppealLetters letters, TimeProvider clock, IStringLocalizer<ScoringText> localizer) : Controller
{
    private readonly IStringLocalizer<ScoringText> Text = localizer;

    /// <summary>Keeps the word. A sheet that is not signed leads back to it; the same form again is one word.</summary>
    [HttpPost("/{language:language}/scoresheets/{sheetId:guid}/candidate-word")]
    public async Task<IActionResult> Say(Guid sheetId, CandidateWordForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await records.FindOpenSheetAsync(courses, HttpContext.Visitor(), sheetId, cancellation) is not { } sheet) return NotFound();
        var signed = await records.Scoresheets.Where(row => row.FormId == sheetId && row.Copy == 1)
            .Select(row => new { row.Id, row.CandidateId, row.ContentHash, row.ChecklistId, row.Subject, row.ScoredOn }).SingleOrDefaultAsync(cancellation);
        var address = $"/{HttpContext.PageLanguageOf().Tag()}/scoresheets/{sheetId}";
        if (signed is null) return this.SeeOther(address);
        if (form.Id == Guid.Empty) return BadRequest();

        var (name, because) = Read(form);
        if (form.Word is { } word && ModelState.IsValid)
        {
            var (now, instructorId) = (clock.GetUtcNow(), HttpContext.Visitor().PersonId);
            var row = new CandidateWordRecord
            {
                Id = form.Id, ScoresheetId = signed.Id, Word = word, SignedName = name, Reason = because, ContentHash = signed.ContentHash,
                Language = HttpContext.PageLanguageOf(), InstructorId = instructorId, KeptAt = now,
            };
            var appeal = word != CandidateWord.Objected ? null : new NewAppeal(
                form.Id, signed.CandidateId, AppealMatter.Scoresheet, sheetId, because!, instructorId, provider.DayOf(now), provider.Zone); // not null: read above
            var receipt = appeal is null ? null
                : await letters.ReceiptAsync(appeal, new(signed.ChecklistId, signed.Subject, signed.ScoredOn), now, cancellation);
            var kept = await records.KeepAsync(row, appeal, receipt, cancellation);
            if (kept is not Kept.Refused refused) return this.SeeOther(address);
            foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Word), problem);
            Response.StatusCode = StatusCodes.Status409Conflict;
            return View("/Features/Scoring/Signed.cshtml", await records.GetSignedPageAsync(sheet, form, cancellation));
        }

        return this.Mend("/Features/Scoring/Signed.cshtml", await records.GetSignedPageAsync(sheet, form, cancellation));
    }

    // What does not belong to the chosen word is not kept: a name beside "did not sign" would be nobody's signature.
    private (string? Name, string? Because) Read(CandidateWordForm form)
    {
        string? name = null, because = null;
        if (form.Word is null) ModelState.AddModelError(nameof(form.Word), Text["WordMissing"]);
        if (form.Word is CandidateWord.Agreed or CandidateWord.Objected)
            name = ModelState.ReadLine(nameof(form.CandidateName), form.CandidateName, Bounds.Name, Text["CandidateNameMissing"]);
        if (form.Word is CandidateWord.Objected or CandidateWord.DidNotSign)
        {
            because = form.Because?.Trim() ?? "";
            if (because.Length == 0)
                ModelState.AddModelError(nameof(form.Because), form.Word == CandidateWord.Objected ? Text["ObjectionMissing"] : Text["NotSignedMissing"]);
            if (because.Length > Bounds.Reason) ModelState.AddModelError(nameof(form.Because), Written.TooLong(Bounds.Reason, because.Length));
        }

        return (name, because);
    }
}
