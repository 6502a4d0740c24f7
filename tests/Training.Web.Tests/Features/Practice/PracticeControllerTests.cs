using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;
using Training.Web.Tests.Features.Sittings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Practice;

public sealed partial class PracticeControllerTests(SharedSite shared)
{
    private readonly RunningSite site = shared.Site;

    [Fact]
    public async Task A_round_asks_every_question_of_the_pool_once()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());
        var start = await browser.GetAsync("/en/my/courses/awareness/practice");
        var course = site.Shelf.Find("awareness")!;

        Assert.Equal(303, start.Status);
        Assert.Matches(@"^/en/my/courses/awareness/practice\?round=\d+$", start.Location);
        Assert.Contains($"Practice, question 1 of {course.Questions.Count}.", (await browser.GetAsync(start.Location!)).Html, StringComparison.Ordinal);
        Assert.Equal(
            course.Questions.Select(question => question.Id).Order(StringComparer.Ordinal),
            PracticeRound.From(course, 7).Select(drawn => drawn.QuestionId).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("en", "Right.", "Not right this time.", "Nothing is kept and nothing counts.")]
    [InlineData("es", "Correcto.", "Esta vez no.", "No se guarda nada y nada cuenta.")]
    public async Task It_tells_right_or_not_why_and_where_to_read_it_again(string tag, string right, string wrong, string nothing)
    {
        var person = await site.PersonAsync();
        using var browser = await site.SignInAsync(person);
        var course = site.Shelf.Find("awareness")!;
        var number = 1 + PracticeRound.From(course, 5).Index().First(drawn => QuestionOf(course, drawn.Item).Key is QuestionKey.One).Index;
        var question = QuestionOf(course, PracticeRound.From(course, 5)[number - 1]);
        var key = ((QuestionKey.One)question.Key).OptionId;

        var good = await PostAsync(browser, tag, number, KeyValuePair.Create("chosen", key));
        var bad = await PostAsync(browser, tag, number, KeyValuePair.Create("chosen", question.OptionIds.First(id => id != key)));

        Assert.Equal([200, 200], [good.Status, bad.Status]);
        Assert.Contains($">{right}</h1>", good.Html, StringComparison.Ordinal);
        Assert.Contains($">{wrong}</h1>", bad.Html, StringComparison.Ordinal);
        foreach (var html in new[] { good.Html, bad.Html })
        {
            Assert.Contains(nothing, html, StringComparison.Ordinal);
            Assert.Contains($"href=\"/{tag}/courses/awareness/{question.Passage.ModuleId}#{question.Passage.Section}\"", html, StringComparison.Ordinal);
            Assert.Contains(Text(question.Words[LanguageTags.Find(tag)!.Value].ExplanationHtml), Text(html), StringComparison.Ordinal);
        }

        await site.RecordAsync(async records =>
        {
            Assert.False(await records.StartedSittings.AnyAsync(sitting => sitting.PersonId == person));
            Assert.False(await records.Sittings.AnyAsync(sitting => sitting.PersonId == person));
        });
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public async Task Pairs_are_told_each_with_its_match(string tag)
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());
        var (number, question) = First<QuestionKey.Match>();
        var pairs = ((QuestionKey.Match)question.Key).Pairs;

        var good = await PostAsync(browser, tag, number, [.. pairs.Select(pair => KeyValuePair.Create($"match[{pair.OptionId}]", pair.MatchId))]);
        var half = await PostAsync(browser, tag, number, KeyValuePair.Create($"match[{pairs[0].OptionId}]", pairs[0].MatchId));

        Assert.Equal([200, 422], [good.Status, half.Status]);
        Assert.Contains(tag == "en" ? ">Right.</h1>" : ">Correcto.</h1>", good.Html, StringComparison.Ordinal);
        var words = question.Words[LanguageTags.Find(tag)!.Value];
        Assert.All(pairs, pair => Assert.Contains($"{Text(words.OptionHtml[pair.OptionId])}: {words.MatchText[pair.MatchId]}", Text(good.Html), StringComparison.Ordinal));
        Assert.Contains($"<option value=\"{pairs[0].MatchId}\" selected=\"selected\">", half.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_spot_is_told_with_its_number_on_the_figure_that_was_shown()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());
        var (number, question) = First<QuestionKey.Spot>();
        var spot = (QuestionKey.Spot)question.Key;
        var shown = PracticeRound.From(site.Shelf.Find("awareness")!, 5)[number - 1].OptionIds;

        var wrong = await PostAsync(browser, "en", number, KeyValuePair.Create("chosen", shown.First(id => id != spot.RegionId)));

        Assert.Contains(">Not right this time.</h1>", wrong.Html, StringComparison.Ordinal);
        Assert.Contains(
            $"<li><span class=\"number\">{shown.Index().Single(one => one.Item == spot.RegionId).Index + 1}</span> {question.Words[Language.English].OptionHtml[spot.RegionId]}</li>",
            wrong.Html,
            StringComparison.Ordinal);
        Assert.Equal(shown.Count, wrong.Html.Split("<g class=\"number\">").Length - 1);
    }

    [Fact]
    public async Task What_cannot_be_marked_is_asked_again_with_what_was_typed()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());
        var course = site.Shelf.Find("awareness")!;
        var number = 1 + PracticeRound.From(course, 5).Index().First(drawn => QuestionOf(course, drawn.Item).Key is QuestionKey.Number).Index;

        var refused = await PostAsync(browser, "en", number, KeyValuePair.Create("typed", "ten"));
        var empty = await PostAsync(browser, "en", number);

        Assert.Equal((422, 200), (refused.Status, empty.Status));
        Assert.Contains("name=\"typed\" value=\"ten\"", refused.Html, StringComparison.Ordinal);
        Assert.Contains("You left it empty.", empty.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/en/my/courses/nothing/practice")]
    [InlineData("/en/my/courses/awareness/practice?round=5&number=0")]
    [InlineData("/en/my/courses/awareness/practice?round=5&number=1000")]
    public async Task What_is_not_in_the_round_is_not_there(string path)
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());

        Assert.Equal(404, (await browser.GetAsync(path)).Status);
    }

    private (int Number, Question Question) First<T>()
    {
        var course = site.Shelf.Find("awareness")!;
        var round = PracticeRound.From(course, 5);
        var number = 1 + round.Index().First(drawn => QuestionOf(course, drawn.Item).Key is T).Index;
        return (number, QuestionOf(course, round[number - 1]));
    }

    private static async Task<Reply> PostAsync(PlainBrowser browser, string tag, int number, params KeyValuePair<string, string>[] fields) =>
        await browser.PostExactlyAsync(
            string.Create(CultureInfo.InvariantCulture, $"/{tag}/my/courses/awareness/practice?round=5&number={number}"),
            [.. fields, new("__RequestVerificationToken", await TakenQuiz.TokenAsync(browser))]);

    private static Question QuestionOf(Course course, DrawnQuestion drawn) => course.Questions.Single(question => question.Id == drawn.QuestionId);

    // Entities were decoded in one of the two.
    private static string Text(string html) => System.Net.WebUtility.HtmlDecode(Tag().Replace(html, ""));

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Tag();
}
