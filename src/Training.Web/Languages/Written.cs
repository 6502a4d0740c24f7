using System.Globalization;
using System.Resources;
using Training.Courses;

namespace Training.Web.Languages;

/// <summary>Writes dates, times and durations in words of the current page's language.</summary>
public static class Written
{
    private static readonly ResourceManager Words = new(typeof(WrittenText));

    /// <summary>A date written out: <c>7 December 2026</c>, <c>7 de diciembre de 2026</c>.</summary>
    public static string Date(DateOnly date) => date.ToString(Word("Date"), CultureInfo.CurrentCulture);

    /// <summary>Month and year of a date whose day stands apart: <c>December 2026</c>, <c>diciembre de 2026</c>.</summary>
    public static string Month(DateOnly date) => date.ToString(Word("MonthOfYear"), CultureInfo.CurrentCulture);

    /// <summary>A date and time of day: <c>25 November 2026, 10:44</c>.</summary>
    public static string Moment(DateTimeOffset local) => Date(DateOnly.FromDateTime(local.DateTime)) + local.ToString(", HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A time of day: <c>10:44</c>.</summary>
    public static string Time(DateTimeOffset local) => local.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A time of day: <c>08:00</c>.</summary>
    public static string Time(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A duration of one unit: <c>24 months</c>, <c>1 year</c>.</summary>
    public static string For(Duration duration) => duration.Unit switch
    {
        DurationUnit.Days => Days(duration.Count),
        DurationUnit.Months => Counted(duration.Count, Word("Month"), Word("Months")),
        DurationUnit.Years => Counted(duration.Count, Word("Year"), Word("Years")),
    };

    /// <summary>So many days.</summary>
    public static string Days(int count) => Counted(count, Word("Day"), Word("Days"));

    /// <summary>So many minutes.</summary>
    public static string Minutes(int count) => Counted(count, Word("Minute"), Word("Minutes"));

    /// <summary>That a text has too many characters.</summary>
    public static string TooLong(int most, int length) => Filled(Word("TooLong"), most, length);

    private static string Counted(int count, string one, string more) =>
        Filled(count == 1 ? one : more, count);

    private static string Filled(string words, params object[] holes) => string.Format(CultureInfo.CurrentCulture, words, holes);

    private static string Word(string key) =>
        Words.GetString(key, CultureInfo.CurrentUICulture) ?? throw new InvalidOperationException($"WrittenText has no {key}.");
}
