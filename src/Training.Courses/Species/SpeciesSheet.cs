namespace Training.Courses;

/// <summary>What a sheet is about, as far as reach and first aid ask.</summary>
public enum SpeciesGroup
{
    /// <summary>Rattlesnakes, copperheads, cottonmouths; <c>pit-viper</c>.</summary>
    PitViper,

    /// <summary>Coral snakes; <c>coral</c>.</summary>
    Coral,

    /// <summary>Taken for one of them; <c>look-alike</c>. Says nothing about a snake that somebody sees: that one counts as venomous.</summary>
    LookAlike,
}

/// <summary>The sheet of one species, or of a group of species that is taken for one.</summary>
/// <param name="Id">Stable; also its address.</param>
/// <param name="Group">Which first aid and which reach.</param>
/// <param name="ScientificNames">The usual one first; empty where no source gives one.</param>
/// <param name="Fact">The fact that names it.</param>
/// <param name="Where">Where it occurs in the United States; null: no source was found.</param>
/// <param name="Typical">Usual lengths of adults, one an author; empty: no source was found.</param>
/// <param name="Greatest">Greatest lengths, one an author; empty: no source was found.</param>
/// <param name="ConfusedWith">Ids of the sheets that this one names; <see cref="SpeciesLibrary.ConfusedWith"/> knows both directions.</param>
/// <param name="Words">One entry for each language.</param>
public sealed record SpeciesSheet(
    string Id,
    SpeciesGroup Group,
    IReadOnlyList<string> ScientificNames,
    Fact Fact,
    SpeciesPlaces? Where,
    IReadOnlyList<SpeciesLength> Typical,
    IReadOnlyList<SpeciesLength> Greatest,
    IReadOnlyList<string> ConfusedWith,
    IReadOnlyDictionary<Language, SpeciesWords> Words)
{
    /// <summary>Whether its venom is what the training is about.</summary>
    public bool IsVenomous => Group != SpeciesGroup.LookAlike;

    /// <summary>The snake group that guidance is asked for; a look-alike counts as a snake that nobody has named.</summary>
    public string GuidanceGroup => Group switch
    {
        SpeciesGroup.PitViper => "pit-viper",
        SpeciesGroup.Coral => "coral",
        SpeciesGroup.LookAlike => GuidanceSet.Unidentified,
    };

    /// <summary>The length to reckon with: the greatest that any source gives, whatever its standing; null where none gives one.</summary>
    public SpeciesLength? Longest => Greatest.MaxBy(length => length.LongestCm);
}

/// <summary>Where a species occurs, as its source says it.</summary>
/// <param name="States">ISO 3166-2 codes of the states that the source names; empty where it names none.</param>
/// <param name="IsWider">The source names an area in words as well: these states are then not all of it, and none is guessed.</param>
/// <param name="Fact">Says so.</param>
public sealed record SpeciesPlaces(IReadOnlyList<string> States, bool IsWider, Fact Fact);

/// <summary>One length as one source gives it.</summary>
/// <param name="LeastCm">In centimetres; null where the source gives only an upper end.</param>
/// <param name="MostCm">In centimetres; null where the source says "more than <paramref name="LeastCm"/>".</param>
/// <param name="Fact">Says so; its standing is that of the length.</param>
public sealed record SpeciesLength(decimal? LeastCm, decimal? MostCm, Fact Fact)
{
    /// <summary>The upper end where there is one, else the lower: what a reach is reckoned with.</summary>
    public decimal LongestCm => MostCm ?? LeastCm ?? throw new InvalidOperationException("A length has an end.");
}

/// <summary>What the words of a sheet are about, in the order of the page.</summary>
public enum SpeciesTopic
{
    /// <summary>Where it occurs; <c>range</c>.</summary>
    Range,

    /// <summary>On what ground; <c>habitat</c>.</summary>
    Habitat,

    /// <summary>What may show from outside the stand-off; <c>marks</c>.</summary>
    Marks,

    /// <summary>What it is taken for, and how one can be wrong; <c>mistaken</c>.</summary>
    Mistaken,

    /// <summary>How sure anybody can be from there; <c>sure</c>.</summary>
    Sure,

    /// <summary>What people say, and what is true; <c>myth</c>.</summary>
    Myth,

    /// <summary>Names and law; <c>note</c>.</summary>
    Note,
}

/// <summary>The words of a sheet in one language.</summary>
/// <param name="Name">Common name, plain text.</param>
/// <param name="Texts">By topic; a topic that is not there has no source.</param>
/// <param name="Notes">Sources cited by the texts, in the order of first reference, numbered from 1.</param>
public sealed record SpeciesWords(string Name, IReadOnlyDictionary<SpeciesTopic, SpeciesText> Texts, IReadOnlyList<SourceNote> Notes);

/// <summary>One paragraph of a sheet.</summary>
/// <param name="Html">Safe HTML without its paragraph tags.</param>
/// <param name="Facts">What it rests on; at least one.</param>
public sealed record SpeciesText(string Html, IReadOnlyList<Fact> Facts);
