namespace Training.Courses;

/// <summary>Reads <c>species.yaml</c>: the structure of the sheets.</summary>
internal static class SpeciesReader
{
    private const int MostCm = 1_000;

    private static readonly (string, SpeciesGroup)[] Groups =
        [("pit-viper", SpeciesGroup.PitViper), ("coral", SpeciesGroup.Coral), ("look-alike", SpeciesGroup.LookAlike)];

    private static readonly (string, string)[] Units = [("cm", "cm"), ("ft", "ft")];

    // Stands in for a fact that is not there until the finding throws the library away.
    private static readonly Fact NoFact = new("", "", "", FactStanding.FromMemory);

    public static List<ReadSheet> Read(CourseFolder folder)
    {
        var sheets = new List<ReadSheet>();
        foreach (var fields in Fields.ListOf(SourceNode.Read(folder.Files, SpeciesFiles.Sheets, folder.Problems), SpeciesFiles.Sheets, null, folder.Problems))
        {
            var id = fields.Id("id");
            fields.Part = $"species {id}";
            var sheet = ReadOne(folder, fields, id);
            if (sheets.Exists(known => known.Sheet.Id == id)) fields.Report(CourseProblems.IdTwice, fields.LineOf("id"), id);
            else if (id.Length > 0) sheets.Add(sheet);
        }

        return sheets;
    }

    /// <summary>The fact of a field; a finding where there is none.</summary>
    public static Fact FactOf(CourseFolder folder, Fields fields) =>
        folder.UseFact(fields.Id("fact", Ids.IsFactId), fields.File, fields.LineOf("fact"), fields.Part) ?? NoFact;

    private static ReadSheet ReadOne(CourseFolder folder, Fields fields, string id)
    {
        var group = fields.Choice("group", Groups);
        var names = Listed.Texts(fields, "scientific", fields.Optional("scientific"));
        var fact = FactOf(folder, fields);
        var (where, states) = ReadPlaces(folder, fields);
        var typical = ReadLengths(folder, fields, "typical");
        var greatest = ReadLengths(folder, fields, "greatest");
        var confusions = Listed.Ids(fields, "confused-with", fields.Optional("confused-with"));
        fields.Finish();
        var sheet = new SpeciesSheet(
            id, group, [.. names.Select(name => name.Text)], fact, where, typical, greatest, [.. confusions.Select(other => other.Text)],
            new Dictionary<Language, SpeciesWords>());
        return new(sheet, fields, confusions, states);
    }

    private static (SpeciesPlaces? Where, List<(string State, int Line)> States) ReadPlaces(CourseFolder folder, Fields fields)
    {
        if (!fields.Has("where") || fields.Map("where") is not { } places) return (null, []);
        var states = Listed.States(places, "states", places.Optional("states"));
        var isWider = places.Flag("wider");
        if (states.Count == 0 && !isWider) places.Report(SpeciesProblems.PlaceEmpty, fields.LineOf("where"));
        var where = new SpeciesPlaces([.. states.Select(state => state.Text)], isWider, FactOf(folder, places));
        places.Finish();
        return (where, states);
    }

    private static List<SpeciesLength> ReadLengths(CourseFolder folder, Fields fields, string field) =>
        [.. Fields.ListOf(fields.Optional(field), fields.File, fields.Part, folder.Problems).Select(length => ReadLength(folder, length))];

    private static SpeciesLength ReadLength(CourseFolder folder, Fields fields)
    {
        decimal? least = fields.Has("least") ? fields.Amount("least", 1, MostCm) : null;
        decimal? most = fields.Has("most") ? fields.Amount("most", 1, MostCm) : null;
        if (least is null && most is null || least > most) fields.Report(SpeciesProblems.LengthForm, fields.Line);
        var unit = fields.Choice("unit", Units);
        var fact = FactOf(folder, fields);
        CheckStanding(fields, fact);
        fields.Finish();
        return new(InCentimetres(least, unit), InCentimetres(most, unit), fact);
    }

    /// <summary>A length says its standing beside its figure, so that nobody who reads the file takes a memory for a measurement.</summary>
    private static void CheckStanding(Fields fields, Fact fact)
    {
        var said = fields.Choice("standing", SharedSources.Standings);
        if (!fields.Has("standing") || fact.Id.Length == 0 || said == fact.Standing) return;
        fields.Report(SpeciesProblems.StandingDiffers, fields.LineOf("standing"), NameOf(said), fact.Id, NameOf(fact.Standing));
    }

    private static string NameOf(FactStanding standing) => SharedSources.Standings.First(known => known.Value == standing).Name;

    private static decimal? InCentimetres(decimal? amount, string unit) =>
        amount is { } known ? Lengths.InCentimetres(new GuidanceValue.Quantity(known, unit)) : null;

    /// <summary>A sheet without words, and where its parts stand.</summary>
    public sealed record ReadSheet(
        SpeciesSheet Sheet, Fields Fields, IReadOnlyList<(string Id, int Line)> Confusions, IReadOnlyList<(string State, int Line)> States);
}
