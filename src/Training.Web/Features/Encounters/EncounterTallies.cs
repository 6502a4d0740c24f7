using Training.Certification;
using Training.Records;

namespace Training.Web.Features.Encounters;

/// <summary>Sums counts of days by month and by site.</summary>
public static class EncounterTallies
{
    /// <summary>Most months that one page shows.</summary>
    public const int MostMonths = 36;

    /// <summary>Every month from the first day through the last, oldest first; the latest <see cref="MostMonths"/> where there are more.</summary>
    public static IReadOnlyList<EncounterTally<DateOnly>> ByMonth(IEnumerable<EncounterCount> counts, DateOnly from, DateOnly through)
    {
        var of = counts.ToLookup(count => FirstOf(count.MetOn));
        var months = new List<EncounterTally<DateOnly>>();
        // Back from the last month, each counted from it: month by month would not add up, and needs no clamp on a first day.
        for (var back = 0; back < MostMonths && FirstOf(through).AddMonths(-back) is var month && month >= FirstOf(from); back++)
            months.Insert(0, new(month, Kinds(of[month])));
        return months;
    }

    /// <summary>Sites with encounters, by name.</summary>
    public static IReadOnlyList<EncounterTally<string>> BySite(IEnumerable<EncounterCount> counts) =>
    [
        .. counts.GroupBy(count => (count.SiteId, count.SiteName)).OrderBy(site => site.Key.SiteName, StringComparer.CurrentCultureIgnoreCase)
            .Select(site => new EncounterTally<string>(site.Key.SiteName, Kinds(site))),
    ];

    /// <summary>First day of the month of a day.</summary>
    public static DateOnly FirstOf(DateOnly day) => new(day.Year, day.Month, 1);

    private static IReadOnlyList<(EncounterKind Kind, int Count)> Kinds(IEnumerable<EncounterCount> counts) =>
        [.. counts.GroupBy(count => count.Kind).Select(kind => (kind.Key, kind.Sum(count => count.Count)))];
}
