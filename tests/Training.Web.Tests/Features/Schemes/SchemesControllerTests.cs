using Training.Documents.Credentials;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Schemes;

public sealed class SchemesControllerTests : IDisposable
{
    private readonly RunningSite site = RunningSite.Start();

    public void Dispose() => site.Dispose();

    [Fact]
    public async Task A_version_of_a_scheme_shows_its_rules_in_both_languages()
    {
        var hash = site.Shelf.Find("handler")!.Hash;

        var (status, english) = await site.GetAsync($"/en/schemes/handler/{hash}");
        var (_, spanish) = await site.GetAsync($"/schemes/handler/{hash}", "es-MX");

        Assert.Equal(200, status);
        var words = site.Shelf.Find("handler")!.Scheme.Words;
        foreach (var (html, language) in new[] { (english, Courses.Language.English), (spanish, Courses.Language.Spanish) })
        {
            Assert.Contains($"<h1 class=\"says\">{words[language].Title}</h1>", html, StringComparison.Ordinal);
            Assert.Contains(words[language].ShownText, html, StringComparison.Ordinal);
            Assert.Contains(hash[..CompactClaims.VersionLength], html, StringComparison.Ordinal);
        }

        Assert.Contains("It is the newest version.", english, StringComparison.Ordinal);
        Assert.Contains("Es la versión más nueva.", spanish, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_stays_when_the_text_changes_and_when_the_course_is_gone()
    {
        var hash = site.Shelf.Find("handler")!.Hash;
        var file = Path.Combine(site.CoursesFolder, "handler", "en", "course.md");
        var before = (await site.GetAsync($"/en/schemes/handler/{hash}")).Html;

        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)).Replace("{#scope}\n", "{#scope}\n\nNewer words.\n", StringComparison.Ordinal));
        await site.LookAsync();
        var newer = site.Shelf.Find("handler")!.Hash;
        var (status, kept) = await site.GetAsync($"/en/schemes/handler/{hash}");

        Assert.NotEqual(hash, newer);
        Assert.Equal(200, status);
        Assert.DoesNotContain("Newer words.", kept, StringComparison.Ordinal);
        Assert.Contains($"<a href=\"/en/schemes/handler/{newer}\">There is a newer version.</a>", kept, StringComparison.Ordinal);
        Assert.Contains("Newer words.", (await site.GetAsync($"/en/schemes/handler/{newer}")).Html, StringComparison.Ordinal);
        Assert.Contains("Newer words.", (await site.GetAsync("/en/courses/handler")).Html, StringComparison.Ordinal);
        Assert.Equal(Section(before, "scope"), Section(kept, "scope"));

        Directory.Delete(Path.Combine(site.CoursesFolder, "handler"), recursive: true);
        await site.LookAsync();

        Assert.Null(site.Shelf.Find("handler"));
        Assert.Contains("The course is not given here any more.", (await site.GetAsync($"/en/schemes/handler/{hash}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_version_that_was_never_kept_or_is_another_schemes_is_not_found()
    {
        var hash = site.Shelf.Find("handler")!.Hash;

        Assert.Equal(404, (await site.GetAsync($"/en/schemes/awareness/{hash}")).Status);
        Assert.Equal(404, (await site.GetAsync($"/en/schemes/handler/{new string('0', 64)}")).Status);
        Assert.Equal(404, (await site.GetAsync("/schemes/handler/x")).Status);
        // Asking under a wrong name leaves nothing behind.
        Assert.Equal(200, (await site.GetAsync($"/en/schemes/handler/{hash}")).Status);
    }

    private static string Section(string html, string id) => html.Split($"<h2 id=\"{id}\">")[1].Split("</section>")[0];
}
