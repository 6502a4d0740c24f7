using System.Globalization;

namespace Training.Web.Features;

/// <summary>Reads what browsers send.</summary>
public static class FormValues
{
    /// <summary>The day of a date field, or null where it is none; what was typed stays with the form.</summary>
    public static DateOnly? ReadDay(string? typed) =>
        DateOnly.TryParseExact(typed, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>The day as date fields write it.</summary>
    public static string Iso(this DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>One line: outer spaces gone, what would break a line is a space.</summary>
    public static string ReadLine(string? typed) =>
        string.Join(' ', (typed ?? "").Split(['\r', '\n', '\t', '\u2028', '\u2029'], StringSplitOptions.RemoveEmptyEntries)).Trim();
}
