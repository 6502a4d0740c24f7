using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>A plan as it stands.</summary>
/// <param name="Plan">What it is for.</param>
/// <param name="Newest">Its newest version; the accepted one where it was accepted.</param>
/// <param name="Acceptance">Null while nobody accepted it.</param>
/// <param name="Made">The classes that accepting made, by id.</param>
public sealed record KeptPlan(ClassPlanRecord Plan, ClassPlanVersion Newest, ClassPlanAcceptance? Acceptance, IReadOnlyList<ClassRecord> Made);

/// <summary>Reads plans of classes and what they are made from.</summary>
public static class PlanningQueries
{
    /// <summary>Most plans of a list.</summary>
    public const int MostPlans = 50;

    private const int MostRows = 2_000;

    /// <summary>A plan, or null.</summary>
    public static async Task<KeptPlan?> FindPlanAsync(this RecordsContext records, Guid planId, CancellationToken cancellation)
    {
        var plan = await records.ClassPlans.AsNoTracking().SingleOrDefaultAsync(row => row.Id == planId, cancellation);
        if (plan is null) return null;
        var newest = await records.ClassPlanVersions.AsNoTracking().Where(row => row.PlanId == planId).OrderByDescending(row => row.Number).FirstAsync(cancellation);
        var acceptance = await records.ClassPlanAcceptances.AsNoTracking().SingleOrDefaultAsync(row => row.PlanId == planId, cancellation);
        var made = await (from row in records.AcceptedClasses
                          where row.PlanId == planId
                          join one in records.Classes on row.ClassId equals one.Id
                          orderby one.HeldOn, one.Id
                          select one).AsNoTracking().Take(MostRows).ToListAsync(cancellation);
        return new(plan, newest, acceptance, made);
    }

    /// <summary>The newest plans of an employer, or of all; each with whether it was accepted.</summary>
    public static async Task<IReadOnlyList<(ClassPlanRecord Plan, bool IsAccepted)>> PlansAsync(
        this RecordsContext records, Guid? employerId, CancellationToken cancellation)
    {
        var rows = await records.ClassPlans.AsNoTracking().Where(plan => employerId == null || plan.EmployerId == employerId)
            .OrderByDescending(plan => plan.KeptAt).ThenBy(plan => plan.Id).Take(MostPlans)
            .Select(plan => new { Plan = plan, IsAccepted = records.ClassPlanAcceptances.Any(row => row.PlanId == plan.Id) }).ToListAsync(cancellation);
        return rows.ConvertAll(row => (row.Plan, row.IsAccepted));
    }

    /// <summary>What instructors said about their days from a day on, by instructor.</summary>
    public static async Task<ILookup<Guid, InstructorDays>> InstructorDaysAsync(
        this RecordsContext records, IReadOnlyList<Guid> instructorIds, DateOnly from, CancellationToken cancellation)
    {
        var ids = instructorIds.ToList();
        var rows = await records.InstructorDays.AsNoTracking().Where(row => ids.Contains(row.InstructorId) && row.EndsOn >= from)
            .OrderByDescending(row => row.KeptAt).ThenBy(row => row.Id).Take(MostRows).ToListAsync(cancellation);
        return rows.ToLookup(row => row.InstructorId);
    }

    /// <summary>The days from one day through another on which each of these instructors is at a class already.</summary>
    public static async Task<ILookup<Guid, DateOnly>> ClassDaysOfInstructorsAsync(
        this RecordsContext records, IReadOnlyList<Guid> instructorIds, DateOnly firstDay, DateOnly lastDay, CancellationToken cancellation)
    {
        var ids = instructorIds.ToList();
        var taught = from row in records.ClassTeachings
                     where ids.Contains(row.InstructorId)
                     join day in records.StandingClasses() on row.ClassId equals day.Id
                     where day.HeldOn >= firstDay && day.HeldOn <= lastDay
                     select new { row.InstructorId, day.HeldOn };
        var scored = from row in records.ClassScorers
                     where ids.Contains(row.InstructorId)
                     join day in records.StandingClasses() on row.ClassId equals day.Id
                     where day.HeldOn >= firstDay && day.HeldOn <= lastDay
                     select new { row.InstructorId, day.HeldOn };
        var rows = await taught.Concat(scored).Distinct().OrderBy(row => row.HeldOn).ThenBy(row => row.InstructorId).Take(MostRows).ToListAsync(cancellation);
        return rows.ToLookup(row => row.InstructorId, row => row.HeldOn);
    }

    /// <summary>How long it takes between sites of an employer, as it was said last for each pair.</summary>
    public static async Task<IReadOnlyList<Travel>> TravelsAsync(this RecordsContext records, Guid employerId, CancellationToken cancellation)
    {
        var rows = await (from row in records.SiteTravels.AsNoTracking()
                          join site in records.Sites on row.SiteId equals site.Id
                          where site.EmployerId == employerId
                          orderby row.KeptAt descending, row.Id
                          select row).Take(MostRows).ToListAsync(cancellation);
        return
        [
            .. rows.DistinctBy(row => row.SiteId.CompareTo(row.OtherSiteId) < 0 ? (row.SiteId, row.OtherSiteId) : (row.OtherSiteId, row.SiteId))
                .Select(row => new Travel(row.SiteId, row.OtherSiteId, row.Minutes)),
        ];
    }
}
