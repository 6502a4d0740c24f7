using Training.Courses;
using Training.Web.Places;
using Training.Web.Shelf;

namespace Training.Web.Features.Species;

/// <summary>What the list of sheets is given.</summary>
/// <param name="StandOff">The stand-off in force in words, or null.</param>
/// <param name="States">To choose from.</param>
/// <param name="State">The state asked for, or null.</param>
/// <param name="Sets">Without a state: every regional set. With one: those that hold it.</param>
/// <param name="InState">With a state: what its sets list, by what the sources say about it.</param>
/// <param name="LookAlikes">What is taken for a venomous snake.</param>
/// <param name="OutsideSets">States that no set holds.</param>
public sealed record SheetListPage(
    string? StandOff,
    IReadOnlyList<(string Code, string Name)> States,
    (string Code, string Name)? State,
    IReadOnlyList<SheetListPage.Set> Sets,
    IReadOnlyList<(SpeciesPresence Presence, IReadOnlyList<SheetLink> Sheets)> InState,
    IReadOnlyList<SheetLink> LookAlikes,
    IReadOnlyList<string> OutsideSets)
{
    /// <summary>One regional set.</summary>
    public sealed record Set(string Id, string Name, IReadOnlyList<string> States, IReadOnlyList<SheetLink> Sheets);

    /// <summary>The list in one language. A state that does not exist is taken for none.</summary>
    public static SheetListPage Of(SpeciesLibrary library, string? state, GuidanceNow guidance, Language language)
    {
        List<(string Code, string Name)> states = [.. Regions.Choices(language, null).Where(choice => UsStates.All.Contains(choice.Code, StringComparer.Ordinal))];
        var chosen = Regions.Find(state) is { } code && states.Exists(choice => choice.Code == code) ? code : null;
        var regions = chosen is null ? library.Regions : library.RegionsOf(chosen);
        return new(
            guidance.StandOff(GuidanceSet.Unidentified) is { } standOff ? guidance.Text(standOff) : null,
            states,
            chosen is null ? null : (chosen, Regions.NameOf(chosen, language)),
            [.. regions.Select(region => new Set(
                region.Id, region.Names[language], [.. region.States.Select(held => Regions.NameOf(held, language))], Links(library.Of(region), language)))],
            chosen is null ? [] : ByPresence([.. regions.SelectMany(library.Of).Distinct()], chosen, language),
            Links(library.Species.Where(sheet => !sheet.IsVenomous), language),
            [.. states.Where(choice => library.RegionsOf(choice.Code).Count == 0).Select(choice => choice.Name)]);
    }

    private static List<(SpeciesPresence Presence, IReadOnlyList<SheetLink> Sheets)> ByPresence(IReadOnlyList<SpeciesSheet> sheets, string state, Language language) =>
        [.. sheets.GroupBy(sheet => SpeciesLibrary.PresenceIn(sheet, state)).OrderBy(group => group.Key).Select(group => (group.Key, Links(group, language)))];

    private static IReadOnlyList<SheetLink> Links(IEnumerable<SpeciesSheet> sheets, Language language) => [.. sheets.Select(sheet => SheetLink.To(sheet, language))];
}
