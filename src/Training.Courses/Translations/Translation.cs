using System.Text;

namespace Training.Courses;

/// <summary>
/// Says of each part of a course which state of the original its translation was compared with: <c>es/translation.yaml</c> holds a mark of
/// the English beside each part. The language that has no such file is the original; a course without any says nothing.
/// </summary>
public static class Translation
{
    /// <summary>Name of the file in the folder of the translated language.</summary>
    public const string FileName = "translation.yaml";

    // Twelve digits: typed by hand at need, and 48 bits are far more than a course has parts.
    private const int MarkLength = 12;

    /// <summary>The file as it is once somebody compared every part of a translation with its original.</summary>
    /// <param name="files">All courses.</param>
    /// <param name="courseId">Which course.</param>
    /// <param name="language">The translation, not the original.</param>
    /// <returns>YAML; null where there is no such course.</returns>
    public static string? FileOf(CourseFiles files, string courseId, Language language)
    {
        var marks = MarksOf(files, courseId, OriginalOf(language));
        if (marks.Count == 0) return null;
        var text = new StringBuilder("# The state of the original that each part was last compared with. A part that changed there is a finding here.\n");
        foreach (var (part, mark) in marks) text.Append(part).Append(": ").Append(mark).Append('\n');
        return text.ToString();
    }

    /// <summary>Each part of a course in one language with a mark of its words, in the order of the course.</summary>
    internal static IReadOnlyList<(string Part, string Mark)> MarksOf(CourseFiles files, string courseId, Language language)
    {
        var folder = $"{courseId}/{language.Tag()}/";
        var marks = new List<(string, string)>();
        if (files.Find($"{folder}course.md") is { } course) marks.Add(("course", MarkOf(course)));
        foreach (var path in files.Paths.Where(path => path.StartsWith($"{folder}modules/", StringComparison.Ordinal) && path.EndsWith(".md", StringComparison.Ordinal)))
        {
            marks.Add(($"module {path[$"{folder}modules/".Length..^".md".Length]}", MarkOf(files.Find(path) ?? "")));
        }

        marks.AddRange(Sections(files, $"{folder}questions.md", "question", language));
        marks.AddRange(Sections(files, $"{folder}checklists.md", "checklist", language));
        return marks;
    }

    internal static Language OriginalOf(Language translation) => LanguageTags.All.Single(language => language != translation);

    private static IEnumerable<(string Part, string Mark)> Sections(CourseFiles files, string path, string kind, Language language)
    {
        // Findings of the file itself were reported when its words were read.
        if (files.Find(path) is null || WordFile.Read(files, path, language, []) is not { } file) return [];
        return file.Sections().Select(section => ($"{kind} {PlainText.Of(section.Heading)}", MarkOf(section.Source)));
    }

    /// <summary>Of the words alone: a line that breaks elsewhere changes nothing.</summary>
    private static string MarkOf(string text) =>
        CanonicalJson.HashOf(string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))[..MarkLength];
}
