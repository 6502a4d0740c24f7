using System.Globalization;

namespace Training.Web.Features.Workforce;

/// <summary>What the visitor chose on the first page: lapses before which day, and at which site.</summary>
/// <param name="Before">The day that was chosen, or the default.</param>
/// <param name="SiteId">One of the employer's sites; null for all.</param>
/// <param name="Refused">What was typed as a day and cannot be used; null where the day is good.</param>
public sealed record TodayFilter(DateOnly Before, Guid? SiteId, string? Refused)
{
    /// <summary>How far ahead a day may be chosen.</summary>
    public const int MostYears = 10;

    private const int DaysAhead = 90;

    /// <summary>Reads what came in the address. Nothing typed is the default, a day that cannot be used is told of.</summary>
    /// <param name="typed">An ISO date, or null.</param>
    /// <param name="siteId">One of the employer's sites.</param>
    /// <param name="today">The visitor's.</param>
    public static TodayFilter Read(string? typed, Guid? siteId, DateOnly today)
    {
        if (string.IsNullOrWhiteSpace(typed)) return new(Default(today), siteId, null);
        var isDate = DateOnly.TryParseExact(typed.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day);
        return isDate && day > today && day <= today.AddYears(MostYears)
            ? new(day, siteId, null)
            : new(Default(today), siteId, typed);
    }

    /// <summary>The first of a month, 90 days ahead or up to a month later.</summary>
    private static DateOnly Default(DateOnly today)
    {
        var ahead = today.AddDays(DaysAhead);
        return ahead.Day == 1 ? ahead : new DateOnly(ahead.Year, ahead.Month, 1).AddMonths(1);
    }
}
