using System.Globalization;

namespace Training.Web.Features.Files;

/// <summary>For which days, which site and whom files are asked for.</summary>
public sealed class FilesForm
{
    /// <summary>Longest span, in years.</summary>
    public const int MostYears = 10;

    /// <summary>First day as an ISO date; empty for a year before the last.</summary>
    public string? From { get; init; }

    /// <summary>Last day as an ISO date; empty for today.</summary>
    public string? Through { get; init; }

    /// <summary>Id of a site; empty for all.</summary>
    public string? Site { get; init; }

    /// <summary>Badge number of one person; empty for all.</summary>
    public string? Badge { get; init; }

    /// <summary>Why the last folder was not made: <c>size</c> or <c>badge</c>; null where nothing went wrong.</summary>
    public string? Told { get; init; }

    /// <summary>Made by the form; needed to make a folder.</summary>
    public Guid FormId { get; init; }

    /// <summary>The days; false, and those of the form when it is empty, where what was typed cannot be used.</summary>
    public bool TryReadDays(DateOnly today, out DateOnly from, out DateOnly through)
    {
        (from, through) = (today.AddYears(-1).AddDays(1), today);
        if (!TryRead(Through, today, out var last) || !TryRead(From, last.AddYears(-1).AddDays(1), out var first)) return false;
        if (first > last || last > today || first < last.AddYears(-MostYears)) return false;
        (from, through) = (first, last);
        return true;
    }

    private static bool TryRead(string? typed, DateOnly left, out DateOnly day)
    {
        day = left;
        return string.IsNullOrWhiteSpace(typed) || DateOnly.TryParseExact(typed.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
    }
}
