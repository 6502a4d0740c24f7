using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>The who-taught-whom register.</summary>
public static class TeachingQueries
{
    /// <summary>Everybody who taught the person, newest first. An instructor who sits in on their own class taught not themselves.</summary>
    public static async Task<IReadOnlyList<Teaching>> TeachingsOfAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        await (from attendance in records.ClassAttendances
               where attendance.PersonId == personId
               join day in records.Classes on attendance.ClassId equals day.Id
               join teaching in records.ClassTeachings on day.Id equals teaching.ClassId
               where teaching.InstructorId != personId
               orderby day.HeldOn descending
               select new Teaching(day.Id, personId, teaching.InstructorId, day.HeldOn))
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
}
