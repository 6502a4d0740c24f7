namespace Training.Courses;

/// <summary>All guidance entries with their words, and which of them is in force where, for which snakes, on which day.</summary>
/// <remarks>
/// An entry is in force from its first day until the first day of its successor. Look-up rules (docs/course-format.md, "Guidance"):
/// <list type="bullet">
/// <item>Region: the one asked for; for <c>US-UT</c> then <c>US</c>; then <c>any</c>. A region without an entry takes, for lengths and
/// fractions, the largest value in force anywhere, and has no value for anything else.</item>
/// <item>Snakes: the group asked for, then <c>any</c>, then <see cref="Unidentified"/>. A group that no entry names is taken for
/// <see cref="Unidentified"/>: then that, then <c>any</c>.</item>
/// <item>Several in force side by side: the largest of lengths and fractions, else the one in force for the shortest time.</item>
/// </list>
/// </remarks>
public sealed class GuidanceSet
{
    /// <summary>The snake group of a snake that nobody has named.</summary>
    public const string Unidentified = "unidentified";

    /// <summary>Every region, or every snake group.</summary>
    public const string Any = "any";

    private readonly Dictionary<string, GuidanceEntry> byId;
    private readonly IReadOnlyDictionary<Language, IReadOnlyDictionary<string, string>> words;

    /// <summary>Makes a set from entries with different ids.</summary>
    /// <param name="entries">In file order.</param>
    /// <param name="words">Words for values that are not numbers, by language and value; plain text.</param>
    /// <exception cref="ArgumentException">Two entries have the same id.</exception>
    public GuidanceSet(IReadOnlyList<GuidanceEntry> entries, IReadOnlyDictionary<Language, IReadOnlyDictionary<string, string>> words)
    {
        Entries = entries;
        byId = entries.ToDictionary(entry => entry.Id, StringComparer.Ordinal);
        this.words = words;
    }

    /// <summary>A set without entries.</summary>
    public static GuidanceSet Empty { get; } = new([], new Dictionary<Language, IReadOnlyDictionary<string, string>>());

    /// <summary>All entries, in file order, superseded ones included.</summary>
    public IReadOnlyList<GuidanceEntry> Entries { get; }

    /// <summary>The entry of this id, or null.</summary>
    public GuidanceEntry? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>The value as text of a language, such as <c>10 feet (3.0 metres)</c> or <c>not recommended</c>; null where it has no words.</summary>
    public string? Text(GuidanceValue value, Language language) => value switch
    {
        GuidanceValue.Quantity quantity => QuantityText.Of(quantity, language),
        GuidanceValue.Code code => words.GetValueOrDefault(language)?.GetValueOrDefault(code.Name),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>What a subject is about, such as <c>limb position after a bite</c>; its id where nobody put it in words.</summary>
    public string SubjectText(string subject, Language language) => words.GetValueOrDefault(language)?.GetValueOrDefault(subject) ?? subject;

    /// <summary>The one entry in force; null means that no source says anything for this region and these snakes.</summary>
    /// <param name="subject">Such as <c>stand-off</c>.</param>
    /// <param name="region">Such as <c>US</c> or <c>US-UT</c>.</param>
    /// <param name="snakes">Such as <c>pit-viper</c>; <c>unidentified</c> where nobody knows.</param>
    /// <param name="on">The day asked about.</param>
    public GuidanceEntry? InForce(string subject, string region, string snakes, DateOnly on)
    {
        var candidates = AllInForce(subject, region, snakes, on);
        return candidates.Count == 0 ? null : Pick(candidates);
    }

    /// <summary>All entries in force side by side, in file order: sources that differ are all shown. Same look-up rules.</summary>
    public IReadOnlyList<GuidanceEntry> AllInForce(string subject, string region, string snakes, DateOnly on)
    {
        var current = Entries.Where(entry => entry.Subject == subject && IsInForce(entry, on)).ToList();
        foreach (var place in RegionsFor(region))
        {
            var there = ForSnakes(current.Where(entry => entry.Region == place), snakes);
            if (there.Count > 0) return there;
        }

        // Nobody speaks for this region: the most careful value that anybody gives binds, never the nearest.
        var measured = current
            .GroupBy(entry => entry.Region, StringComparer.Ordinal)
            .SelectMany(place => ForSnakes(place, snakes))
            .Where(entry => SizeOf(entry) is not null)
            .ToList();
        return measured.Count == 0 ? [] : [Pick(measured)];
    }

    private bool IsInForce(GuidanceEntry entry, DateOnly on) =>
        entry.EffectiveFrom <= on
        && (entry.SupersededBy is not { } next || Find(next) is not { } successor || successor.EffectiveFrom > on);

    private List<GuidanceEntry> ForSnakes(IEnumerable<GuidanceEntry> entries, string snakes)
    {
        var there = entries.ToList();
        foreach (var group in GroupsFor(snakes))
        {
            var matching = there.Where(entry => entry.Snakes == group).ToList();
            if (matching.Count > 0) return matching;
        }

        return [];
    }

    private string[] GroupsFor(string snakes)
    {
        if (snakes == Any) return [Any];
        var isKnown = Entries.Any(entry => entry.Snakes == snakes);
        return isKnown && snakes != Unidentified ? [snakes, Any, Unidentified] : [Unidentified, Any];
    }

    private static IEnumerable<string> RegionsFor(string region)
    {
        yield return region;
        var dash = region.IndexOf('-', StringComparison.Ordinal);
        if (dash > 0) yield return region[..dash];
        yield return Any;
    }

    private static GuidanceEntry Pick(IReadOnlyList<GuidanceEntry> entries) => entries
        .OrderByDescending(entry => SizeOf(entry) ?? 0)
        .ThenByDescending(entry => entry.EffectiveFrom)
        .ThenBy(entry => entry.Id, StringComparer.Ordinal)
        .First();

    /// <summary>Lengths in centimetres and fractions: what can be too small to be safe. Null for everything else.</summary>
    private static decimal? SizeOf(GuidanceEntry entry) => entry.Value is GuidanceValue.Quantity quantity
        ? quantity.Unit switch
        {
            "cm" or "ft" => Lengths.InCentimetres(quantity),
            "fraction" => quantity.Amount,
            _ => null,
        }
        : null;
}
