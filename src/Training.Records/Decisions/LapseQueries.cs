using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>Something of an employer's that has lapsed or lapses.</summary>
/// <param name="PersonId">Whose.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="ExpiresOn">Last day.</param>
/// <param name="GraceEndsOn">Last day on which the renewal route is open.</param>
/// <param name="Standing">On the day asked for.</param>
public sealed record LapseRow(Guid PersonId, string SchemeId, DateOnly ExpiresOn, DateOnly GraceEndsOn, Standing Standing);

/// <summary>A list that may be cut, with how long it is.</summary>
/// <param name="Rows">The first ones.</param>
/// <param name="Count">Of all.</param>
/// <param name="People">People among all.</param>
public sealed record LapseList(IReadOnlyList<LapseRow> Rows, int Count, int People);

/// <summary>Reads who of an employer's people lapses, without reading the others.</summary>
/// <remarks>Rule: docs/rules.md, "Who lapses by a date", as <see cref="Lapses.By"/> has it.</remarks>
public static class LapseQueries
{
    /// <summary>What ends from a day through another, both included, and is not withdrawn: by last day, then name.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Whose people; whether the visitor may see them is for the caller to ask.</param>
    /// <param name="siteId">One of its sites, or null for all its people.</param>
    /// <param name="day">The day that they stand on.</param>
    /// <param name="through">Last day asked for.</param>
    /// <param name="most">Rows.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<LapseList> LapsingAsync(
        this RecordsContext records, Guid employerId, Guid? siteId, DateOnly day, DateOnly through, int most, CancellationToken cancellation) =>
        ListAsync(
            from person in records.At(employerId, siteId, day)
            join row in records.StandingsOn(day) on person.PersonId equals row.PersonId
            where row.ExpiresOn >= day && row.ExpiresOn <= through && row.Standing != Standing.Withdrawn
            orderby row.ExpiresOn, person.NameOrder == null, person.NameOrder, person.PersonId, row.SchemeId
            select row,
            most, cancellation);

    /// <summary>What has lapsed and can still be renewed: by the end of grace, then name.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Whose people; whether the visitor may see them is for the caller to ask.</param>
    /// <param name="siteId">One of its sites, or null for all its people.</param>
    /// <param name="day">The day that they stand on.</param>
    /// <param name="most">Rows.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<LapseList> InGraceAsync(
        this RecordsContext records, Guid employerId, Guid? siteId, DateOnly day, int most, CancellationToken cancellation) =>
        ListAsync(
            from person in records.At(employerId, siteId, day)
            join row in records.StandingsOn(day) on person.PersonId equals row.PersonId
            where row.GraceEndsOn >= day && row.Standing == Standing.Lapsed
            orderby row.GraceEndsOn, person.NameOrder == null, person.NameOrder, person.PersonId, row.SchemeId
            select row,
            most, cancellation);

    /// <summary>What is lapsed and had its last day on a day or later: by last day, then name.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Whose people; whether the visitor may see them is for the caller to ask.</param>
    /// <param name="siteId">One of its sites, or null for all its people.</param>
    /// <param name="day">The day that they stand on.</param>
    /// <param name="since">The first last day asked for.</param>
    /// <param name="most">Rows.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<LapseList> LapsedSinceAsync(
        this RecordsContext records, Guid employerId, Guid? siteId, DateOnly day, DateOnly since, int most, CancellationToken cancellation) =>
        ListAsync(
            from person in records.At(employerId, siteId, day)
            join row in records.StandingsOn(day) on person.PersonId equals row.PersonId
            where row.ExpiresOn >= since && row.Standing == Standing.Lapsed
            orderby row.ExpiresOn, person.NameOrder == null, person.NameOrder, person.PersonId, row.SchemeId
            select row,
            most, cancellation);

    /// <summary>How many people stand so under some scheme, by standing; one with none is not among them.</summary>
    public static async Task<IReadOnlyDictionary<Standing, int>> StandingCountsAsync(
        this RecordsContext records, Guid employerId, Guid? siteId, DateOnly day, CancellationToken cancellation) =>
        await (from person in records.At(employerId, siteId, day)
               join row in records.StandingsOn(day) on person.PersonId equals row.PersonId
               select new { row.PersonId, row.Standing })
            .Distinct().GroupBy(row => row.Standing).Select(people => new { Standing = people.Key, Count = people.Count() })
            .ToDictionaryAsync(row => row.Standing, row => row.Count, cancellation);

    private static IQueryable<EmployedRow> At(this RecordsContext records, Guid employerId, Guid? siteId, DateOnly day) =>
        records.EmployedOn(employerId, day).Where(person => siteId == null || person.SiteId == siteId);

    private static async Task<LapseList> ListAsync(IQueryable<StandingRow> lapses, int most, CancellationToken cancellation)
    {
        var rows = await lapses.Take(most + 1).Select(row => new LapseRow(row.PersonId, row.SchemeId, row.ExpiresOn, row.GraceEndsOn, row.Standing))
            .ToListAsync(cancellation);
        if (rows.Count <= most) return new(rows, rows.Count, rows.DistinctBy(row => row.PersonId).Count());
        return new(
            rows[..most], await lapses.CountAsync(cancellation), await lapses.Select(row => row.PersonId).Distinct().CountAsync(cancellation));
    }
}
