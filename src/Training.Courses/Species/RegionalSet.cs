namespace Training.Courses;

/// <summary>A set of states whose snakes are taught together. States may belong to several sets, since ranges stop at no border.</summary>
/// <param name="Id">Stable, such as <c>desert-southwest</c>.</param>
/// <param name="States">ISO 3166-2 codes.</param>
/// <param name="SpeciesIds">Venomous species, in the order of the file.</param>
/// <param name="Fact">Who drew the set.</param>
/// <param name="Names">One entry for each language, plain text.</param>
public sealed record RegionalSet(
    string Id, IReadOnlyList<string> States, IReadOnlyList<string> SpeciesIds, Fact Fact, IReadOnlyDictionary<Language, string> Names);
