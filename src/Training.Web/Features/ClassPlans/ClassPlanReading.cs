using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Cover;
using Training.Web.Features.Workforce;
using Training.Web.Shelf;

namespace Training.Web.Features.ClassPlans;

/// <summary>Reads what class plans are made from.</summary>
public sealed class ClassPlanReading(RecordsContext records, CourseShelf shelf)
{
    private const int YearsBound = 2;

    private const int PeopleABatch = 200;

    /// <summary>What a plan rests on as things stand today.</summary>
    /// <param name="plan">What is asked.</param>
    /// <param name="visitor">Who may see the employer.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public async Task<PlanBasis> ReadAsync(ClassPlanRecord plan, Visitor visitor, CancellationToken cancellation)
    {
        var today = visitor.Today;
        var facts = await records.CoverFactsAsync(plan.EmployerId, today, plan.EndsOn, cancellation);
        var sites = await records.SitesOfAsync(plan.EmployerId, cancellation);
        var due = await DueAsync(plan, visitor, cancellation);
        var siteOf = new Dictionary<Guid, Guid>();
        foreach (var batch in due.Select(one => one.PersonId).Chunk(PeopleABatch))
        {
            foreach (var person in await records.EmployedAsync(batch, plan.EmployerId, today, cancellation)) siteOf[person.PersonId] = person.SiteId ?? Guid.Empty;
        }

        var seated = await SeatedAsync([.. due.Select(one => one.PersonId)], plan, today, cancellation);
        List<PlanWorker> workers = [.. due.Where(one => siteOf.ContainsKey(one.PersonId) && !seated.Contains(one.PersonId))
            .Select(one => new PlanWorker(one.PersonId, siteOf[one.PersonId], one.OpensOn, one.ClosesOn))];
        var days = DaysOf(plan).ToList();
        var instructors = await InstructorsAsync(plan, workers, days, cancellation);
        var problem = new PlanProblem(
            workers, days, plan.Seats, plan.MostClassesADay, instructors, [.. sites.Select(site => new PlanSite(site.Id, true))],
            await records.TravelsAsync(plan.EmployerId, cancellation), plan.MostTravelMinutes, CoversOf(plan, facts, today));
        Guid[] named = [.. workers.Select(worker => worker.WorkerId), .. instructors.Select(instructor => instructor.InstructorId)];
        return new(
            problem, await records.NamesOfAsync(named, today, cancellation), sites,
            facts.Places.DistinctBy(place => place.CrewId ?? place.SiteId).ToDictionary(place => place.CrewId ?? place.SiteId));
    }

    /// <summary>The page of a plan, as it stands now.</summary>
    /// <param name="kept">The plan.</param>
    /// <param name="visitor">Who may see its employer.</param>
    /// <param name="language">Of titles.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public async Task<ClassPlanPage> PageAsync(KeptPlan kept, Visitor visitor, Language language, CancellationToken cancellation)
    {
        var basis = await ReadAsync(kept.Plan, visitor, cancellation);
        var employer = await records.Employers.Where(row => row.Id == kept.Plan.EmployerId).Select(row => row.Name).SingleAsync(cancellation);
        Guid[] others =
        [
            .. kept.Newest.Classes.SelectMany(one => one.WorkerIds.Append(one.TeacherId).Append(one.ScorerId)),
            kept.Newest.ById, kept.Acceptance?.LeadId ?? kept.Plan.LeadId,
        ];
        var names = new Dictionary<Guid, string>(basis.Names);
        foreach (var (id, name) in await records.NamesOfAsync(others, visitor.Today, cancellation)) names[id] = name;
        return new(
            kept, employer, shelf.TitleOf(kept.Plan.SchemeId, language), basis, ClassPlanning.Review(basis.Problem, kept.Newest.Classes),
            kept.Acceptance is null && visitor.Is(Role.ProgrammeLead), names);
    }

    /// <summary>The days of the span on the weekdays that were chosen.</summary>
    public static IEnumerable<DateOnly> DaysOf(ClassPlanRecord plan)
    {
        for (var day = plan.StartsOn; day <= plan.EndsOn; day = day.AddDays(1))
        {
            if ((plan.Weekdays & (1 << (int)day.DayOfWeek)) != 0) yield return day;
        }
    }

    /// <summary>Who is to be planned, and when each can sit; read are only those of whom a period ends about the span.</summary>
    private async Task<List<(Guid PersonId, DateOnly OpensOn, DateOnly ClosesOn)>> DueAsync(ClassPlanRecord plan, Visitor visitor, CancellationToken cancellation)
    {
        var since = plan.StartsOn.AddYears(-YearsBound);
        var ending = records.PeopleSeenBy(visitor, plan.EmployerId).Select(person => person.Id).Where(id => records.Periods.Any(period =>
            period.PersonId == id && period.SchemeId == plan.SchemeId && period.ExpiresOn >= since && period.ExpiresOn <= plan.EndsOn));
        var held = (await records.HeldCertificationsAsync(ending, cancellation)).Where(one => one.SchemeId == plan.SchemeId);
        return
        [
            .. held.Select(one => (one.PersonId, Window: SeatWindows.Of(one, visitor.Today, plan.StartsOn, plan.EndsOn, plan.MarginDays)))
                .Where(one => one.Window is not null).Select(one => (one.PersonId, one.Window!.Value.OpensOn, one.Window.Value.ClosesOn)), // not null: just asked
        ];
    }

    private async Task<HashSet<Guid>> SeatedAsync(Guid[] people, ClassPlanRecord plan, DateOnly today, CancellationToken cancellation)
    {
        var seated = new HashSet<Guid>();
        foreach (var batch in people.Chunk(PeopleABatch))
        {
            seated.UnionWith((await records.SeatsAheadAsync(batch, today, cancellation)).Where(seat => seat.CourseId == plan.CourseId && seat.HeldOn <= plan.EndsOn)
                .Select(seat => seat.PersonId));
        }

        return seated;
    }

    private async Task<IReadOnlyList<PlanInstructor>> InstructorsAsync(
        ClassPlanRecord plan, List<PlanWorker> workers, List<DateOnly> days, CancellationToken cancellation)
    {
        var appointed = await records.Appointments.AsNoTracking()
            .Where(row => row.Role == AppointedRole.Instructor && row.StartsOn <= plan.EndsOn && (row.EndsOn == null || row.EndsOn >= plan.StartsOn))
            // Who has told of no free days is never planned.
            .Where(row => records.InstructorDays.Any(days => days.IsFree && days.InstructorId == row.PersonId && days.StartsOn <= plan.EndsOn && days.EndsOn >= plan.StartsOn))
            .OrderBy(row => row.PersonId).Take(InstructorQueries.Most).ToListAsync(cancellation);
        Guid[] ids = [.. appointed.Select(row => row.PersonId).Distinct()];
        var files = await records.InstructorFilesAsync(ids, plan.StartsOn, cancellation);
        var free = await records.InstructorDaysAsync(ids, plan.StartsOn, cancellation);
        var busy = await records.ClassDaysOfInstructorsAsync(ids, plan.StartsOn, plan.EndsOn, cancellation);
        var barred = await BarredAsync(plan, workers, files, cancellation);

        bool IsFree(Guid id, DateOnly day) => InstructorDays.IsFreeOn(free[id], day) && !busy[id].Contains(day) && appointed.Exists(row => row.PersonId == id && row.Holds(day));
        return
        [
            .. ids.Where(free.Contains).Select(id =>
            {
                var open = days.FindAll(day => IsFree(id, day));
                return new PlanInstructor(
                    id,
                    open.FindAll(day => Assignments.Check(files[id], new Assignment.Teaching(plan.CourseId), day).Count == 0).ToHashSet(),
                    open.FindAll(day => Assignments.Check(files[id], new Assignment.Scoring(plan.CourseId, plan.EmployerId), day).Count == 0).ToHashSet(),
                    plan.MostClassesEach, barred[id].ToHashSet());
            }),
        ];
    }

    /// <summary>Whom each instructor does not score: taught within two years, in conflict, or of a language that is not theirs.</summary>
    private async Task<ILookup<Guid, Guid>> BarredAsync(
        ClassPlanRecord plan, List<PlanWorker> workers, IReadOnlyDictionary<Guid, InstructorFile> files, CancellationToken cancellation)
    {
        var barred = new List<(Guid Instructor, Guid Worker)>();
        var since = plan.StartsOn.AddYears(-YearsBound);
        foreach (var batch in workers.Select(worker => worker.WorkerId).Chunk(PeopleABatch))
        {
            // A teaching that is two years old only within the span is counted as binding: a plan never rests on a day's difference.
            barred.AddRange((await records.TeachingsOfAsync(batch, cancellation)).Where(row => row.On > since).Select(row => (row.InstructorId, row.PersonId)));
            var languages = await records.Persons.Where(person => batch.Contains(person.Id)).Select(person => new { person.Id, person.Language }).ToListAsync(cancellation);
            barred.AddRange(from file in files
                            from worker in languages
                            let sheet = new Assignment.Sheet(plan.CourseId, Subject.Model, worker.Language, worker.Id, [plan.EmployerId])
                            where Assignments.Check(file.Value, sheet, plan.StartsOn)
                                .Any(reason => reason is AssignmentReason.LanguageMissing or AssignmentReason.WithCandidate or AssignmentReason.WithEmployer)
                            select (file.Key, worker.Id));
        }

        return barred.Distinct().ToLookup(one => one.Instructor, one => one.Worker);
    }

    private List<PlanCover> CoversOf(ClassPlanRecord plan, CoverFacts facts, DateOnly today)
    {
        var courses = shelf.Courses;
        return [.. facts.Places.Select(place => new PlanCover(
            place.CrewId ?? place.SiteId, place.SiteId, [.. place.Needs.Select(need => new HandlerNeed(need.StartsOn, need.Handlers))],
            [.. facts.People.Where(person => person.Held.SchemeId == place.SchemeId && person.At(place).Count > 0).Select(person => new PlanHandler(
                person.Held.PersonId,
                [
                    .. HandlerDays.Of(PlaceCover.IfSeatsRenew(person.Held, facts, courses), person.At(place), person.HeldOff, today, plan.EndsOn)
                        .Select(span => new DaySpan(span.From, span.Through)),
                ],
                place.SchemeId == plan.SchemeId ? person.At(place) : [], person.HeldOff))]))];
    }
}
