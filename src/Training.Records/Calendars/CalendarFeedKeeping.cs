using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>An address that was made, as its page lists it.</summary>
/// <param name="Feed">Which.</param>
/// <param name="EndedAt">Since when it no longer answers, UTC; null while it does.</param>
public sealed record MadeFeed(CalendarFeed Feed, DateTimeOffset? EndedAt);

/// <summary>A class as a calendar shows it.</summary>
/// <param name="Class">Which.</param>
/// <param name="Site">Where.</param>
/// <param name="MeetingPlace">Where people meet; empty where nothing is said.</param>
/// <param name="Changes">How often it was changed or cancelled.</param>
/// <param name="ChangedAt">When that was last, UTC; null where it never was.</param>
/// <param name="IsCancelled">It does not take place.</param>
public sealed record ClassInCalendar(ClassRecord Class, Site Site, string MeetingPlace, int Changes, DateTimeOffset? ChangedAt, bool IsCancelled)
{
    /// <summary>When and where.</summary>
    public ClassTime Time => new(Class.HeldOn, Class.StartsAt, Class.LengthMinutes, MeetingPlace);
}

/// <summary>A last day as a calendar shows it.</summary>
/// <param name="PersonId">Whose.</param>
/// <param name="Badge">Their number with the employer on the day asked for; null where they have none.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="ExpiresOn">The last day.</param>
/// <param name="PeriodNumber">Of which period.</param>
/// <param name="DecidedOn">When that period was decided.</param>
public sealed record LapseInCalendar(Guid PersonId, string? Badge, string SchemeId, DateOnly ExpiresOn, int PeriodNumber, DateOnly DecidedOn);

/// <summary>Keeps the addresses of calendars, and reads what stands behind them.</summary>
public static class CalendarFeedKeeping
{
    /// <summary>Most addresses that one person has for one calendar, ended ones included.</summary>
    public const int Most = 50;

    /// <summary>Most last days of a calendar; those that come first are in it.</summary>
    public const int MostLapses = 3000;

    /// <summary>Most classes of a calendar.</summary>
    public const int MostClasses = 1000;

    /// <summary>Keeps an address. False where it was made before by the same form: its secret is not known any more.</summary>
    public static Task<bool> TryKeepAsync(this RecordsContext records, CalendarFeed feed, CancellationToken cancellation) =>
        records.TryInsertAsync(cancellation, feed);

    /// <summary>Ends an address; the first time stays.</summary>
    public static Task EndAsync(this RecordsContext records, CalendarFeedEnd end, CancellationToken cancellation) => records.TryInsertAsync(cancellation, end);

    /// <summary>The addresses of a calendar, newest first.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Of which employer, whoever made them; null for a person's own classes.</param>
    /// <param name="personId">Who made them, where <paramref name="employerId"/> is null.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<MadeFeed>> FeedsAsync(this RecordsContext records, Guid? employerId, Guid personId, CancellationToken cancellation)
    {
        var rows = await (from feed in records.CalendarFeeds.AsNoTracking()
                          where employerId == null ? feed.EmployerId == null && feed.PersonId == personId : feed.EmployerId == employerId
                          join end in records.CalendarFeedEnds on feed.Id equals end.FeedId into ends
                          from end in ends.DefaultIfEmpty()
                          orderby feed.MadeAt descending, feed.Id descending
                          select new { Feed = feed, EndedAt = end == null ? (DateTimeOffset?)null : end.EndedAt }).Take(Most).ToListAsync(cancellation);
        return rows.ConvertAll(row => new MadeFeed(row.Feed, row.EndedAt));
    }

    /// <summary>The address with that secret; null where there is none.</summary>
    public static async Task<MadeFeed?> FindFeedAsync(this RecordsContext records, string secret, CancellationToken cancellation)
    {
        var hash = AddressSecret.HashOf(secret);
        var row = await (from feed in records.CalendarFeeds.AsNoTracking()
                         where feed.SecretHash == hash
                         join end in records.CalendarFeedEnds on feed.Id equals end.FeedId into ends
                         from end in ends.DefaultIfEmpty()
                         select new { Feed = feed, EndedAt = end == null ? (DateTimeOffset?)null : end.EndedAt }).SingleOrDefaultAsync(cancellation);
        return row is null ? null : new(row.Feed, row.EndedAt);
    }

    /// <summary>
    /// Whether who made an address may still see what stands behind it: they represent the employer or lead the programme that day; they are
    /// appointed as an instructor that day, for their own classes.
    /// </summary>
    public static async Task<bool> MayStillReadAsync(this RecordsContext records, CalendarFeed feed, DateOnly day, CancellationToken cancellation) =>
        feed.EmployerId is { } employerId
            ? await records.Representatives.AnyAsync(
                row => row.PersonId == feed.PersonId && row.EmployerId == employerId && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day), cancellation)
              || await records.IsAppointedAsync(feed.PersonId, AppointedRole.ProgrammeLead, day, cancellation)
            : await records.IsAppointedAsync(feed.PersonId, AppointedRole.Instructor, day, cancellation);

    /// <summary>
    /// Last days within a span, both days included, of what an employer's people hold and was not withdrawn, by day; at most
    /// <see cref="MostLapses"/>.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="employerId">Whose people; whether the visitor may see them is for the caller to ask.</param>
    /// <param name="day">The day that they stand on, and are employed.</param>
    /// <param name="first">The first last day asked for.</param>
    /// <param name="last">The last one.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<LapseInCalendar>> LapsesInCalendarAsync(
        this RecordsContext records, Guid employerId, DateOnly day, DateOnly first, DateOnly last, CancellationToken cancellation) =>
        await (from person in records.EmployedOn(employerId, day)
               join row in records.StandingsOn(day) on person.PersonId equals row.PersonId
               where row.ExpiresOn >= first && row.ExpiresOn <= last && row.Standing != Standing.Withdrawn
               join period in records.Periods on new { row.PersonId, row.SchemeId, row.Number } equals new { period.PersonId, period.SchemeId, period.Number }
               orderby row.ExpiresOn, row.PersonId, row.SchemeId
               select new LapseInCalendar(row.PersonId, person.Badge, row.SchemeId, row.ExpiresOn, row.Number, period.DecidedOn))
            .Take(MostLapses).ToListAsync(cancellation);

    /// <summary>Classes at an employer's sites within a span, both days included, cancelled ones too; at most <see cref="MostClasses"/>.</summary>
    public static Task<IReadOnlyList<ClassInCalendar>> ClassesInCalendarAsync(
        this RecordsContext records, Guid employerId, DateOnly first, DateOnly last, CancellationToken cancellation) =>
        records.InCalendarAsync(
            records.Classes.Where(day => records.Sites.Any(site => site.Id == day.SiteId && site.EmployerId == employerId)), first, last, cancellation);

    /// <summary>The same of the classes at which an instructor teaches or scores.</summary>
    public static Task<IReadOnlyList<ClassInCalendar>> OwnClassesInCalendarAsync(
        this RecordsContext records, Guid instructorId, DateOnly first, DateOnly last, CancellationToken cancellation) =>
        records.InCalendarAsync(
            records.Classes.Where(day => records.ClassTeachings.Any(row => row.ClassId == day.Id && row.InstructorId == instructorId)
                || records.ClassScorers.Any(row => row.ClassId == day.Id && row.InstructorId == instructorId)),
            first, last, cancellation);

    private static async Task<IReadOnlyList<ClassInCalendar>> InCalendarAsync(
        this RecordsContext records, IQueryable<ClassRecord> classes, DateOnly first, DateOnly last, CancellationToken cancellation)
    {
        var rows = await (from day in classes.AsNoTracking()
                          where day.HeldOn >= first && day.HeldOn <= last
                          join site in records.Sites.AsNoTracking() on day.SiteId equals site.Id
                          orderby day.HeldOn, day.Id
                          select new
                          {
                              Day = day, Site = site,
                              Place = records.ClassBriefings.Where(row => row.ClassId == day.Id).OrderByDescending(row => row.Number).Select(row => row.MeetingPlace).FirstOrDefault(),
                              Briefings = records.ClassBriefings.Count(row => row.ClassId == day.Id),
                              BriefedAt = records.ClassBriefings.Where(row => row.ClassId == day.Id).Max(row => (DateTimeOffset?)row.WrittenAt),
                              Changes = records.ClassChanges.Count(row => row.ClassId == day.Id),
                              ChangedAt = records.ClassChanges.Where(row => row.ClassId == day.Id).Max(row => (DateTimeOffset?)row.ChangedAt),
                              CancelledAt = records.ClassCancellations.Where(row => row.ClassId == day.Id).Select(row => (DateTimeOffset?)row.CancelledAt).FirstOrDefault(),
                          }).Take(MostClasses).ToListAsync(cancellation);
        return rows.ConvertAll(row => new ClassInCalendar(
            row.Day, row.Site, row.Place ?? "", row.Changes + row.Briefings + (row.CancelledAt is null ? 0 : 1),
            new[] { row.BriefedAt, row.ChangedAt, row.CancelledAt }.Max(), row.CancelledAt is not null));
    }
}
