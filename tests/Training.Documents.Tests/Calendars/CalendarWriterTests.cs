using System.Text;

namespace Training.Documents.Tests;

public sealed class CalendarWriterTests
{
    private static readonly DateTimeOffset Changed = new(2026, 1, 20, 15, 4, 5, TimeSpan.Zero);
    private static readonly CalendarHead Mail = new("", "Formación Ñandú, S.A.", "formacion@example.org", Refresh: null);
    private static readonly CalendarHead Feed = new("Clases; días, y “más”", "Quillback", OrganizerAddress: null, TimeSpan.FromHours(6));

    private static CalendarEntry Class(string zone, string day, string start = "08:00", int minutes = 480, int sequence = 0, bool isCancelled = false, string summary = "Class") =>
        new($"class-{zone}-{day}", sequence, summary, "https://example.org/en/my/classes", Changed, new CalendarTime.Hours(
            new(DateOnly.Parse(day), TimeOnly.Parse(start), minutes, ""), TimeZoneInfo.FindSystemTimeZoneById(zone), "Block 7, gate 3", isCancelled));

    private static CalendarEntry Lapse(string day) => new("lapse-1", 1, "Lapses", "", Changed, new CalendarTime.AllDay(DateOnly.Parse(day)));

    /// <summary>The clocks of Denver change on 8 March and 1 November 2026, those of Phoenix never.</summary>
    [Theory]
    [InlineData("America/Denver", "2026-03-06", "08:00", "2026-03-06T15:00Z", "2026-03-06T23:00Z")]
    [InlineData("America/Denver", "2026-03-09", "08:00", "2026-03-09T14:00Z", "2026-03-09T22:00Z")]
    [InlineData("America/Denver", "2026-03-08", "08:00", "2026-03-08T14:00Z", "2026-03-08T22:00Z")]     // the day of the change
    [InlineData("America/Denver", "2026-03-08", "00:30", "2026-03-08T07:30Z", "2026-03-08T15:30Z")]     // begins before it, ends after it
    [InlineData("America/Denver", "2026-11-01", "08:00", "2026-11-01T15:00Z", "2026-11-01T23:00Z")]
    [InlineData("America/Denver", "2026-10-30", "08:00", "2026-10-30T14:00Z", "2026-10-30T22:00Z")]
    [InlineData("America/Denver", "2030-07-04", "08:00", "2030-07-04T14:00Z", "2030-07-04T22:00Z")]
    [InlineData("America/Phoenix", "2026-03-06", "08:00", "2026-03-06T15:00Z", "2026-03-06T23:00Z")]
    [InlineData("America/Phoenix", "2026-03-09", "08:00", "2026-03-09T15:00Z", "2026-03-09T23:00Z")]
    [InlineData("America/Los_Angeles", "2026-03-09", "08:00", "2026-03-09T15:00Z", "2026-03-09T23:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-04-05", "08:00", "2026-04-04T21:30Z", "2026-04-05T05:30Z")]   // changes by half an hour
    [InlineData("Africa/Casablanca", "2026-02-20", "08:00", "2026-02-20T08:00Z", "2026-02-20T16:00Z")]     // follows the moon: no yearly rule says it
    [InlineData("Africa/Casablanca", "2026-04-20", "08:00", "2026-04-20T07:00Z", "2026-04-20T15:00Z")]
    public void Both_parsers_find_the_instants_from_the_zone_in_the_file(string zone, string day, string start, string startsAt, string endsAt)
    {
        var written = CalendarWriter.Write(Mail, [Class(zone, day, start)]);

        // Under a name that no table of theirs has: what they know of clocks is what stands in the file.
        var read = Assert.Single(ForeignCalendar.Read(written.Replace(zone, "Somewhere/Else", StringComparison.Ordinal)).Events);
        Assert.Equal((startsAt, endsAt), (read.Start, read.End));
        var known = Assert.Single(ForeignCalendar.Read(written).Events);
        Assert.Equal((startsAt, endsAt), (known.Start, known.End));
    }

    [Fact]
    public void A_lapse_is_that_day_and_no_other()
    {
        var read = Assert.Single(ForeignCalendar.Read(CalendarWriter.Write(Feed, [Lapse("2026-12-31")])).Events);

        Assert.Equal(("2026-12-31", "2027-01-01"), (read.Start, read.End));
    }

    [Fact]
    public void Letters_and_signs_come_through_long_lines()
    {
        const string Summary = "Clase: manejo de víboras; sólo con ganchos, ñandúes y «pinzas» \\ áéíóúüñ áéíóúüñ áéíóúüñ áéíóúüñ áéíóúüñ áéíóúüñ áéíóúüñ áéíóúüñ 蛇🐍";
        var written = CalendarWriter.Write(Feed, [Class("America/Denver", "2026-03-06", summary: Summary)]);

        Assert.Equal(Summary, Assert.Single(ForeignCalendar.Read(written).Events).Summary);
        Assert.All(written.Split("\r\n"), line =>
        {
            Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, line);
            Assert.DoesNotContain('\n', line);
            Assert.DoesNotContain('\uFFFD', Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(line)));     // half a pair of surrogates would become one
        });
        Assert.EndsWith("END:VCALENDAR\r\n", written, StringComparison.Ordinal);
    }

    [Fact]
    public void The_head_says_who_wrote_it_and_how_often_to_look()
    {
        var written = CalendarWriter.Write(Feed, [Lapse("2026-12-31")]);
        var head = ForeignCalendar.Read(written).Head;

        Assert.Equal(("PUBLISH", "2.0", Feed.Name), (head["Method"], head["Version"], head["Name"]));
        Assert.Contains("REFRESH-INTERVAL;VALUE=DURATION:PT6H\r\n", written, StringComparison.Ordinal);
        Assert.DoesNotContain("ORGANIZER", written, StringComparison.Ordinal);
        Assert.Contains("mailto:formacion@example.org", CalendarWriter.Write(Mail, [Class("America/Denver", "2026-03-06")]).Replace("\r\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_cancellation_is_the_same_event_one_higher()
    {
        var first = Assert.Single(ForeignCalendar.Read(CalendarWriter.Write(Mail, [Class("America/Denver", "2026-03-06")])).Events);
        var second = Assert.Single(ForeignCalendar.Read(CalendarWriter.Write(Mail, [Class("America/Denver", "2026-03-06", sequence: 1, isCancelled: true)])).Events);

        Assert.Equal((first.Uid, 1, "CANCELLED"), (second.Uid, second.Sequence, second.Status));
        Assert.Equal((0, "CONFIRMED"), (first.Sequence, first.Status));
    }

    [Fact]
    public void The_same_content_is_the_same_file() =>
        Assert.Equal(CalendarWriter.Write(Feed, [Class("America/Denver", "2026-03-06"), Lapse("2026-12-31")]), CalendarWriter.Write(Feed, [Class("America/Denver", "2026-03-06"), Lapse("2026-12-31")]));

    [Fact]
    public void Each_zone_stands_once_however_many_events_name_it()
    {
        var written = CalendarWriter.Write(Feed, [Class("America/Denver", "2026-03-06"), Class("America/Denver", "2027-03-06"), Class("America/Phoenix", "2026-03-06")]);

        Assert.Equal(2, written.Split("BEGIN:VTIMEZONE").Length - 1);
        Assert.Equal(3, ForeignCalendar.Read(written).Events.Count);
    }
}
