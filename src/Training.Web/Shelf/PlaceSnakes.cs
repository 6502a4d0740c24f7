using Training.Courses;
using Training.Records;

namespace Training.Web.Shelf;

/// <summary>Which snakes live where somebody works: what is taught and asked there.</summary>
public static class PlaceSnakes
{
    /// <summary>The sheets that a lead named for a site, in the order of the library; empty where nobody named any.</summary>
    public static async Task<IReadOnlyList<SpeciesSheet>> SheetsOfAsync(
        this RecordsContext records, SpeciesLibrary library, Guid siteId, CancellationToken cancellation) =>
        library.SheetsOf(await records.FindSiteSpeciesAsync(siteId, cancellation));

    /// <summary>The sheets of a list that was read already; empty for none.</summary>
    public static IReadOnlyList<SpeciesSheet> SheetsOf(this SpeciesLibrary library, SiteSpecies? list) =>
        list is null ? [] : [.. library.Species.Where(sheet => list.SpeciesIds.Contains(sheet.Id, StringComparer.Ordinal))];

    /// <summary>The snakes of the site that the person works on that day; unknown for people without a site.</summary>
    public static async Task<SnakesOfPlace> SnakesAroundAsync(
        this RecordsContext records, SpeciesLibrary library, Guid personId, DateOnly day, CancellationToken cancellation) =>
        await records.FindSiteAsync(personId, day, cancellation) is { } site
            ? SnakesOfPlace.Of(await records.SheetsOfAsync(library, site.Id, cancellation))
            : SnakesOfPlace.Unknown;
}
