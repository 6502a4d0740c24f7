using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Appeals;

/// <summary>Everybody's appeals, for leads: what is due, taking up, deciding, and looking at what had rested on a result set aside.</summary>
public sealed class AppealCasesController(
    RecordsContext records, CourseShelf shelf, OurProvider provider, AppealLetters letters, TimeProvider clock, IStringLocalizer<AppealText> localizer) : Controller
{
    private const string CaseView = "/Features/Appeals/Case.cshtml";
    private const int MostSimilar = 5;

    private readonly IStringLocalizer<AppealText> Text = localizer;

    /// <summary>Open ones by due day, cases to look at, decided ones.</summary>
    [HttpGet("/{language:language}/programme/appeals")]
    public async Task<IActionResult> List(CancellationToken cancellation)
    {
        var open = await records.OpenAppealsAsync(cancellation);
        var rested = await records.RestedCasesAsync(cancellation);
        var decided = await records.DecidedAppealsAsync(cancellation);
        return View("/Features/Appeals/List.cshtml", new AppealsPage(
            Today, open, rested, decided,
            await WordsAsync(open.Concat(decided).Select(one => one.Appeal.PersonId).Concat(rested.Select(one => one.PersonId))
                .Concat(open.Select(one => one.TakeUp?.LeadId).OfType<Guid>()), cancellation)));
    }

    /// <summary>One case.</summary>
    [HttpGet("/{language:language}/programme/appeals/{appealId:guid}")]
    public async Task<IActionResult> Show(Guid appealId, CancellationToken cancellation) =>
        await FindAsync(appealId, new(), new(), cancellation) is { } page ? View(CaseView, page) : NotFound();

    /// <summary>Takes it up; the appellant is told.</summary>
    [HttpPost("/{language:language}/programme/appeals/{appealId:guid}/taking-up")]
    public async Task<IActionResult> TakeUp(Guid appealId, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await records.FindAppealAsync(appealId, cancellation) is not { } found) return NotFound();
        var letter = found.TakeUp is null ? await letters.TakenUpAsync(found, LeadId, Today, clock.GetUtcNow(), cancellation) : null;
        var kept = await records.TakeUpAsync(appealId, LeadId, Today, letter, clock.GetUtcNow(), cancellation);
        return await AnswerAsync(appealId, kept, "TakeUp", new(), new(), cancellation);
    }

    /// <summary>Decides it, with the closing letter.</summary>
    [HttpPost("/{language:language}/programme/appeals/{appealId:guid}/outcome")]
    public async Task<IActionResult> Decide(Guid appealId, AppealOutcomeForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await records.FindAppealAsync(appealId, cancellation) is not { } found) return NotFound();
        var reason = ReadText(form.Reason, nameof(form.Reason), Text["ReasonMissing"]);
        if (form.Outcome is null) ModelState.AddModelError(nameof(form.Outcome), Text["OutcomeMissing"]);
        if (!form.NoPart) ModelState.AddModelError(nameof(form.NoPart), Text["NoPartMissing"]);
        if (reason is null || form.Outcome is not { } outcome || !ModelState.IsValid) return await MendAsync(appealId, form, new(), cancellation);

        var now = clock.GetUtcNow();
        var decision = new AppealDecisionRecord
        {
            AppealId = appealId, Outcome = outcome, Remedy = outcome == AppealOutcome.NotUpheld ? null : form.Remedy, Reason = reason, LeadId = LeadId,
            DecidedOn = provider.DayOf(now), KeptAt = now,
        };
        var letter = found.Decision is null ? await letters.ClosingAsync(found, decision, now, cancellation) : null;
        return await AnswerAsync(appealId, await records.DecideAsync(decision, letter, cancellation), nameof(form.Outcome), form, new(), cancellation);
    }

    /// <summary>Keeps what a lead found who looked at what had rested on a result set aside.</summary>
    [HttpPost("/{language:language}/programme/appeals/{appealId:guid}/look")]
    public async Task<IActionResult> Look(Guid appealId, LookForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await records.FindAppealAsync(appealId, cancellation) is null) return NotFound();
        if (ReadText(form.Finding, nameof(form.Finding), Text["FindingMissing"]) is not { } finding) return await MendAsync(appealId, new(), form, cancellation);
        var look = new SetAsideLookRecord { AppealId = appealId, LeadId = LeadId, Finding = finding, LookedOn = Today, KeptAt = clock.GetUtcNow() };
        return await AnswerAsync(appealId, await records.KeepAsync(look, cancellation), nameof(form.Finding), new(), form, cancellation);
    }

    private Guid LeadId => HttpContext.Visitor().PersonId;

    private DateOnly Today => provider.DayOf(clock.GetUtcNow());

    private async Task<AppealCasePage?> FindAsync(Guid appealId, AppealOutcomeForm form, LookForm look, CancellationToken cancellation)
    {
        if (await records.FindAppealAsync(appealId, cancellation) is not { } found) return null;
        var (appeal, today) = (found.Appeal, Today);
        var leads = await records.IndependentLeadsAsync(appeal, today, cancellation);
        var file = await records.AppealFileAsync(appeal.PersonId, appeal.DecisionId, cancellation);
        var similar = found.Contested is not { } thing ? [] : (await records.DecidedAppealsAsync(cancellation))
            .Where(other => other.Appeal.Id != appealId && other.Appeal.Matter == appeal.Matter && other.Contested?.Of == thing.Of).Take(MostSimilar).ToList();
        Guid[] people =
        [
            appeal.PersonId, appeal.EnteredById, .. leads, .. similar.Select(one => one.Appeal.PersonId),
            .. new[] { found.TakeUp?.LeadId, found.Decision?.LeadId, found.Look?.LeadId }.OfType<Guid>(),
        ];
        return new(
            found, today, leads, [.. AppealIndependence.BondsOf(file, LeadId, today).Select(AppealKeeping.ProblemOf)], appeal.PersonId == LeadId,
            (await records.GetRecipientAsync(appeal.PersonId, cancellation)).Address is not null,
            (await records.RestedCasesAsync(cancellation)).FirstOrDefault(one => one.AppealId == appealId), similar, form, look, await WordsAsync(people, cancellation));
    }

    private async Task<AppealWords> WordsAsync(IEnumerable<Guid> people, CancellationToken cancellation) =>
        new(Text, shelf.Courses.Titles(HttpContext.PageLanguageOf()), await records.NamesOfAsync(people, Today, cancellation));

    private string? ReadText(string? typed, string field, string missing)
    {
        var text = typed?.Trim() ?? "";
        if (text.Length is > 0 and <= Bounds.Reason) return text;
        ModelState.AddModelError(field, text.Length == 0 ? missing : Written.TooLong(Bounds.Reason, text.Length));
        return null;
    }

    private async Task<IActionResult> AnswerAsync(
        Guid appealId, Kept kept, string field, AppealOutcomeForm form, LookForm look, CancellationToken cancellation)
    {
        if (kept is not Kept.Refused refused) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/appeals/{appealId}");
        foreach (var problem in refused.Problems) ModelState.Add(field, problem);
        var answer = await MendAsync(appealId, form, look, cancellation);
        if (refused.Problems.Any(problem => problem.Code is RecordsProblems.TakenUpBefore or RecordsProblems.AppealDecidedBefore or RecordsProblems.LookedBefore))
            Response.StatusCode = StatusCodes.Status409Conflict;
        return answer;
    }

    private async Task<IActionResult> MendAsync(Guid appealId, AppealOutcomeForm form, LookForm look, CancellationToken cancellation) =>
        await FindAsync(appealId, form, look, cancellation) is { } page ? this.Mend(CaseView, page) : NotFound();
}
