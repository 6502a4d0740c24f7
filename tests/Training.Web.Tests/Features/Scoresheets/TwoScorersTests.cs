using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Scoresheets;

/// <summary>Two instructors at one class who score the same try, over the pages that they see.</summary>
public sealed class TwoScorersTests(SharedSite shared)
{
    private const string AllDone = "dddddddddddddddddddd";
    private const string Model = "Move a snake to a bucket with hook and tongs, on the model";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static Dictionary<string, string> Second(int number = 1) => new(ClassRoom.Form()) { ["Second"] = $"model-{number}" };

    private static async Task<string> DayAsync(ClassRoom room, PlainBrowser browser, string tag = "en") =>
        (await browser.GetAsync($"/{tag}/class-days/{room.ClassId}")).Html;

    private async Task<(ClassRoom Room, PlainBrowser First, PlainBrowser Second)> OpenAsync()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var other = await shared.Site.AppointedAsync(AppointedRole.Instructor, "Hollis Draper");
        await shared.Site.AddAsync(new ClassScorer { ClassId = room.ClassId, InstructorId = other });
        return (room, await room.SignInAsync(), await shared.Site.SignInAsync(other));
    }

    private async Task<List<int>> TriesAsync(ClassRoom room)
    {
        List<int> tries = [];
        await shared.Site.RecordAsync(async records => tries = await records.StartedScoresheets.Where(sheet => sheet.ClassId == room.ClassId)
            .OrderBy(sheet => sheet.StartedAt).ThenBy(sheet => sheet.Id).Select(sheet => sheet.Try).ToListAsync(Cancel));
        return tries;
    }

    [Fact]
    public async Task What_another_started_can_be_scored_too_and_the_next_try_has_the_next_number()
    {
        var (room, first, second) = await OpenAsync();
        Assert.DoesNotContain("name=\"Second\"", (await second.GetAsync(room.StartPath)).Html, StringComparison.Ordinal);
        await room.StartAsync(first);

        var form = (await second.GetAsync(room.StartPath)).Html;
        Assert.Contains("Second, independent scoring of try 1 on the model, beside Winifred Oakley", form, StringComparison.Ordinal);
        Assert.Contains("name=\"Second\" value=\"\" checked", form, StringComparison.Ordinal);
        Assert.Contains("Segunda evaluación, independiente, del intento 1 en el modelo, junto a Winifred Oakley",
            (await second.GetAsync(room.StartPath.Replace("/en/", "/es/", StringComparison.Ordinal))).Html, StringComparison.Ordinal);
        Assert.DoesNotContain("name=\"Second\"", (await first.GetAsync(room.StartPath)).Html, StringComparison.Ordinal);

        await room.StartAsync(second, Second());
        Assert.Equal([1, 1], await TriesAsync(room));
        await room.StartAsync(second);
        Assert.Equal([1, 1, 2], await TriesAsync(room));
    }

    [Fact]
    public async Task Whoever_did_not_see_that_another_scores_is_asked_first_and_keeps_what_they_typed()
    {
        var (room, first, second) = await OpenAsync();
        var form = new Dictionary<string, string>(ClassRoom.Form()) { ["Offered"] = "0", ["Surroundings"] = "Wet sand" };
        await room.StartAsync(first);

        var answer = await second.PostAsync(room.StartPath, form, room.StartPath);

        Assert.Equal(422, answer.Status);
        foreach (var told in new[] { "What other instructors score changed", "Wet sand", "value=\"model-1\"", "name=\"Offered\" value=\"1\"" })
            Assert.Contains(told, answer.Html, StringComparison.Ordinal);
        Assert.Equal([1], await TriesAsync(room));
    }

    [Theory]
    [InlineData("model-2")] // nobody scores it
    [InlineData("live-1")]
    [InlineData("rubbish")]
    public async Task A_try_that_nobody_else_scores_cannot_be_scored_a_second_time(string chosen)
    {
        var (room, first, second) = await OpenAsync();
        await room.StartAsync(first);

        var answer = await second.PostAsync(room.StartPath, new(ClassRoom.Form()) { ["Second"] = chosen }, room.StartPath);

        Assert.Equal(422, answer.Status);
        Assert.Contains("not open to a second scoring", answer.Html, StringComparison.Ordinal);
        Assert.Equal([1], await TriesAsync(room));
    }

    [Theory]
    [InlineData(AllDone, "passed")]
    [InlineData("dn", "not passed")]
    public async Task Nobody_sees_the_sheet_of_the_other_before_their_own_is_signed_and_then_both(string letters, string outcome)
    {
        var (room, first, second) = await OpenAsync();
        var sheet = await room.ScoreAsync(first, letters);

        var before = await DayAsync(room, second);
        Assert.Contains($"{Model}: scored by Winifred Oakley.", before, StringComparison.Ordinal);
        Assert.Contains("on a live snake: shown once the model is.", before, StringComparison.Ordinal);
        AssertSilent(before);
        AssertSilent((await second.GetAsync(room.StartPath)).Html);
        Assert.Equal(404, (await second.GetAsync(sheet)).Status);
        Assert.Equal(404, (await second.GetAsync($"{sheet}/sign-off")).Status);
        Assert.Contains(": evaluado por Winifred Oakley. Usted verá el resultado cuando firme", await DayAsync(room, second, "es"), StringComparison.Ordinal);

        var own = await room.StartAsync(second, Second());
        foreach (var page in new[] { own, $"{own}/steps/1", $"{own}/sign-off", "/en/class-days", "/en/sent-scoresheets", $"/en/class-days/{room.ClassId}" })
            AssertSilent((await second.GetAsync(page)).Html);
        await ClassRoom.MarkAsync(second, own, AllDone);
        AssertSilent(await DayAsync(room, second));
        var answer = await second.PostExactlyAsync($"{own}/signature", await ClassRoom.SignOffAsync(second, own, "Hollis Draper"));
        Assert.Equal(303, answer.Status);

        foreach (var browser in new[] { first, second })
        {
            var after = await DayAsync(room, browser);
            Assert.Contains($"{outcome} (Winifred Oakley)", after, StringComparison.Ordinal);
            Assert.Contains("passed (Hollis Draper)", after, StringComparison.Ordinal);
            Assert.Equal(outcome == "not passed", after.Contains("They disagree", StringComparison.Ordinal));
            Assert.Equal(outcome == "not passed", after.Contains($"Score: {Model}", StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task What_another_scored_today_leaves_the_start_page_the_same_whatever_it_came_to()
    {
        var pages = new List<string>();
        foreach (var letters in new[] { AllDone, "dn", "d-d" })
        {
            var (room, first, second) = await OpenAsync();
            await room.ScoreAsync(first, letters);
            pages.Add(Shown(await second.GetAsync(room.StartPath)));
            pages[^1] += Shown(await second.GetAsync($"/en/class-days/{room.ClassId}"));
        }

        Assert.Equal(pages[0], pages[1]);
        Assert.Equal(pages[0], pages[2]);

        static string Shown(Reply page) => System.Text.RegularExpressions.Regex.Replace(
            page.Html[page.Html.IndexOf("<h1", StringComparison.Ordinal)..], "[0-9a-f]{8}-[0-9a-f-]{27}|value=\"CfDJ[^\"]*\"|[NUD]-[0-9a-f]{6}", "", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public async Task On_a_try_that_the_scorers_dispute_nobody_meets_a_live_snake()
    {
        var (room, first, second) = await OpenAsync();
        await room.ScoreAsync(first, AllDone);
        var own = await room.StartAsync(second, Second());
        await ClassRoom.MarkAsync(second, own, "dn");
        await second.PostExactlyAsync($"{own}/signature", await ClassRoom.SignOffAsync(second, own, "Hollis Draper"));

        var answer = await first.PostAsync(room.StartPath, ClassRoom.LiveForm(room.InstructorId), room.StartPath);

        Assert.Equal(422, answer.Status);
        Assert.Contains("There is no pass on the model yet.", answer.Html, StringComparison.Ordinal);
    }

    private static void AssertSilent(string html)
    {
        foreach (var told in new[] { "passed on", "not passed", "not decided", "Passed on the model", "<option value=\"live\"", "of 40 points", "passed (" })
            Assert.DoesNotContain(told, html[html.IndexOf("<h1", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }
}
