using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Says which seats count for what. Rule: docs/rules.md, "Class days".</summary>
public static class SeatQueries
{
    /// <summary>Classes that were not cancelled.</summary>
    public static IQueryable<ClassRecord> StandingClasses(this RecordsContext records) =>
        records.Classes.Where(day => !records.ClassCancellations.Any(end => end.ClassId == day.Id));

    /// <summary>Seats that were not given back: one a person and class.</summary>
    public static IQueryable<ClassAttendance> SeatsHeld(this RecordsContext records) =>
        records.ClassAttendances.Where(seat => !records.SeatReturns.Any(
            back => back.ClassId == seat.ClassId && back.PersonId == seat.PersonId && back.Turn == seat.Turn));

    /// <summary>
    /// Seats whose people count as taught at the class: held, at a class that was not cancelled, by somebody of whom nobody said that they
    /// did not come. Whoever a signed scoresheet of the class is about was there, whatever else is kept.
    /// </summary>
    /// <remarks>An unmarked seat counts, since being taught also binds: leaving it out would let a teacher score whom they taught.</remarks>
    public static IQueryable<ClassAttendance> SeatsTaught(this RecordsContext records) =>
        records.ClassAttendances.Where(seat =>
            records.Scoresheets.Any(sheet => sheet.ClassId == seat.ClassId && sheet.CandidateId == seat.PersonId)
            || (!records.SeatReturns.Any(back => back.ClassId == seat.ClassId && back.PersonId == seat.PersonId && back.Turn == seat.Turn)
                && !records.ClassCancellations.Any(end => end.ClassId == seat.ClassId)
                && !records.ClassPresences.Any(word => word.ClassId == seat.ClassId && word.PersonId == seat.PersonId && word.Presence == Presence.DidNotCome
                    && !records.ClassPresences.Any(later => later.ClassId == word.ClassId && later.PersonId == word.PersonId && later.Number > word.Number))));

    /// <summary>Who waits for a seat at a class, the first in line first.</summary>
    public static IQueryable<ClassWaiting> Waiting(this RecordsContext records, Guid classId) =>
        records.ClassWaitings.AsNoTracking().Where(row => row.ClassId == classId && !records.ClassWaitingEnds.Any(end => end.WaitingId == row.Id))
            .OrderBy(row => row.AskedAt).ThenBy(row => row.Id);

    /// <summary>The day it is at the site of a class; null where there is no such class.</summary>
    internal static async Task<DateOnly?> DayAtClassAsync(this RecordsContext records, Guid classId, DateTimeOffset now, CancellationToken cancellation)
    {
        var zone = await (from day in records.Classes
                          where day.Id == classId
                          join site in records.Sites on day.SiteId equals site.Id
                          select site.Zone).SingleOrDefaultAsync(cancellation);
        return zone is null ? null : Certification.DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(zone));
    }
}
