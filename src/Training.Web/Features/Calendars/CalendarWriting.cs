using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Certification;
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

    /// <summary>Most lapses of a calendar; those that come first are in it.</summary>
    public const int MostLapses = 3000;

    /// <summary>How often programs are asked to look again.</summary>
    public static readonly TimeSpan Refresh = TimeSpan.FromHours(6);

    /// <summary>The calendar, as it stands on a day of the provider's.</summary>
    public async Task<string> WriteAsync(CalendarFeed feed, DateOnly today, CancellationToken cancellation)
    {
        var (from, through) = (today.AddDays(-DaysBack), today.AddDays(DaysAhead));
        if (feed.EmployerId is not { } employerId)
        {
            var own = await records.OwnClassesInCalendarAsync(feed.PersonId, from, through, cancellation);
            return In(feed.Language, () => CalendarWriter.Write(
                new(text["NameOwn", provider.Name], provider.Name, OrganizerAddress: null, Refresh), [.. own.Select(day => EntryOf(day, feed, "class-days"))]));
        }

        var name = await records.Employers.Where(employer => employer.Id == employerId).Select(employer => employer.Name).SingleAsync(cancellation);
        var lapses = await LapsesAsync(employerId, from, today, through, cancellation);
        // The day of each: a number that was given to somebody else since must not stand beside their lapse.
        var badges = await BadgesAsync(employerId, [.. lapses.Select(lapse => lapse.PersonId).Distinct()], today, cancellation);
        var classes = await records.ClassesInCalendarAsync(employerId, from, through, cancellation);
        return In(feed.Language, () => CalendarWriter.Write(
            new(text["NameEmployer", name], provider.Name, OrganizerAddress: null, Refresh),
            [
                .. lapses.Select(lapse => EntryOf(lapse, employerId, badges.GetValueOrDefault(lapse.PersonId), feed)),
                .. classes.Select(day => EntryOf(day, feed, $"employers/{employerId}/classes")),
            ]));
    }

    private async Task<List<LapseLine>> LapsesAsync(Guid employerId, DateOnly from, DateOnly today, DateOnly through, CancellationToken cancellation)
    {
        var lines = new List<LapseLine>();
        await foreach (var held in records.HeldCertificationsOfEmployerAsync(employerId, today, cancellation))
        {
            if (Standings.On(held, today) is not { } standing || standing == Standing.Withdrawn || Standings.ExpiresOn(held, today) is not { } on) continue;
            if (on < from || on > through) continue;
            var period = Standings.FindPeriod(held, today)!; // not null: it has a standing
            lines.Add(new(held.PersonId, held.SchemeId, on, period.Number, period.DecidedOn));
        }

        return [.. lines.OrderBy(line => line.ExpiresOn).ThenBy(line => line.PersonId).ThenBy(line => line.SchemeId, StringComparer.Ordinal).Take(MostLapses)];
    }

    private async Task<Dictionary<Guid, string>> BadgesAsync(Guid employerId, List<Guid> people, DateOnly day, CancellationToken cancellation)
    {
        var badges = new Dictionary<Guid, string>();
        foreach (var batch in people.Chunk(500))
        {
            var rows = await records.Badges
                .Where(row => row.EmployerId == employerId && batch.Contains(row.PersonId) && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day))
                .Select(row => new { row.PersonId, row.Number }).ToListAsync(cancellation);
            foreach (var row in rows) badges[row.PersonId] = row.Number;
        }

        return badges;
    }

    // The badge and not the name: whoever finds the address learns nobody's name, and the employer knows its numbers.
    private CalendarEntry EntryOf(LapseLine lapse, Guid employerId, string? badge, CalendarFeed feed) => new(
        $"lapse-{lapse.PersonId}-{lapse.SchemeId}", lapse.PeriodNumber - 1,
        text["LapseTitle", badge ?? text["NoBadge"].Value, shelf.Find(lapse.SchemeId)?.Scheme.Words[feed.Language].Title ?? lapse.SchemeId],
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

    private static string In(Language language, Func<string> write)
    {
        var (culture, uiCulture) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = language.Culture();
        try
        {
            return write();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, uiCulture);
        }
    }

    private sealed record LapseLine(Guid PersonId, string SchemeId, DateOnly ExpiresOn, int PeriodNumber, DateOnly DecidedOn);
}
