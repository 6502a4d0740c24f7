namespace Training.Courses;

/// <summary>Which snakes live where somebody works, as far as training asks.</summary>
/// <remarks>Where nobody said which snakes live at a place, everything is taught and asked: silence is no promise that a snake is absent.</remarks>
public sealed class SnakesOfPlace
{
    private const string PitViper = "pit-viper";
    private const string Coral = "coral";

    private readonly HashSet<string>? names;

    private SnakesOfPlace(HashSet<string>? names) => this.names = names;

    /// <summary>A place of which nobody said anything.</summary>
    public static SnakesOfPlace Unknown { get; } = new(null);

    /// <summary>A place with these sheets; without any it is <see cref="Unknown"/>.</summary>
    public static SnakesOfPlace Of(IEnumerable<SpeciesSheet> sheets) => NamesOf(sheets) is { Count: > 0 } names ? new(names) : Unknown;

    /// <summary>Whether a text or question that is about these snakes has its place there.</summary>
    /// <param name="snakes">Snake groups and ids of species sheets; empty: it is about no snake in particular.</param>
    public bool Has(IReadOnlyList<string> snakes) => snakes.Count == 0 || names is null || snakes.Any(names.Contains);

    /// <summary>What a text or question can name: the two groups, and the id of every sheet of a venomous snake.</summary>
    internal static HashSet<string> AllNames(SpeciesLibrary library) => [PitViper, Coral, .. NamesOf(library.Species)];

    private static HashSet<string> NamesOf(IEnumerable<SpeciesSheet> sheets) =>
        [.. sheets.Where(sheet => sheet.IsVenomous).SelectMany(sheet => new[] { sheet.Id, sheet.GuidanceGroup })];
}
