using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;
using Training.Web.Doors;

namespace Training.Web.Features.Seats;

/// <summary>Reads seats, from what the visitor may see.</summary>
internal static class SeatReading
{
    /// <summary>Most classes of a list, and most people of a class.</summary>
    public const int Most = 200;

    /// <summary>The visitor's own classes ahead: seats, places in line, seats given back and classes that are off.</summary>
    public static async Task<MyClassesPage> MyClassesAsync(
        this RecordsContext records, Visitor visitor, IReadOnlyDictionary<string, string> titles, CancellationToken cancellation)
    {
        var (me, today) = (visitor.PersonId, visitor.Today);
        var days = await records.SeatDaysAsync(
            records.Classes.Where(day => day.HeldOn >= today && (
                records.ClassAttendances.Any(seat => seat.ClassId == day.Id && seat.PersonId == me)
                || records.ClassWaitings.Any(row => row.ClassId == day.Id && row.PersonId == me && !records.ClassWaitingEnds.Any(end => end.WaitingId == row.Id)))),
            cancellation);
        var ids = days.ConvertAll(day => day.Id);
        var held = await records.SeatsHeld().Where(seat => seat.PersonId == me && ids.Contains(seat.ClassId)).Select(seat => seat.ClassId).ToListAsync(cancellation);
        var places = await records.PlacesAsync(ids, [me], cancellation);
        return new(today, [.. days.Select(day => new MyClass(
            day,
            day.CancelledBecause is not null ? MyClassState.Cancelled : held.Contains(day.Id) ? MyClassState.Seat
            : places.ContainsKey((day.Id, me)) ? MyClassState.Waits : MyClassState.GivenBack,
            places.GetValueOrDefault((day.Id, me))))], titles);
    }

    /// <summary>The classes ahead at an employer's sites; null where the visitor may not see that employer.</summary>
    public static async Task<EmployerClassesPage?> FindEmployerClassesAsync(
        this RecordsContext records, Visitor visitor, Guid employerId, IReadOnlyDictionary<string, string> titles, CancellationToken cancellation)
    {
        if (await records.FindEmployerNameAsync(visitor, employerId, cancellation) is not { } name) return null;
        var today = visitor.Today;
        var days = await records.SeatDaysAsync(records.Classes.Where(day => day.HeldOn >= today).AtSitesOf(records, employerId), cancellation);
        return new(employerId, name, today, days, titles);
    }

    /// <summary>One class at an employer's site with the employer's own people; null where the visitor may not see it.</summary>
    public static async Task<EmployerClassPage?> FindEmployerClassAsync(
        this RecordsContext records, Visitor visitor, Guid employerId, Guid classId, IReadOnlyDictionary<string, string> titles, SeatForm form, Guid? refused,
        CancellationToken cancellation)
    {
        if (await records.FindEmployerNameAsync(visitor, employerId, cancellation) is not { } name) return null;
        var day = (await records.SeatDaysAsync(records.Classes.Where(day => day.Id == classId).AtSitesOf(records, employerId), cancellation)).SingleOrDefault();
        if (day is null) return null;
        var own = records.PeopleSeenBy(visitor, employerId).Select(person => person.Id);
        var seated = await records.SeatsHeld().Where(seat => seat.ClassId == classId && own.Contains(seat.PersonId)).OrderBy(seat => seat.PersonId)
            .Select(seat => seat.PersonId).Take(Most).ToListAsync(cancellation);
        var waiting = await records.Waiting(classId).Where(row => own.Contains(row.PersonId)).Select(row => row.PersonId).Take(Most).ToListAsync(cancellation);
        var names = await records.NamesOfAsync([.. seated, .. waiting], visitor.Today, cancellation);
        var places = await records.PlacesAsync([classId], waiting, cancellation);
        return new(
            employerId, name, visitor.Today, day, titles.GetValueOrDefault(day.CourseId, day.CourseId),
            [.. seated.Select(id => new SeatedPerson(id, names.GetValueOrDefault(id), null)).OrderBy(one => one.Name is null).ThenBy(one => one.Name, StringComparer.CurrentCultureIgnoreCase)],
            [.. waiting.Select(id => new SeatedPerson(id, names.GetValueOrDefault(id), places.GetValueOrDefault((classId, id))))], form, refused);
    }

    /// <summary>Whether the class is held at a site of an employer whom the visitor may see.</summary>
    public static async Task<bool> IsClassSeenAsync(this RecordsContext records, Visitor visitor, Guid employerId, Guid classId, CancellationToken cancellation) =>
        await records.FindEmployerNameAsync(visitor, employerId, cancellation) is not null
        && await records.Classes.Where(day => day.Id == classId).AtSitesOf(records, employerId).AnyAsync(cancellation);

    /// <summary>Whether the person is one of the employer's people today, for who may see them.</summary>
    public static Task<bool> IsPersonSeenAsync(this RecordsContext records, Visitor visitor, Guid employerId, Guid personId, CancellationToken cancellation) =>
        records.PeopleSeenBy(visitor, employerId).AnyAsync(person => person.Id == personId, cancellation);

    /// <summary>Classes with what their people are to know, the next first.</summary>
    public static async Task<List<SeatDay>> SeatDaysAsync(this RecordsContext records, IQueryable<ClassRecord> classes, CancellationToken cancellation)
    {
        var rows = await (from day in classes.AsNoTracking()
                          join site in records.Sites on day.SiteId equals site.Id
                          orderby day.HeldOn, day.StartsAt, day.Id
                          select new
                          {
                              Day = day, site.Name, site.Zone,
                              Taken = records.SeatsHeld().Count(seat => seat.ClassId == day.Id),
                              Waiting = records.ClassWaitings.Count(row => row.ClassId == day.Id && !records.ClassWaitingEnds.Any(end => end.WaitingId == row.Id)),
                              Briefing = records.ClassBriefings.Where(row => row.ClassId == day.Id).OrderByDescending(row => row.Number).FirstOrDefault(),
                              Why = records.ClassCancellations.Where(row => row.ClassId == day.Id).Select(row => row.Reason).FirstOrDefault(),
                          }).Take(Most).ToListAsync(cancellation);
        return rows.ConvertAll(row => new SeatDay(
            row.Day.Id, row.Day.CourseId, new ClassTime(row.Day.HeldOn, row.Day.StartsAt, row.Day.LengthMinutes, row.Briefing?.MeetingPlace ?? ""), row.Name, row.Zone,
            row.Day.Capacity, row.Taken, row.Waiting, row.Briefing?.Kit ?? "", row.Briefing?.Weather ?? "", row.Why));
    }

    // 1 for the first in line.
    private static async Task<Dictionary<(Guid Class, Guid Person), int>> PlacesAsync(
        this RecordsContext records, List<Guid> classIds, List<Guid> people, CancellationToken cancellation)
    {
        var lines = await records.ClassWaitings
            .Where(row => classIds.Contains(row.ClassId) && !records.ClassWaitingEnds.Any(end => end.WaitingId == row.Id))
            .OrderBy(row => row.AskedAt).ThenBy(row => row.Id).Select(row => new { row.ClassId, row.PersonId }).Take(Most * Most).ToListAsync(cancellation);
        return lines.GroupBy(row => row.ClassId).SelectMany(line => line.Index().Where(row => people.Contains(row.Item.PersonId))
            .Select(row => (Key: (line.Key, row.Item.PersonId), Place: row.Index + 1))).ToDictionary(row => row.Key, row => row.Place);
    }

    private static IQueryable<ClassRecord> AtSitesOf(this IQueryable<ClassRecord> classes, RecordsContext records, Guid employerId) =>
        classes.Where(day => records.Sites.Any(site => site.Id == day.SiteId && site.EmployerId == employerId));

    private static Task<string?> FindEmployerNameAsync(this RecordsContext records, Visitor visitor, Guid employerId, CancellationToken cancellation) =>
        records.EmployersSeenBy(visitor).Where(employer => employer.Id == employerId).Select(employer => (string?)employer.Name).SingleOrDefaultAsync(cancellation);
}
