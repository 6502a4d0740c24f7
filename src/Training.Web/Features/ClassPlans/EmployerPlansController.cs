using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Workforce;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.ClassPlans;

/// <summary>An employer reads the plans of classes for its people.</summary>
[Route("/{language:language}/employers/{employerId:guid}/class-plans")]
public sealed class EmployerPlansController(RecordsContext records, CourseShelf shelf, ClassPlanReading reading) : Controller
{
    /// <summary>Its plans, the newest first.</summary>
    [HttpGet("")]
    public async Task<IActionResult> List(Guid employerId, CancellationToken cancellation)
    {
        var employer = await records.EmployersSeenBy(HttpContext.Visitor()).AsNoTracking().SingleOrDefaultAsync(row => row.Id == employerId, cancellation);
        if (employer is null) return NotFound();
        var plans = await records.PlansAsync(employerId, cancellation);
        var language = HttpContext.PageLanguageOf();
        return View("~/Features/ClassPlans/Mine.cshtml", new EmployerPlansPage(
            employerId, employer.Name, plans,
            plans.Select(one => one.Plan.SchemeId).Distinct(StringComparer.Ordinal).ToDictionary(id => id, id => shelf.TitleOf(id, language), StringComparer.Ordinal)));
    }

    /// <summary>One plan, as it stands.</summary>
    [HttpGet("{planId:guid}")]
    public async Task<IActionResult> Show(Guid employerId, Guid planId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (!await records.EmployersSeenBy(visitor).AnyAsync(row => row.Id == employerId, cancellation)) return NotFound();
        if (await records.FindPlanAsync(planId, cancellation) is not { } kept || kept.Plan.EmployerId != employerId) return NotFound();
        var page = await reading.PageAsync(kept, visitor, HttpContext.PageLanguageOf(), cancellation);
        return View("~/Features/ClassPlans/Show.cshtml", page with { MayChange = false });
    }
}
