using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Reads who works for an employer on a day.</summary>
public static class WorkforceQueries
{
    /// <summary>Most people of one employer that one file lists.</summary>
    public const int MostPeople = 20_000;

    /// <summary>
    /// The people whom an employer employs on a day, each once, as it has them; to be narrowed down, sorted and cut. What another employer
    /// of theirs has about them (badge, site, crew) is not in it.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Whose people; whether the visitor may see them is for the caller to ask.</param>
    /// <param name="day">The day.</param>
    public static IQueryable<EmployedRow> EmployedOn(this RecordsContext records, Guid employerId, DateOnly day)
    {
        // Each of these rows exists at most once a person and day: keeping them refuses overlaps.
        var badges = records.Badges.Where(row => row.EmployerId == employerId && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day));
        var sites = from row in records.SiteAssignments
                    where row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day)
                    join site in records.Sites on row.SiteId equals site.Id
                    where site.EmployerId == employerId
                    select new { row.PersonId, site.Id, site.Name, site.NameKey };
        var crews = from row in records.CrewAssignments
                    where row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day)
                    join crew in records.Crews on row.CrewId equals crew.Id
                    join site in records.Sites on crew.SiteId equals site.Id
                    where site.EmployerId == employerId
                    select new { row.PersonId, crew.Id, crew.Name };
        return from employment in records.Employments
               where employment.EmployerId == employerId && employment.StartsOn <= day && (employment.EndsOn == null || employment.EndsOn >= day)
               join badge in badges on employment.PersonId equals badge.PersonId into badged
               from badge in badged.DefaultIfEmpty()
               join site in sites on employment.PersonId equals site.PersonId into assigned
               from site in assigned.DefaultIfEmpty()
               join crew in crews on employment.PersonId equals crew.PersonId into crewed
               from crew in crewed.DefaultIfEmpty()
               select new EmployedRow
               {
                   PersonId = employment.PersonId,
                   // Looked up where they are asked for: joined, SQLite would put the names of everybody together first.
                   Name = records.PersonNames.Where(name => name.PersonId == employment.PersonId && name.StartsOn <= day)
                       .OrderByDescending(name => name.StartsOn).Select(name => name.Text).FirstOrDefault(),
                   NameOrder = records.PersonNames.Where(name => name.PersonId == employment.PersonId && name.StartsOn <= day)
                       .OrderByDescending(name => name.StartsOn).Select(name => name.TextOrder).FirstOrDefault(),
                   Badge = badge == null ? null : badge.Number,
                   BadgeKey = badge == null ? null : badge.NumberKey,
                   SiteId = site == null ? null : site.Id,
                   SiteName = site == null ? null : site.Name,
                   SiteKey = site == null ? null : site.NameKey,
                   CrewId = crew == null ? null : crew.Id,
                   CrewName = crew == null ? null : crew.Name,
               };
    }

    /// <summary>These people as the employer has them on that day, by name; those whom it does not employ then are left out.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">At most a few hundred: the caller batches.</param>
    /// <param name="employerId">Whose people; whether the visitor may see them is for the caller to ask.</param>
    /// <param name="day">The day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<EmployedPerson>> EmployedAsync(
        this RecordsContext records, IEnumerable<Guid> personIds, Guid employerId, DateOnly day, CancellationToken cancellation)
    {
        var ids = personIds.ToList();
        return await records.EmployedOn(employerId, day).Where(person => ids.Contains(person.PersonId)).ByName().Read().ToListAsync(cancellation);
    }

    /// <summary>How many people an employer employs on a day, at one of its sites or (null) in all.</summary>
    public static Task<int> CountEmployedAsync(
        this RecordsContext records, Guid employerId, Guid? siteId, DateOnly day, CancellationToken cancellation) =>
        records.EmployedOn(employerId, day).Where(person => siteId == null || person.SiteId == siteId).CountAsync(cancellation);

    /// <summary>The employer's sites, by name.</summary>
    public static async Task<IReadOnlyList<Site>> SitesOfAsync(this RecordsContext records, Guid employerId, CancellationToken cancellation) =>
        await records.Sites.AsNoTracking().Where(site => site.EmployerId == employerId).OrderBy(site => site.NameKey)
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);

    /// <summary>The crews of a site, by name.</summary>
    public static async Task<IReadOnlyList<Crew>> CrewsOfAsync(this RecordsContext records, Guid siteId, CancellationToken cancellation) =>
        await records.Crews.AsNoTracking().Where(crew => crew.SiteId == siteId).OrderBy(crew => crew.NameKey)
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);

    /// <summary>By name; those whose name was erased last.</summary>
    internal static IOrderedQueryable<EmployedRow> ByName(this IQueryable<EmployedRow> people) =>
        people.OrderBy(person => person.NameOrder == null).ThenBy(person => person.NameOrder).ThenBy(person => person.PersonId);

    internal static IQueryable<EmployedPerson> Read(this IQueryable<EmployedRow> people) =>
        people.Select(person => new EmployedPerson(person.PersonId, person.Name, person.Badge, person.SiteId, person.SiteName, person.CrewName));
}
