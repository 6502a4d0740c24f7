using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>Which encounters are asked for.</summary>
/// <param name="SiteId">At which site; null for all.</param>
/// <param name="Kind">Of which kind; null for all.</param>
/// <param name="From">First day, included; null from the first on.</param>
/// <param name="Through">Last day, included; null through the last.</param>
public sealed record EncounterFilter(Guid? SiteId, EncounterKind? Kind, DateOnly? From, DateOnly? Through);

/// <summary>One encounter of a list.</summary>
/// <param name="Encounter">As it was reported.</param>
/// <param name="SiteName">Where.</param>
/// <param name="EmployerName">Whose site.</param>
public sealed record EncounterLine(EncounterRecord Encounter, string SiteName, string EmployerName);

/// <summary>How many encounters of a kind a site had on a day.</summary>
public sealed record EncounterCount(Guid SiteId, string SiteName, EncounterKind Kind, DateOnly MetOn, int Count);

/// <summary>One encounter with everything that is kept about it.</summary>
/// <param name="Line">The report.</param>
/// <param name="Relocation">What was written down about the move, or null.</param>
/// <param name="Additions">Oldest first.</param>
/// <param name="Look">A lead's, or null.</param>
/// <param name="Reviews">What it opened.</param>
public sealed record EncounterCase(
    EncounterLine Line, RelocationRecord? Relocation, IReadOnlyList<EncounterAddition> Additions, EncounterLook? Look, IReadOnlyList<ReviewRecord> Reviews);

/// <summary>Reads encounters.</summary>
public static class EncounterQueries
{
    /// <summary>Most encounters that one page or file reads; the newest.</summary>
    public const int Most = 5000;

    private const int MostAdditions = 200;
    private const int MostPeople = 1000;
    private const int MostCounts = 20_000;

    /// <summary>Those of a query that a filter lets through, newest first.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="seen">A query of the same context: what the visitor may see.</param>
    /// <param name="filter">Which of them.</param>
    /// <param name="most">How many at most, 1 to <see cref="Most"/>.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<EncounterLine>> EncountersAsync(
        this RecordsContext records, IQueryable<EncounterRecord> seen, EncounterFilter filter, int most, CancellationToken cancellation) =>
        await records.Lines(seen.Through(filter)).Take(Math.Clamp(most, 1, Most)).AsNoTracking().ToListAsync(cancellation);

    /// <summary>How many of a query that a filter lets through there were, by site, kind and day.</summary>
    public static async Task<IReadOnlyList<EncounterCount>> CountEncountersAsync(
        this RecordsContext records, IQueryable<EncounterRecord> seen, EncounterFilter filter, CancellationToken cancellation)
    {
        var rows = await (from encounter in seen.Through(filter)
                          join site in records.Sites on encounter.SiteId equals site.Id
                          group encounter by new { encounter.SiteId, site.Name, encounter.Kind, encounter.MetOn } into day
                          orderby day.Key.MetOn descending
                          select new { day.Key, Count = day.Count() }).Take(MostCounts).ToListAsync(cancellation);
        return rows.ConvertAll(row => new EncounterCount(row.Key.SiteId, row.Key.Name, row.Key.Kind, row.Key.MetOn, row.Count));
    }

    /// <summary>One encounter of a query with what belongs to it, or null.</summary>
    public static async Task<EncounterCase?> FindEncounterAsync(
        this RecordsContext records, IQueryable<EncounterRecord> seen, Guid id, CancellationToken cancellation)
    {
        if (await records.Lines(seen.Where(row => row.Id == id)).AsNoTracking().SingleOrDefaultAsync(cancellation) is not { } line) return null;
        return new(
            line,
            await records.Relocations.AsNoTracking().SingleOrDefaultAsync(row => row.EncounterId == id, cancellation),
            await records.EncounterAdditions.AsNoTracking().Where(row => row.EncounterId == id).OrderBy(row => row.KeptAt).ThenBy(row => row.Id)
                .Take(MostAdditions).ToListAsync(cancellation),
            await records.EncounterLooks.AsNoTracking().SingleOrDefaultAsync(row => row.EncounterId == id, cancellation),
            await records.Reviews.AsNoTracking().Where(row => row.EventId == id).OrderBy(row => row.Id).ToListAsync(cancellation));
    }

    /// <summary>Who works on a site on a day, by name; who has no name any more is left out.</summary>
    public static async Task<IReadOnlyList<(Guid PersonId, string Name)>> PeopleAtAsync(
        this RecordsContext records, Guid siteId, DateOnly day, CancellationToken cancellation)
    {
        var ids = await records.SiteAssignments.Where(row => row.SiteId == siteId && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day))
            .Select(row => row.PersonId).OrderBy(id => id).Take(MostPeople).ToListAsync(cancellation);
        return [.. (await records.NamesOfAsync(ids, day, cancellation)).Select(one => (one.Key, one.Value)).OrderBy(one => one.Value, StringComparer.CurrentCultureIgnoreCase)];
    }

    /// <summary>Encounters that no lead has looked at and that name a species or a course, newest first.</summary>
    public static async Task<IReadOnlyList<EncounterLine>> EncountersToLookAtAsync(this RecordsContext records, CancellationToken cancellation) =>
        await records.Lines(records.Encounters.Where(row =>
                (row.SpeciesId != null || row.CourseId != null) && !records.EncounterLooks.Any(look => look.EncounterId == row.Id)))
            .Take(Most).AsNoTracking().ToListAsync(cancellation);

    private static IQueryable<EncounterRecord> Through(this IQueryable<EncounterRecord> seen, EncounterFilter filter)
    {
        if (filter.SiteId is { } site) seen = seen.Where(row => row.SiteId == site);
        if (filter.Kind is { } kind) seen = seen.Where(row => row.Kind == kind);
        if (filter.From is { } from) seen = seen.Where(row => row.MetOn >= from);
        if (filter.Through is { } through) seen = seen.Where(row => row.MetOn <= through);
        return seen;
    }

    // Newest first, ordered before anything is put together: no engine looks into what C# makes.
    private static IQueryable<EncounterLine> Lines(this RecordsContext records, IQueryable<EncounterRecord> encounters) =>
        from encounter in encounters
        join site in records.Sites on encounter.SiteId equals site.Id
        join employer in records.Employers on site.EmployerId equals employer.Id
        orderby encounter.MetOn descending, encounter.KeptAt descending, encounter.Id descending
        select new EncounterLine(encounter, site.Name, employer.Name);
}
