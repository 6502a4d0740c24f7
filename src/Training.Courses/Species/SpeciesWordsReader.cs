using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Training.Courses;

/// <summary>Reads <c>species.md</c> of one language: a section a sheet, a list item a topic.</summary>
internal static class SpeciesWordsReader
{
    private const string Name = "name";

    private static readonly (string Id, SpeciesTopic Topic)[] Topics =
    [
        ("range", SpeciesTopic.Range), ("habitat", SpeciesTopic.Habitat), ("marks", SpeciesTopic.Marks), ("mistaken", SpeciesTopic.Mistaken),
        ("sure", SpeciesTopic.Sure), ("myth", SpeciesTopic.Myth), ("note", SpeciesTopic.Note),
    ];

    /// <summary>What no sheet may lack: what it is called, and how sure anybody can be.</summary>
    private static readonly string[] Needed = [Name, "sure"];

    public static Dictionary<string, ReadSheetWords> Read(CourseFolder folder, List<SpeciesReader.ReadSheet> sheets, Language language)
    {
        var words = new Dictionary<string, ReadSheetWords>(StringComparer.Ordinal);
        if (WordFile.Read(folder.Files, $"{language.Tag()}/{SpeciesFiles.SheetWords}", language, folder.Problems) is not { } file) return words;
        foreach (var (id, section) in SectionsById.Read(folder, file, "species", [.. sheets.Select(read => read.Sheet.Id)]))
        {
            words[id] = ReadOne(folder, file, id, section);
        }

        return words;
    }

    /// <summary>Both languages say the same topics and rest them on the same facts.</summary>
    public static void CompareLanguages(CourseFolder folder, Dictionary<Language, Dictionary<string, ReadSheetWords>> words)
    {
        foreach (var id in words.Values.SelectMany(of => of.Keys).Distinct(StringComparer.Ordinal))
        {
            var read = words.Where(of => of.Value.ContainsKey(id)).ToDictionary(of => of.Key, of => of.Value[id]);
            var all = read.Values.SelectMany(of => of.Trace).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
            foreach (var (language, sheet) in read)
            {
                foreach (var missing in all.Where(what => !sheet.Trace.Contains(what) && IsFirstToTell(what, sheet.Trace)))
                {
                    folder.Problems.Add(new(CourseProblems.LanguagesDiffer, new(sheet.Path, sheet.Line, $"species {id}"), missing, language.Tag()));
                }
            }
        }
    }

    /// <summary>A topic that is missing, or cites nothing at all, is one finding; the facts that it would have cited are not told one by one.</summary>
    private static bool IsFirstToTell(string missing, IReadOnlySet<string> trace)
    {
        var colon = missing.IndexOf(':', StringComparison.Ordinal);
        return colon < 0 || trace.Any(cited => cited.StartsWith(missing[..(colon + 1)], StringComparison.Ordinal));
    }

    private static ReadSheetWords ReadOne(CourseFolder folder, WordFile file, string id, WordSection section)
    {
        var part = $"species {id}";
        void Report(string code, int line, string about) => folder.Problems.Add(new(code, new(file.Path, line, part), about));
        foreach (var stray in section.Blocks.Where(block => !WordFile.IsIdList(block))) Report(CourseProblems.WordsLayout, file.LineOf(stray), "");
        var notes = new NoteList();
        var text = new CourseText(file, folder, part, notes);
        var items = TakeItems(section, file, Report);
        foreach (var needed in Needed.Where(field => !items.ContainsKey(field))) Report(CourseProblems.WordsMissing, section.Line, needed);
        var texts = new Dictionary<SpeciesTopic, SpeciesText>();
        var trace = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (field, topic) in Topics.Where(known => items.ContainsKey(known.Id)))
        {
            var paragraph = items[field];
            var facts = FactsOf(paragraph);
            if (facts.Count == 0) Report(SpeciesProblems.SourceMissing, file.LineOf(paragraph), field);
            trace.Add(field);
            trace.UnionWith(facts.Select(fact => $"{field}: {fact}"));
            NotePlacing.KeepWithWord(paragraph);
            texts[topic] = new(text.Inline(paragraph), [.. facts.Select(folder.Shared.Facts.GetValueOrDefault).OfType<Fact>()]);
        }

        var name = items.TryGetValue(Name, out var called) ? text.Plain(called) : "";
        return new(new(name, texts, text.Notes), file.Path, section.Line, trace);
    }

    private static Dictionary<string, ParagraphBlock> TakeItems(WordSection section, WordFile file, Action<string, int, string> report)
    {
        var items = new Dictionary<string, ParagraphBlock>(StringComparer.Ordinal);
        foreach (var item in section.Blocks.Where(WordFile.IsIdList).Cast<ListBlock>().SelectMany(list => list).Cast<ListItemBlock>())
        {
            var line = file.LineOf(item);
            var field = WordFile.TakeItemId(item) ?? "";
            if (field != Name && !Array.Exists(Topics, known => known.Id == field)) report(CourseProblems.WordsUnexpected, line, field);
            else if (item is not [ParagraphBlock paragraph]) report(CourseProblems.WordsLayout, line, "");
            else if (PlainText.Of(paragraph).Length == 0) report(CourseProblems.WordsMissing, line, field);
            else if (!items.TryAdd(field, paragraph)) report(CourseProblems.WordsTwice, line, field);
        }

        return items;
    }

    private static List<string> FactsOf(ParagraphBlock paragraph) =>
    [
        .. (paragraph.Inline?.Descendants().OfType<AutolinkInline>() ?? [])
            .Where(link => link.Url.StartsWith("fact:", StringComparison.Ordinal)).Select(link => link.Url["fact:".Length..]).Distinct(StringComparer.Ordinal),
    ];

    /// <summary>The words of a sheet, where they stand, and what the other language must have too.</summary>
    public sealed record ReadSheetWords(SpeciesWords Words, string Path, int Line, IReadOnlySet<string> Trace);
}
