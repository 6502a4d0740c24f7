using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Reads what a roster is compared with.</summary>
public static class RosterReading
{
    /// <summary>Everybody who works for the employer or once did. People of other employers are never looked at.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Whose people.</param>
    /// <param name="today">Of two sites' days the later one: what ended before it is over everywhere.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<RosterPerson>> RosterPeopleAsync(
        this RecordsContext records, Guid employerId, DateOnly today, CancellationToken cancellation) =>
        (await records.KnownRosterAsync(employerId, today, cancellation)).People;

    internal static async Task<KnownRoster> KnownRosterAsync(
        this RecordsContext records, Guid employerId, DateOnly today, CancellationToken cancellation)
    {
        var employed = records.Employments.Where(row => row.EmployerId == employerId);
        var badges = records.Badges.Where(row => row.EmployerId == employerId);
        var ids = employed.Select(row => row.PersonId).Union(badges.Select(row => row.PersonId));
        return new KnownRoster
        {
            Today = today,
            Persons = await records.Persons.AsNoTracking().Where(row => ids.Contains(row.Id)).OrderBy(row => row.Id).ToListAsync(cancellation),
            Names = (await records.PersonNames.AsNoTracking().Where(row => ids.Contains(row.PersonId)).ToListAsync(cancellation)).ToLookup(row => row.PersonId),
            Employments = (await employed.AsNoTracking().ToListAsync(cancellation)).ToLookup(row => row.PersonId),
            Badges = (await badges.AsNoTracking().ToListAsync(cancellation)).ToLookup(row => row.PersonId),
            SiteAssignments = (await records.SiteAssignments.AsNoTracking().Where(row => ids.Contains(row.PersonId)).ToListAsync(cancellation))
                .ToLookup(row => row.PersonId),
            CrewAssignments = (await records.CrewAssignments.AsNoTracking().Where(row => ids.Contains(row.PersonId)).ToListAsync(cancellation))
                .ToLookup(row => row.PersonId),
            Sites = await records.Sites.AsNoTracking().Where(site => site.EmployerId == employerId).ToDictionaryAsync(site => site.Id, cancellation),
            Crews = await (from crew in records.Crews
                           join site in records.Sites on crew.SiteId equals site.Id
                           where site.EmployerId == employerId
                           select crew).AsNoTracking().ToDictionaryAsync(crew => crew.Id, cancellation),
        };
    }
}

/// <summary>The rows of everybody who works for an employer or once did; nothing of them is tracked.</summary>
internal sealed class KnownRoster
{
    internal required DateOnly Today { get; init; }

    internal required IReadOnlyList<Person> Persons { get; init; }

    internal required ILookup<Guid, PersonName> Names { get; init; }

    /// <summary>With this employer only; so are badges.</summary>
    internal required ILookup<Guid, Employment> Employments { get; init; }

    internal required ILookup<Guid, Badge> Badges { get; init; }

    /// <summary>On any site: a person works on one at a time, whoever it belongs to. So with crews.</summary>
    internal required ILookup<Guid, SiteAssignment> SiteAssignments { get; init; }

    internal required ILookup<Guid, CrewAssignment> CrewAssignments { get; init; }

    /// <summary>Of this employer only; so are crews.</summary>
    internal required IReadOnlyDictionary<Guid, Site> Sites { get; init; }

    internal required IReadOnlyDictionary<Guid, Crew> Crews { get; init; }

    internal IReadOnlyList<RosterPerson> People => [.. Persons.Select(Of)];

    /// <summary>What is not over: it lasts, ends later or begins later.</summary>
    internal IEnumerable<T> Lasting<T>(IEnumerable<T> rows)
        where T : DatedRow => rows.Where(row => !(row.EndsOn < Today));

    private RosterPerson Of(Person person)
    {
        var badges = Badges[person.Id].OrderBy(row => row.StartsOn).ToList();
        var name = Names[person.Id].MaxBy(row => row.StartsOn);
        var place = Lasting(SiteAssignments[person.Id]).MaxBy(row => row.StartsOn);
        var site = place is null ? null : Sites.GetValueOrDefault(place.SiteId);
        var crew = Lasting(CrewAssignments[person.Id]).MaxBy(row => row.StartsOn) is { } assigned ? Crews.GetValueOrDefault(assigned.CrewId) : null;
        return new(
            person.Id, badges.ConvertAll(badge => badge.NumberKey), badges.LastOrDefault()?.Number, name?.Text, site?.Id, site?.Name, crew?.Name,
            person.Language, person.MailAddress, Lasting(Employments[person.Id]).Any(), place is not null && site is null,
            Employments[person.Id].Where(row => row.EndsOn < Today).Max(row => row.EndsOn));
    }
}
