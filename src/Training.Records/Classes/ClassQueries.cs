using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>A class day to come.</summary>
/// <param name="Id">Which.</param>
/// <param name="CourseId">Of which course.</param>
/// <param name="HeldOn">The day, in the site's zone.</param>
/// <param name="SiteName">Where.</param>
/// <param name="FreeSeats">Seats that nobody has yet; never below 0.</param>
public sealed record ClassAhead(Guid Id, string CourseId, DateOnly HeldOn, string SiteName, int FreeSeats);

/// <summary>A seat that somebody has at a class day to come.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="CourseId">Of which course.</param>
/// <param name="HeldOn">The day, in the site's zone.</param>
public sealed record SeatAhead(Guid PersonId, string CourseId, DateOnly HeldOn);

/// <summary>Looks class days up.</summary>
public static class ClassQueries
{
    private const int Most = 500;

    /// <summary>The class days at an employer's sites from a day on that were not cancelled, the earliest first; another employer's are not its business.</summary>
    public static async Task<IReadOnlyList<ClassAhead>> ClassesAheadAsync(
        this RecordsContext records, Guid employerId, DateOnly firstDay, CancellationToken cancellation)
    {
        var rows = await (from day in records.StandingClasses()
                          where day.HeldOn >= firstDay
                          join site in records.Sites on day.SiteId equals site.Id
                          where site.EmployerId == employerId
                          orderby day.HeldOn, day.Id
                          select new
                          {
                              day.Id, day.CourseId, day.HeldOn, site.Name, day.Capacity,
                              Taken = records.SeatsHeld().Count(row => row.ClassId == day.Id),
                          })
            .Take(Most).ToListAsync(cancellation);
        return rows.ConvertAll(row => new ClassAhead(row.Id, row.CourseId, row.HeldOn, row.Name, Math.Max(0, row.Capacity - row.Taken)));
    }

    /// <summary>The seats that these people have from a day on, the earliest first.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">At most a few hundred: the caller batches.</param>
    /// <param name="firstDay">Seats before it are not listed.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<SeatAhead>> SeatsAheadAsync(
        this RecordsContext records, IReadOnlyList<Guid> personIds, DateOnly firstDay, CancellationToken cancellation)
    {
        var ids = personIds.ToList();
        return await (from seat in records.SeatsHeld()
                      where ids.Contains(seat.PersonId)
                      join day in records.StandingClasses() on seat.ClassId equals day.Id
                      where day.HeldOn >= firstDay
                      orderby day.HeldOn, day.Id
                      select new SeatAhead(seat.PersonId, day.CourseId, day.HeldOn))
            .Take(ids.Count * Bounds.RowsOfOnePerson).ToListAsync(cancellation);
    }
}
