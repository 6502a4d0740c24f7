using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.ClassDays;
using Training.Web.Shelf;

namespace Training.Web.Features.Scoresheets;

/// <summary>Looks up what the start of a scoresheet needs to know.</summary>
internal static class StartQueries
{
    private const int MostWatchers = 300;

    /// <summary>
    /// Null where the visitor does not score the class, the person does not attend it, or there is no such checklist; without an id it is
    /// the first one of the course.
    /// </summary>
    public static async Task<Start?> FindStartAsync(
        this RecordsContext records, CourseShelf shelf, Visitor visitor, Guid classId, Guid personId, string? checklistId, DateTimeOffset now,
        CancellationToken cancellation)
    {
        var day = await records.FindClassDayAsync(visitor, classId, cancellation);
        if (day is not { Scores: true }) return null;
        if (shelf.Find(day.CourseId) is not { } course) return null;
        if (course.Checklists.FirstOrDefault(list => checklistId is null || list.Id == checklistId) is not { } checklist) return null;
        var candidate = await (from row in records.SeatsHeld()
                               where row.ClassId == classId && row.PersonId == personId
                               join person in records.Persons on row.PersonId equals person.Id
                               select new { person.Language }).SingleOrDefaultAsync(cancellation);
        if (candidate is null) return null;

        var today = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(day.Zone));
        var names = await records.NamesAsync([personId], day.HeldOn, cancellation);
        var bond = course.Scheme.Separation == Separation.None
            ? null
            : ScorerBond.Find(await records.TeachingsOfAsync(personId, cancellation), visitor.PersonId, today);
        var tries = await records.TriesAtClassAsync(classId, personId, checklist.Id, visitor.PersonId, today, cancellation);
        return new(
            day, course, checklist, personId, names[personId], candidate.Language, visitor.PersonId, day.HeldOn == today, bond,
            await records.FindLatestModelPassAsync(personId, checklist.Id, visitor.PersonId, today, cancellation),
            tries, await records.NamesAsync([.. tries.Sheets.Select(sheet => sheet.InstructorId)], day.HeldOn, cancellation),
            await records.RetestsAsync(course.Id, checklist, personId, visitor.PersonId, today, cancellation),
            await records.KitInUseAsync(day.HeldOn, cancellation),
            await records.SetAsideOfAsync(personId, checklist.Id, visitor.PersonId, cancellation),
            await records.WatchersAsync(classId, personId, visitor.PersonId, today, cancellation));
    }

    private static async Task<ModelPass?> FindLatestModelPassAsync(
        this RecordsContext records, Guid personId, string checklistId, Guid instructorId, DateOnly today, CancellationToken cancellation)
    {
        var closed = records.SheetsClosedTo(instructorId, today);
        // A try that another scorer failed is no pass: nobody meets a live snake on it.
        var failed = from sheet in records.CountingScoresheets()
                     where sheet.CandidateId == personId && sheet.ChecklistId == checklistId && sheet.Subject == Subject.Model
                     join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                     where result.Outcome == PracticalOutcome.Failed
                         && result.Number == records.ScoresheetResults.Where(other => other.ScoresheetId == sheet.Id).Max(other => other.Number)
                     select new { sheet.ClassId, sheet.Try };
        return await (from sheet in records.CountingScoresheets()
                      where sheet.CandidateId == personId && sheet.ChecklistId == checklistId && sheet.Subject == Subject.Model
                          && !closed.Any(one => one.Id == sheet.Id) && !failed.Any(one => one.ClassId == sheet.ClassId && one.Try == sheet.Try)
                      join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                      where result.Outcome == PracticalOutcome.Passed
                          && result.Number == records.ScoresheetResults.Where(other => other.ScoresheetId == sheet.Id).Max(other => other.Number)
                      orderby sheet.SignedAt descending, sheet.Id
                      select new ModelPass(sheet.FormId, sheet.CandidateId, sheet.ChecklistId, sheet.SignedAt)).FirstOrDefaultAsync(cancellation);
    }

    private static async Task<IReadOnlyDictionary<Subject, PracticalRetest>> RetestsAsync(
        this RecordsContext records, string courseId, Checklist checklist, Guid personId, Guid scorerId, DateOnly today, CancellationToken cancellation)
    {
        var retests = new Dictionary<Subject, PracticalRetest>();
        foreach (var subject in checklist.Subjects)
            retests[subject] = await records.MayTryPracticalAsync(courseId, checklist, subject, personId, scorerId, today, cancellation);
        return retests;
    }

    private static async Task<IReadOnlyList<KitOnDay>> KitInUseAsync(this RecordsContext records, DateOnly day, CancellationToken cancellation) =>
    [
        .. (await records.KitAsync(cancellation)).Select(kit => kit.On(day)).Where(piece => piece.State is not KitState.OutOfUse)
            .OrderBy(piece => piece.Kind),
    ];

    // Rule: docs/rules.md, "Appeals": another scorer repeats it. After another's sheet that counts the first may score again.
    private static async Task<IReadOnlyList<Subject>> SetAsideOfAsync(
        this RecordsContext records, Guid personId, string checklistId, Guid scorerId, CancellationToken cancellation) =>
        await records.Scoresheets
            .Where(sheet => sheet.CandidateId == personId && sheet.ChecklistId == checklistId && sheet.InstructorId == scorerId
                && records.ScoresheetSetAsides.Any(aside => aside.ScoresheetId == sheet.Id)
                && !records.CountingScoresheets().Any(other => other.CandidateId == personId && other.ChecklistId == checklistId
                    && other.Subject == sheet.Subject && other.InstructorId != scorerId && other.SignedAt >= sheet.SignedAt))
            .Select(sheet => sheet.Subject).Distinct().ToListAsync(cancellation);

    private static async Task<IReadOnlyList<(Guid Id, string Name)>> WatchersAsync(
        this RecordsContext records, Guid classId, Guid candidateId, Guid scorerId, DateOnly day, CancellationToken cancellation)
    {
        var there = await records.SeatsHeld().Where(row => row.ClassId == classId).Select(row => row.PersonId)
            .Union(records.ClassTeachings.Where(row => row.ClassId == classId).Select(row => row.InstructorId))
            .Union(records.ClassScorers.Where(row => row.ClassId == classId).Select(row => row.InstructorId))
            .OrderBy(id => id).Take(MostWatchers).ToListAsync(cancellation);
        // Apart, so that many leads never push out who stands beside.
        var leads = await records.Appointments
            .Where(row => row.Role == AppointedRole.ProgrammeLead && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day))
            .Select(row => row.PersonId).Distinct().OrderBy(id => id).Take(InstructorQueries.Most).ToListAsync(cancellation);
        var people = there.Union(leads).ToList();
        var names = await records.NamesAsync(people, day, cancellation);
        return [.. people.Where(id => id != candidateId && id != scorerId).Select(id => (id, names[id])).OrderBy(person => person.Item2, StringComparer.CurrentCulture)];
    }
}
