using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Sittings;

public sealed class SittingsControllerTests(SharedSite shared)
{
    private static readonly Type[] EveryType = 
    [
        typeof(QuestionKey.One), typeof(QuestionKey.Several), typeof(QuestionKey.Order), typeof(QuestionKey.Number), typeof(QuestionKey.Match), typeof(QuestionKey.Spot),
    ];

    private readonly RunningSite site = shared.Site;

    [Theory]
    [InlineData("en", "10 questions; 8 right pass, with every critical one among them.", "Nothing is timed.")]
    [InlineData("es", "10 preguntas; se aprueba con 8 correctas, incluidas todas las críticas.", "No hay límite de tiempo.")]
    public async Task Before_the_start_the_page_says_what_to_expect(string tag, string says, string limit)
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());

        var page = await browser.GetAsync($"/{tag}/my/courses/awareness/quiz");

        Assert.Equal(200, page.Status);
        Assert.Contains(says, page.Html, StringComparison.Ordinal);
        Assert.Contains(limit, page.Html, StringComparison.Ordinal);
        Assert.Contains("name=\"sittingId\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_start_leads_to_the_first_question_and_a_second_start_to_the_same_sitting()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());
        var id = Guid.CreateVersion7();

        var started = await StartAsync(browser, id);
        var again = await StartAsync(browser, id);
        var other = await StartAsync(browser, Guid.CreateVersion7());

        Assert.Equal((303, $"/en/my/sittings/{id}"), (started.Status, started.Location));
        Assert.Equal([started.Location, started.Location], [again.Location, other.Location]);
        Assert.Equal((303, $"/en/my/sittings/{id}/questions/1"), await WhereAsync(browser, started.Location!));
        Assert.Contains("Question 1 of 10.", (await browser.GetAsync($"{started.Location}/questions/1")).Html, StringComparison.Ordinal);
        Assert.Contains("0 of 10 questions answered", (await browser.GetAsync("/en/my/courses/awareness/quiz")).Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public async Task An_answer_of_every_type_is_kept_at_once_and_shown_again(string tag)
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: EveryType);
        for (var number = 1; number <= quiz.Count; number++)
        {
            var posted = await quiz.AnswerAsync(number, tag: tag);
            var shown = (await quiz.Browser.GetAsync($"{quiz.PathIn(tag)}/questions/{number}")).Html;

            var next = number < quiz.Count ? $"questions/{number + 1}" : "review";
            Assert.Equal((303, $"{quiz.PathIn(tag)}/{next}?kept={number}"), (posted.Status, posted.Location));
            Assert.Contains(tag == "en" ? $"Question {number}: kept at 10:44." : $"Pregunta {number}: guardada a las 10:44.", shown, StringComparison.Ordinal);
            foreach (var field in quiz.Fields(number).Where(field => field.Key != "go"))
            {
                Assert.True(
                    field.Key == "chosen" ? shown.Contains($"name=\"chosen\" value=\"{field.Value}\" checked", StringComparison.Ordinal)
                    : field.Key == "typed" ? shown.Contains($"name=\"typed\" value=\"{field.Value}\"", StringComparison.Ordinal)
                    : shown.Contains($"<option value=\"{field.Value}\" selected=\"selected\">", StringComparison.Ordinal),
                    $"{number}: {field.Key} {field.Value}");
            }
        }

        Assert.Equal(quiz.Count, (await quiz.KeptAsync()).Answers.Count);
        Assert.Equal((303, $"{quiz.Path}/review"), await WhereAsync(quiz.Browser, quiz.Path));
    }

    [Fact]
    public async Task Another_device_goes_on_at_the_first_question_without_an_answer()
    {
        using var quiz = await TakenQuiz.StartAsync(site);
        await quiz.AnswerAsync(1);
        await quiz.AnswerAsync(3);
        using var tablet = await site.SignInAsync(quiz.PersonId);

        Assert.Equal((303, $"{quiz.Path}/questions/2"), await WhereAsync(tablet, quiz.Path));
        Assert.Contains("Question 3: kept at", (await tablet.GetAsync($"{quiz.Path}/questions/3")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_way_back_in_mid_quiz_shows_the_kept_answer_and_no_cache_keeps_the_page()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Number));
        var number = quiz.NumberOf<QuestionKey.Number>();
        var before = await quiz.Browser.GetAsync($"{quiz.Path}/questions/{number}");
        await quiz.PostAsync(number, [new("typed", "7,5"), new("go", "1")]);

        var back = await quiz.Browser.GetAsync($"{quiz.Path}/questions/{number}");

        Assert.Contains("no-store", before.Headers["Cache-Control"], StringComparison.Ordinal);
        Assert.Contains("value=\"7.5\"", back.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12", "12")]
    [InlineData(" 12.5 ", "12.5")]
    [InlineData("12,5", "12.5")]
    [InlineData("1,234.5", "1234.5")]
    [InlineData("1.234,5", "1234.5")]
    [InlineData("0,125", "0.125")]
    public async Task A_number_may_be_typed_with_point_or_comma(string typed, string kept)
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Number));
        var number = quiz.NumberOf<QuestionKey.Number>();

        await quiz.PostAsync(number, [new("typed", $"{typed} {((QuestionKey.Number)quiz.QuestionAt(number).Key).Unit}")]);

        Assert.Equal(decimal.Parse(kept, CultureInfo.InvariantCulture), Assert.Single((await quiz.KeptAsync()).Answers).Answer.Number);
    }

    [Theory]
    [InlineData("ten", "could not be read as a number")]
    [InlineData("1,000", "can be read in two ways")]
    [InlineData("<script>", "could not be read as a number")]
    [InlineData("99999999999999999999999999999", "could not be read as a number")]
    public async Task A_number_that_cannot_be_read_is_refused_with_what_was_typed(string typed, string says)
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Number));
        var number = quiz.NumberOf<QuestionKey.Number>();

        var refused = await quiz.PostAsync(number, [new("typed", typed)]);

        Assert.Equal(422, refused.Status);
        Assert.Contains(says, refused.Html, StringComparison.Ordinal);
        Assert.Contains($"name=\"typed\" value=\"{typed}\"", refused.Html, StringComparison.Ordinal);
        Assert.Empty((await quiz.KeptAsync()).Answers);
    }

    [Fact]
    public async Task Steps_without_a_number_or_with_one_number_twice_are_refused_with_what_was_chosen()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Order));
        var number = quiz.NumberOf<QuestionKey.Order>();
        var ids = quiz.QuestionAt(number).OptionIds;

        var some = await quiz.PostAsync(number, [.. ids.Index().Select(step => KeyValuePair.Create($"place[{step.Item}]", step.Index == 0 ? "" : "2"))]);
        var twice = await quiz.PostAsync(number, [.. ids.Select(id => KeyValuePair.Create($"place[{id}]", "2"))]);
        var beyond = await quiz.PostAsync(number, [.. ids.Index().Select(step => KeyValuePair.Create($"place[{step.Item}]", $"{step.Index + 2}"))]);

        Assert.Equal([422, 422, 422], [some.Status, twice.Status, beyond.Status]);
        Assert.Contains("Some steps have no number yet.", some.Html, StringComparison.Ordinal);
        Assert.Contains("<option value=\"2\" selected=\"selected\">", some.Html, StringComparison.Ordinal);
        Assert.Contains("Two steps have the same number.", twice.Html, StringComparison.Ordinal);
        Assert.Empty((await quiz.KeptAsync()).Answers);
    }

    [Fact]
    public async Task Pairs_half_done_or_done_twice_are_refused_and_stay_chosen()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Match));
        var number = quiz.NumberOf<QuestionKey.Match>();
        var pairs = ((QuestionKey.Match)quiz.QuestionAt(number).Key).Pairs;
        KeyValuePair<string, string> Chosen(string optionId, string matchId) => new($"match[{optionId}]", matchId);

        var some = await quiz.PostAsync(number, [Chosen(pairs[0].OptionId, pairs[0].MatchId), .. pairs.Skip(1).Select(pair => Chosen(pair.OptionId, ""))]);
        var missing = await quiz.PostAsync(number, [Chosen(pairs[0].OptionId, pairs[0].MatchId)]);
        var twice = await quiz.PostAsync(number, [.. pairs.Select(pair => Chosen(pair.OptionId, pairs[1].MatchId))], "es");
        var foreign = await quiz.PostAsync(number, [.. pairs.Skip(1).Select(pair => Chosen(pair.OptionId, pair.MatchId)), Chosen(pairs[0].OptionId, "dance")]);
        var more = await quiz.PostAsync(number, [.. pairs.Select(pair => Chosen(pair.OptionId, pair.MatchId)), Chosen("dance", "sing")]);
        var back = await quiz.PostAsync(number, [.. pairs.Select(pair => Chosen(pair.MatchId, pair.OptionId))]);

        Assert.Equal([422, 422, 422, 422, 422, 422], [some.Status, missing.Status, twice.Status, foreign.Status, more.Status, back.Status]);
        Assert.Contains("Some lines have nothing chosen yet.", some.Html, StringComparison.Ordinal);
        Assert.Contains("Some lines have nothing chosen yet.", missing.Html, StringComparison.Ordinal);
        Assert.Contains($"<option value=\"{pairs[0].MatchId}\" selected=\"selected\">", some.Html, StringComparison.Ordinal);
        Assert.Contains("Eligió lo mismo para dos líneas.", twice.Html, StringComparison.Ordinal);
        Assert.Equal(pairs.Count, twice.Html.Split($"<option value=\"{pairs[1].MatchId}\" selected=\"selected\">").Length - 1);
        Assert.Contains("does not belong to this question", foreign.Html, StringComparison.Ordinal);
        Assert.Empty((await quiz.KeptAsync()).Answers);
    }

    [Fact]
    public async Task Pairs_are_kept_as_option_and_match_in_the_authors_order()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Match));
        var number = quiz.NumberOf<QuestionKey.Match>();

        await quiz.PostAsync(number, [.. quiz.Fields(number).Reverse()]);

        var pairs = ((QuestionKey.Match)quiz.QuestionAt(number).Key).Pairs;
        Assert.Equal(pairs.Select(pair => $"{pair.OptionId}={pair.MatchId}"), Assert.Single((await quiz.KeptAsync()).Answers).Answer.OptionIds);
    }

    [Fact]
    public async Task Cleared_pairs_take_the_kept_answer_back()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Match));
        var number = quiz.NumberOf<QuestionKey.Match>();
        await quiz.AnswerAsync(number);
        var savedAt = Assert.Single((await quiz.KeptAsync()).Answers).Answer.SavedAt.ToUnixTimeMilliseconds();

        var cleared = await quiz.PostAsync(
            number,
            [.. quiz.QuestionAt(number).OptionIds.Select(id => KeyValuePair.Create($"match[{id}]", "")), new("seen", savedAt.ToString(CultureInfo.InvariantCulture))]);

        Assert.Equal(303, cleared.Status);
        Assert.Empty((await quiz.KeptAsync()).Answers);
    }

    [Fact]
    public async Task Somebody_who_changes_the_language_mid_quiz_finds_pairs_and_spots_as_they_left_them()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: [typeof(QuestionKey.Match), typeof(QuestionKey.Spot)]);
        var (pairs, spot) = (quiz.NumberOf<QuestionKey.Match>(), quiz.NumberOf<QuestionKey.Spot>());
        await quiz.AnswerAsync(pairs);
        await quiz.AnswerAsync(spot, isRight: false, tag: "es");

        var spanish = (await quiz.Browser.GetAsync($"{quiz.PathIn("es")}/questions/{pairs}")).Html;
        var english = (await quiz.Browser.GetAsync($"{quiz.Path}/questions/{spot}")).Html;

        var match = (QuestionKey.Match)quiz.QuestionAt(pairs).Key;
        Assert.All(match.Pairs, pair => Assert.Contains($"<option value=\"{pair.MatchId}\" selected=\"selected\">", spanish, StringComparison.Ordinal));
        Assert.All(
            quiz.QuestionAt(pairs).Words[Language.Spanish].MatchText.Values,
            text => Assert.Contains($">{text}</option>", System.Net.WebUtility.HtmlDecode(spanish), StringComparison.Ordinal));
        var chosen = quiz.Fields(spot, isRight: false).Single(field => field.Key == "chosen").Value;
        Assert.Contains($"name=\"chosen\" value=\"{chosen}\" checked", english, StringComparison.Ordinal);
        Assert.Equal(2, (await quiz.KeptAsync()).Answers.Count);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public async Task The_numbers_of_a_figure_are_those_of_the_list_below_it(string tag)
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Spot));
        var number = quiz.NumberOf<QuestionKey.Spot>();
        var question = quiz.QuestionAt(number);
        var spot = (QuestionKey.Spot)question.Key;
        var shown = quiz.Draw.Questions[number - 1].OptionIds;

        var html = (await quiz.Browser.GetAsync($"{quiz.PathIn(tag)}/questions/{number}")).Html;

        foreach (var (index, id) in shown.Index())
        {
            var at = spot.Regions.Single(region => region.Id == id).Number;
            Assert.Matches(
                FormattableString.Invariant($"<text x=\"{decimal.Round(at.X, 2)}\" y=\"{decimal.Round(at.Y, 2)}\" [^>]*>{index + 1}</text>"), html);
            Assert.Matches($"(?s)value=\"{id}\"[^>]*>\\s*<span class=\"number\">{index + 1}</span>", html);
        }

        Assert.True(html.IndexOf("<figure", StringComparison.Ordinal) < html.IndexOf("radiogroup", StringComparison.Ordinal));
        Assert.DoesNotContain($"{spot.Figure}", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_spot_that_is_no_region_or_two_of_them_is_refused_and_the_figure_stays()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Spot));
        var number = quiz.NumberOf<QuestionKey.Spot>();

        var unknown = await quiz.PostAsync(number, [new("chosen", "moon")]);
        var two = await quiz.PostAsync(number, [.. quiz.QuestionAt(number).OptionIds.Take(2).Select(id => KeyValuePair.Create("chosen", id))]);

        Assert.Equal([422, 422], [unknown.Status, two.Status]);
        Assert.All(new[] { unknown.Html, two.Html }, html => Assert.Contains("<figure class=\"drawing\">", html, StringComparison.Ordinal));
        Assert.Empty((await quiz.KeptAsync()).Answers);
    }

    [Fact]
    public async Task An_option_that_was_not_offered_is_refused_and_the_kept_answer_stays()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.One));
        var number = quiz.NumberOf<QuestionKey.One>();
        await quiz.AnswerAsync(number);

        var unknown = await quiz.PostAsync(number, [new("chosen", "dance")]);
        var two = await quiz.PostAsync(number, [.. quiz.QuestionAt(number).OptionIds.Take(2).Select(id => KeyValuePair.Create("chosen", id))]);

        Assert.Equal([422, 422], [unknown.Status, two.Status]);
        Assert.Contains("does not belong to this question, so it was not kept", unknown.Html, StringComparison.Ordinal);
        Assert.Equal(((QuestionKey.One)quiz.QuestionAt(number).Key).OptionId, Assert.Single((await quiz.KeptAsync()).Answers).Answer.OptionIds[0]);
    }

    [Fact]
    public async Task A_question_may_stay_empty_and_an_old_tab_wipes_nothing()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.Several));
        var number = quiz.NumberOf<QuestionKey.Several>();
        var empty = await quiz.PostAsync(number, [new("seen", ""), new("go", "1")]);
        await quiz.AnswerAsync(number);
        var savedAt = Assert.Single((await quiz.KeptAsync()).Answers).Answer.SavedAt.ToUnixTimeMilliseconds();

        var oldTab = await quiz.PostAsync(number, [new("seen", ""), new("go", "1")]);
        var keptThen = (await quiz.KeptAsync()).Answers.Count;
        await quiz.PostAsync(number, [new("seen", savedAt.ToString(CultureInfo.InvariantCulture)), new("go", "1")]);

        Assert.Equal([303, 303], [empty.Status, oldTab.Status]);
        Assert.Equal(1, keptThen);
        Assert.Empty((await quiz.KeptAsync()).Answers);
    }

    [Fact]
    public async Task The_review_names_every_empty_question_and_leads_to_it()
    {
        using var quiz = await TakenQuiz.StartAsync(site);
        for (var number = 1; number <= quiz.Count; number++)
        {
            if (number is not (4 or 7)) await quiz.AnswerAsync(number);
        }

        var english = (await quiz.Browser.GetAsync($"{quiz.Path}/review")).Html;
        var spanish = (await quiz.Browser.GetAsync($"{quiz.PathIn("es")}/review")).Html;

        Assert.Contains("You answered 8 of 10 questions.", english, StringComparison.Ordinal);
        Assert.Contains("These are empty: 4, 7.", english, StringComparison.Ordinal);
        Assert.Contains("Están vacías: 4, 7.", spanish, StringComparison.Ordinal);
        Assert.Contains($"href=\"{quiz.Path}/questions/7\">Answer question 7<", english, StringComparison.Ordinal);
        Assert.Contains($"href=\"{quiz.Path}/questions/1\">Look again at question 1<", english, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_passes_awareness_has_the_certificate_at_once()
    {
        using var printing = TakenQuiz.StartPrintingSite();
        using var quiz = await TakenQuiz.StartAsync(printing);
        for (var number = 1; number <= quiz.Count; number++) await quiz.AnswerAsync(number);

        var sent = await quiz.SubmitAsync();
        var result = await quiz.Browser.GetAsync(quiz.Path);

        Assert.Equal((303, quiz.Path), (sent.Status, sent.Location));
        Assert.Contains("You passed: 10 of 10 right.", result.Html, StringComparison.Ordinal);
        Assert.Contains("Aprobó: 10 de 10 correctas.", (await quiz.Browser.GetAsync(quiz.PathIn("es"))).Html, StringComparison.Ordinal);
        var link = result.Html.Split("href=\"").Select(part => part.Split('"')[0]).First(href => href.Contains("/my/certificates/", StringComparison.Ordinal));
        var paper = await quiz.Browser.GetAsync(link);
        Assert.Equal((200, "application/pdf"), (paper.Status, paper.Headers["Content-Type"]));
        Assert.Equal("%PDF"u8, paper.Bytes.AsSpan(0, 4));
        Assert.Contains("You are current.", (await quiz.Browser.GetAsync("/en/my")).Html, StringComparison.Ordinal);
        Assert.Contains("genuine", (await quiz.Browser.GetAsync($"/en/verify/{link.Split('/')[^1]}")).Html, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Who_passes_the_handler_quiz_waits_for_a_lead()
    {
        using var quiz = await TakenQuiz.StartAsync(site, "handler");
        for (var number = 1; number <= quiz.Count; number++) await quiz.AnswerAsync(number);

        await quiz.SubmitAsync();

        Assert.Contains("A named programme lead decides", (await quiz.Browser.GetAsync(quiz.Path)).Html, StringComparison.Ordinal);
        await site.RecordAsync(async records => Assert.False(await records.Decisions.AnyAsync(decision => decision.PersonId == quiz.PersonId)));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public async Task Not_yet_tells_what_to_reread_and_never_the_key(string tag)
    {
        using var quiz = await TakenQuiz.StartAsync(site);
        for (var number = 1; number <= quiz.Count; number++) await quiz.AnswerAsync(number, isRight: false);
        await quiz.SubmitAsync();

        var html = (await quiz.Browser.GetAsync(quiz.PathIn(tag))).Html;

        Assert.Contains(tag == "en" ? "Not yet: 0 of 10 right, and it takes 8." : "Todavía no: 0 de 10 correctas; hacen falta 8.", html, StringComparison.Ordinal);
        Assert.Contains(tag == "en" ? "critical question" : "preguntas críticas", html, StringComparison.OrdinalIgnoreCase);
        var language = LanguageTags.Find(tag)!.Value;
        foreach (var number in Enumerable.Range(1, quiz.Count))
        {
            var (words, passage) = (quiz.QuestionAt(number).Words[language], quiz.QuestionAt(number).Passage);
            Assert.Contains($"/{tag}/courses/awareness/{passage.ModuleId}#{passage.Section}", html, StringComparison.Ordinal);
            Assert.DoesNotContain(System.Net.WebUtility.HtmlDecode(words.StemHtml), html, StringComparison.Ordinal);
            Assert.DoesNotContain(System.Net.WebUtility.HtmlDecode(words.ExplanationHtml), html, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("class=\"number\"", html, StringComparison.Ordinal);

        await site.RecordAsync(async records => Assert.False(await records.Decisions.AnyAsync(decision => decision.PersonId == quiz.PersonId)));
    }

    [Fact]
    public async Task Sent_twice_it_is_graded_once_and_answers_the_same()
    {
        using var quiz = await TakenQuiz.StartAsync(site);
        for (var number = 1; number <= quiz.Count; number++) await quiz.AnswerAsync(number);

        var sent = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => quiz.SubmitAsync()));
        var later = await quiz.SubmitAsync();

        Assert.All(sent.Append(later), answer => Assert.Equal((303, quiz.Path), (answer.Status, answer.Location)));
        await site.RecordAsync(async records =>
        {
            Assert.Equal(1, await records.Sittings.CountAsync(sitting => sitting.PersonId == quiz.PersonId));
            Assert.Equal(1, await records.Decisions.CountAsync(decision => decision.PersonId == quiz.PersonId));
            Assert.Equal(1, await records.SittingResults.CountAsync(result => records.Sittings.Any(sitting => sitting.Id == result.SittingId && sitting.PersonId == quiz.PersonId)));
        });
    }

    [Fact]
    public async Task Two_tabs_both_save_and_after_sending_the_other_one_is_told_what_stands()
    {
        using var quiz = await TakenQuiz.StartAsync(site, types: typeof(QuestionKey.One));
        var number = quiz.NumberOf<QuestionKey.One>();
        using var tab = await site.SignInAsync(quiz.PersonId);
        await quiz.AnswerAsync(number == 1 ? 2 : 1);
        Assert.Equal(303, (await quiz.PostAsync(number, [.. quiz.Fields(number)], browser: tab)).Status);
        Assert.Equal(2, (await quiz.KeptAsync()).Answers.Count);
        await quiz.SubmitAsync();

        var late = await quiz.PostAsync(number, [.. quiz.Fields(number, isRight: false)], browser: tab);
        var spanish = await quiz.PostAsync(number, [.. quiz.Fields(number, isRight: false)], "es", tab);

        Assert.Equal([409, 409], [late.Status, spanish.Status]);
        Assert.Contains($"Your answer to question {number} came after the quiz was sent.", late.Html, StringComparison.Ordinal);
        Assert.Contains("25 November 2026, 10:44 stands", late.Html, StringComparison.Ordinal);
        Assert.Contains("Vale lo que envió", spanish.Html, StringComparison.Ordinal);
        Assert.Equal(((QuestionKey.One)quiz.QuestionAt(number).Key).OptionId, (await quiz.KeptAsync()).FindLast(quiz.QuestionAt(number).Id)!.Answer.OptionIds[0]);
        Assert.Equal((303, quiz.Path), await WhereAsync(tab, $"{quiz.Path}/questions/{number}"));
        Assert.Equal((303, quiz.Path), await WhereAsync(tab, $"{quiz.Path}/review"));
    }

    [Fact]
    public async Task Another_persons_sitting_is_not_there()
    {
        using var quiz = await TakenQuiz.StartAsync(site);
        using var stranger = await site.SignInAsync(await site.PersonAsync());

        foreach (var path in new[] { quiz.Path, $"{quiz.Path}/questions/1", $"{quiz.Path}/review" }) Assert.Equal(404, (await stranger.GetAsync(path)).Status);
        Assert.Equal(404, (await quiz.PostAsync(1, [.. quiz.Fields(1)], browser: stranger)).Status);
        Assert.Equal(404, (await quiz.SubmitAsync(stranger)).Status);
        Assert.Equal(404, (await StartAsync(stranger, quiz.Id)).Status);
        await quiz.SubmitAsync();
        Assert.Equal(404, (await stranger.GetAsync(quiz.Path)).Status);
        Assert.Empty((await quiz.KeptAsync()).Answers);
    }

    [Fact]
    public async Task A_form_without_its_token_is_refused_and_nothing_is_kept()
    {
        using var quiz = await TakenQuiz.StartAsync(site);

        var answer = await quiz.Browser.PostExactlyAsync($"{quiz.Path}/questions/1", [.. quiz.Fields(1)]);
        var sent = await quiz.Browser.PostExactlyAsync($"{quiz.Path}/submission");
        var start = await quiz.Browser.PostExactlyAsync("/en/my/courses/awareness/sittings", new KeyValuePair<string, string>("sittingId", Guid.CreateVersion7().ToString()));

        Assert.Equal([400, 400, 400], [answer.Status, sent.Status, start.Status]);
        Assert.Empty((await quiz.KeptAsync()).Answers);
        Assert.False((await quiz.KeptAsync()).IsSubmitted);
    }

    [Fact]
    public async Task After_a_sign_out_an_answer_leads_to_the_sign_in_which_says_that_it_was_not_kept()
    {
        using var quiz = await TakenQuiz.StartAsync(site);
        await quiz.AnswerAsync(1);
        using var stale = site.OpenBrowser();

        var answer = await stale.PostExactlyAsync($"{quiz.Path}/questions/2", [.. quiz.Fields(2)]);
        var door = await stale.GetAsync(answer.Location!);

        Assert.Equal(303, answer.Status);
        Assert.Contains("what you just sent was not kept", door.Html, StringComparison.Ordinal);
        Assert.Contains($"name=\"Back\" value=\"{quiz.Path}/questions/2\"", door.Html, StringComparison.Ordinal);
        Assert.Single((await quiz.KeptAsync()).Answers);
    }

    [Theory]
    [InlineData("/questions/0")]
    [InlineData("/questions/11")]
    [InlineData("/questions/-1")]
    [InlineData("/questions/99999999999")]
    public async Task A_question_that_was_not_drawn_is_not_there(string question)
    {
        using var quiz = await TakenQuiz.StartAsync(site);

        Assert.Equal(404, (await quiz.Browser.GetAsync(quiz.Path + question)).Status);
    }

    [Fact]
    public async Task Answers_after_the_limit_are_kept_marked_and_do_not_take_the_place_of_those_in_time()
    {
        using var timed = RunningSite.Start();
        var file = Path.Combine(timed.CoursesFolder, "awareness", "course.yaml");
        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)).Replace("  pass: 80\n", "  pass: 80\n  time-limit: 20\n", StringComparison.Ordinal));
        await timed.LookAsync();
        using var quiz = await TakenQuiz.StartAsync(timed, types: typeof(QuestionKey.One));
        var number = quiz.NumberOf<QuestionKey.One>();
        var other = number == 1 ? 2 : 1;
        Assert.Contains("Answers count until 11:04", (await quiz.Browser.GetAsync($"{quiz.Path}/questions/1")).Html, StringComparison.Ordinal);
        await quiz.AnswerAsync(number);
        timed.Clock.Now = timed.Clock.Now.AddMinutes(21);

        await quiz.AnswerAsync(number, isRight: false);
        await quiz.AnswerAsync(other);

        Assert.Contains("Your answer from before counts.", (await quiz.Browser.GetAsync($"{quiz.Path}/questions/{number}")).Html, StringComparison.Ordinal);
        Assert.Contains("it is kept and marked late, and does not count", (await quiz.Browser.GetAsync($"{quiz.Path}/questions/{other}")).Html, StringComparison.Ordinal);
        await quiz.SubmitAsync();
        var result = (await quiz.Browser.GetAsync(quiz.Path)).Html;
        Assert.Contains("Not yet: 1 of 10 right", result, StringComparison.Ordinal);
        Assert.Contains("Answers after the time limit, kept and not counted: 1.", result, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sitting_goes_on_with_the_text_that_it_was_drawn_from()
    {
        using var changing = RunningSite.Start();
        using var quiz = await TakenQuiz.StartAsync(changing, types: typeof(QuestionKey.One));
        var number = quiz.NumberOf<QuestionKey.One>();
        var file = Path.Combine(changing.CoursesFolder, "awareness", "en", "course.md");
        await File.AppendAllTextAsync(file, "\n");
        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)) + " ");
        await changing.LookAsync();
        Assert.NotEqual(quiz.Course.Hash, changing.Shelf.Find("awareness")!.Hash);

        Assert.Equal(303, (await quiz.AnswerAsync(number)).Status);
        await quiz.SubmitAsync();

        Assert.Contains("Not yet: 1 of 10 right", (await quiz.Browser.GetAsync(quiz.Path)).Html, StringComparison.Ordinal);
    }

    private static async Task<Reply> StartAsync(PlainBrowser browser, Guid id) => await browser.PostExactlyAsync(
        "/en/my/courses/awareness/sittings", new("sittingId", id.ToString()), new("__RequestVerificationToken", await TakenQuiz.TokenAsync(browser)));

    private static async Task<(int Status, string? Location)> WhereAsync(PlainBrowser browser, string path)
    {
        var answer = await browser.GetAsync(path);
        return (answer.Status, answer.Location);
    }
}
