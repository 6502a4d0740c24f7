namespace Training.Courses;

/// <summary>What the sources say about a species and a state.</summary>
public enum SpeciesPresence
{
    /// <summary>A source names the state.</summary>
    Named,

    /// <summary>The source gives an area in words that may hold the state.</summary>
    InWords,

    /// <summary>The source names other states and no more. That is no promise that the snake stays there.</summary>
    Elsewhere,
}

/// <summary>All sheets without findings, and the regional sets over them.</summary>
public sealed class SpeciesLibrary
{
    private readonly Dictionary<string, SpeciesSheet> byId;

    /// <summary>Makes a library of sheets with different ids.</summary>
    public SpeciesLibrary(IReadOnlyList<SpeciesSheet> species, IReadOnlyList<RegionalSet> regions)
    {
        Species = species;
        Regions = regions;
        byId = species.ToDictionary(sheet => sheet.Id, StringComparer.Ordinal);
    }

    /// <summary>Without any sheet.</summary>
    public static SpeciesLibrary Empty { get; } = new([], []);

    /// <summary>In the order of the file.</summary>
    public IReadOnlyList<SpeciesSheet> Species { get; }

    /// <summary>In the order of the file.</summary>
    public IReadOnlyList<RegionalSet> Regions { get; }

    /// <summary>The sheet of an id, or null.</summary>
    public SpeciesSheet? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>What a sheet names and what names it, in the order of the file: whoever mistakes one for the other may begin at either.</summary>
    public IReadOnlyList<SpeciesSheet> ConfusedWith(SpeciesSheet sheet) =>
        [.. Species.Where(other => sheet.ConfusedWith.Contains(other.Id, StringComparer.Ordinal) || other.ConfusedWith.Contains(sheet.Id, StringComparer.Ordinal))];

    /// <summary>The sets that hold a state; none where we have no sheet for it, which says nothing about its snakes.</summary>
    public IReadOnlyList<RegionalSet> RegionsOf(string state) => [.. Regions.Where(region => region.States.Contains(state, StringComparer.Ordinal))];

    /// <summary>The sheets that a regional set lists.</summary>
    public IReadOnlyList<SpeciesSheet> Of(RegionalSet region) => [.. region.SpeciesIds.Select(Find).OfType<SpeciesSheet>()];

    /// <summary>What the source of a species says about a state.</summary>
    public static SpeciesPresence PresenceIn(SpeciesSheet sheet, string state) =>
        sheet.Where is not { } where ? SpeciesPresence.InWords
        : where.States.Contains(state, StringComparer.Ordinal) ? SpeciesPresence.Named
        : where.IsWider ? SpeciesPresence.InWords
        : SpeciesPresence.Elsewhere;
}
