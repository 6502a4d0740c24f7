using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Certificates;
using Training.Web.Features.People;
using Training.Web.Features.Programme;
using Training.Web.Features.Shared;
using Training.Web.Languages;
using Training.Web.Problems;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Decisions;

/// <summary>Decisions about certifications: what waits, and each case with its evidence.</summary>
public sealed class DecisionsController(
    RecordsContext records, CourseShelf shelf, CertificateIssue papers, OurProvider provider, TimeProvider clock,
    IStringLocalizer<DecisionText> localizer) : Controller
{
    private readonly IStringLocalizer<DecisionText> Text = localizer;

    /// <summary>All that wait, longest first.</summary>
    [HttpGet("/{language:language}/programme/decisions")]
    public async Task<IActionResult> List(int? page, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var waiting = await records.WaitingDecisionsAsync(shelf.Courses, visitor.Today, cancellation);
        var turning = Turning.To(page, waiting.Count, $"/{Tag}/programme/decisions?");
        var shown = waiting.Skip(turning.Before).Take(Turning.Rows).ToList();
        var names = await records.NamesOfAsync(shown.Select(one => one.PersonId), visitor.Today, cancellation);
        return View(new DecisionsPage(visitor.Today, shown, waiting.Count, names, shelf.Courses.Titles(HttpContext.PageLanguageOf()), turning));
    }

    /// <summary>One case, its evidence side by side with what the scheme asks, and the form.</summary>
    [HttpGet("/{language:language}/programme/people/{personId:guid}/decisions/{schemeId}")]
    public async Task<IActionResult> Show(Guid personId, string schemeId, CancellationToken cancellation)
    {
        if (await FindCaseAsync(personId, schemeId, cancellation) is not { } found) return NotFound();
        return View(await PageAsync(found, new() { Id = Guid.CreateVersion7() }, before: null, cancellation));
    }

    /// <summary>Grants, with the paper, or refuses. The same form again is the same decision; its id with another content is a conflict.</summary>
    [HttpPost("/{language:language}/programme/people/{personId:guid}/decisions/{schemeId}")]
    public async Task<IActionResult> Decide(Guid personId, string schemeId, DecisionForm form, CancellationToken cancellation)
    {
        if (await FindCaseAsync(personId, schemeId, cancellation) is not { } found) return NotFound();
        if (form.Id == Guid.Empty || form.Verdict is not { } verdict) return BadRequest();
        if (await records.FindDecisionAsync(form.Id, cancellation) is { } stored)
        {
            if (IsSame(stored.Made, found, form)) return await KeptAsync(found, stored.Made, cancellation);
            ModelState.Clear();
            return await ConflictAsync(found, form, stored.Made, cancellation);
        }

        var made = verdict == DecisionVerdict.Grant ? await GrantAsync(found, form, cancellation) : Refuse(found, form);
        if (made is null) return this.Mend("Show", await PageAsync(found, form, before: null, cancellation));

        if (await records.KeepAsync(made, clock.GetUtcNow(), cancellation) is Kept.Refused refused)
        {
            foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Verdict), problem);
            var anew = await FindCaseAsync(personId, schemeId, cancellation) ?? found;
            return await ConflictAsync(anew, form, (await records.FindDecisionAsync(form.Id, cancellation))?.Made, cancellation);
        }

        return await KeptAsync(found, made, cancellation);
    }

    /// <summary>Keeps the written reason why a scorer who taught may count. A lead who may not decide writes none.</summary>
    [HttpPost("/{language:language}/programme/people/{personId:guid}/decisions/{schemeId}/separation-reasons")]
    public async Task<IActionResult> Except(Guid personId, string schemeId, SeparationReasonForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (form.SheetId == Guid.Empty) return BadRequest();
        if (await FindCaseAsync(personId, schemeId, cancellation) is not { } found) return NotFound();
        if (!await records.Scoresheets.AnyAsync(sheet => sheet.FormId == form.SheetId && sheet.CandidateId == personId, cancellation)) return NotFound();
        var typed = new DecisionForm { Id = Guid.CreateVersion7(), Reason = form.Reason };
        if (found.Hindrances.Count > 0) ModelState.AddModelError(nameof(typed.Verdict), Text["NotRefused"]);
        if (ReadReason(form.Reason, $"{form.SheetId}-Reason") is { } reason && ModelState.IsValid)
        {
            var kept = await records.KeepSeparationReasonAsync(
                form.SheetId, found.Lead.PersonId, reason, found.On, clock.GetUtcNow(), cancellation);
            if (kept is not Kept.Refused refused) return this.SeeOther($"{Person(personId)}/decisions/{schemeId}");
            foreach (var problem in refused.Problems) ModelState.Add($"{form.SheetId}-Reason", problem);
        }

        return this.Mend("Show", await PageAsync(found, typed, before: null, cancellation) with { ExceptionOf = form.SheetId });
    }

    private string Tag => HttpContext.PageLanguageOf().Tag();

    private string Person(Guid personId) => $"/{Tag}/programme/people/{personId}";

    private async Task<DecisionCase?> FindCaseAsync(Guid personId, string schemeId, CancellationToken cancellation) =>
        shelf.Find(schemeId) is { } course
            ? await DecisionCase.FindAsync(
                records, personId, course, HttpContext.Visitor().PersonId, provider.Zone, clock.GetUtcNow(), cancellation)
            : null;

    // The same post again comes here too: where the server was stopped between decision and paper, the paper is made now; else it is there.
    private async Task<IActionResult> KeptAsync(DecisionCase found, MadeDecision made, CancellationToken cancellation)
    {
        // By the text that decided: another may serve by now.
        if (made.Decision is Decision.Granted granted && made.CourseHash == found.Course.Hash)
            await papers.IssueAsync(records, PaperOrder.First(made, found.File.CountedFrom(granted)), found.Course, clock.GetUtcNow(), [], cancellation);
        return this.SeeOther(Person(made.PersonId));
    }

    /// <summary>The grant, where the rules say so and its paper can be printed; null otherwise, nothing is written then.</summary>
    private async Task<MadeDecision?> GrantAsync(DecisionCase found, DecisionForm form, CancellationToken cancellation)
    {
        if (found.Decision is not Decision.Granted granted)
        {
            ModelState.AddModelError(nameof(form.Verdict), Text["NotGranted"]);
            return null;
        }

        var made = found.Grant(form.Id);
        var problems = new List<Problem>();
        await papers.CheckAsync(records, PaperOrder.First(made, found.File.CountedFrom(granted)), found.Course, clock.GetUtcNow(), problems, cancellation);
        if (problems.Count == 0) return made;
        ModelState.AddModelError(nameof(form.Verdict), Text["PaperCannotBePrinted"]);
        // The languages share the name: what is wrong with it in one is wrong in both.
        foreach (var problem in problems.DistinctBy(problem => (problem.Code, problem.Place)))
            ModelState.AddModelError(nameof(form.Verdict), ProblemText.Line(problem, CultureInfo.CurrentUICulture));
        return null;
    }

    private MadeDecision? Refuse(DecisionCase found, DecisionForm form)
    {
        var reason = ReadReason(form.Reason, nameof(form.Reason));
        if (found.Hindrances.Count > 0) ModelState.AddModelError(nameof(form.Verdict), Text["NotRefused"]);
        return reason is not null && ModelState.IsValid ? found.Refuse(form.Id, reason) : null;
    }

    private string? ReadReason(string? typed, string field)
    {
        var reason = typed?.Trim() ?? "";
        if (reason.Length is > 0 and <= Bounds.Reason) return reason;
        ModelState.AddModelError(field, reason.Length == 0 ? Text["ReasonMissing"] : Text["ReasonTooLong", Bounds.Reason, reason.Length]);
        return null;
    }

    private static bool IsSame(MadeDecision stored, DecisionCase found, DecisionForm form)
    {
        if (stored.PersonId != found.File.PersonId || stored.SchemeId != found.Course.Scheme.Id || stored.Decider != found.Lead) return false;
        return (stored.Decision, form.Verdict) switch
        {
            (Decision.Granted, DecisionVerdict.Grant) => true,
            (Decision.NotYet notYet, DecisionVerdict.Refuse) =>
                notYet.Reasons.Any(reason => reason is DecisionReason.RefusedByLead(var written) && written == form.Reason?.Trim()),
            _ => false,
        };
    }

    private async Task<IActionResult> ConflictAsync(
        DecisionCase found, DecisionForm form, MadeDecision? stored, CancellationToken cancellation)
    {
        var before = stored is null ? null : new EarlierDecision(stored.Decision is Decision.Granted, stored.DecidedOn);
        // A new id: what is typed may be sent again as a decision of its own, once the lead has read what was kept.
        var fresh = new DecisionForm { Id = Guid.CreateVersion7(), Verdict = form.Verdict, Reason = form.Reason };
        ModelState.Remove(nameof(form.Id));
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("Show", await PageAsync(found, fresh, before, cancellation));
    }

    private async Task<DecisionPage> PageAsync(DecisionCase found, DecisionForm form, EarlierDecision? before, CancellationToken cancellation)
    {
        var personId = found.File.PersonId;
        var results = await records.ResultsOfAsync(personId, cancellation);
        var rows = DecisionRow.Of(found, results);
        var taughtBy = found.File.TaughtBy.Where(teaching => teaching.On <= found.On).GroupBy(teaching => teaching.InstructorId)
            .Select(group => (group.Key, group.Max(teaching => teaching.On))).ToList();
        var scoredBy = rows.SelectMany(row => row.Results.Where(result => row.RestsOn.Count == 0 || row.RestsOn.Any(id => id == result.ResultId)))
            .Select(result => result.ScorerId).OfType<Guid>().Distinct().ToList();
        Guid[] people =
        [
            personId, found.Lead.PersonId, .. taughtBy.Select(one => one.Key), .. results.Select(result => result.ScorerId).OfType<Guid>(),
        ];
        var names = await records.NamesOfAsync(people, found.On, cancellation);
        var words = new DecisionWords(Text, shelf.Courses.Titles(HttpContext.PageLanguageOf()), names);
        return new(personId, found, rows, words, taughtBy, scoredBy, form, before);
    }
}
