using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Documents;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.Calendars;

/// <summary>Writes what stands behind an address of a calendar. Rule: docs/rules.md, "Calendars".</summary>
public sealed class CalendarWriting(RecordsContext records, CourseShelf shelf, OurProvider provider, TrainingOptions options, IStringLocalizer<CalendarText> text)
{
    /// <summary>How many days back a calendar reaches: what just happened does not vanish overnight.</summary>
    public const int DaysBack = 30;

    /// <summary>How many days ahead a calendar reaches.</summary>
    public const int DaysAhead = 400;

    /// <summary>How often programs are asked to look again.</summary>
    public static readonly TimeSpan Refresh = TimeSpan.FromHours(6);

    /// <summary>The calendar, as it stands on a day of the provider's.</summary>
    public async Task<string> WriteAsync(CalendarFeed feed, DateOnly today, CancellationToken cancellation)
    {
        var (from, through) = (today.AddDays(-DaysBack), today.AddDays(DaysAhead));
        if (feed.EmployerId is not { } employerId)
        {
            var own = await records.OwnClassesInCalendarAsync(feed.PersonId, from, through, cancellation);
            return feed.Language.Speak(() => CalendarWriter.Write(
                new(text["NameOwn", provider.Name], provider.Name, OrganizerAddress: null, Refresh), [.. own.Select(day => EntryOf(day, feed, "class-days"))]));
        }

        var name = await records.Employers.Where(employer => employer.Id == employerId).Select(employer => employer.Name).SingleAsync(cancellation);
        var lapses = await records.LapsesInCalendarAsync(employerId, today, from, through, cancellation);
        var classes = await records.ClassesInCalendarAsync(employerId, from, through, cancellation);
        return feed.Language.Speak(() => CalendarWriter.Write(
            new(text["NameEmployer", name], provider.Name, OrganizerAddress: null, Refresh),
            [
                .. lapses.Select(lapse => EntryOf(lapse, employerId, feed)),
                .. classes.Select(day => EntryOf(day, feed, $"employers/{employerId}/classes")),
            ]));
    }

    // The badge and not the name: whoever finds the address learns nobody's name, and the employer knows its numbers.
    private CalendarEntry EntryOf(LapseInCalendar lapse, Guid employerId, CalendarFeed feed) => new(
        $"lapse-{lapse.PersonId}-{lapse.SchemeId}", lapse.PeriodNumber - 1,
        text["LapseTitle", lapse.Badge ?? text["NoBadge"].Value, shelf.Find(lapse.SchemeId)?.Scheme.Words[feed.Language].Title ?? lapse.SchemeId],
        text["LapseMore", options.PublicPage($"{feed.Language.Tag()}/employers/{employerId}/people/{lapse.PersonId}")],
        MidnightOf(lapse.DecidedOn), new CalendarTime.AllDay(lapse.ExpiresOn));

    private CalendarEntry EntryOf(ClassInCalendar day, CalendarFeed feed, string place) => new(
        $"class-{day.Class.Id}", day.Changes, text["ClassTitle", shelf.Courses.Titles(feed.Language).Of(day.Class.CourseId)],
        options.PublicPage($"{feed.Language.Tag()}/{place}/{day.Class.Id}").ToString(),
        // A class that never changed was last changed when it was made, and its id says when.
        day.ChangedAt ?? MadeAt(day.Class.Id),
        new CalendarTime.Hours(
            day.Time, TimeZoneInfo.FindSystemTimeZoneById(day.Site.Zone), day.MeetingPlace.Length > 0 ? $"{day.Site.Name}, {day.MeetingPlace}" : day.Site.Name,
            day.IsCancelled));

    private static DateTimeOffset MidnightOf(DateOnly day) => new(day, TimeOnly.MinValue, TimeSpan.Zero);

    // RFC 9562, 5.7: the first 48 bits of such an id are milliseconds since 1970. Of another kind, the day of the feed's beginning is as good as any.
    private static DateTimeOffset MadeAt(Guid id) => id.Version == 7
        ? DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(id.ToString("N").AsSpan(0, 12), NumberStyles.HexNumber, CultureInfo.InvariantCulture))
        : DateTimeOffset.UnixEpoch;
}
