using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.InstructorFiles;

/// <summary>Puts the pages about instructors together.</summary>
public sealed class InstructorReading(RecordsContext records, CourseShelf shelf, OurProvider provider, TimeProvider clock)
{
    private const int MostRows = 200;
    private const int MostEmployers = 1000;

    /// <summary>The day that files are read on.</summary>
    public DateOnly Today => provider.DayOf(clock.GetUtcNow());

    /// <summary>All who are appointed today.</summary>
    public async Task<InstructorsPage> ListAsync(Language language, CancellationToken cancellation)
    {
        var lines = await LinesAsync(cancellation);
        return new(Today, [.. lines.OrderBy(line => line.HasFile).ThenBy(line => line.Name is null).ThenBy(line => line.Name, StringComparer.CurrentCulture)], shelf.Courses.Titles(language));
    }

    /// <summary>How many lack a file, a statement that counts, or have something that ends within 60 days.</summary>
    public async Task<int> CountWaitingAsync(CancellationToken cancellation) =>
        (await LinesAsync(cancellation)).Count(line => !line.HasFile || line.Ending.Count > 0 || !(line.StatementThrough >= Today));

    /// <summary>One file, or null where there is no such person.</summary>
    public async Task<InstructorPage?> FindAsync(
        Guid personId, Guid visitorId, Language language, CompetenceForm? form, ConflictForm? conflict, CancellationToken cancellation)
    {
        if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation)) return null;
        var today = Today;
        var competences = await (from row in records.InstructorCompetences
                                 where row.PersonId == personId
                                 join end in records.InstructorCompetenceEnds on row.Id equals end.CompetenceId into ends
                                 from end in ends.DefaultIfEmpty()
                                 orderby row.KeptAt descending, row.Duty, row.Subject
                                 select new CompetenceLine(row, end)).AsNoTracking().Take(MostRows).ToListAsync(cancellation);
        var conflicts = await (from row in records.InstructorConflicts
                               where row.PersonId == personId
                               join end in records.InstructorConflictEnds on row.Id equals end.ConflictId into ends
                               from end in ends.DefaultIfEmpty()
                               join employer in records.Employers on row.EmployerId equals employer.Id into employers
                               from employer in employers.DefaultIfEmpty()
                               orderby row.KeptAt descending, row.Id
                               select new ConflictLine(row, end, employer == null ? null : employer.Name)).AsNoTracking().Take(MostRows).ToListAsync(cancellation);
        var file = (await records.InstructorFilesAsync([personId], today, cancellation))[personId];
        Guid[] people =
        [
            personId, .. competences.Select(line => line.Row.LeadId), .. conflicts.Select(line => line.Row.LeadId), .. conflicts.Select(line => line.Row.OtherPersonId).OfType<Guid>(),
        ];
        var names = await records.NamesOfAsync(people, today, cancellation);
        var choices = await records.Employers.OrderBy(employer => employer.NameKey).Take(MostEmployers).Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        return new(
            personId, names.GetValueOrDefault(personId), today, await records.IsAppointedAsync(personId, AppointedRole.Instructor, today, cancellation),
            personId == visitorId, file, competences, conflicts, ThroughOf(file), shelf.Courses.Titles(language), names,
            [.. shelf.Courses.Select(course => course.Id)], choices.ConvertAll(one => (one.Id, one.Name)),
            form ?? new() { Id = Guid.CreateVersion7(), StartsOn = today.Iso(), EndsOn = today.AddYears(1).Iso() },
            conflict ?? new() { Id = Guid.CreateVersion7(), ConflictStartsOn = today.Iso() }, Guid.CreateVersion7());
    }

    private async Task<IReadOnlyList<InstructorLine>> LinesAsync(CancellationToken cancellation)
    {
        var today = Today;
        var ids = await records.Appointments
            .Where(row => row.Role == AppointedRole.Instructor && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today))
            .Select(row => row.PersonId).Distinct().OrderBy(id => id).Take(InstructorQueries.Most).ToListAsync(cancellation);
        var files = await records.InstructorFilesAsync(ids, today, cancellation);
        var names = await records.NamesOfAsync(ids, today, cancellation);
        return [.. ids.Select(id => new InstructorLine(
            id, names.GetValueOrDefault(id), files[id].Competences.Count > 0, Assignments.EndingSoon(files[id], today), ThroughOf(files[id])))];
    }

    private static DateOnly? ThroughOf(InstructorFile file) => file.StatedOn.Count == 0 ? null : Assignments.CountsThrough(file.StatedOn.Max());
}
