using Markdig.Extensions.CustomContainers;
using Markdig.Syntax;

namespace Training.Courses;

/// <summary>Reads the pages of modules, in both languages, and compares what they point to.</summary>
internal static class ModuleWordsReader
{
    private const string Caution = "caution";

    /// <summary>Parses every page and registers its sections; must run before anything is rendered, since texts link to each other.</summary>
    public static Dictionary<(string ModuleId, Language Language), WordFile> ReadFiles(CourseFolder folder, CourseRules rules)
    {
        var files = new Dictionary<(string ModuleId, Language Language), WordFile>();
        foreach (var module in rules.Modules)
        {
            foreach (var language in LanguageTags.All)
            {
                if (WordFile.Read(folder.Files, folder.PathOf(language, $"modules/{module.Id}.md"), language, folder.Problems) is not { } file) continue;
                files[(module.Id, language)] = file;
                folder.Pages[file.Path] = (module.Id, file.Headings.Select(WordFile.IdOf).OfType<string>().ToHashSet(StringComparer.Ordinal));
            }
        }

        return files;
    }

    public static List<Module> Read(CourseFolder folder, CourseRules rules, Dictionary<(string ModuleId, Language Language), WordFile> files)
    {
        var modules = new List<Module>();
        foreach (var module in rules.Modules)
        {
            var pages = new Dictionary<Language, ModulePage>();
            var traces = new Dictionary<Language, (WordFile File, HashSet<string> Trace)>();
            foreach (var language in LanguageTags.All)
            {
                if (!files.TryGetValue((module.Id, language), out var file)) continue;
                var text = new CourseText(file, folder, $"module {module.Id}", new NoteList());
                pages[language] = ReadPage(file, folder, text, module.Id);
                traces[language] = (file, TraceOf(pages[language], text));
            }

            CompareLanguages(folder, module.Id, traces);
            modules.Add(new(module.Id, module.Topic, module.Minutes, module.Objectives, pages));
        }

        return modules;
    }

    private static ModulePage ReadPage(WordFile file, CourseFolder folder, CourseText text, string moduleId)
    {
        void Report(string code, int line, params IReadOnlyList<string> arguments) =>
            folder.Problems.Add(new(code, new(file.Path, line, $"module {moduleId}"), arguments));

        var titles = file.Blocks.OfType<HeadingBlock>().Where(heading => heading.Level == 1).ToList();
        var title = titles.Count == 0 ? "" : text.Plain(titles[0]);
        if (title.Length == 0) Report(CourseProblems.TitleMissing, 1);
        foreach (var second in titles.Skip(1)) Report(CourseProblems.WordsLayout, file.LineOf(second));
        CheckCaution(file, Report);
        var sections = new List<Section>();
        foreach (var heading in file.Headings)
        {
            if (WordFile.IdOf(heading) is not { } id) continue;
            if (sections.Any(section => section.Id == id)) Report(CourseProblems.WordsTwice, file.LineOf(heading), id);
            sections.Add(new(id, text.Plain(heading)));
        }

        var parts = text.Parts(file.Blocks.Where(block => block is not HeadingBlock { Level: 1 }));
        return new(title, parts, sections, text.Notes, text.Prose(file.Blocks));
    }

    private static void CheckCaution(WordFile file, Action<string, int, IReadOnlyList<string>> report)
    {
        var sections = file.Sections();
        var caution = sections.FindIndex(section => WordFile.IdOf(section.Heading) == Caution);
        if (caution < 0) report(CourseProblems.CautionMissing, 1, []);
        // What stands in a passage for some snakes is not read on every site.
        else if (sections[caution].Blocks.All(block => block is CustomContainer)) report(CourseProblems.CautionMissing, sections[caution].Line, []);
        else if (caution != sections.Count - 1) report(CourseProblems.CautionNotLast, sections[caution].Line, []);
    }

    /// <summary>Everything that a page shows or points to and must show in the other language too.</summary>
    private static HashSet<string> TraceOf(ModulePage page, CourseText text) =>
    [
        // A page without its caution was told so already.
        .. page.Sections.Where(section => section.Id != Caution).Select(section => $"#{section.Id}"),
        .. page.Notes.Select(note => note.Id),
        .. text.Figures.Select(path => path[(path.LastIndexOf('/') + 1)..]),
        .. page.Parts.OfType<PagePart.Block>().Select(block => $"<block:{PageBlocks.NameOf(block.Kind)}>"),
        .. page.Parts.OfType<PagePart.Text>().Where(part => part.Snakes.Count > 0).Select(part => $"::: only {string.Join(' ', part.Snakes)}"),
    ];

    private static void CompareLanguages(CourseFolder folder, string moduleId, Dictionary<Language, (WordFile File, HashSet<string> Trace)> traces)
    {
        var all = traces.Values.SelectMany(trace => trace.Trace).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        foreach (var (language, (file, trace)) in traces)
        {
            foreach (var missing in all.Where(what => !trace.Contains(what)))
            {
                folder.Problems.Add(new(CourseProblems.LanguagesDiffer, new(file.Path, null, $"module {moduleId}"), missing, language.Tag()));
            }
        }
    }
}
