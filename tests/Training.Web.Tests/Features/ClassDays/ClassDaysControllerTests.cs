using Training.Courses;
using Training.Records;
using Training.Web.Features.ClassDays;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.ClassDays;

public sealed class ClassDaysControllerTests(SharedSite shared)
{
    [Fact]
    public async Task The_first_line_says_whom_one_scores_today_and_where()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        await shared.Site.AddAsync(new ClassAttendance { ClassId = room.ClassId, PersonId = await shared.Site.PersonAsync("Desmond Baca") });
        using var browser = await room.SignInAsync();

        Assert.Contains("<h1 class=\"says\">You score 2 people today at Rim Line East.</h1>", (await browser.GetAsync("/en/class-days")).Html, StringComparison.Ordinal);
        Assert.Contains("<h1 class=\"says\">Usted evalúa a 2 personas hoy en Rim Line East.</h1>", (await browser.GetAsync("/es/class-days")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Or_on_the_next_day()
    {
        var room = await ClassRoom.OpenAsync(shared.Site, heldOn: ClassRoom.Today.AddDays(7));
        using var browser = await room.SignInAsync();

        Assert.Contains(
            "<h1 class=\"says\">You score one person on 2 December 2026 at Rim Line East.</h1>", (await browser.GetAsync("/en/class-days")).Html,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_instructor_without_classes_is_told_whom_to_ask()
    {
        using var browser = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.Instructor));

        Assert.Contains("You have no class day ahead.", (await browser.GetAsync("/en/class-days")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_candidate_shows_what_they_have_and_the_one_next_thing()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var path = $"/en/class-days/{room.ClassId}";

        Assert.Contains("Score: Move a snake to a bucket with hook and tongs, on the model", (await browser.GetAsync(path)).Html, StringComparison.Ordinal);
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, "ddd");
        Assert.Contains("Go on with step 4", (await browser.GetAsync(path)).Html, StringComparison.Ordinal);
        Assert.Contains("Not signed yet", (await browser.GetAsync("/en/class-days")).Html, StringComparison.Ordinal);
        await browser.PostAsync($"{sheet}/stop", new() { ["step"] = "4" }, path);
        Assert.Contains("Sign the sheet", (await browser.GetAsync(path)).Html, StringComparison.Ordinal);
        await browser.PostExactlyAsync($"{sheet}/signature", await ClassRoom.SignOffAsync(browser, sheet));
        var after = (await browser.GetAsync(path)).Html;
        Assert.Contains("on the model: not passed on 25 November 2026", after, StringComparison.Ordinal);
        Assert.Contains("Score: Move a snake to a bucket with hook and tongs, on the model", after, StringComparison.Ordinal);
    }

    /// <summary>Passed ones among the practicals of a course with two checklists, the first also on a live snake; what comes next.</summary>
    public static TheoryData<string[], string> Passed_and_next => new()
    {
        { [], "move Model" },
        { ["move Model"], "move Live" },
        { ["move Live"], "move Model" },
        { ["move Model", "move Live"], "drill Model" },
        { ["drill Model"], "move Model" },
        { ["move Model", "move Live", "drill Model"], "" },
    };

    [Theory, MemberData(nameof(Passed_and_next))]
    public void The_model_comes_before_a_live_snake_and_one_checklist_before_the_next(string[] passed, string next)
    {
        Practical[] practicals = [new("move", Subject.Model), new("move", Subject.Live), new("drill", Subject.Model)];
        var lines = practicals.Select(practical => new PracticalLine(practical, [], passed.Contains($"{practical.ChecklistId} {practical.On}")));

        Assert.Equal(next, NextAct.By([.. lines]) is NextAct.Score { Practical: var (checklist, on) } ? $"{checklist} {on}" : "");
    }

    [Fact]
    public void A_course_scores_each_checklist_on_the_model_first() => Assert.Equal(
        [("move-to-bucket", Subject.Model), ("move-to-bucket", Subject.Live), ("box-and-label", Subject.Model), ("bite-drill", Subject.Model)],
        Practical.AllOf(shared.Site.Shelf.Find("handler")!).Select(practical => (practical.ChecklistId, practical.On)));

    [Fact]
    public async Task Each_checklist_is_started_by_its_name_and_an_unknown_one_is_not_found()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();

        var start = await browser.GetAsync($"{room.StartPath}?checklist=bite-drill");
        Assert.Contains("Bite drill with two people and an actor", start.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<option value=\"live\"", start.Html, StringComparison.Ordinal);
        Assert.Equal(404, (await browser.GetAsync($"{room.StartPath}?checklist=juggling")).Status);

        var form = ClassRoom.Form();
        form["Checklist"] = "bite-drill";
        var sheet = await room.ScoreAsync(browser, new string('d', 12), form);
        Assert.Contains("Bite drill with two people and an actor", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
        var day = (await browser.GetAsync($"/en/class-days/{room.ClassId}")).Html;
        Assert.Contains("Bite drill with two people and an actor: passed on 25 November 2026", day, StringComparison.Ordinal);
        Assert.Contains("Score: Move a snake to a bucket with hook and tongs, on the model", day, StringComparison.Ordinal);
    }
}
