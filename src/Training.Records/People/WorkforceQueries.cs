using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Reads who works for an employer on a day.</summary>
public static class WorkforceQueries
{
    /// <summary>Most people of one employer that one page reads.</summary>
    public const int MostPeople = 20_000;

    /// <summary>
    /// These people as the employer has them on that day, by id; those whom it does not employ then are left out. What another
    /// employer of theirs has about them (badge, site, crew) is not in it.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="people">A query of the same context: whom the visitor may see.</param>
    /// <param name="employerId">Whose people.</param>
    /// <param name="day">The day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<EmployedPerson>> EmployedAsync(
        this RecordsContext records, IQueryable<Guid> people, Guid employerId, DateOnly day, CancellationToken cancellation)
    {
        // Each of these rows exists at most once a person and day: keeping them refuses overlaps.
        var badges = records.Badges.Where(row => row.EmployerId == employerId && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day));
        var sites = from row in records.SiteAssignments
                    where row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day)
                    join site in records.Sites on row.SiteId equals site.Id
                    where site.EmployerId == employerId
                    select new { row.PersonId, site.Id, site.Name };
        var crews = from row in records.CrewAssignments
                    where row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day)
                    join crew in records.Crews on row.CrewId equals crew.Id
                    join site in records.Sites on crew.SiteId equals site.Id
                    where site.EmployerId == employerId
                    select new { row.PersonId, crew.Name };
        var names = records.PersonNames.Where(name => name.StartsOn <= day
            && !records.PersonNames.Any(newer => newer.PersonId == name.PersonId && newer.StartsOn <= day && newer.StartsOn > name.StartsOn));

        return await (from employment in records.Employments
                      where employment.EmployerId == employerId && people.Contains(employment.PersonId)
                          && employment.StartsOn <= day && (employment.EndsOn == null || employment.EndsOn >= day)
                      join name in names on employment.PersonId equals name.PersonId into named
                      from name in named.DefaultIfEmpty()
                      join badge in badges on employment.PersonId equals badge.PersonId into badged
                      from badge in badged.DefaultIfEmpty()
                      join site in sites on employment.PersonId equals site.PersonId into assigned
                      from site in assigned.DefaultIfEmpty()
                      join crew in crews on employment.PersonId equals crew.PersonId into crewed
                      from crew in crewed.DefaultIfEmpty()
                      orderby employment.PersonId
                      select new EmployedPerson(
                          employment.PersonId, name == null ? null : name.Text, badge == null ? null : badge.Number,
                          site == null ? null : site.Id, site == null ? null : site.Name, crew == null ? null : crew.Name))
            .Take(MostPeople).ToListAsync(cancellation);
    }

    /// <summary>The employer's sites, by name.</summary>
    public static async Task<IReadOnlyList<Site>> SitesOfAsync(this RecordsContext records, Guid employerId, CancellationToken cancellation) =>
        await records.Sites.AsNoTracking().Where(site => site.EmployerId == employerId).OrderBy(site => site.NameKey)
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
}
