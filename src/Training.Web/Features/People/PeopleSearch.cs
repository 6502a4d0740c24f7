using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Features.People;

/// <summary>Finds people by name or badge.</summary>
public static class PeopleSearch
{
    // A programme of this size keeps its names in about a megabyte; beyond it, the newest are searched.
    private const int MostNames = 50_000;
    private const CompareOptions Loosely = CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace;

    /// <summary>
    /// People whose name holds every word of <paramref name="search"/>, accents and case aside, or whose badge begins with it; everybody
    /// where it is empty. By name, erased names last.
    /// </summary>
    /// <remarks>Names are compared here, since no two engines fold accents alike.</remarks>
    public static async Task<IReadOnlyList<(Guid PersonId, string? Name)>> FindPeopleAsync(
        this RecordsContext records, string search, DateOnly today, CancellationToken cancellation)
    {
        var names = await records.PersonNames.OrderByDescending(name => name.Id).Take(MostNames)
            .Select(name => new { name.PersonId, name.Text, name.StartsOn }).ToListAsync(cancellation);
        var inUse = names.GroupBy(name => name.PersonId)
            .Select(group => group.OrderBy(name => name.StartsOn > today).ThenByDescending(name => name.StartsOn).First());
        var badges = await records.BadgesBeginningAsync(search, cancellation);
        var words = search.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var compare = CultureInfo.InvariantCulture.CompareInfo;
        return [.. inUse
            .Where(name => badges.Contains(name.PersonId)
                || (name.Text is { } text && Array.TrueForAll(words, word => compare.IndexOf(text, word, Loosely) >= 0))
                || words.Length == 0)
            .OrderBy(name => name.Text is null)
            .ThenBy(name => name.Text, StringComparer.Create(CultureInfo.CurrentCulture, Loosely))
            .ThenBy(name => name.PersonId)
            .Select(name => (name.PersonId, name.Text))];
    }

    /// <summary>The badges that people have on a day, with the employer of each.</summary>
    public static async Task<ILookup<Guid, string>> BadgesOfAsync(
        this RecordsContext records, IReadOnlyList<Guid> personIds, DateOnly day, CancellationToken cancellation)
    {
        var ids = personIds.ToList();
        var rows = await (from badge in records.Badges
                          where ids.Contains(badge.PersonId) && badge.StartsOn <= day && (badge.EndsOn == null || badge.EndsOn >= day)
                          join employer in records.Employers on badge.EmployerId equals employer.Id
                          orderby employer.NameKey
                          select new { badge.PersonId, badge.Number, employer.Name }).ToListAsync(cancellation);
        return rows.ToLookup(row => row.PersonId, row => $"{row.Name}, {row.Number}");
    }

    private static async Task<HashSet<Guid>> BadgesBeginningAsync(this RecordsContext records, string search, CancellationToken cancellation)
    {
        if (search.Length == 0) return [];
        var key = KeyText.Of(search);
        return [.. await records.Badges.Where(badge => badge.NumberKey.StartsWith(key)).OrderBy(badge => badge.NumberKey)
            .Select(badge => badge.PersonId).Take(Shared.Turning.Rows * 10).ToListAsync(cancellation)];
    }
}
