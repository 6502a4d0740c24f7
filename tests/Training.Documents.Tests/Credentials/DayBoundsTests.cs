using System.Globalization;
using Training.Documents.Credentials;

namespace Training.Documents.Tests.Credentials;

public sealed class DayBoundsTests
{
    // Zone, day, first second, last second. Changes of the clocks: IANA time zone database, files northamerica, southamerica, asia.
    public static TheoryData<string, string, string, string> Days => new()
    {
        { "America/Phoenix", "2027-03-02", "2027-03-02T00:00:00-07:00", "2027-03-02T23:59:59-07:00" },  // no change, ever
        { "America/Denver", "2026-03-08", "2026-03-08T00:00:00-07:00", "2026-03-08T23:59:59-06:00" },   // put forward at two: other offsets at both ends
        { "America/Denver", "2026-11-01", "2026-11-01T00:00:00-06:00", "2026-11-01T23:59:59-07:00" },   // put back at two
        { "America/Santiago", "2024-09-07", "2024-09-07T00:00:00-04:00", "2024-09-07T23:59:59-04:00" }, // the night before
        { "America/Santiago", "2024-09-08", "2024-09-08T01:00:00-03:00", "2024-09-08T23:59:59-03:00" }, // midnight does not exist
        { "America/Santiago", "2024-04-06", "2024-04-06T00:00:00-03:00", "2024-04-06T23:59:59-04:00" }, // 23:00 to midnight comes twice
        { "America/Havana", "2024-11-03", "2024-11-03T00:00:00-04:00", "2024-11-03T23:59:59-05:00" },   // midnight to one comes twice
        { "Asia/Beirut", "2024-10-26", "2024-10-26T00:00:00+03:00", "2024-10-26T23:59:59+02:00" },
    };

    [Theory, MemberData(nameof(Days))]
    public void A_day_lasts_from_its_first_to_its_last_second_by_the_clocks_of_its_zone(string zone, string day, string first, string last)
    {
        var place = TimeZoneInfo.FindSystemTimeZoneById(zone);
        var date = DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture);

        Assert.Equal(first, CredentialDocument.Stamp(DayBounds.FirstSecond(date, place)));
        Assert.Equal(last, CredentialDocument.Stamp(DayBounds.LastSecond(date, place)));
    }

    [Theory]
    [InlineData("America/Santiago")]
    [InlineData("America/Denver")]
    [InlineData("America/St_Johns")]
    [InlineData("Asia/Beirut")]
    public void Between_two_days_lies_one_second_and_no_gap(string zone)
    {
        var place = TimeZoneInfo.FindSystemTimeZoneById(zone);
        for (var day = new DateOnly(2024, 1, 1); day.Year < 2028; day = day.AddDays(1))
        {
            Assert.Equal(TimeSpan.FromSeconds(1), DayBounds.FirstSecond(day.AddDays(1), place) - DayBounds.LastSecond(day, place));
        }
    }
}
