using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.People;
using Training.Web.Languages;
using Training.Web.Provider;

namespace Training.Web.Features.Sanctions;

/// <summary>What leads do to a certification: suspend, reinstate, propose to withdraw and confirm it. The page is the person's.</summary>
public sealed class SanctionsController(
    RecordsContext records, PersonReading reading, OurProvider provider, TimeProvider clock, IStringLocalizer<SanctionText> localizer) : Controller
{
    private const string Page = "/Features/People/Show.cshtml";

    private readonly IStringLocalizer<SanctionText> Text = localizer;

    /// <summary>Suspends from today on, until it is settled.</summary>
    [HttpPost("/{language:language}/programme/people/{personId:guid}/certifications/{schemeId}/suspensions")]
    public async Task<IActionResult> Suspend(Guid personId, string schemeId, SanctionForm form, CancellationToken cancellation)
    {
        form.Place = $"{schemeId}-suspension";
        if (form.Id == Guid.Empty) return BadRequest();
        if (await FindDayAsync(personId, cancellation) is not { } day) return NotFound();
        var reason = ReadReason(form);
        var deadline = FormValues.ReadDay(form.Deadline);
        if (deadline is null) ModelState.AddModelError($"{form.Place}-Deadline", Text["DeadlineMissing"]);
        else if (deadline < day) ModelState.AddModelError($"{form.Place}-Deadline", Text["DeadlinePast"]);
        if (reason is null || deadline is not { } settledBy || !ModelState.IsValid) return await MendAsync(personId, form, cancellation);

        var suspension = new Suspension(day, LeadId, reason, settledBy, null);
        return await AnswerAsync(
            personId, form, await records.SuspendAsync(form.Id, personId, schemeId, suspension, clock.GetUtcNow(), cancellation), cancellation);
    }

    /// <summary>Ends the open suspension; the day itself is still suspended.</summary>
    [HttpPost("/{language:language}/programme/people/{personId:guid}/certifications/{schemeId}/reinstatements")]
    public async Task<IActionResult> Reinstate(Guid personId, string schemeId, SanctionForm form, CancellationToken cancellation)
    {
        form.Place = $"{schemeId}-reinstatement";
        if (await FindDayAsync(personId, cancellation) is not { } day) return NotFound();
        if (ReadReason(form) is not { } reason) return await MendAsync(personId, form, cancellation);

        var kept = await records.ReinstateAsync(personId, schemeId, new(day, LeadId, reason), clock.GetUtcNow(), cancellation);
        return await AnswerAsync(personId, form, kept, cancellation);
    }

    /// <summary>Proposes to withdraw; another lead confirms.</summary>
    [HttpPost("/{language:language}/programme/people/{personId:guid}/certifications/{schemeId}/withdrawal-proposals")]
    public async Task<IActionResult> Propose(Guid personId, string schemeId, SanctionForm form, CancellationToken cancellation)
    {
        form.Place = $"{schemeId}-withdrawal";
        if (form.Id == Guid.Empty) return BadRequest();
        if (await FindDayAsync(personId, cancellation) is not { } day) return NotFound();
        if (ReadReason(form) is not { } reason) return await MendAsync(personId, form, cancellation);

        var kept = await records.ProposeWithdrawalAsync(form.Id, personId, schemeId, LeadId, reason, day, clock.GetUtcNow(), cancellation);
        return await AnswerAsync(personId, form, kept, cancellation);
    }

    /// <summary>Confirms another lead's proposal: the certification is withdrawn from today on.</summary>
    [HttpPost("/{language:language}/programme/withdrawal-proposals/{proposalId:guid}/confirmation")]
    public async Task<IActionResult> Confirm(Guid proposalId, CancellationToken cancellation)
    {
        if (await FindProposalAsync(proposalId, cancellation) is not { } proposal) return NotFound();
        if (await FindDayAsync(proposal.PersonId, cancellation) is not { } day) return NotFound();
        var kept = await records.ConfirmWithdrawalAsync(proposalId, LeadId, day, clock.GetUtcNow(), cancellation);
        return await AnswerAsync(proposal.PersonId, new() { Place = $"{proposal.SchemeId}-proposal" }, kept, cancellation);
    }

    /// <summary>Takes the lead's own proposal back.</summary>
    [HttpPost("/{language:language}/programme/withdrawal-proposals/{proposalId:guid}/retraction")]
    public async Task<IActionResult> TakeBack(Guid proposalId, CancellationToken cancellation)
    {
        if (await FindProposalAsync(proposalId, cancellation) is not { } proposal) return NotFound();
        if (await FindDayAsync(proposal.PersonId, cancellation) is not { } day) return NotFound();
        var kept = await records.TakeBackProposalAsync(proposalId, LeadId, day, clock.GetUtcNow(), cancellation);
        return await AnswerAsync(proposal.PersonId, new() { Place = $"{proposal.SchemeId}-proposal" }, kept, cancellation);
    }

    private Guid LeadId => HttpContext.Visitor().PersonId;

    private Task<WithdrawalProposalRecord?> FindProposalAsync(Guid id, CancellationToken cancellation) =>
        records.WithdrawalProposals.AsNoTracking().SingleOrDefaultAsync(proposal => proposal.Id == id, cancellation);

    private async Task<DateOnly?> FindDayAsync(Guid personId, CancellationToken cancellation) =>
        await records.Persons.AnyAsync(person => person.Id == personId, cancellation)
            ? (await PersonDay.OfAsync(records, personId, provider.Zone, clock.GetUtcNow(), cancellation)).Today
            : null;

    private string? ReadReason(SanctionForm form)
    {
        ModelState.Clear();
        var reason = form.Reason?.Trim() ?? "";
        if (reason.Length is > 0 and <= Bounds.Reason) return reason;
        ModelState.AddModelError(
            $"{form.Place}-Reason", reason.Length == 0 ? Text["ReasonMissing"] : Text["ReasonTooLong", Bounds.Reason, reason.Length]);
        return null;
    }

    private async Task<IActionResult> AnswerAsync(Guid personId, SanctionForm form, Kept kept, CancellationToken cancellation)
    {
        if (kept is not Kept.Refused refused)
            return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/people/{personId}");
        foreach (var problem in refused.Problems) ModelState.Add(form.Place, problem);
        var answer = await MendAsync(personId, form, cancellation);
        if (refused.Problems.Any(problem => problem.Code is RecordsProblems.OtherContent)) Response.StatusCode = StatusCodes.Status409Conflict;
        return answer;
    }

    private async Task<IActionResult> MendAsync(Guid personId, SanctionForm form, CancellationToken cancellation) =>
        await reading.FindAsync(personId, LeadId, HttpContext.PageLanguageOf(), null, form, cancellation) is { } page
            ? this.Mend(Page, page)
            : NotFound();
}
