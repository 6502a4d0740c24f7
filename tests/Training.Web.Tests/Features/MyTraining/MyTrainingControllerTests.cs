using Training.Web.Tests.Features.Sittings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.MyTraining;

public sealed class MyTrainingControllerTests(SharedSite shared)
{
    private readonly RunningSite site = shared.Site;

    [Theory]
    [InlineData("en", "You hold nothing yet. Start with “")]
    [InlineData("es", "Aún no tiene nada. Empiece por “")]
    public async Task Who_holds_nothing_is_told_where_to_start(string tag, string says)
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());

        Assert.Contains(says, FirstLine((await browser.GetAsync($"/{tag}/my")).Html), StringComparison.Ordinal);
    }

    public static TheoryData<string, DateOnly, DateOnly, string> Standings => new()
    {
        { "en", new(2025, 11, 1), new(2027, 11, 1), "holds through 1 November 2027; you can renew it from 3 August 2027." },
        { "es", new(2025, 11, 1), new(2027, 11, 1), "vale hasta el 1 de noviembre de 2027; puede renovarlo desde el 3 de agosto de 2027." },
        { "en", new(2024, 12, 7), new(2026, 12, 7), "by 7 December 2026: 12 days left." },
        { "es", new(2024, 12, 7), new(2026, 12, 7), "a más tardar el 7 de diciembre de 2026: quedan 12 días." },
        { "en", new(2024, 11, 20), new(2026, 11, 20), "lapsed on 20 November 2026. You can still renew it through 19 January 2027." },
        { "en", new(2023, 3, 1), new(2025, 3, 1), "lapsed on 1 March 2025. To hold it again, you do the whole course." },
    };

    [Theory, MemberData(nameof(Standings))]
    public async Task The_first_line_says_how_I_stand_and_by_when_to_do_what(string tag, DateOnly startsOn, DateOnly expiresOn, string says)
    {
        var (_, person, _) = await site.IssueAsync("awareness", startsOn, expiresOn);
        using var browser = await site.SignInAsync(person);

        Assert.EndsWith(says, FirstLine((await browser.GetAsync($"/{tag}/my")).Html), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_asks_to_tell_a_changed_ability_and_says_what_is_missing()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());

        var html = (await browser.GetAsync("/en/my")).Html;

        Assert.Contains("tell your lead before you next work near snakes", html, StringComparison.Ordinal);
        Assert.Contains("practical on a model", html, StringComparison.Ordinal);
        Assert.Contains("0 of 7 parts read", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_certificate_opens_for_its_holder_and_for_nobody_else()
    {
        using var printing = TakenQuiz.StartPrintingSite();
        using var quiz = await TakenQuiz.StartAsync(printing);
        for (var number = 1; number <= quiz.Count; number++) await quiz.AnswerAsync(number);
        await quiz.SubmitAsync();
        var html = (await quiz.Browser.GetAsync("/es/my")).Html;
        var links = html.Split("href=\"").Select(part => part.Split('"')[0]).Where(href => href.Contains("/my/certificates/", StringComparison.Ordinal) && !href.EndsWith(".jwt", StringComparison.Ordinal) && !href.EndsWith("/card.pdf", StringComparison.Ordinal)).ToList();
        using var stranger = await printing.SignInAsync(await printing.PersonAsync());

        Assert.Equal(["/es", "/en"], links.Select(link => link[..3]));
        var files = await Task.WhenAll(links.Select(link => quiz.Browser.GetAsync(link)));
        Assert.All(files, file => Assert.Equal("%PDF"u8, file.Bytes.AsSpan(0, 4)));
        Assert.NotEqual(files[0].Bytes, files[1].Bytes);
        Assert.All(await Task.WhenAll(links.Select(link => stranger.GetAsync(link))), answer => Assert.Equal(404, answer.Status));
        Assert.Equal(404, (await quiz.Browser.GetAsync("/en/my/certificates/not-a-serial")).Status);
    }

    [Fact]
    public async Task Reading_is_kept_part_by_part_and_leads_to_the_next()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());
        var modules = site.Shelf.Find("awareness")!.Modules;
        foreach (var (index, module) in modules.Index())
        {
            var page = await browser.GetAsync($"/en/courses/awareness/{module.Id}");
            Assert.Contains("I have read this part", page.Html, StringComparison.Ordinal);

            var read = await ReadAsync(browser, module.Id, site.Shelf.Find("awareness")!.Hash);

            var next = index + 1 < modules.Count ? $"/en/courses/awareness/{modules[index + 1].Id}" : "/en/my/courses/awareness";
            Assert.Equal((303, next), (read.Status, read.Location));
            var says = FirstLine((await browser.GetAsync("/en/my/courses/awareness")).Html);
            Assert.Equal(index + 1 < modules.Count ? $"You read {index + 1} of 7 parts. Go on with part {index + 2}." : "You read all of it. Next is the quiz.", says);
        }

        Assert.Contains("Read on 25 November 2026.", (await browser.GetAsync("/en/my/courses/awareness")).Html, StringComparison.Ordinal);
        Assert.Contains("Leída el 25 de noviembre de 2026.", (await browser.GetAsync("/es/my/courses/awareness")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stranger_reads_without_a_bookmark_and_a_part_that_is_not_there_is_not_read()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());
        var hash = site.Shelf.Find("awareness")!.Hash;

        Assert.DoesNotContain("I have read this part", (await site.GetAsync("/en/courses/awareness/bite")).Html, StringComparison.Ordinal);
        Assert.Equal(404, (await ReadAsync(browser, "nothing", hash)).Status);
        Assert.Equal(404, (await ReadAsync(browser, "bite", "nothing")).Status);
        Assert.Equal(404, (await ReadAsync(browser, "bite", site.Shelf.Find("handler")!.Hash)).Status);
        Assert.Equal(400, (await browser.PostExactlyAsync("/en/my/courses/awareness/modules/bite/reading", new KeyValuePair<string, string>("text", hash))).Status);
        Assert.Contains("0 of 7 parts read", (await browser.GetAsync("/en/my")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task My_course_lists_my_tries_with_their_results()
    {
        using var quiz = await TakenQuiz.StartAsync(site);
        await quiz.AnswerAsync(1);
        Assert.Equal("You have a quiz under way: 1 of 10 questions answered.", FirstLine((await quiz.Browser.GetAsync("/en/my/courses/awareness")).Html));
        await quiz.SubmitAsync();

        var html = (await quiz.Browser.GetAsync("/en/my/courses/awareness")).Html;

        Assert.Contains($"href=\"{quiz.Path}\"", html, StringComparison.Ordinal);
        Assert.Contains("Not yet", html, StringComparison.Ordinal);
        Assert.Equal(404, (await quiz.Browser.GetAsync("/en/my/courses/nothing")).Status);
    }

    [Fact]
    public async Task Who_is_current_is_told_before_the_quiz_that_a_pass_renews_nothing_yet()
    {
        var (_, person, _) = await site.IssueAsync("awareness", new(2025, 11, 1), new(2027, 11, 1));
        using var browser = await site.SignInAsync(person);

        Assert.Contains("renews nothing before 3 August 2027", (await browser.GetAsync("/en/my/courses/awareness/quiz")).Html, StringComparison.Ordinal);
        Assert.Equal("Nothing is due here now.", FirstLine((await browser.GetAsync("/en/my/courses/awareness")).Html));
    }

    [Theory]
    [InlineData("/en/my")]
    [InlineData("/en/my/courses/awareness")]
    [InlineData("/en/my/courses/awareness/quiz")]
    [InlineData("/en/my/courses/awareness/practice")]
    public async Task Nobody_comes_to_a_workers_pages_without_signing_in(string path)
    {
        using var browser = site.OpenBrowser();

        var answer = await browser.GetAsync(path);

        Assert.Equal(303, answer.Status);
        Assert.StartsWith("/en/sign-in?back=", answer.Location, StringComparison.Ordinal);
    }

    private static async Task<Reply> ReadAsync(PlainBrowser browser, string moduleId, string hash) => await browser.PostExactlyAsync(
        $"/en/my/courses/awareness/modules/{moduleId}/reading", new("text", hash), new("__RequestVerificationToken", await TakenQuiz.TokenAsync(browser)));

    private static string FirstLine(string html)
    {
        var start = html.IndexOf("<h1 class=\"says\">", StringComparison.Ordinal) + "<h1 class=\"says\">".Length;
        return html[start..html.IndexOf("</h1>", start, StringComparison.Ordinal)];
    }
}
