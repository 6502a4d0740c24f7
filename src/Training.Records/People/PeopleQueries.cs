using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Looks people up as they stood on a day.</summary>
public static class PeopleQueries
{
    /// <summary>The site that the person works on that day: its zone and region bind. Null where there is none; the provider's bind then.</summary>
    public static Task<Site?> FindSiteAsync(this RecordsContext records, Guid personId, DateOnly day, CancellationToken cancellation) =>
        (from assignment in records.SiteAssignments
         join site in records.Sites on assignment.SiteId equals site.Id
         where assignment.PersonId == personId && assignment.StartsOn <= day && (assignment.EndsOn == null || assignment.EndsOn >= day)
         select site).AsNoTracking().SingleOrDefaultAsync(cancellation);

    /// <summary>The sites that these people work on that day, by person; who works on none is not among them.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">At most a few hundred: the caller batches.</param>
    /// <param name="day">The day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyDictionary<Guid, Site>> SitesOfPeopleAsync(
        this RecordsContext records, IEnumerable<Guid> personIds, DateOnly day, CancellationToken cancellation)
    {
        var ids = personIds.ToList();
        return await (from assignment in records.SiteAssignments.AsNoTracking()
                      join site in records.Sites.AsNoTracking() on assignment.SiteId equals site.Id
                      where ids.Contains(assignment.PersonId) && assignment.StartsOn <= day && (assignment.EndsOn == null || assignment.EndsOn >= day)
                      select new { assignment.PersonId, Site = site }).ToDictionaryAsync(row => row.PersonId, row => row.Site, cancellation);
    }

    /// <summary>The name row in use on that day; its text is null where it was erased. Null where no name was kept by then.</summary>
    public static Task<PersonName?> FindNameAsync(this RecordsContext records, Guid personId, DateOnly day, CancellationToken cancellation) =>
        records.PersonNames.AsNoTracking().Where(name => name.PersonId == personId && name.StartsOn <= day)
            .OrderByDescending(name => name.StartsOn).FirstOrDefaultAsync(cancellation);

    /// <summary>
    /// The names in use on that day, by person, the first one kept where it begins later. Whose name was erased or never kept is not among
    /// them.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">A page's worth: at most a few hundred.</param>
    /// <param name="day">The day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyDictionary<Guid, string>> NamesOfAsync(
        this RecordsContext records, IEnumerable<Guid> personIds, DateOnly day, CancellationToken cancellation)
    {
        var ids = personIds.Distinct().ToList();
        var names = await records.PersonNames.Where(name => ids.Contains(name.PersonId))
            .Select(name => new { name.PersonId, name.Text, name.StartsOn }).ToListAsync(cancellation);
        return names.GroupBy(name => name.PersonId)
            .Select(group => group.OrderBy(name => name.StartsOn > day).ThenByDescending(name => name.StartsOn > day ? day : name.StartsOn)
                .ThenBy(name => name.StartsOn).First())
            .Where(name => name.Text is not null)
            .ToDictionary(name => name.PersonId, name => name.Text!); // filtered in the line above
    }

    /// <summary>The person whom that badge number of that employer names, or null. Case and outer spaces do not matter.</summary>
    public static async Task<Guid?> FindPersonByBadgeAsync(
        this RecordsContext records, Guid employerId, string number, CancellationToken cancellation)
    {
        var key = KeyText.Of(number);
        return await records.Badges.Where(badge => badge.EmployerId == employerId && badge.NumberKey == key)
            .Select(badge => (Guid?)badge.PersonId).SingleOrDefaultAsync(cancellation);
    }

    /// <summary>Whether the person was appointed to the role on that day.</summary>
    public static Task<bool> IsAppointedAsync(
        this RecordsContext records, Guid personId, AppointedRole role, DateOnly day, CancellationToken cancellation) =>
        records.Appointments.AnyAsync(
            appointment => appointment.PersonId == personId && appointment.Role == role
                && appointment.StartsOn <= day && (appointment.EndsOn == null || appointment.EndsOn >= day),
            cancellation);

    internal static async Task RequirePersonAsync(
        this RecordsContext records, Guid personId, string part, List<Problem> problems, CancellationToken cancellation)
    {
        if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation))
            problems.Add(RecordsProblems.At(part, RecordsProblems.PersonUnknown, personId.ToString()));
    }

    internal static async Task RequireAppointedAsync(
        this RecordsContext records, Guid personId, AppointedRole role, DateOnly day, List<Problem> problems, CancellationToken cancellation)
    {
        if (await records.IsAppointedAsync(personId, role, day, cancellation)) return;
        var (part, code) = role switch
        {
            AppointedRole.Instructor => ("instructor", RecordsProblems.NotAnInstructor),
            AppointedRole.ProgrammeLead => ("lead", RecordsProblems.NotALead),
        };
        problems.Add(RecordsProblems.At(part, code, personId.ToString(), day.ToString("O", CultureInfo.InvariantCulture)));
    }
}
