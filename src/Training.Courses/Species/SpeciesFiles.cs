using Markdig.Syntax;

namespace Training.Courses;

/// <summary>Reads species sheets and regional sets: structure in YAML, words in Markdown, and what holds across them.</summary>
internal static class SpeciesFiles
{
    public const string Sheets = "species.yaml";
    public const string Regions = "regions.yaml";
    public const string SheetWords = "species.md";
    public const string RegionWords = "regions.md";

    /// <summary>
    /// The library; without any of the files it is empty, since a provider may teach without it. Null where a file of theirs has a finding:
    /// a set that silently lost a snake would be worse than the set of yesterday.
    /// </summary>
    public static SpeciesLibrary? Read(CourseFiles files, SharedSources shared, ModuleAddress address, ICollection<Problem> problems)
    {
        if (!files.Paths.Any(IsOurs)) return SpeciesLibrary.Empty;
        var before = problems.Count;
        var folder = new CourseFolder(files, "", shared, address, problems);
        var sheets = SpeciesReader.Read(folder);
        var regions = RegionsReader.Read(folder);
        var words = LanguageTags.All.ToDictionary(language => language, language => SpeciesWordsReader.Read(folder, sheets, language));
        var names = LanguageTags.All.ToDictionary(language => language, language => ReadNames(folder, regions, language));
        SpeciesWordsReader.CompareLanguages(folder, words);
        SpeciesChecks.Run(sheets, regions);
        if (problems.Count > before) return null;
        return new(
            [.. sheets.Select(read => read.Sheet with { Words = words.ToDictionary(of => of.Key, of => of.Value[read.Sheet.Id].Words) })],
            [.. regions.Select(read => read.Region with { Names = names.ToDictionary(of => of.Key, of => of.Value[read.Region.Id]) })]);
    }

    /// <summary>Whether a path is one of these files.</summary>
    public static bool IsOurs(string path) =>
        path is Sheets or Regions || LanguageTags.All.Any(language => path == $"{language.Tag()}/{SheetWords}" || path == $"{language.Tag()}/{RegionWords}");

    private static Dictionary<string, string> ReadNames(CourseFolder folder, List<RegionsReader.ReadRegion> regions, Language language)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        if (WordFile.Read(folder.Files, $"{language.Tag()}/{RegionWords}", language, folder.Problems) is not { } file) return names;
        foreach (var stray in file.Blocks.Where(block => block is not (HeadingBlock { Level: 1 } or ListBlock)))
        {
            folder.Problems.Add(new(CourseProblems.WordsLayout, new(file.Path, file.LineOf(stray))));
        }

        List<string> ids = [.. regions.Select(read => read.Region.Id)];
        foreach (var item in file.Blocks.OfType<ListBlock>().SelectMany(list => list).Cast<ListItemBlock>())
        {
            void Report(string code, string id) => folder.Problems.Add(new(code, new(file.Path, file.LineOf(item)), id));
            var id = WordFile.TakeItemId(item) ?? "";
            var name = item is [ParagraphBlock paragraph] ? PlainText.Of(paragraph) : "";
            if (!ids.Contains(id, StringComparer.Ordinal)) Report(CourseProblems.WordsUnexpected, id);
            else if (!names.TryAdd(id, name)) Report(CourseProblems.WordsTwice, id);
            else if (name.Length == 0) Report(CourseProblems.WordsMissing, id);
        }

        foreach (var id in ids.Where(id => !names.ContainsKey(id))) folder.Problems.Add(new(CourseProblems.WordsMissing, new(file.Path), id));
        return names;
    }
}
