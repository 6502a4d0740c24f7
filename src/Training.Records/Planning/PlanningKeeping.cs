using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>Keeps days of instructors, travel, and plans of classes.</summary>
public static class PlanningKeeping
{
    /// <summary>Keeps when an instructor is free. The same id again is answered with what is stored.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, InstructorDays days, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, days)) return new Kept.Stored(days.Id);
        var stored = await records.InstructorDays.AsNoTracking().SingleAsync(other => other.Id == days.Id, cancellation);
        var isSame = (stored.InstructorId, stored.StartsOn, stored.EndsOn, stored.Weekdays, stored.IsFree)
            == (days.InstructorId, days.StartsOn, days.EndsOn, days.Weekdays, days.IsFree);
        return isSame ? new Kept.AlreadyStored(days.Id) : OtherContent("days", days.Id);
    }

    /// <summary>Keeps how long it takes between two sites. Refused where they are not two sites of one employer.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, SiteTravel travel, CancellationToken cancellation)
    {
        var employers = await records.Sites.Where(site => site.Id == travel.SiteId || site.Id == travel.OtherSiteId).Select(site => site.EmployerId).ToListAsync(cancellation);
        if (employers is not [var one, var other] || one != other)
            return new Kept.Refused([RecordsProblems.At("site", RecordsProblems.SiteUnknown, travel.OtherSiteId.ToString())]);
        if (await records.TryInsertAsync(cancellation, travel)) return new Kept.Stored(travel.Id);
        var stored = await records.SiteTravels.AsNoTracking().SingleAsync(row => row.Id == travel.Id, cancellation);
        var isSame = (stored.SiteId, stored.OtherSiteId, stored.Minutes) == (travel.SiteId, travel.OtherSiteId, travel.Minutes);
        return isSame ? new Kept.AlreadyStored(travel.Id) : OtherContent("travel", travel.Id);
    }

    /// <summary>Keeps a proposed plan with its first version. The same id again is answered with what is stored, whatever the search found this time.</summary>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, ClassPlanRecord plan, IReadOnlyList<PlannedClass> classes, CancellationToken cancellation)
    {
        var first = new ClassPlanVersion { PlanId = plan.Id, Number = 1, FormId = plan.Id, Classes = classes, ById = plan.LeadId, KeptAt = plan.KeptAt };
        if (await records.TryInsertAsync(cancellation, plan, first)) return new Kept.Stored(plan.Id);
        var stored = await records.ClassPlans.AsNoTracking().SingleAsync(other => other.Id == plan.Id, cancellation);
        return Asked(stored) == Asked(plan) ? new Kept.AlreadyStored(plan.Id) : OtherContent("plan", plan.Id);
    }

    /// <summary>Keeps a version that somebody changed by hand. Refused where the plan was accepted, or another changed it first.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, ClassPlanVersion version, CancellationToken cancellation)
    {
        var stored = await records.ClassPlanVersions.AsNoTracking().SingleOrDefaultAsync(other => other.FormId == version.FormId, cancellation);
        if (stored is not null)
        {
            return stored.PlanId == version.PlanId && StoredJson.Write(stored.Classes) == StoredJson.Write(version.Classes)
                ? new Kept.AlreadyStored(version.PlanId)
                : OtherContent("plan", version.FormId);
        }

        if (await records.ClassPlanAcceptances.AnyAsync(row => row.PlanId == version.PlanId, cancellation)) return Refuse(RecordsProblems.PlanAccepted);
        return await records.TryInsertAsync(cancellation, version) ? new Kept.Stored(version.PlanId) : Refuse(RecordsProblems.PlanChanged);
    }

    /// <summary>
    /// Accepts a version of a plan: makes its classes, their teachers and scorers, and its seats, all or nothing. The same plan and version again is
    /// answered with what is stored.
    /// </summary>
    public static async Task<Kept> AcceptAsync(this RecordsContext records, ClassPlanAcceptance acceptance, CancellationToken cancellation)
    {
        var plan = await records.ClassPlans.AsNoTracking().SingleOrDefaultAsync(row => row.Id == acceptance.PlanId, cancellation);
        var newest = await records.ClassPlanVersions.AsNoTracking().Where(row => row.PlanId == acceptance.PlanId)
            .OrderByDescending(row => row.Number).FirstOrDefaultAsync(cancellation);
        if (plan is null || newest is null) return Refuse(RecordsProblems.PlanChanged);
        if (await records.ClassPlanAcceptances.AsNoTracking().SingleOrDefaultAsync(row => row.PlanId == plan.Id, cancellation) is { } stored)
            return stored.Number == acceptance.Number ? new Kept.AlreadyStored(plan.Id) : Refuse(RecordsProblems.PlanAccepted);
        if (newest.Number != acceptance.Number) return Refuse(RecordsProblems.PlanChanged);

        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        if (!await records.TryInsertAsync(cancellation, acceptance)) return Refuse(RecordsProblems.PlanAccepted);
        var problems = new List<Problem>();
        foreach (var one in newest.Classes) problems.AddRange(await records.MakeAsync(plan, one, cancellation));
        if (problems.Count > 0)
        {
            await transaction.RollbackAsync(cancellation);
            return new Kept.Refused(problems);
        }

        await transaction.CommitAsync(cancellation);
        return new Kept.Stored(plan.Id);
    }

    private static async Task<IReadOnlyList<Problem>> MakeAsync(this RecordsContext records, ClassPlanRecord plan, PlannedClass one, CancellationToken cancellation)
    {
        var day = new ClassRecord { Id = Guid.CreateVersion7(), SiteId = one.SiteId, HeldOn = one.Day, CourseId = plan.CourseId, Capacity = plan.Seats };
        List<Kept> kept = [await records.KeepAsync(day, cancellation)];
        if (kept[0] is Kept.Stored)
        {
            await records.TryInsertAsync(cancellation, new AcceptedClass { PlanId = plan.Id, ClassId = day.Id });
            kept.Add(await records.TeachAsync(day.Id, one.TeacherId, cancellation));
            kept.Add(await records.LetScoreAsync(day.Id, one.ScorerId, cancellation));
            foreach (var worker in one.WorkerIds) kept.Add(await records.AttendAsync(day.Id, worker, cancellation));
        }

        return [.. kept.OfType<Kept.Refused>().SelectMany(refused => refused.Problems)];
    }

    private static string Asked(ClassPlanRecord plan) => string.Create(
        CultureInfo.InvariantCulture,
        $"{plan.EmployerId} {plan.SchemeId} {plan.CourseId} {plan.StartsOn:O} {plan.EndsOn:O} {plan.Weekdays} {plan.Seats} {plan.MostClassesADay} {plan.MostClassesEach} {plan.MostTravelMinutes} {plan.MarginDays}");

    private static Kept.Refused Refuse(string code) => new([RecordsProblems.At("plan", code)]);

    private static Kept.Refused OtherContent(string part, Guid id) => new([RecordsProblems.At(part, RecordsProblems.OtherContent, id.ToString())]);
}
