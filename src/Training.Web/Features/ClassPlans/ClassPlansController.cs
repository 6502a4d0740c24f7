using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Cover;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.ClassPlans;

/// <summary>Plans of classes: proposed by the search, changed by hand, accepted by a lead.</summary>
[Route("/{language:language}/programme/class-plans")]
public sealed class ClassPlansController(
    RecordsContext records, CourseShelf shelf, ClassPlanReading reading, TimeProvider clock, IStringLocalizer<ClassPlanText> localizer) : Controller
{
    private const int MostEmployers = 1_000;
    private const int MostSeats = 200;
    private const int MostADay = 20;
    private const int MostEach = 100;
    private const int MostMargin = 60;
    private const int MostSpanDays = 400;
    private const int WorkWeek = 0b0111110;
    private const int LikelyDays = 60;

    private readonly IStringLocalizer<ClassPlanText> Text = localizer;

    /// <summary>Plans, and the form of a new one, made out for an employer where the address names one.</summary>
    [HttpGet("")]
    public async Task<IActionResult> List(Guid? employer, CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        return View(await ListAsync(
            new()
            {
                Id = Guid.CreateVersion7(clock.GetUtcNow()), EmployerId = employer, StartsOn = today.AddDays(1).Iso(), EndsOn = today.AddDays(LikelyDays).Iso(),
                Weekdays = [.. Enumerable.Range(0, 7).Where(day => (WorkWeek & (1 << day)) != 0)], Seats = "12", MostClassesADay = "1", MostClassesEach = "10",
                MostTravelMinutes = "120", MarginDays = "7",
            },
            cancellation));
    }

    /// <summary>Searches a plan and keeps it. Nothing is made or sent by that.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Propose(ClassPlanForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear(); // what could not be read is told in our own words
        if (await ReadAsync(form, cancellation) is not { } asked) return this.Mend("List", await ListAsync(form, cancellation));
        var basis = await reading.ReadAsync(asked, HttpContext.Visitor(), cancellation);
        var found = PlanSearch.Propose(basis.Problem, clock);
        var plan = new ClassPlanRecord
        {
            Id = asked.Id, EmployerId = asked.EmployerId, SchemeId = asked.SchemeId, CourseId = asked.CourseId, StartsOn = asked.StartsOn, EndsOn = asked.EndsOn,
            Weekdays = asked.Weekdays, Seats = asked.Seats, MostClassesADay = asked.MostClassesADay, MostClassesEach = asked.MostClassesEach,
            MostTravelMinutes = asked.MostTravelMinutes, MarginDays = asked.MarginDays, People = basis.Problem.Workers.Count, LeastClasses = found.LeastClasses,
            LeastUnmet = found.LeastUnmet, IsSearchCut = found.IsSearchCut, LeadId = asked.LeadId, KeptAt = asked.KeptAt,
        };
        if (await records.KeepAsync(plan, [.. found.Classes.Select(one => one.Class)], cancellation) is not Kept.Refused refused) return this.SeeOther(Plan(form.Id));
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.EmployerId), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("List", await ListAsync(form, cancellation));
    }

    /// <summary>One plan.</summary>
    [HttpGet("{planId:guid}")]
    public async Task<IActionResult> Show(Guid planId, CancellationToken cancellation) =>
        await FindAsync(planId, cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Keeps a change by hand as a new version.</summary>
    [HttpPost("{planId:guid}/changes")]
    public async Task<IActionResult> Change(Guid planId, PlanChangeForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        if (await FindAsync(planId, cancellation) is not { } page) return NotFound();
        var from = await records.ClassPlanVersions.AsNoTracking().SingleOrDefaultAsync(row => row.PlanId == planId && row.Number == form.Base, cancellation);
        if (from is null || Changed(from.Classes, form, page) is not { } classes)
        {
            ModelState.AddModelError("Plan", Text["ChangeUnread"]);
            return this.Mend("Show", page);
        }

        var version = new ClassPlanVersion
        {
            PlanId = planId, Number = form.Base + 1, FormId = form.Id, Classes = classes, ById = HttpContext.Visitor().PersonId, KeptAt = clock.GetUtcNow(),
        };
        return await AnswerAsync(planId, await records.KeepAsync(version, cancellation), page);
    }

    /// <summary>Accepts a version without faults: its classes and seats are made, and invitations follow from the seats.</summary>
    [HttpPost("{planId:guid}/acceptance")]
    public async Task<IActionResult> Accept(Guid planId, PlanAcceptanceForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await FindAsync(planId, cancellation) is not { } page) return NotFound();
        if (page.MayChange && (page.Review.Faults.Count > 0 || page.Kept.Newest.Classes.Count == 0))
        {
            ModelState.AddModelError("Plan", Text["FaultsFirst"]);
            return this.Mend("Show", page);
        }

        var acceptance = new ClassPlanAcceptance { PlanId = planId, Number = form.Number, LeadId = HttpContext.Visitor().PersonId, AcceptedAt = clock.GetUtcNow() };
        return await AnswerAsync(planId, await records.AcceptAsync(acceptance, cancellation), page);
    }

    private async Task<IActionResult> AnswerAsync(Guid planId, Kept kept, ClassPlanPage page)
    {
        if (kept is not Kept.Refused refused) return this.SeeOther(Plan(planId));
        foreach (var problem in refused.Problems) ModelState.Add("Plan", problem);
        var isConflict = refused.Problems.Any(problem => problem.Code is RecordsProblems.OtherContent or RecordsProblems.PlanAccepted or RecordsProblems.PlanChanged);
        if (!isConflict) return this.Mend("Show", page);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("Show", await FindAsync(planId, HttpContext.RequestAborted) ?? page);
    }

    /// <summary>The classes after a change; null where the form names what is not there.</summary>
    private static List<PlannedClass>? Changed(IReadOnlyList<PlannedClass> classes, PlanChangeForm form, ClassPlanPage page)
    {
        if (form.Class < 0 || form.Class >= classes.Count) return null;
        var one = classes[form.Class];
        List<PlannedClass> next = [.. classes];
        switch (form.What)
        {
            case PlanChange.Move:
                var isKnown = page.Basis.Sites.Any(site => site.Id == form.SiteId)
                    && page.Basis.Problem.Instructors.Count(who => who.InstructorId == form.TeacherId || who.InstructorId == form.ScorerId) == (form.TeacherId == form.ScorerId ? 1 : 2);
                if (FormValues.ReadDay(form.Day) is not { } day || !isKnown) return null;
                next[form.Class] = one with { Day = day, SiteId = form.SiteId, TeacherId = form.TeacherId, ScorerId = form.ScorerId };
                break;
            case PlanChange.Drop:
                next.RemoveAt(form.Class);
                break;
            case PlanChange.Leave:
                next[form.Class] = one with { WorkerIds = [.. one.WorkerIds.Where(id => id != form.WorkerId)] };
                break;
            case PlanChange.Join:
                if (!page.Basis.Problem.Workers.Any(worker => worker.WorkerId == form.WorkerId) || one.WorkerIds.Contains(form.WorkerId)) return null;
                next[form.Class] = one with { WorkerIds = [.. one.WorkerIds, form.WorkerId] };
                break;
        }

        return next;
    }

    private string Plan(Guid id) => $"/{HttpContext.PageLanguageOf().Tag()}/programme/class-plans/{id}";

    private async Task<ClassPlanPage?> FindAsync(Guid planId, CancellationToken cancellation) =>
        await records.FindPlanAsync(planId, cancellation) is { } kept
            ? await reading.PageAsync(kept, HttpContext.Visitor(), HttpContext.PageLanguageOf(), cancellation)
            : null;

    private async Task<ClassPlansPage> ListAsync(ClassPlanForm form, CancellationToken cancellation)
    {
        var language = HttpContext.PageLanguageOf();
        var employers = await records.Employers.OrderBy(employer => employer.NameKey).Take(MostEmployers)
            .Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        return new(
            await records.PlansAsync(null, cancellation), employers.ToDictionary(employer => employer.Id, employer => employer.Name),
            [
                .. shelf.Used.Where(course => RenewalClasses.CoursesFor(course.Scheme, shelf.Courses).Count > 0)
                    .Select(course => (course.Scheme.Id, course.Scheme.Words[language].Title)),
            ],
            form);
    }

    private async Task<ClassPlanRecord?> ReadAsync(ClassPlanForm form, CancellationToken cancellation)
    {
        var isEmployer = form.EmployerId is { } id && await records.Employers.AnyAsync(employer => employer.Id == id, cancellation);
        if (!isEmployer) ModelState.AddModelError(nameof(form.EmployerId), Text["EmployerMissing"]);
        var scheme = form.SchemeId is null ? null : shelf.Used.FirstOrDefault(course => course.Scheme.Id == form.SchemeId)?.Scheme;
        var course = scheme is null ? null : RenewalClasses.CoursesFor(scheme, shelf.Courses).Order(StringComparer.Ordinal).FirstOrDefault();
        if (course is null) ModelState.AddModelError(nameof(form.SchemeId), Text["SchemeMissing"]);
        var today = HttpContext.Visitor().Today;
        var (starts, ends) = (FormValues.ReadDay(form.StartsOn), FormValues.ReadDay(form.EndsOn));
        if (starts is null || starts <= today) ModelState.AddModelError(nameof(form.StartsOn), Text["StartMissing"]);
        if (ends is null || ends < starts || ends > starts?.AddDays(MostSpanDays)) ModelState.AddModelError(nameof(form.EndsOn), Text["EndMissing", MostSpanDays]);
        var weekdays = form.Weekdays.Where(day => day is >= 0 and < 7).Distinct().Sum(day => 1 << day);
        if (weekdays == 0) ModelState.AddModelError(nameof(form.Weekdays), Text["WeekdaysMissing"]);
        var seats = ReadCount(form.Seats, nameof(form.Seats), 1, MostSeats);
        var mostADay = ReadCount(form.MostClassesADay, nameof(form.MostClassesADay), 1, MostADay);
        var mostEach = ReadCount(form.MostClassesEach, nameof(form.MostClassesEach), 1, MostEach);
        var minutes = ReadCount(form.MostTravelMinutes, nameof(form.MostTravelMinutes), 0, SiteTravel.MostMinutes);
        var margin = ReadCount(form.MarginDays, nameof(form.MarginDays), 0, MostMargin);
        if (!ModelState.IsValid || form.EmployerId is not { } employerId || scheme is null || course is null || starts is not { } from || ends is not { } through) return null;
        return new()
        {
            Id = form.Id, EmployerId = employerId, SchemeId = scheme.Id, CourseId = course, StartsOn = from, EndsOn = through, Weekdays = weekdays, Seats = seats,
            MostClassesADay = mostADay, MostClassesEach = mostEach, MostTravelMinutes = minutes, MarginDays = margin, People = 0, LeastClasses = 0, LeastUnmet = 0,
            IsSearchCut = false, LeadId = HttpContext.Visitor().PersonId, KeptAt = clock.GetUtcNow(),
        };
    }

    private int ReadCount(string? typed, string field, int least, int most)
    {
        if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= least && count <= most) return count;
        ModelState.AddModelError(field, Text["CountMissing", least, most]);
        return least;
    }
}
