using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class ClassTimeTests
{
    /// <summary>The table of docs/rules.md, "Class days"; more rows in Data/calendar.csv.</summary>
    [Theory]
    [InlineData("America/Denver", "2026-03-08", "08:00", 480, "2026-03-08T16:00")]
    [InlineData("America/Denver", "2026-03-08", "00:30", 480, "2026-03-08T09:30")]
    [InlineData("America/Phoenix", "2026-03-08", "00:30", 480, "2026-03-08T08:30")]
    [InlineData("America/Denver", "2026-11-01", "01:30", 60, "2026-11-01T01:30")]
    [InlineData("America/Denver", "2026-10-31", "20:00", 480, "2026-11-01T03:00")]
    public void A_class_lasts_its_minutes_whatever_the_clocks_do(string zone, string day, string start, int minutes, string end)
    {
        var place = TimeZoneInfo.FindSystemTimeZoneById(zone);
        var time = new ClassTime(On(day), TimeOnly.Parse(start), minutes, "");

        Assert.Equal(end, TimeZoneInfo.ConvertTime(time.End(place), place).ToString("yyyy-MM-dd'T'HH:mm"));
        Assert.Equal(minutes, (time.End(place) - time.Start(place)).TotalMinutes);
    }
}
