using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Training.Courses.Tests.Rendering;

/// <summary>Whatever an author types, the page holds no script, no event, no style and no foreign origin but plain links.</summary>
public sealed class MarkdownRendererTests
{
    private static readonly string[] Hostile =
    [
        "<script>alert(1)</script>", "<SCRIPT SRC=//e.example/x.js></SCRIPT>", "<img src=x onerror=alert(1)>", "<svg onload=alert(1)>",
        "<svg><script>alert(1)</script></svg>", "<iframe src=\"https://e.example\"></iframe>", "<object data=x></object>", "<embed src=x>",
        "<style>@import 'https://e.example/x.css';</style>", "<link rel=stylesheet href=https://e.example>", "<base href=https://e.example>",
        "<meta http-equiv=refresh content=\"0;url=https://e.example\">", "<form action=https://e.example><input name=a></form>",
        "<div style=\"background:url(https://e.example/x)\">a</div>", "<a href=\"javascript:alert(1)\">x</a>", "<math><mtext></form><form><mglyph><style></math><img src onerror=alert(1)>",
        "[x](javascript:alert(1))", "[x](JaVaScRiPt:alert(1))", "[x](java\tscript:alert(1))", "[x](&#106;avascript:alert(1))", "[x](vbscript:x)",
        "[x](data:text/html;base64,PHNjcmlwdD4=)", "[x](<javascript:alert(1)>)", "[x](\u0001javascript:alert(1))", "[x](//e.example)", "[x](/\\e.example)",
        "[x](\\\\e.example)", "[x](https://e.example \"onmouseover=alert(1)\")", "[x](https://e.example '\" onmouseover=\"alert(1)')", "![x](https://e.example/x.png)",
        "![x\"onerror=\"alert(1)](x)", "![x](data:image/svg+xml;base64,PHN2Zz4=)", "<javascript:alert(1)>", "<data:text/html,x>", "<blob:x>", "<https://e.example>",
        "[x]: javascript:alert(1)\n\n[x]", "# a {onclick=alert(1)}", "# a {#x onclick=alert(1)}", "a{onclick=alert(1)}", "```html onclick=alert(1)\n<script>\n```",
        "`<script>alert(1)</script>`", "> <script>alert(1)</script>", "- <script>alert(1)</script>", "| a | b |\n|---|---|\n| <script>x</script> | [x](javascript:x) |",
        "<!-- --><script>alert(1)</script>", "<![CDATA[<script>alert(1)</script>]]>", "<?php echo 1 ?>", "&lt;script&gt;alert(1)&lt;/script&gt;", "\\<script>alert(1)</script>",
        "<x onclick=alert(1)>", "</p><script>alert(1)</script>", "<p><svg><foreignObject><body onload=alert(1)></foreignObject></svg>", "a\0<script>alert(1)</script>",
        "<guidance:\"><script>alert(1)</script>>", "<fact:x onclick=alert(1)>", "*<script>*alert(1)*</script>*", "[<script>alert(1)</script>](x)", "<a\nhref=javascript:alert(1)>x",
        "<template><script>alert(1)</script></template>", "<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\">", "<svg><use href=\"https://e.example/x.svg#a\"/></svg>",
        "::: only <script>alert(1)</script> {onclick=alert(1)}\n<script>alert(1)</script>\n:::", "::: x\n[x](javascript:alert(1))", "::x{onclick=alert(1)}::",
    ];

    public static TheoryData<string> Typed => [.. Hostile];

    [Theory, MemberData(nameof(Typed))]
    public void Hostile_text_becomes_harmless_html(string typed) => AssertHarmless(MarkdownRenderer.ToHtml(typed));

    [Theory, InlineData("::: only coral\n\nRings.\n\n:::"), InlineData("::: anything {#x}\nRings.\n:::"), InlineData(":::\nRings.")]
    public void A_text_that_stands_for_itself_keeps_what_a_passage_holds(string typed) => Assert.Equal("<p>Rings.</p>", MarkdownRenderer.ToHtml(typed));

    [Fact]
    public void All_of_it_together_is_harmless_too() => AssertHarmless(MarkdownRenderer.ToHtml(string.Join("\n\n", Hostile)));

    [Fact]
    public void Hostile_text_inside_a_course_is_harmless_wherever_it_stands()
    {
        foreach (var typed in Hostile.Where(text => !text.Contains('\n')))
        {
            var (reading, _) = CourseFixture.ReadWith(
                ("alpha/en/modules/second.md", "Some text.", $"Some text. {typed}"),
                ("alpha/en/questions.md", "Which?", $"Which? {typed}"),
                ("alpha/en/questions.md", "`bb` B", $"`bb` B {typed}"),
                ("beta/en/checklists.md", "Read this first.", $"Read this first. {typed}"),
                ("beta/en/checklists.md", "Works the jaws", $"Works the jaws {typed}"));
            foreach (var course in reading.Courses)
            {
                foreach (var module in course.Modules) AssertHarmless(module.Pages[Language.English].Html);
                foreach (var words in course.Questions.Select(question => question.Words[Language.English]))
                {
                    AssertHarmless(words.StemHtml);
                    foreach (var option in words.OptionHtml.Values) AssertHarmless(option);
                }

                foreach (var words in course.Checklists.Select(checklist => checklist.Words[Language.English]))
                {
                    AssertHarmless(words.InstructionsHtml);
                    foreach (var step in words.StepHtml.Values) AssertHarmless(step);
                }
            }
        }
    }

    [Fact]
    public void Raw_html_is_shown_as_it_was_typed() =>
        Assert.Equal("<p>a &lt;b&gt;bold&lt;/b&gt; word</p>", MarkdownRenderer.ToHtml("a <b>bold</b> word"));

    [Fact]
    public void Foreign_pages_are_plain_links_without_a_way_back() =>
        Assert.Equal("<p><a href=\"https://e.example/a\" rel=\"noopener\">x</a></p>", MarkdownRenderer.ToHtml("[x](https://e.example/a)"));

    [Theory]
    [InlineData("[x](mailto:a@e.example)", "mailto:a@e.example")]
    [InlineData("[x](tel:18002221222)", "tel:18002221222")]
    [InlineData("[x](/verify)", "/verify")]
    [InlineData("[x](other#part)", "other#part")]
    public void Mail_telephone_and_the_own_site_are_linked(string typed, string address) =>
        Assert.Equal($"<p><a href=\"{address}\">x</a></p>", MarkdownRenderer.ToHtml(typed));

    [Fact]
    public void Columns_are_aligned_by_class_not_by_style()
    {
        var html = MarkdownRenderer.ToHtml("| a | b |\n|:-:|--:|\n| 1 | 2 |");

        Assert.Contains("<td class=\"align-center\">1</td>", html, StringComparison.Ordinal);
        Assert.Contains("<td class=\"align-right\">2</td>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_is_nested_too_deeply_is_shown_as_typed() =>
        Assert.StartsWith("&gt;&gt;", MarkdownRenderer.ToHtml(new string('>', 5_000)), StringComparison.Ordinal);

    [Fact]
    public void Many_threads_get_the_same_page()
    {
        var pages = Enumerable.Range(0, 500).AsParallel().Select(i => MarkdownRenderer.ToHtml($"*page* {i % 7}")).ToHashSet(StringComparer.Ordinal);

        Assert.Equal(7, pages.Count);
    }

    private static void AssertHarmless(string html)
    {
        string[] forbidden = ["script", "style", "iframe", "object", "embed", "link", "meta", "base", "form", "input", "img", "image", "use", "foreignobject", "template", "noscript", "math"];
        var document = new HtmlParser().ParseDocument(html);
        foreach (var element in document.Body?.QuerySelectorAll("*") ?? throw new InvalidDataException("no body"))
        {
            Assert.DoesNotContain(element.LocalName.ToLowerInvariant(), forbidden);
            Assert.All(element.Attributes, attribute => AssertHarmless(element, attribute));
        }

        Assert.Empty(document.Head?.Children ?? throw new InvalidDataException("no head"));
    }

    private static void AssertHarmless(IElement element, IAttr attribute)
    {
        Assert.False(attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), attribute.Name);
        Assert.DoesNotContain(attribute.Name, new[] { "style", "src", "srcset", "xlink:href", "formaction", "action" });
        if (attribute.Name != "href") return;
        Assert.Equal("a", element.LocalName);

        // As a browser reads it: tabs and line ends do not count, a backslash is a slash.
        var written = attribute.Value.Replace("\t", "").Replace("\n", "").Replace("\r", "").Replace('\\', '/');
        var url = new Uri(new Uri("https://own.example/courses/x"), written);
        Assert.Contains(url.Scheme, new[] { "http", "https", "mailto", "tel" });
        if (url.Scheme is "http" or "https" && url.Host != "own.example")
        {
            // Foreign only where the author wrote the whole address, and then without a way back.
            Assert.StartsWith("http", attribute.Value, StringComparison.OrdinalIgnoreCase);
            Assert.Equal("noopener", element.GetAttribute("rel"));
        }
    }
}
