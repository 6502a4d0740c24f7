using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Species;
using Training.Web.Shelf;

namespace Training.Web.Features.Courses;

/// <summary>Where the reader of a module works today: what the page shows of it, and which passages are for it.</summary>
/// <param name="SiteName">Null for a stranger and for people without a site.</param>
/// <param name="Snakes">Which passages have their place there.</param>
/// <param name="Sheets">The snakes named for the site; empty where nobody named any.</param>
/// <param name="Numbers">Whom to call from there; null where nobody wrote it.</param>
public sealed record ReadersPlace(string? SiteName, SnakesOfPlace Snakes, IReadOnlyList<SheetLink> Sheets, EmergencyNumbers? Numbers)
{
    /// <summary>Of somebody of whom we know nothing: every passage is shown.</summary>
    public static ReadersPlace Unknown { get; } = new(null, SnakesOfPlace.Unknown, [], null);

    /// <summary>Of a visitor; null: a stranger.</summary>
    public static async Task<ReadersPlace> OfAsync(
        RecordsContext records, SpeciesLibrary library, Visitor? visitor, Language language, CancellationToken cancellation)
    {
        if (visitor is null || await records.FindSiteAsync(visitor.PersonId, visitor.Today, cancellation) is not { } site) return Unknown;
        var sheets = await records.SheetsOfAsync(library, site.Id, cancellation);
        return new(
            site.Name, SnakesOfPlace.Of(sheets), [.. sheets.Select(sheet => SheetLink.To(sheet, language))],
            await records.FindEmergencyNumbersAsync(site.Id, cancellation));
    }
}
