using Markdig.Syntax;

namespace Training.Courses;

/// <summary>Facts and guidance that all courses rest on.</summary>
internal sealed record SharedSources(IReadOnlyDictionary<string, Fact> Facts, GuidanceSet Guidance, IReadOnlyDictionary<Language, IReadOnlyDictionary<string, string>> Words)
{
    /// <summary>How files name each standing.</summary>
    public static readonly (string Name, FactStanding Value)[] Standings =
        [("confirmed", FactStanding.Confirmed), ("common-practice", FactStanding.CommonPractice), ("from-memory", FactStanding.FromMemory)];

    private static readonly (string, string)[] Units = [("cm", "cm"), ("ft", "ft"), ("fraction", "fraction"), ("minutes", "minutes"), ("°C", "°C")];

    public static SharedSources Read(CourseFiles files, ICollection<Problem> problems)
    {
        var facts = ReadFacts(files, problems);
        var entries = ReadEntries(files, facts, problems);
        var codes = entries.Select(entry => entry.Value).OfType<GuidanceValue.Code>().Select(code => code.Name).ToHashSet(StringComparer.Ordinal);
        var subjects = entries.Select(entry => entry.Subject).ToHashSet(StringComparer.Ordinal);
        var words = LanguageTags.All.ToDictionary(language => language, IReadOnlyDictionary<string, string> (language) => ReadWords(files, language, codes, subjects, problems));
        return new(facts, new GuidanceSet(entries, words), words);
    }

    /// <summary>The last entry of the chain that replaced this one.</summary>
    public GuidanceEntry Newest(GuidanceEntry entry)
    {
        var newest = entry;
        for (var i = 0; i < Guidance.Entries.Count && newest.SupersededBy is { } next && Guidance.Find(next) is { } successor; i++) newest = successor;
        return newest;
    }

    private static Dictionary<string, Fact> ReadFacts(CourseFiles files, ICollection<Problem> problems)
    {
        const string File = "facts.yaml";
        var facts = new Dictionary<string, Fact>(StringComparer.Ordinal);
        foreach (var fields in Fields.ListOf(SourceNode.Read(files, File, problems), File, null, problems))
        {
            var id = fields.Id("id", Ids.IsFactId);
            fields.Part = $"fact {id}";
            var before = problems.Count;
            var fact = new Fact(id, fields.Text("says"), fields.Text("source"), fields.Choice("standing", Standings));
            fields.Finish();
            if (id.Length == 0 || problems.Count > before) continue;
            if (!facts.TryAdd(id, fact)) fields.Report(CourseProblems.IdTwice, fields.LineOf("id"), id);
        }

        return facts;
    }

    private static List<GuidanceEntry> ReadEntries(CourseFiles files, Dictionary<string, Fact> facts, ICollection<Problem> problems)
    {
        const string File = "guidance.yaml";
        var entries = new List<(GuidanceEntry Entry, Fields Fields)>();
        foreach (var fields in Fields.ListOf(SourceNode.Read(files, File, problems), File, null, problems))
        {
            var id = fields.Id("id");
            fields.Part = $"guidance {id}";
            var before = problems.Count;
            var entry = ReadEntry(id, fields);
            if (entry.FactId.Length > 0 && !facts.ContainsKey(entry.FactId)) fields.Report(CourseProblems.FactUnknown, fields.LineOf("fact"), entry.FactId);
            if (entries.Any(known => known.Entry.Id == id) && id.Length > 0) fields.Report(CourseProblems.IdTwice, fields.LineOf("id"), id);
            if (id.Length > 0 && problems.Count == before) entries.Add((entry, fields));
        }

        foreach (var (entry, fields) in entries.Where(known => known.Entry.SupersededBy is not null))
        {
            // A successor begins later: that keeps the chain free of circles and says from when on it counts.
            var successor = entries.FirstOrDefault(known => known.Entry.Id == entry.SupersededBy).Entry;
            if (successor is not null && successor.Subject == entry.Subject && successor.EffectiveFrom > entry.EffectiveFrom) continue;
            fields.Report(CourseProblems.GuidanceSuccessor, fields.LineOf("superseded-by"), entry.Id, entry.SupersededBy ?? "");
        }

        return [.. entries.Select(known => known.Entry)];
    }

    private static GuidanceEntry ReadEntry(string id, Fields fields)
    {
        var entry = new GuidanceEntry(
            id,
            fields.Id("subject"),
            ReadValue(fields),
            fields.Id("region", Ids.IsRegion),
            fields.Id("snakes"),
            fields.Date("effective-from"),
            fields.OptionalText("superseded-by"),
            fields.Id("fact", Ids.IsFactId),
            fields.Text("source"),
            fields.Choice("standing", Standings));
        fields.Finish();
        return entry;
    }

    private static GuidanceValue ReadValue(Fields fields)
    {
        if (fields.OptionalText("unit") is not { } unit) return new GuidanceValue.Code(fields.Id("value", Ids.IsCode));
        var known = fields.Choose("unit", unit, Units);
        if (known == "°C") return new GuidanceValue.Quantity(fields.Amount("value", -50, 100), known);
        var amount = fields.Amount("value", 0, known == "fraction" ? 1 : 100_000);
        if (amount == 0 && fields.Text("value").Length > 0) fields.Report(CourseProblems.NumberRange, fields.LineOf("value"), "value", "0", ">0", known == "fraction" ? "1" : "100000");
        return new GuidanceValue.Quantity(amount, known);
    }

    private static Dictionary<string, string> ReadWords(CourseFiles files, Language language, HashSet<string> codes, HashSet<string> subjects, ICollection<Problem> problems)
    {
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        var path = $"{language.Tag()}/guidance.md";
        if (codes.Count == 0 && files.Find(path) is null) return words;
        if (WordFile.Read(files, path, language, problems) is not { } file) return words;
        foreach (var item in file.Blocks.OfType<ListBlock>().SelectMany(list => list).Cast<ListItemBlock>())
        {
            void Report(string code, string id) => problems.Add(new(code, new(path, file.LineOf(item)), id));
            var id = WordFile.TakeItemId(item) ?? "";
            var text = item is [ParagraphBlock paragraph] ? PlainText.Of(paragraph) : "";
            if (!codes.Contains(id) && !subjects.Contains(id)) Report(CourseProblems.WordsUnexpected, id);
            else if (text.Length == 0) Report(CourseProblems.WordsMissing, id);
            else if (!words.TryAdd(id, text)) Report(CourseProblems.WordsTwice, id);
        }

        foreach (var code in codes.Where(code => !words.ContainsKey(code)).Order(StringComparer.Ordinal))
        {
            problems.Add(new(CourseProblems.GuidanceWordsMissing, new(path), code, language.Tag()));
        }

        return words;
    }
}
