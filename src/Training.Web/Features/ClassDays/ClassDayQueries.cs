using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.Scoresheets;
using Training.Web.Features.Seats;

namespace Training.Web.Features.ClassDays;

/// <summary>Class days, from the instructor's own on.</summary>
internal static class ClassDayQueries
{
    private const int MostDays = 100;
    private const int MostGone = 10;
    private const int MostCandidates = 200;
    private const int MostSheets = 2000;

    // A name that was erased; a word would have to be in a language.
    private const string Erased = "–";

    public static async Task<ClassDaysPage> ClassDaysOfAsync(this RecordsContext records, Visitor visitor, CancellationToken cancellation)
    {
        var today = visitor.Today;
        var mine = records.ClassesOf(visitor.PersonId);
        var ahead = await records.Days(mine.Where(day => day.HeldOn >= today).OrderBy(day => day.HeldOn).ThenBy(day => day.Id).Take(MostDays), visitor.PersonId)
            .ToListAsync(cancellation);
        var gone = await records.Days(mine.Where(day => day.HeldOn < today).OrderByDescending(day => day.HeldOn).ThenBy(day => day.Id).Take(MostGone), visitor.PersonId)
            .ToListAsync(cancellation);
        var open = await records.OpenScoresheetsOfAsync(visitor.PersonId, cancellation);
        var names = await records.NamesAsync([.. open.Select(sheet => sheet.CandidateId)], today, cancellation);
        var zone = TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone);
        return new(
            today, [.. ahead.OrderBy(day => day.HeldOn)], [.. gone.OrderByDescending(day => day.HeldOn)],
            [.. open.Select(sheet => new UnsignedSheet(sheet.Id, names[sheet.CandidateId], DecisionDay.On(sheet.StartedAt, zone)))]);
    }

    /// <summary>A class where the visitor teaches or scores; null for every other.</summary>
    public static Task<ClassDay?> FindClassDayAsync(this RecordsContext records, Visitor visitor, Guid classId, CancellationToken cancellation) =>
        records.Days(records.ClassesOf(visitor.PersonId).Where(day => day.Id == classId), visitor.PersonId).SingleOrDefaultAsync(cancellation);

    /// <summary>One class day with everybody on its list.</summary>
    public static async Task<ClassDayPage> ClassDayPageAsync(
        this RecordsContext records, ClassDay day, Course? course, Visitor visitor, DateTimeOffset now, CancellationToken cancellation)
    {
        // Who was scored was there, whatever became of the seat.
        var people = await records.SeatsHeld().Where(row => row.ClassId == day.Id).Select(row => row.PersonId)
            .Union(records.Scoresheets.Where(sheet => sheet.ClassId == day.Id).Select(sheet => sheet.CandidateId))
            .OrderBy(id => id).Take(MostCandidates).ToListAsync(cancellation);
        var presences = await records.PresencesAsync(day.Id, cancellation);
        var details = (await records.SeatDaysAsync(records.Classes.Where(one => one.Id == day.Id), cancellation)).Single();
        var names = await records.NamesAsync(people, day.HeldOn, cancellation);
        var practicals = course is null ? [] : Practical.AllOf(course);
        var here = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(day.Zone));
        var closed = records.SheetsClosedTo(visitor.PersonId, here);
        var signed = await records.SignedAsync(people, [.. practicals.Select(practical => practical.ChecklistId)], closed, visitor.Today, cancellation);
        var open = (await records.OpenScoresheetsOfAsync(visitor.PersonId, cancellation))
            .Where(sheet => sheet.ClassId == day.Id).ToLookup(sheet => sheet.CandidateId);
        var onHold = Holds.On(await records.HoldsOfAsync(records.ClassAttendances.Where(row => row.ClassId == day.Id).Select(row => row.PersonId), cancellation), here)
            .Select(hold => hold.PersonId).ToHashSet();
        var isToday = day.HeldOn == visitor.Today;
        return new(day, isToday, course, here >= day.HeldOn, details, [.. people.OrderBy(id => names[id], StringComparer.CurrentCulture).Select(id =>
        {
            var sheets = signed.Where(sheet => sheet.CandidateId == id).Select(sheet => sheet.Sheet).ToList();
            List<PracticalLine> lines = [.. practicals.Select(practical => LineOf(course!, practical, sheets, visitor.Today))]; // not null: there are practicals
            lines = lines.ConvertAll(line => BehindModel(line, lines));
            NextAct next = id == visitor.PersonId ? new NextAct.Oneself()
                : open[id].FirstOrDefault() is { } started ? new NextAct.GoOn(started.Id, FirstWithoutMark(course, started))
                : lines.Count == 0 || !day.Scores || !isToday ? new NextAct.NotHere()
                : NextAct.By(lines);
            if (onHold.Contains(id) && next is NextAct.Score { Practical.On: Subject.Live }) next = new NextAct.OnHold();
            return new ClassCandidate(id, names[id], lines, next)
            {
                IsOnHold = onHold.Contains(id), Presence = presences.GetValueOrDefault(id), IsScoredHere = sheets.Exists(sheet => sheet.ClassId == day.Id),
                ScoredHere = [.. sheets.Where(sheet => sheet.ClassId == day.Id && !sheet.IsClosed)],
            };
        })]);
    }

    /// <summary>The names in use on a day, by person; a dash where a name was erased.</summary>
    public static async Task<IReadOnlyDictionary<Guid, string>> NamesAsync(
        this RecordsContext records, IReadOnlyList<Guid> people, DateOnly day, CancellationToken cancellation)
    {
        var rows = await records.PersonNames.Where(name => people.Contains(name.PersonId) && name.StartsOn <= day)
            .OrderByDescending(name => name.StartsOn).ThenBy(name => name.Id)
            .Select(name => new { name.PersonId, name.StartsOn, name.Text }).Take(MostSheets).ToListAsync(cancellation);
        var latest = rows.GroupBy(row => row.PersonId).ToDictionary(group => group.Key, group => group.MaxBy(row => row.StartsOn)!.Text); // not null: no group is empty
        return people.Distinct().ToDictionary(id => id, id => latest.GetValueOrDefault(id) ?? Erased);
    }

    private static IQueryable<ClassRecord> ClassesOf(this RecordsContext records, Guid instructorId) => records.StandingClasses().Where(day =>
        records.ClassScorers.Any(scorer => scorer.ClassId == day.Id && scorer.InstructorId == instructorId)
        || records.ClassTeachings.Any(teaching => teaching.ClassId == day.Id && teaching.InstructorId == instructorId));

    private static IQueryable<ClassDay> Days(this RecordsContext records, IQueryable<ClassRecord> classes, Guid instructorId) =>
        from day in classes
        join site in records.Sites on day.SiteId equals site.Id
        select new ClassDay(
            day.Id, day.CourseId, day.HeldOn, site.Id, site.Name, site.Zone,
            records.SeatsHeld().Count(row => row.ClassId == day.Id && row.PersonId != instructorId),
            records.ClassScorers.Any(row => row.ClassId == day.Id && row.InstructorId == instructorId));

    private static int? FirstWithoutMark(Course? course, StartedScoresheet started) =>
        course?.Checklists.FirstOrDefault(list => list.Id == started.ChecklistId) is { } checklist ? started.FirstWithoutMark(checklist) : null;

    // Newest first: the first of a practical is the latest.
    private static async Task<List<(Guid CandidateId, SignedSheet Sheet)>> SignedAsync(
        this RecordsContext records, List<Guid> people, List<string> checklists, IQueryable<ScoresheetRecord> closed, DateOnly today,
        CancellationToken cancellation)
    {
        var rows = await (from sheet in records.CountingScoresheets()
                          where people.Contains(sheet.CandidateId) && checklists.Contains(sheet.ChecklistId)
                          join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                          where result.Number == records.ScoresheetResults.Where(other => other.ScoresheetId == sheet.Id).Max(other => other.Number)
                          orderby sheet.SignedAt descending
                          select new
                          {
                              sheet.CandidateId, sheet.ChecklistId, sheet.Subject, sheet.ScoredOn, result.Outcome, sheet.ClassId, sheet.Try, sheet.InstructorId,
                              IsClosed = closed.Any(one => one.Id == sheet.Id),
                          }).Take(MostSheets).ToListAsync(cancellation);
        var names = await records.NamesAsync([.. rows.Select(row => row.InstructorId).Distinct()], today, cancellation);
        return rows.ConvertAll(row => (row.CandidateId, new SignedSheet(
            new(row.ChecklistId, row.Subject), row.ScoredOn, row.Outcome, row.ClassId, row.Try, names[row.InstructorId], row.IsClosed)));
    }

    private static PracticalLine LineOf(Course course, Practical practical, List<SignedSheet> sheets, DateOnly today)
    {
        var closed = sheets.Where(sheet => sheet.Practical == practical && sheet.IsClosed).Select(sheet => sheet.Scorer).Distinct().ToList();
        var tries = sheets.Where(sheet => sheet.Practical == practical && !sheet.IsClosed).GroupBy(sheet => (sheet.ClassId, sheet.Try))
            .Select(one => new PracticalLine(practical, [.. one], false)).ToList();
        var earliest = Earliest(course, practical, today);
        var isPassed = tries.Exists(one => !one.IsDisputed && one.Sheets.Any(sheet => sheet.Outcome == PracticalOutcome.Passed && sheet.On >= earliest));
        return new(practical, tries.Count == 0 ? [] : tries[0].Sheets, isPassed) { ClosedBy = closed.Count == 0 ? null : string.Join(", ", closed) };
    }

    // A sheet on a live snake would tell that the model was passed. So its line closes with the model's, whether there is such a sheet or not.
    private static PracticalLine BehindModel(PracticalLine line, List<PracticalLine> lines) =>
        line.Practical.On == Subject.Live && lines.Find(other => other.Practical == line.Practical with { On = Subject.Model }) is { ClosedBy: { } scorer }
            ? new(line.Practical, [], false) { ClosedBy = scorer, IsBehindModel = true }
            : line;

    private static DateOnly Earliest(Course course, Practical practical, DateOnly today) =>
        course.Scheme.Grant.OfType<Requirement.PassedPractical>()
            .FirstOrDefault(asked => asked.Subject == practical.On && asked.ChecklistId == practical.ChecklistId) is { } asked
            ? asked.GreatestAge.Before(today)
            : DateOnly.MinValue;
}
