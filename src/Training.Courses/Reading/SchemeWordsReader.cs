using Markdig.Syntax;

namespace Training.Courses;

/// <summary>Reads <c>course.md</c> of one language.</summary>
internal static class SchemeWordsReader
{
    private const int MaxShown = 300;

    private const string OfTransition = "transition";

    private static readonly string[] SectionIds =
        ["scope", "tasks", "competence", "prerequisites", "completion", "conduct", "suspension", "validity", "shown", "topics", "objectives"];

    /// <summary>Reads it; the quiz and each checklist in <paramref name="cuts"/>, whose pass mark a panel set, has a section that says why.</summary>
    public static (SchemeWords Scheme, CourseWords Course)? Read(
        CourseFolder folder, CourseRules rules, IReadOnlyList<string> cuts, Language language)
    {
        if (WordFile.Read(folder.Files, folder.PathOf(language, "course.md"), language, folder.Problems) is not { } file) return null;
        var text = new CourseText(file, folder, null);
        var title = file.Blocks.OfType<HeadingBlock>().FirstOrDefault(heading => heading.Level == 1) is { } heading ? text.Plain(heading) : "";
        if (title.Length == 0) folder.Problems.Add(new(CourseProblems.TitleMissing, new(file.Path, 1)));
        foreach (var stray in file.Before()) folder.Problems.Add(new(CourseProblems.WordsLayout, new(file.Path, file.LineOf(stray))));
        string[] transition = rules.Transition is null ? [] : [OfTransition];
        var sections = ReadSections(folder, file, [.. SectionIds, .. transition, .. cuts.Select(CutReader.SectionOf)]);
        string Html(string id) => sections.TryGetValue(id, out var section) ? new CourseText(file, folder, $"section {id}").Blocks(section.Blocks) : "";
        var scheme = new SchemeWords(
            title, Html("scope"), Html("tasks"), Html("competence"), Html("prerequisites"), Html("conduct"), Html("suspension"),
            Html("validity"), Html("completion"), ReadShown(folder, file, sections))
        {
            TransitionHtml = Html(OfTransition),
            CutHtml = cuts.ToDictionary(id => id, id => Html(CutReader.SectionOf(id)), StringComparer.Ordinal),
        };
        var course = new CourseWords(
            ReadTitles(folder, file, sections, "topics", rules.Topics),
            ReadTitles(folder, file, sections, "objectives", rules.Objectives));
        return (scheme, course);
    }

    private static Dictionary<string, WordSection> ReadSections(CourseFolder folder, WordFile file, IReadOnlyList<string> ids)
    {
        var sections = new Dictionary<string, WordSection>(StringComparer.Ordinal);
        foreach (var section in file.Sections())
        {
            var id = WordFile.IdOf(section.Heading);
            var name = id ?? PlainText.Of(section.Heading);
            if (id is null || !ids.Contains(id, StringComparer.Ordinal)) Report(CourseProblems.WordsUnexpected, section.Line, name);
            else if (section.Blocks.Count == 0) Report(CourseProblems.WordsMissing, section.Line, name);
            else if (!sections.TryAdd(id, section)) Report(CourseProblems.WordsTwice, section.Line, name);
        }

        foreach (var missing in ids.Where(id => file.Sections().TrueForAll(section => WordFile.IdOf(section.Heading) != id)))
        {
            folder.Problems.Add(new(CourseProblems.WordsMissing, new(file.Path, null, $"section {missing}"), missing));
        }

        return sections;

        void Report(string code, int line, string id) => folder.Problems.Add(new(code, new(file.Path, line, $"section {id}"), id));
    }

    private static string ReadShown(CourseFolder folder, WordFile file, Dictionary<string, WordSection> sections)
    {
        if (!sections.TryGetValue("shown", out var section)) return "";
        var place = new Place(file.Path, section.Line, "section shown");
        if (section.Blocks is not [ParagraphBlock paragraph])
        {
            folder.Problems.Add(new(CourseProblems.WordsLayout, place));
            return "";
        }

        var shown = new CourseText(file, folder, "section shown").Plain(paragraph);
        if (shown.Length > MaxShown) folder.Problems.Add(new(CourseProblems.ShownTooLong, place, $"{shown.Length}", $"{MaxShown}"));
        return shown;
    }

    private static Dictionary<string, string> ReadTitles(
        CourseFolder folder, WordFile file, Dictionary<string, WordSection> sections, string name, IReadOnlyList<string> ids)
    {
        var titles = new Dictionary<string, string>(StringComparer.Ordinal);
        if (!sections.TryGetValue(name, out var section)) return titles;
        foreach (var block in section.Blocks.Where(block => block is not ListBlock)) Report(CourseProblems.WordsLayout, file.LineOf(block), name);
        foreach (var item in section.Blocks.OfType<ListBlock>().SelectMany(list => list).Cast<ListItemBlock>())
        {
            var id = WordFile.TakeItemId(item) ?? "";
            var title = item.Count == 1 && item[0] is ParagraphBlock paragraph ? new CourseText(file, folder, $"section {name}").Plain(paragraph) : "";
            if (!ids.Contains(id, StringComparer.Ordinal)) Report(CourseProblems.WordsUnexpected, file.LineOf(item), id);
            else if (!titles.TryAdd(id, title)) Report(CourseProblems.WordsTwice, file.LineOf(item), id);
            else if (title.Length == 0) Report(CourseProblems.WordsMissing, file.LineOf(item), id);
        }

        foreach (var id in ids.Where(id => !titles.ContainsKey(id))) Report(CourseProblems.WordsMissing, section.Line, id);
        return titles;

        void Report(string code, int line, string id) =>
            folder.Problems.Add(new(code, new(file.Path, line, $"section {name}"), code == CourseProblems.WordsLayout ? [] : [id]));
    }
}
