using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Features.Classes;

/// <summary>Reads classes for a lead.</summary>
public static class ClassQueries
{
    /// <summary>Most classes of each list.</summary>
    public const int Most = 200;

    /// <summary>Classes on a day or later, the next first.</summary>
    public static async Task<IReadOnlyList<ClassLine>> ClassesFromAsync(this RecordsContext records, DateOnly day, CancellationToken cancellation) =>
        await records.Lines(records.Classes.Where(one => one.HeldOn >= day).OrderBy(one => one.HeldOn).ThenBy(one => one.Id).Take(Most))
            .ToListAsync(cancellation);

    /// <summary>Classes before a day, the last first.</summary>
    public static async Task<IReadOnlyList<ClassLine>> ClassesBeforeAsync(this RecordsContext records, DateOnly day, CancellationToken cancellation) =>
        await records.Lines(records.Classes.Where(one => one.HeldOn < day).OrderByDescending(one => one.HeldOn).ThenBy(one => one.Id).Take(Most))
            .ToListAsync(cancellation);

    /// <summary>One class, or null.</summary>
    public static Task<ClassLine?> FindClassAsync(this RecordsContext records, Guid id, CancellationToken cancellation) =>
        records.Lines(records.Classes.Where(one => one.Id == id)).SingleOrDefaultAsync(cancellation);

    /// <summary>People by name, as on a day; no more than a list of instructors holds.</summary>
    public static async Task<IReadOnlyList<PersonChoice>> ChoicesAsync(
        this RecordsContext records, IQueryable<Guid> people, DateOnly day, CancellationToken cancellation)
    {
        var ids = await people.Distinct().OrderBy(id => id).Take(InstructorQueries.Most).ToListAsync(cancellation);
        var names = await records.NamesOfAsync(ids, day, cancellation);
        return [.. ids.Select(id => new PersonChoice(id, names.GetValueOrDefault(id)))
            .OrderBy(one => one.Name is null).ThenBy(one => one.Name, StringComparer.Create(CultureInfo.CurrentCulture, CompareOptions.IgnoreCase))];
    }

    private static IQueryable<ClassLine> Lines(this RecordsContext records, IQueryable<ClassRecord> classes) =>
        from one in classes
        join site in records.Sites on one.SiteId equals site.Id
        join employer in records.Employers on site.EmployerId equals employer.Id
        select new ClassLine(
            one.Id, one.CourseId, one.HeldOn, one.StartsAt, one.LengthMinutes, site.Name, site.Zone, employer.Name, one.Capacity,
            records.SeatsHeld().Count(seat => seat.ClassId == one.Id),
            records.ClassWaitings.Count(row => row.ClassId == one.Id && !records.ClassWaitingEnds.Any(end => end.WaitingId == row.Id)),
            records.ClassCancellations.Where(row => row.ClassId == one.Id).Select(row => row.Reason).FirstOrDefault());
}
