using Training.Courses;
using Training.Web.Features.Species;

namespace Training.Web.Features.SiteSpecies;

/// <summary>What the page of a site's species is given.</summary>
/// <param name="SiteId">For addresses.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="Region">Its state in words.</param>
/// <param name="FormId">Of the list that the form sends.</param>
/// <param name="Groups">Every venomous sheet once, the likeliest first.</param>
/// <param name="Ticked">Ids of the sheets that serve; where no list was kept, those that the sources suggest.</param>
/// <param name="KeptOn">Day of the list that serves, on the visitor's calendar; null where none was kept.</param>
/// <param name="KeptBy">Who kept it; null where nobody did or the name was erased.</param>
/// <param name="NotAsked">How many questions of each course fall out at this site.</param>
public sealed record SiteSpeciesPage(
    Guid SiteId,
    string SiteName,
    string Region,
    Guid FormId,
    IReadOnlyList<(SpeciesPresence? Presence, IReadOnlyList<SheetLink> Sheets)> Groups,
    IReadOnlySet<string> Ticked,
    DateOnly? KeptOn,
    string? KeptBy,
    IReadOnlyList<(string CourseTitle, int Questions)> NotAsked)
{
    /// <summary>The venomous sheets by what their sources say about a region: first those of its regional sets, then (null) all others.</summary>
    public static IReadOnlyList<(SpeciesPresence? Presence, IReadOnlyList<SpeciesSheet> Sheets)> GroupsOf(SpeciesLibrary library, string region)
    {
        var near = library.RegionsOf(region).SelectMany(library.Of).Distinct().ToList();
        return
        [
            .. near.GroupBy(sheet => SpeciesLibrary.PresenceIn(sheet, region)).OrderBy(group => group.Key)
                .Select(group => ((SpeciesPresence?)group.Key, (IReadOnlyList<SpeciesSheet>)[.. group])),
            (null, [.. library.Species.Where(sheet => sheet.IsVenomous && !near.Contains(sheet))]),
        ];
    }

    /// <summary>What the sources suggest: sheets whose source names the state, or an area in words that may hold it.</summary>
    public static IEnumerable<SpeciesSheet> Suggested(IEnumerable<(SpeciesPresence? Presence, IReadOnlyList<SpeciesSheet> Sheets)> groups) =>
        groups.Where(group => group.Presence is SpeciesPresence.Named or SpeciesPresence.InWords).SelectMany(group => group.Sheets);
}
