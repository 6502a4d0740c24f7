using System.ComponentModel.DataAnnotations;

namespace Training.Web.Settings;

/// <summary>Section <c>Training:Reminders</c>: the hours in which nothing is made to be sent, by the clock of the reader's site.</summary>
public sealed class RemindersOptions
{
    /// <summary>First quiet hour, 0 to 23. Default 20: from 20:00 on.</summary>
    [Range(0, 23)]
    public int QuietFromHour { get; init; } = 20;

    /// <summary>First hour that is no longer quiet, 0 to 23. Default 7: until 06:59. The same as <see cref="QuietFromHour"/>: no hour is quiet.</summary>
    [Range(0, 23)]
    public int QuietUntilHour { get; init; } = 7;

    /// <summary>Whether an instant lies in the quiet hours of a zone.</summary>
    public bool IsQuiet(DateTimeOffset now, TimeZoneInfo zone)
    {
        var hour = TimeZoneInfo.ConvertTime(now, zone).Hour;
        return QuietFromHour <= QuietUntilHour
            ? hour >= QuietFromHour && hour < QuietUntilHour
            : hour >= QuietFromHour || hour < QuietUntilHour;
    }
}
