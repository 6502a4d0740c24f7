using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;
using Training.Web.Features.Programme;

namespace Training.Web.Features.Classes;

/// <summary>Reads the page of a class for a lead.</summary>
internal static class ClassPageReading
{
    private const int MostEmployers = 1000;

    /// <summary>One class with everybody who has to do with it; null where there is none.</summary>
    public static async Task<ClassPage?> FindClassPageAsync(
        this RecordsContext records, Guid classId, ClassPageForms forms, IReadOnlyDictionary<string, string> titles, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindClassAsync(classId, cancellation) is not { } day) return null;
        var appointed = records.Appointments
            .Where(row => row.Role == AppointedRole.Instructor && row.StartsOn <= day.HeldOn && (row.EndsOn == null || row.EndsOn >= day.HeldOn))
            .Select(row => row.PersonId);
        var employers = await records.Employers.OrderBy(employer => employer.Name != day.Employer).ThenBy(employer => employer.NameKey)
            .Take(MostEmployers).Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        var today = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(day.Zone));
        return new(
            day, titles.Of(day.CourseId), today,
            await records.ChoicesAsync(
                records.ClassTeachings.Where(row => row.ClassId == classId).Select(row => row.InstructorId), day.HeldOn, cancellation),
            await records.ChoicesAsync(
                records.ClassScorers.Where(row => row.ClassId == classId).Select(row => row.InstructorId), day.HeldOn, cancellation),
            await records.ChoicesAsync(
                records.SeatsHeld().Where(row => row.ClassId == classId).Select(row => row.PersonId), day.HeldOn, cancellation),
            await records.LineAsync(classId, day.HeldOn, cancellation),
            await records.PresencesAsync(classId, cancellation),
            await records.ResultsAsync(classId, titles, today, cancellation),
            await records.ClassBriefings.AsNoTracking().Where(row => row.ClassId == classId).OrderByDescending(row => row.Number).FirstOrDefaultAsync(cancellation),
            await records.ChangesAsync(classId, today, cancellation),
            await records.ChoicesAsync(appointed, day.HeldOn, cancellation),
            employers.ConvertAll(employer => (employer.Id, employer.Name)), forms);
    }

    private static async Task<IReadOnlyList<ClassResult>> ResultsAsync(
        this RecordsContext records, Guid classId, IReadOnlyDictionary<string, string> titles, DateOnly day, CancellationToken cancellation)
    {
        var rows = await (from sheet in records.CountingScoresheets()
                          where sheet.ClassId == classId
                          join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                          where result.Number == records.ScoresheetResults.Where(other => other.ScoresheetId == sheet.Id).Max(other => other.Number)
                          orderby sheet.SignedAt, sheet.Id
                          select new { sheet.CandidateId, sheet.InstructorId, sheet.ChecklistId, sheet.Subject, sheet.Try, result.Outcome })
            .Take(ClassQueries.Most * 10).ToListAsync(cancellation);
        var names = await records.NamesOfAsync(rows.SelectMany(row => new[] { row.CandidateId, row.InstructorId }), day, cancellation);
        return
        [
            .. rows.Select(row => new ClassResult(
                    row.CandidateId, names.GetValueOrDefault(row.CandidateId), titles.Of(row.ChecklistId), row.Subject, row.Try, row.Outcome, names.GetValueOrDefault(row.InstructorId)))
                .OrderBy(result => result.Name is null).ThenBy(result => result.Name, StringComparer.CurrentCultureIgnoreCase),
        ];
    }

    // In the order of the line, not of the names.
    private static async Task<IReadOnlyList<PersonChoice>> LineAsync(this RecordsContext records, Guid classId, DateOnly day, CancellationToken cancellation)
    {
        var ids = await records.Waiting(classId).Select(row => row.PersonId).Take(ClassQueries.Most).ToListAsync(cancellation);
        var names = await records.NamesOfAsync(ids, day, cancellation);
        return ids.ConvertAll(id => new PersonChoice(id, names.GetValueOrDefault(id)));
    }

    private static async Task<IReadOnlyList<(ClassChange Change, string? By)>> ChangesAsync(
        this RecordsContext records, Guid classId, DateOnly day, CancellationToken cancellation)
    {
        var rows = await records.ClassChanges.AsNoTracking().Where(row => row.ClassId == classId).OrderByDescending(row => row.Number)
            .Take(ClassQueries.Most).ToListAsync(cancellation);
        var names = await records.NamesOfAsync(rows.Select(row => row.ChangedById), day, cancellation);
        return rows.ConvertAll(row => (row, names.GetValueOrDefault(row.ChangedById)));
    }
}
