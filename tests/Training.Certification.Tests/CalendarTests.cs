using Training.Courses;

namespace Training.Certification.Tests;

/// <summary>The rows of Data/calendar.csv; where they come from and which are left out: Data/README.md.</summary>
public sealed class CalendarTests
{
    public static TheoryData<string> Rows
    {
        get
        {
            var rows = new TheoryData<string>();
            foreach (var line in System.IO.File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "calendar.csv")).Skip(1)) rows.Add(line);
            return rows;
        }
    }

    [Fact]
    public void All_50_rows_are_there() => Assert.Equal(50, Rows.Count);

    [Theory, MemberData(nameof(Rows))]
    public void Dates_come_out_as_in_the_calendar_file(string row)
    {
        var cells = row.Split(',');

        Assert.Equal(cells[5], Compute(cells[1], cells[2], cells[3], cells[4]));
    }

    private static string Compute(string operation, string first, string second, string zone) => operation switch
    {
        "add_months" => Text(Months(second).After(Cast.On(first))),
        "minus_months" => Text(Months(second).Before(Cast.On(first))),
        "add_years" => Text(Cast.D($"P{second}Y").After(Cast.On(first))),
        "add_months_each" => Text(second.Split(';').Aggregate(
            Cast.On(first), (date, step) => step[0] == '-' ? Months(step[1..]).Before(date) : Months(step).After(date))),
        "days_between" => Assert.Single(
            Lapses.By([Cast.Held(Cast.Period(1, first, second))], Cast.On(first), Cast.On(second))).DaysLeft.ToString(),
        "current_at" => DecisionDay.On(DateTimeOffset.Parse(second), TimeZoneInfo.FindSystemTimeZoneById(zone)) <= Cast.On(first) ? "yes" : "no",
        "local_to_utc" => Class(first, 1).Start(TimeZoneInfo.FindSystemTimeZoneById(zone)).ToString("yyyy-MM-dd'T'HH:mm'Z'"),
        "plus_hours" => Local(Class(first, 60 * int.Parse(second)).End(TimeZoneInfo.FindSystemTimeZoneById(zone)), zone),
        _ => throw new ArgumentException(operation, nameof(operation)),
    };

    private static ClassTime Class(string local, int minutes)
    {
        var start = DateTime.Parse(local);
        return new(DateOnly.FromDateTime(start), TimeOnly.FromDateTime(start), minutes, "");
    }

    private static string Local(DateTimeOffset instant, string zone) =>
        TimeZoneInfo.ConvertTime(instant, TimeZoneInfo.FindSystemTimeZoneById(zone)).ToString("yyyy-MM-dd'T'HH:mmzzz").Remove("yyyy-MM-ddTHH:mm+00".Length, 1);

    private static Duration Months(string count) => Cast.D($"P{count}M");

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd");
}
