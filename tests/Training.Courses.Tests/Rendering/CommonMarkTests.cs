using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace Training.Courses.Tests.Rendering;

/// <summary>
/// The 652 examples of the CommonMark specification 0.31.2 through our renderer. They come from the npm package <c>commonmark-spec</c>
/// (CC-BY-SA 4.0), which <c>tests/run</c> restores into <c>tests/node_modules</c>; nothing of it is copied here.
/// </summary>
public sealed partial class CommonMarkTests
{
    private const int Examples = 652;

    /// <summary>Why an example may differ, and how many do. Each is one of this product's own rules.</summary>
    private static readonly Dictionary<Difference, int> OnPurpose = new()
    {
        [Difference.RawHtmlIsShownAsText] = 71,
        [Difference.PicturesAreFiguresOnly] = 23,
        [Difference.SchemeIsNotLinked] = 5,
        [Difference.CodeCarriesNoClass] = 6,
    };

    private enum Difference
    {
        None,

        /// <summary>No raw HTML: it is shown as it was typed.</summary>
        RawHtmlIsShownAsText,

        /// <summary>A picture is one of the course's own drawings; anything else is its text.</summary>
        PicturesAreFiguresOnly,

        /// <summary>Only the own site, http(s), mail and telephone are linked; a colon before the first slash counts as another scheme.</summary>
        SchemeIsNotLinked,

        /// <summary>The language of a code block would be a class that we do not emit.</summary>
        CodeCarriesNoClass,

        /// <summary>None of our rules explains it.</summary>
        Unexplained,
    }

    [Fact]
    public void Every_example_is_rendered_as_specified_but_for_our_own_rules()
    {
        var found = new List<(int Number, Difference Difference, string Markdown, string Expected, string Actual)>();
        var number = 0;
        foreach (Match example in Example().Matches(SpecText().Replace('→', '\t')))
        {
            number++;
            var (markdown, expected) = (example.Groups["markdown"].Value, example.Groups["html"].Value);
            var actual = MarkdownRenderer.ToHtml(markdown);
            found.Add((number, Compare(markdown, expected, actual), markdown, expected, actual));
        }

        Assert.Equal(Examples, number);
        Assert.All(found, example => Assert.True(
            example.Difference != Difference.Unexplained,
            $"Example {example.Number}:\n{example.Markdown}\nspecified:\n{example.Expected}\nrendered:\n{example.Actual}"));
        var counts = found.Where(example => example.Difference != Difference.None).GroupBy(example => example.Difference).ToDictionary(group => group.Key, group => group.Count());
        Assert.Equal(OnPurpose.OrderBy(pair => pair.Key), counts.OrderBy(pair => pair.Key));
    }

    private static Difference Compare(string markdown, string expected, string actual)
    {
        var specified = new HtmlParser().ParseDocument(expected);
        var rendered = new HtmlParser().ParseDocument(actual);
        if (Normal(specified) == Normal(rendered)) return Difference.None;
        if (specified.QuerySelector("img") is not null) return Difference.PicturesAreFiguresOnly;
        if (specified.QuerySelector("code[class]") is not null) return Difference.CodeCarriesNoClass;
        if (specified.QuerySelectorAll("a[href]").Any(link => Scheme().IsMatch(link.GetAttribute("href") ?? ""))) return Difference.SchemeIsNotLinked;
        return RawHtml().IsMatch(markdown) ? Difference.RawHtmlIsShownAsText : Difference.Unexplained;
    }

    /// <summary>The page without what HTML does not tell apart: white space around blocks, and our mark on foreign links.</summary>
    private static string Normal(IHtmlDocument document)
    {
        foreach (var link in document.QuerySelectorAll("a[rel]")) link.RemoveAttribute("rel");
        var html = document.Body?.InnerHtml ?? "";
        return AroundBlocks().Replace(html, "${tag}").Trim();
    }

    private static string SpecText()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var path = Path.Combine(folder.FullName, "tests", "node_modules", "commonmark-spec", "spec.txt");
            if (File.Exists(path)) return File.ReadAllText(path);
        }

        throw new FileNotFoundException("tests/node_modules/commonmark-spec is missing: run tests/run, or npm install in tests/.");
    }

    [GeneratedRegex("^`{32} example\\n(?<markdown>.*?)^\\.\\n(?<html>.*?)^`{32}$", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Example();

    [GeneratedRegex("^(?!https?:|mailto:|tel:)[^/?#]*:", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Scheme();

    [GeneratedRegex("<[a-zA-Z/!?]", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex RawHtml();

    [GeneratedRegex("\\s*(?<tag></?(p|h[1-6]|ul|ol|li|blockquote|pre|hr|br)( [^>]*)?>)\\s*", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex AroundBlocks();
}
