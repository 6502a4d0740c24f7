using System.Globalization;

namespace Training.Web.Features.Classes;

/// <summary>Reads what forms of classes say of hours and seats.</summary>
internal static class ClassHours
{
    /// <summary>Most seats of a class.</summary>
    public const int MostSeats = 200;

    private const int LeastMinutes = 15;
    private const int MostMinutes = 24 * 60;

    /// <summary>The time of a time field, or null where it is none.</summary>
    public static TimeOnly? ReadTime(string? typed) =>
        TimeOnly.TryParseExact(typed?.Trim(), ["HH:mm", "H:mm", "HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            ? new TimeOnly(time.Hour, time.Minute)
            : null;

    /// <summary>Hours with a point or a comma, as minutes: a quarter of an hour to a day; null for everything else.</summary>
    public static int? ReadMinutes(string? typed)
    {
        var isNumber = decimal.TryParse(typed?.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hours);
        return isNumber && hours * 60 is >= LeastMinutes and <= MostMinutes && decimal.IsInteger(hours * 60) ? (int)(hours * 60) : null;
    }

    /// <summary>Seats from 1 to <see cref="MostSeats"/>, or null.</summary>
    public static int? ReadSeats(string? typed) =>
        int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var seats) && seats is >= 1 and <= MostSeats ? seats : null;

    /// <summary>Whether the clocks of the zone skip that time on that day: nobody could come then.</summary>
    public static bool IsSkipped(DateOnly day, TimeOnly time, string zone) => TimeZoneInfo.FindSystemTimeZoneById(zone).IsInvalidTime(day.ToDateTime(time));

    /// <summary>Minutes as hours, as forms write them.</summary>
    public static string Text(int minutes) => (minutes / 60m).ToString("0.####", CultureInfo.InvariantCulture);
}
