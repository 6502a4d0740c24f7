using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>A place that needs handlers: a site, or a crew or shift of it, under one scheme.</summary>
/// <param name="SiteId">Which site.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="CrewId">Which crew or shift; null for the whole site.</param>
/// <param name="CrewName">Its name; null for the whole site.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="Needs">The rows that serve, by first day: of several for one day the one kept last.</param>
public sealed record CoverPlace(
    Guid SiteId, string SiteName, Guid? CrewId, string? CrewName, string SchemeId, IReadOnlyList<CoverNeed> Needs);

/// <summary>Somebody who counts, or may count, somewhere.</summary>
/// <param name="Held">Their certification under one scheme.</param>
/// <param name="Sites">When they work where, employment included.</param>
/// <param name="Crews">When they work in which crew, employment and site included.</param>
/// <param name="HeldOff">When a hold keeps them off handling until it is reviewed.</param>
public sealed record CoverPerson(
    HeldCertification Held, ILookup<Guid, DaySpan> Sites, ILookup<Guid, DaySpan> Crews, IReadOnlyList<DaySpan> HeldOff)
{
    /// <summary>When they work at a place.</summary>
    public IReadOnlyList<DaySpan> At(CoverPlace place) => [.. place.CrewId is { } crew ? Crews[crew] : Sites[place.SiteId]];
}

/// <summary>What the cover of an employer is worked out from.</summary>
/// <param name="Places">By name of site, the whole site before its crews, then by scheme.</param>
/// <param name="People">Everybody who is certified under a needed scheme and works at a site with a need on some day of the span.</param>
/// <param name="Seats">Their seats from the first day on, the earliest first.</param>
public sealed record CoverFacts(IReadOnlyList<CoverPlace> Places, IReadOnlyList<CoverPerson> People, ILookup<Guid, SeatAhead> Seats);

/// <summary>Reads what cover is worked out from.</summary>
public static class CoverQueries
{
    /// <summary>Most rows of needs that are read of one employer.</summary>
    public const int MostNeeds = 2_000;

    private const int PeopleABatch = 200;

    /// <summary>Everything about the cover of an employer's sites over a span: a fixed number of queries, however many people and days.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Whose sites; the caller has seen to it that the visitor may see them.</param>
    /// <param name="from">First day, included.</param>
    /// <param name="through">Last day, included.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<CoverFacts> CoverFactsAsync(
        this RecordsContext records, Guid employerId, DateOnly from, DateOnly through, CancellationToken cancellation)
    {
        var places = await records.CoverPlacesAsync(employerId, cancellation);
        List<Guid> sites = [.. places.Select(place => place.SiteId).Distinct()];
        List<string> schemes = [.. places.Select(place => place.SchemeId).Distinct()];
        if (sites.Count == 0) return new(places, [], Enumerable.Empty<SeatAhead>().ToLookup(seat => seat.PersonId));

        var people = records.Persons.Where(person =>
                records.SiteAssignments.Any(row => row.PersonId == person.Id && sites.Contains(row.SiteId)
                    && row.StartsOn <= through && (row.EndsOn == null || row.EndsOn >= from))
                && records.Periods.Any(period => period.PersonId == person.Id && schemes.Contains(period.SchemeId)))
            .Select(person => person.Id);
        var held = (await records.HeldCertificationsAsync(people, cancellation)).Where(one => schemes.Contains(one.SchemeId)).ToList();
        var employed = (await records.Employments.AsNoTracking().Where(row => row.EmployerId == employerId && people.Contains(row.PersonId))
            .ToListAsync(cancellation)).ToLookup(row => row.PersonId);
        var assigned = (await records.SiteAssignments.AsNoTracking().Where(row => sites.Contains(row.SiteId) && people.Contains(row.PersonId))
            .ToListAsync(cancellation)).ToLookup(row => row.PersonId);
        var crewed = (await (from row in records.CrewAssignments
                             where people.Contains(row.PersonId)
                             join crew in records.Crews on row.CrewId equals crew.Id
                             where sites.Contains(crew.SiteId)
                             select new { Row = row, crew.SiteId }).AsNoTracking().ToListAsync(cancellation)).ToLookup(one => one.Row.PersonId);

        var holds = (await records.HoldsOfAsync(people, cancellation)).ToLookup(hold => hold.PersonId, hold => new DaySpan(hold.From, hold.Conclusion?.On));

        List<CoverPerson> counted = [];
        foreach (var one in held)
        {
            var at = assigned[one.PersonId].SelectMany(row => Overlap(Span(row), employed[one.PersonId].Select(Span)).Select(span => (row.SiteId, span)))
                .ToLookup(row => row.SiteId, row => row.span);
            var within = crewed[one.PersonId].SelectMany(row => Overlap(Span(row.Row), at[row.SiteId]).Select(span => (row.Row.CrewId, span)))
                .ToLookup(row => row.CrewId, row => row.span);
            counted.Add(new(one, at, within, [.. holds[one.PersonId]]));
        }

        List<SeatAhead> seats = [];
        foreach (var batch in held.Select(one => one.PersonId).Distinct().Chunk(PeopleABatch)) seats.AddRange(await records.SeatsAheadAsync(batch, from, cancellation));
        return new(places, counted, seats.ToLookup(seat => seat.PersonId));
    }

    /// <summary>The places of an employer's sites for which somebody ever said a need.</summary>
    public static async Task<IReadOnlyList<CoverPlace>> CoverPlacesAsync(this RecordsContext records, Guid employerId, CancellationToken cancellation)
    {
        var rows = await (from need in records.CoverNeeds.AsNoTracking()
                          join site in records.Sites on need.SiteId equals site.Id
                          where site.EmployerId == employerId
                          join crew in records.Crews on need.CrewId equals crew.Id into crews
                          from crew in crews.DefaultIfEmpty()
                          orderby need.KeptAt descending, need.Id
                          select new { Need = need, Site = site.Name, site.NameKey, Crew = crew == null ? null : crew.Name, CrewKey = crew == null ? null : crew.NameKey })
            .Take(MostNeeds).ToListAsync(cancellation);
        return
        [
            .. rows.GroupBy(row => (row.Need.SiteId, row.Need.CrewId, row.Need.SchemeId))
                .Select(group => (First: group.First(), Needs: group.Select(row => row.Need).ToList()))
                .OrderBy(group => group.First.NameKey, StringComparer.Ordinal)
                .ThenBy(group => group.First.CrewKey is not null).ThenBy(group => group.First.CrewKey, StringComparer.Ordinal)
                .ThenBy(group => group.First.Need.SchemeId, StringComparer.Ordinal)
                .Select(group => new CoverPlace(
                    group.First.Need.SiteId, group.First.Site, group.First.Need.CrewId, group.First.Crew, group.First.Need.SchemeId,
                    // The row kept last for a day stands first here, and serves.
                    [.. group.Needs.DistinctBy(need => need.StartsOn).OrderBy(need => need.StartsOn)])),
        ];
    }

    private static DaySpan Span(DatedRow row) => new(row.StartsOn, row.EndsOn);

    private static IEnumerable<DaySpan> Overlap(DaySpan span, IEnumerable<DaySpan> others) => others.Select(span.Overlap).OfType<DaySpan>();
}
