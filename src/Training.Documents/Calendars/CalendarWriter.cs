using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Training.Documents;

/// <summary>Writes calendar files (RFC 5545): CRLF, lines of at most 75 octets that split no character, a time zone for every one that is named.</summary>
public static class CalendarWriter
{
    /// <summary>Names this program as the writer (RFC 5545, 3.7.3).</summary>
    private const string Producer = "-//Training platform//Calendar 1//EN";

    /// <summary>The file as text, to be sent as UTF-8. The same arguments are the same text.</summary>
    public static string Write(CalendarHead head, IReadOnlyList<CalendarEntry> entries)
    {
        // PUBLISH, never REQUEST: an answer in somebody's calendar would go to a mailbox and give no seat back (docs/decisions.md).
        var calendar = new Calendar { ProductId = Producer, Method = "PUBLISH" };
        if (head.Name.Length > 0)
        {
            calendar.Properties.Add(new CalendarProperty("NAME", head.Name));
            // What most programs read instead of NAME.
            calendar.Properties.Add(new CalendarProperty("X-WR-CALNAME", head.Name));
        }

        if (head.Refresh is { } refresh)
        {
            var every = $"PT{(int)refresh.TotalHours}H";
            var interval = new CalendarProperty("REFRESH-INTERVAL", every);
            interval.AddParameter("VALUE", "DURATION");
            calendar.Properties.Add(interval);
            calendar.Properties.Add(new CalendarProperty("X-PUBLISHED-TTL", every));
        }

        var hours = entries.Select(entry => entry.When).OfType<CalendarTime.Hours>();
        foreach (var zone in hours.GroupBy(when => when.Zone.Id, StringComparer.Ordinal).OrderBy(zone => zone.Key, StringComparer.Ordinal))
            calendar.AddTimeZone(ZoneOf(zone.First().Zone, zone.Min(when => when.Time.HeldOn), zone.Max(when => when.Time.HeldOn)));
        foreach (var entry in entries) calendar.Events.Add(EventOf(entry, head));
        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("A calendar was written as nothing.");
    }

    private static CalendarEvent EventOf(CalendarEntry entry, CalendarHead head)
    {
        var written = new CalendarEvent
        {
            Uid = entry.Uid, Sequence = entry.Sequence, Summary = entry.Summary, DtStamp = Utc(entry.ChangedAt), LastModified = Utc(entry.ChangedAt),
        };
        if (entry.Description.Length > 0) written.Description = entry.Description;
        if (head.OrganizerAddress is { } address) written.Organizer = new Organizer($"mailto:{address}") { CommonName = head.Organizer };
        switch (entry.When)
        {
            case CalendarTime.AllDay(var on):
                written.Start = new CalDateTime(on);
                written.End = new CalDateTime(on.AddDays(1));
                // Nobody is busy because something ends that day.
                written.Transparency = TransparencyType.Transparent;
                break;
            case CalendarTime.Hours(var time, var zone, var location, var isCancelled):
                written.Start = Local(time.Start(zone), zone);
                written.End = Local(time.End(zone), zone);
                written.Location = location;
                written.Status = isCancelled ? EventStatus.Cancelled : EventStatus.Confirmed;
                break;
            default:
                throw new System.Diagnostics.UnreachableException();
        }

        return written;
    }

    // Written out change by change, from the same table of zones that the rules count by: a rule of yearly recurrence would be a second one.
    private static VTimeZone ZoneOf(TimeZoneInfo zone, DateOnly first, DateOnly last)
    {
        var written = new VTimeZone(zone.Id);
        var from = new DateTimeOffset(first.Year - 1, 1, 1, 0, 0, 0, TimeSpan.Zero);
        var through = new DateTimeOffset(last.Year + 1, 12, 31, 0, 0, 0, TimeSpan.Zero);
        written.TimeZoneInfos.Add(Observance(zone, from, zone.GetUtcOffset(from), zone.GetUtcOffset(from)));
        for (var day = from; day < through; day = day.AddDays(1))
        {
            if (zone.GetUtcOffset(day) == zone.GetUtcOffset(day.AddDays(1))) continue;
            var onset = OnsetBetween(zone, day, day.AddDays(1));
            written.TimeZoneInfos.Add(Observance(zone, onset, zone.GetUtcOffset(day), zone.GetUtcOffset(onset)));
        }

        return written;
    }

    // Clocks change on a whole minute. One change a day at most: no zone has ever had two.
    private static DateTimeOffset OnsetBetween(TimeZoneInfo zone, DateTimeOffset before, DateTimeOffset after)
    {
        var (low, high) = (0, (int)(after - before).TotalMinutes);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (zone.GetUtcOffset(before.AddMinutes(middle)) == zone.GetUtcOffset(before)) low = middle;
            else high = middle;
        }

        return before.AddMinutes(high);
    }

    // An onset is told on the clocks as they stood before it (RFC 5545, 3.6.5).
    private static VTimeZoneInfo Observance(TimeZoneInfo zone, DateTimeOffset onset, TimeSpan before, TimeSpan since) =>
        new(zone.IsDaylightSavingTime(onset) ? "DAYLIGHT" : "STANDARD")
        {
            Start = new CalDateTime(onset.UtcDateTime.Add(before), tzId: null, hasTime: true),
            OffsetFrom = new UtcOffset(before), OffsetTo = new UtcOffset(since), TimeZoneName = Name(since),
        };

    private static string Name(TimeSpan offset) => $"{(offset < TimeSpan.Zero ? '-' : '+')}{offset:hhmm}";

    private static CalDateTime Utc(DateTimeOffset instant) => new(instant.UtcDateTime, "UTC", hasTime: true);

    private static CalDateTime Local(DateTimeOffset instant, TimeZoneInfo zone) =>
        new(TimeZoneInfo.ConvertTime(instant, zone).DateTime, zone.Id, hasTime: true);
}
