using Markdig.Syntax;

namespace Training.Courses;

/// <summary>Word files whose sections are headed by the id of a question or checklist.</summary>
internal static class SectionsById
{
    /// <summary>Reads the file and pairs its sections with the structure; what has no partner is a finding on its own side.</summary>
    public static Dictionary<string, WordSection> Read(CourseFolder folder, WordFile file, string kind, IReadOnlyList<string> ids)
    {
        void Report(string code, int? line, string? id, params IReadOnlyList<string> arguments) =>
            folder.Problems.Add(new(code, new(file.Path, line, id is null ? null : $"{kind} {id}"), arguments));

        foreach (var stray in file.Before()) Report(CourseProblems.WordsLayout, file.LineOf(stray), null);
        var sections = new Dictionary<string, WordSection>(StringComparer.Ordinal);
        foreach (var section in file.Sections())
        {
            var id = PlainText.Of(section.Heading);
            if (!ids.Contains(id, StringComparer.Ordinal)) Report(CourseProblems.WordsUnexpected, section.Line, id, id);
            else if (!sections.TryAdd(id, section)) Report(CourseProblems.WordsTwice, section.Line, id, id);
        }

        foreach (var id in ids.Where(id => !sections.ContainsKey(id))) Report(CourseProblems.WordsMissing, null, id, id);
        return sections;
    }

    /// <summary>The items of a list by their ids, each paired with the structure.</summary>
    public static Dictionary<string, ListItemBlock> Items(CourseFolder folder, WordFile file, string part, ListBlock list, IReadOnlyList<string> ids)
    {
        var items = new Dictionary<string, ListItemBlock>(StringComparer.Ordinal);
        foreach (var item in list.Cast<ListItemBlock>())
        {
            var id = WordFile.TakeItemId(item) ?? "";
            var place = new Place(file.Path, file.LineOf(item), part);
            if (!ids.Contains(id, StringComparer.Ordinal)) folder.Problems.Add(new(CourseProblems.WordsUnexpected, place, id));
            else if (!items.TryAdd(id, item)) folder.Problems.Add(new(CourseProblems.WordsTwice, place, id));
            else if (item[0] is ParagraphBlock paragraph && PlainText.Of(paragraph).Length == 0) folder.Problems.Add(new(CourseProblems.WordsMissing, place, id));
        }

        foreach (var id in ids.Where(id => !items.ContainsKey(id)))
        {
            folder.Problems.Add(new(CourseProblems.WordsMissing, new(file.Path, file.LineOf(list), part), id));
        }

        return items;
    }
}
