using System.Globalization;
using CsCheck;

namespace Training.Courses.Tests;

public sealed class DurationTests
{
    /// <summary>Operations of the full table of calendar checks that this library does not have: zones, weeks, reminders and recurrences come later.</summary>
    private static readonly string[] NotHere =
    [
        "add_months_each", "current_at", "days_between", "end_of_month_after_months", "hours_in_local_day", "iso_week", "local_to_utc",
        "minus_weeks", "plus_hours", "reminder", "rrule_dates", "utc_to_local", "whole_months_between",
    ];

    /// <summary>Data/calendar.csv, whose source stands beside it.</summary>
    public static TheoryData<string, string, string, int, string> Rows
    {
        get
        {
            var data = new TheoryData<string, string, string, int, string>();
            foreach (var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "calendar.csv")).Skip(1))
            {
                var cells = line.Split(',');
                data.Add(cells[0], cells[1], cells[2], int.Parse(cells[3], CultureInfo.InvariantCulture), cells[5]);
            }

            return data;
        }
    }

    [Theory, MemberData(nameof(Rows))]
    public void Dates_agree_with_the_table(string row, string operation, string start, int count, string expected)
    {
        var from = DateOnly.ParseExact(start, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        var date = operation switch
        {
            "add_months" => new Duration(count, DurationUnit.Months).After(from),
            "minus_months" => new Duration(count, DurationUnit.Months).Before(from),
            "add_years" => new Duration(count, DurationUnit.Years).After(from),
            _ => throw new InvalidDataException(operation),
        };

        Assert.True(date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) == expected, $"{row}: {date}");
    }

    [Fact]
    public void The_table_holds_every_row_of_the_three_operations()
    {
        Assert.Equal(23, Rows.Count);
        Assert.DoesNotContain(NotHere, operation => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "calendar.csv")).Contains($",{operation},", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_written_is_read_back() => Check.Sample(
        Gen.Select(Gen.Int[0, 9999], Gen.Enum<DurationUnit>()),
        (count, unit) =>
        {
            var duration = new Duration(count, unit);
            Assert.True(Duration.TryParse(duration.ToString(), out var again));
            Assert.Equal(duration, again);
        });

    [Theory]
    [InlineData(null), InlineData(""), InlineData("P"), InlineData("PD"), InlineData("P1"), InlineData("1D"), InlineData("P1W"), InlineData("P1Y6M")]
    [InlineData("P-1D"), InlineData("+P1D"), InlineData("P1.5D"), InlineData("PT1H"), InlineData("p1d"), InlineData(" P1D"), InlineData("P10000D"), InlineData("P١D")]
    public void Any_other_form_is_refused(string? text) => Assert.False(Duration.TryParse(text, out _));

    [Fact]
    public void Days_after_and_before_undo_each_other() => Check.Sample(
        Gen.Select(Gen.Int[0, 9999], Gen.Int[400_000, 3_000_000]),
        (count, day) =>
        {
            var duration = new Duration(count, DurationUnit.Days);
            Assert.Equal(DateOnly.FromDayNumber(day), duration.Before(duration.After(DateOnly.FromDayNumber(day))));
        });
}
