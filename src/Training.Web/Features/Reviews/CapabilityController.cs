using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.Reviews;

/// <summary>A person reports what may affect what they are able to do. No medical detail is asked for; the report suspends nothing.</summary>
[Route("/{language:language}/my/capability")]
public sealed class CapabilityController(RecordsContext records, TimeProvider clock, IStringLocalizer<ReviewText> localizer) : Controller
{
    private const string FormView = "/Features/Reviews/Capability.cshtml";
    private const int Most = 50;

    private readonly IStringLocalizer<ReviewText> Text = localizer;

    /// <summary>The form, and what was reported before.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Form(CancellationToken cancellation) =>
        View(FormView, await PageAsync(new() { Id = Guid.CreateVersion7(clock.GetUtcNow()) }, cancellation));

    /// <summary>Keeps it, with a review for a lead. The same form again is one report.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Send(CapabilityForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (form.Id == Guid.Empty) return BadRequest();
        var words = (form.Words ?? "").Trim();
        if (words.Length > Bounds.Reason) ModelState.AddModelError(nameof(form.Words), Written.TooLong(Bounds.Reason, words.Length));
        if (form.Matter is not { } matter || !Enum.IsDefined(matter)) ModelState.AddModelError(nameof(form.Matter), Text["MatterMissing"]);
        if (!ModelState.IsValid) return this.Mend(FormView, await PageAsync(form, cancellation));
        var visitor = HttpContext.Visitor();
        var report = new CapabilityReport
        {
            Id = form.Id, PersonId = visitor.PersonId, Matter = form.Matter!.Value, Words = words, ReportedOn = visitor.Today, KeptAt = clock.GetUtcNow(), // not null: checked above
        };
        var site = await records.FindSiteAsync(visitor.PersonId, visitor.Today, cancellation);
        if (await records.KeepAsync(report, site?.Id, cancellation) is not Kept.Refused refused) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/my/capability");
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Words), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View(FormView, await PageAsync(form, cancellation));
    }

    private async Task<CapabilityPage> PageAsync(CapabilityForm form, CancellationToken cancellation)
    {
        var personId = HttpContext.Visitor().PersonId;
        var rows = await (from report in records.CapabilityReports
                          where report.PersonId == personId
                          join review in records.Reviews on report.Id equals review.EventId
                          join end in records.ReviewConclusions on review.Id equals end.ReviewId into ends
                          from end in ends.DefaultIfEmpty()
                          orderby report.KeptAt descending, report.Id
                          select new { Report = report, ConcludedOn = end == null ? (DateOnly?)null : end.ConcludedOn })
            .AsNoTracking().Take(Most).ToListAsync(cancellation);
        return new(rows.ConvertAll(row => (row.Report, row.ConcludedOn)), form);
    }
}
