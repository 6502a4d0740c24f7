using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>The who-taught-whom register.</summary>
public static class TeachingQueries
{
    /// <summary>Everybody who taught the person, newest first. Whoever did not come was not taught (<see cref="SeatQueries.SeatsTaught"/>);
    /// an instructor who sits in on their own class taught not themselves.</summary>
    public static Task<IReadOnlyList<Teaching>> TeachingsOfAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        records.TeachingsOfAsync([personId], cancellation);

    /// <summary>The same for several people, newest first.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">At most a few hundred: the caller batches.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<Teaching>> TeachingsOfAsync(
        this RecordsContext records, IReadOnlyList<Guid> personIds, CancellationToken cancellation)
    {
        var ids = personIds.ToList();
        return await (from attendance in records.SeatsTaught()
                      where ids.Contains(attendance.PersonId)
                      join day in records.Classes on attendance.ClassId equals day.Id
                      join teaching in records.ClassTeachings on day.Id equals teaching.ClassId
                      where teaching.InstructorId != attendance.PersonId
                      orderby day.HeldOn descending
                      select new Teaching(day.Id, attendance.PersonId, teaching.InstructorId, day.HeldOn))
            .Take(ids.Count * Bounds.RowsOfOnePerson).ToListAsync(cancellation);
    }
}
