using System.Text.RegularExpressions;
using Markdig.Helpers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Training.Courses;

/// <summary>One Markdown file of words, cut at its headings of the second level. Ids in braces are taken off the headings.</summary>
internal sealed partial class WordFile
{
    private readonly string text;
    private readonly List<int> lineStarts = [0];

    private WordFile(string path, Language language, string text, MarkdownDocument document)
    {
        Path = path;
        Language = language;
        this.text = text;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n') lineStarts.Add(i + 1);
        }

        Blocks = [.. document.Where(block => block is not LinkReferenceDefinitionGroup)];
        Headings = [.. document.Descendants<HeadingBlock>()];
    }

    public string Path { get; }

    public Language Language { get; }

    /// <summary>All blocks at the top, definitions of links left out: they show nothing.</summary>
    public IReadOnlyList<Block> Blocks { get; }

    public IReadOnlyList<HeadingBlock> Headings { get; }

    /// <summary>Reads a file; null where it is not there or nested too deeply, which is then among the problems.</summary>
    public static WordFile? Read(CourseFiles files, string path, Language language, ICollection<Problem> problems)
    {
        if (files.Find(path) is not { } text)
        {
            problems.Add(new(CourseProblems.FileMissing, new(path)));
            return null;
        }

        if (MarkdownRenderer.Parse(text) is not { } document)
        {
            problems.Add(new(CourseProblems.MarkdownTooDeep, new(path)));
            return null;
        }

        var file = new WordFile(path, language, text, document);
        foreach (var heading in file.Headings) file.TakeId(heading, problems);
        return file;
    }

    /// <summary>The path that a relative link of a file means; null where it leads out of the courses folder.</summary>
    public static string? Resolve(string from, string link)
    {
        var parts = from.Split('/')[..^1].ToList();
        foreach (var part in link.Split('/'))
        {
            if (part is "." or "") continue;
            if (part != "..") parts.Add(part);
            else if (parts.Count == 0) return null;
            else parts.RemoveAt(parts.Count - 1);
        }

        return string.Join('/', parts);
    }

    /// <summary>The id in braces of a heading, or null.</summary>
    public static string? IdOf(HeadingBlock heading) => heading.TryGetAttributes()?.Id;

    /// <summary>The item's id, where it begins with one as code; the code is taken off, so that the rest is the words.</summary>
    public static string? TakeItemId(ListItemBlock item)
    {
        if (item.FirstOrDefault() is not ParagraphBlock { Inline.FirstChild: CodeInline code }) return null;
        if (code.NextSibling is LiteralInline literal) literal.Content.TrimStart();
        var id = code.Content;
        code.Remove();
        return id;
    }

    /// <summary>Whether a block is a list whose items begin with ids.</summary>
    public static bool IsIdList(Block block) =>
        block is ListBlock list && list.FirstOrDefault() is ListItemBlock item
        && item.FirstOrDefault() is ParagraphBlock { Inline.FirstChild: CodeInline };

    /// <summary>One-based line.</summary>
    public int LineOf(MarkdownObject at)
    {
        var index = lineStarts.BinarySearch(at.Span.Start);
        return index >= 0 ? index + 1 : ~index;
    }

    /// <summary>Cuts at the headings of the second level; what stands before the first one is no section.</summary>
    public List<WordSection> Sections()
    {
        var sections = new List<WordSection>();
        for (var i = 0; i < Blocks.Count; i++)
        {
            if (Blocks[i] is not HeadingBlock { Level: 2 } heading) continue;
            var end = i + 1;
            while (end < Blocks.Count && Blocks[end] is not HeadingBlock { Level: <= 2 }) end++;
            List<Block> blocks = [.. Blocks.Skip(i + 1).Take(end - i - 1)];
            var last = blocks.Count == 0 ? heading.Span.End : blocks[^1].Span.End;
            sections.Add(new(heading, LineOf(heading), blocks, text[heading.Span.Start..Math.Min(text.Length, last + 1)]));
        }

        return sections;
    }

    /// <summary>Blocks before the first section, the title left out.</summary>
    public IEnumerable<Block> Before() => Blocks
        .TakeWhile(block => block is not HeadingBlock { Level: 2 })
        .Where(block => block is not HeadingBlock { Level: 1 });

    private void TakeId(HeadingBlock heading, ICollection<Problem> problems)
    {
        if (heading.Inline?.LastChild is not LiteralInline literal) return;
        var match = BracedId().Match(literal.Content.ToString());
        if (!match.Success) return;
        var id = match.Groups["id"].Value;
        if (!Ids.IsId(id)) problems.Add(new(CourseProblems.IdForm, new(Path, LineOf(heading)), id));
        heading.GetAttributes().Id = id;
        literal.Content = new StringSlice(match.Groups["title"].Value);
    }

    [GeneratedRegex("^(?<title>.*?)\\s*\\{#(?<id>[^{}]*)\\}\\s*\\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.Singleline, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex BracedId();
}

/// <summary>A heading of the second level and what follows up to the next.</summary>
/// <param name="Heading">The heading.</param>
/// <param name="Line">Its line.</param>
/// <param name="Blocks">What follows.</param>
/// <param name="Source">All of it as typed: the words that a version is made from.</param>
internal sealed record WordSection(HeadingBlock Heading, int Line, IReadOnlyList<Block> Blocks, string Source);
