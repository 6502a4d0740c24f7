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

        Assert.Contains("Score on the model", (await browser.GetAsync(path)).Html, StringComparison.Ordinal);
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, "ddd");
        Assert.Contains("Go on with step 4", (await browser.GetAsync(path)).Html, StringComparison.Ordinal);
        Assert.Contains("Not signed yet", (await browser.GetAsync("/en/class-days")).Html, StringComparison.Ordinal);
        await browser.PostAsync($"{sheet}/stop", new() { ["step"] = "4" }, path);
        Assert.Contains("Sign the sheet", (await browser.GetAsync(path)).Html, StringComparison.Ordinal);
        await browser.PostExactlyAsync($"{sheet}/signature", await ClassRoom.SignOffAsync(browser, sheet));
        var after = (await browser.GetAsync(path)).Html;
        Assert.Contains("On the model: not passed on 25 November 2026", after, StringComparison.Ordinal);
        Assert.Contains("Score on the model", after, StringComparison.Ordinal);
    }

    public static TheoryData<Subject[], Subject[], string> Subjects_passed_and_next => new()
    {
        { [Subject.Model, Subject.Live], [], "Model" },
        { [Subject.Model, Subject.Live], [Subject.Model], "Live" },
        { [Subject.Model, Subject.Live], [Subject.Live], "Model" },
        { [Subject.Model, Subject.Live], [Subject.Model, Subject.Live], "" },
        { [Subject.Model], [Subject.Model], "" },
        { [Subject.Live], [], "Live" },
    };

    [Theory, MemberData(nameof(Subjects_passed_and_next))]
    public void The_model_comes_before_a_live_snake(Subject[] subjects, Subject[] passed, string next) =>
        Assert.Equal(next, NextAct.By(subjects, passed.ToHashSet()) is NextAct.Score score ? score.On.ToString() : "");
}
