using System.Text.RegularExpressions;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features;

/// <summary>What holds on every public page, found from the shelf and by following links.</summary>
public sealed partial class PublicPagesTests(SharedSite shared)
{
    private readonly RunningSite site = shared.Site;

    [Fact]
    public void Every_shipped_course_is_served() => Assert.Equal("awareness handler-refresher handler instructor", string.Join(' ', site.Shelf.Courses.Select(course => course.Id)));

    [Fact]
    public async Task Every_page_answers_in_its_language_with_one_first_line()
    {
        foreach (var path in PublicPages.Of(site))
        {
            var (status, html) = await site.GetAsync(path, "fr");

            Assert.Equal((path, path.EndsWith("not-a-serial", StringComparison.Ordinal) ? 404 : 200), (path, status));
            Assert.Contains($"<html lang=\"{path[1..3]}\">", html, StringComparison.Ordinal);
            Assert.Single(FirstLine().Matches(html));
        }
    }

    [Fact]
    public async Task No_page_carries_script_style_or_anything_foreign()
    {
        foreach (var path in PublicPages.Of(site))
        {
            var (_, html) = await site.GetAsync(path);

            Assert.DoesNotMatch(Inline(), html);
        }
    }

    [Fact]
    public async Task Every_link_of_the_site_leads_to_a_page_and_a_place_on_it()
    {
        var pages = new Dictionary<string, string>(StringComparer.Ordinal);
        var links = new Queue<(string From, string To)>([("", "/en"), ("", "/es")]);
        while (links.TryDequeue(out var link))
        {
            var target = link.To.Split('#');
            if (!pages.TryGetValue(target[0], out var html))
            {
                var (status, read) = await site.GetAsync(target[0]);
                Assert.True(status == 200, $"{link.From} links to {link.To}: {status}");
                pages[target[0]] = html = read;
                foreach (Match found in Link().Matches(read)) links.Enqueue((target[0], Absolute(target[0], found.Groups["to"].Value)));
            }

            Assert.True(target.Length == 1 || html.Contains($"id=\"{target[1]}\"", StringComparison.Ordinal), $"{link.From} links to {link.To}: no such place");
        }

        Assert.Empty(PublicPages.Of(site).Where(path => !path.EndsWith("not-a-serial", StringComparison.Ordinal)).Except(pages.Keys, StringComparer.Ordinal));
    }

    [Fact]
    public async Task The_switch_of_language_keeps_the_page()
    {
        foreach (var path in PublicPages.Of(site))
        {
            var other = (path[1..3] == "en" ? "/es" : "/en") + path[3..];

            Assert.Contains($"<a href=\"{other}\" lang=\"{other[1..3]}\"", (await site.GetAsync(path)).Html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Every_module_and_course_and_check_ends_with_the_caution_that_defers()
    {
        foreach (var path in PublicPages.Of(site).Where(path => path.Contains("/courses/", StringComparison.Ordinal) || path.Contains("/verify", StringComparison.Ordinal)))
        {
            var (_, html) = await site.GetAsync(path);
            var caution = html[Math.Max(html.LastIndexOf("id=\"caution\"", StringComparison.Ordinal), html.LastIndexOf("class=\"caution\"", StringComparison.Ordinal))..html.IndexOf("</main>", StringComparison.Ordinal)]
                .ReplaceLineEndings(" ");

            foreach (var deference in Deferences(path[1..3])) Assert.True(deference.Split('|').Any(word => caution.Contains(word, StringComparison.OrdinalIgnoreCase)), $"{path}: {deference}");
        }
    }

    [Fact]
    public async Task Every_page_says_first_what_to_do_after_a_bite()
    {
        foreach (var path in PublicPages.Of(site))
        {
            var (_, html) = await site.GetAsync(path);

            Assert.Contains(path[1..3] == "en" ? "Call emergency services now." : "Llame ya a los servicios de emergencia.", html, StringComparison.Ordinal);
        }
    }

    /// <summary>Site rules, law or local codes, poison control, licensed medical care.</summary>
    private static string[] Deferences(string tag) => tag == "en"
        ? ["site", "law|local codes|codes", "poison control", "licensed medical"]
        : ["sitio", "ley|códigos locales|reglamentos locales", "control de envenenamientos", "médic"];

    private static string Absolute(string page, string link) => link.StartsWith('#') ? page + link : link;

    [GeneratedRegex("<h1[ >]", RegexOptions.None, 1000)]
    private static partial Regex FirstLine();

    [GeneratedRegex("""<script(?! type="module" src="/\w+\.js\?v=[\w-]+"></script>)|<style|<iframe|\sstyle=|\son\w+=|javascript:|(src|href)="(https?:)?//""", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Inline();

    [GeneratedRegex("<a\\b[^>]*\\bhref=\"(?<to>[/#][^\"]*)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Link();
}
