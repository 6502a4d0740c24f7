using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Scoring;

public sealed class ScoringControllerTests(SharedSite shared)
{
    private const string AllDone = "dddddddddddddddddddd";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Instructions_come_first_then_each_step_leads_to_the_next()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);

        var instructions = (await browser.GetAsync(sheet)).Html;
        Assert.Contains("<h1 class=\"step\">Read this to Ileana Prado-Whitt.</h1>", instructions, StringComparison.Ordinal);
        Assert.Contains("no step is timed", instructions, StringComparison.Ordinal);

        var answer = await ClassRoom.MarkAsync(browser, sheet, "d");
        Assert.Equal((303, $"{sheet}/steps/2"), (answer.Status, answer.Location));
        var step = (await browser.GetAsync($"{sheet}/steps/2")).Html;
        Assert.Contains("<html lang=\"en\" class=\"outdoors\">", step, StringComparison.Ordinal);
        Assert.Contains("step 2 of 20", step, StringComparison.Ordinal);
        Assert.Contains("Critical step", step, StringComparison.Ordinal);
        Assert.Contains("Without a tested line", step, StringComparison.Ordinal);
        Assert.Contains("Undo step 1: Done", step, StringComparison.Ordinal);
        Assert.Equal($"{sheet}/steps/2", (await browser.GetAsync(sheet)).Location);
    }

    [Fact]
    public async Task Nothing_is_marked_or_signed_before_the_instructions_are_said_to_be_read()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = (await browser.PostAsync(room.StartPath, ClassRoom.Form(), room.StartPath)).Location!; // not null: it was started

        Assert.Equal(sheet, (await ClassRoom.MarkAsync(browser, sheet, "d")).Location);
        foreach (var path in new[] { "/steps/1", "/sign-off" }) Assert.Equal(sheet, (await browser.GetAsync(sheet + path)).Location);
        var read = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, read, AllDone);
        var refused = await browser.PostExactlyAsync($"{sheet}/signature", await ClassRoom.SignOffAsync(browser, read));
        Assert.Equal((422, true), (refused.Status, refused.Html.Contains("The standard instructions were not read", StringComparison.Ordinal)));

        var answer = await browser.PostAsync($"{sheet}/instructions", [], sheet);
        Assert.Equal((303, $"{sheet}/steps/1"), (answer.Status, answer.Location));
        await browser.PostAsync($"{sheet}/instructions", [], sheet);
        await ClassRoom.MarkAsync(browser, sheet, AllDone);
        await browser.PostExactlyAsync($"{sheet}/signature", await ClassRoom.SignOffAsync(browser, sheet));
        Assert.Equal(shared.Site.Clock.Now, Assert.Single(await StoredAsync(sheet)).Sheet.InstructionsReadAt);
        Assert.Contains("in English, on ", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_critical_step_that_fails_stops_and_its_undo_goes_back_to_it()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);

        var answer = await ClassRoom.MarkAsync(browser, sheet, "dddddn");
        Assert.Equal($"{sheet}/stop", answer.Location);
        var stop = (await browser.GetAsync($"{sheet}/stop")).Html;
        Assert.Contains("<h1 class=\"halt\">STOP</h1>", stop, StringComparison.Ordinal);
        Assert.Contains("The sheet is kept. Stopped at step 6: Not done.", stop, StringComparison.Ordinal);
        Assert.Equal($"{sheet}/stop", (await browser.GetAsync($"{sheet}/steps/7")).Location);

        var undone = await browser.PostAsync($"{sheet}/undo", new() { ["step"] = "6" }, $"{sheet}/stop");
        Assert.Equal((303, $"{sheet}/steps/6"), (undone.Status, undone.Location));
    }

    [Fact]
    public async Task A_prompted_critical_step_without_leave_stops_and_an_unobserved_one_does_not()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);

        Assert.Equal($"{sheet}/steps/3", (await ClassRoom.MarkAsync(browser, sheet, "p-")).Location);
        Assert.Equal($"{sheet}/stop", (await ClassRoom.MarkAsync(browser, sheet, "p", from: 2)).Location);
    }

    [Fact]
    public async Task Stop_at_any_step_leads_to_a_sheet_whose_later_steps_are_not_observed()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, "ddd");
        await browser.PostAsync($"{sheet}/stop", new() { ["step"] = "4" }, $"{sheet}/steps/4");

        await browser.PostExactlyAsync($"{sheet}/signature", await ClassRoom.SignOffAsync(browser, sheet));

        var stored = await StoredAsync(sheet);
        Assert.Equal(room.Checklist.Steps[3].Id, stored[0].Sheet.StoppedAtStep);
        Assert.Equal(3, stored[0].Sheet.Observations.Count(seen => seen.Observation != Observation.NotObserved));
        Assert.Equal(PracticalOutcome.Failed, stored[0].Results[^1].Result.Outcome);
        Assert.Contains("Not passed: stopped at step 4.", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_mark_and_the_same_undo_twice_count_once()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, "dd");

        Assert.Equal($"{sheet}/steps/3", (await ClassRoom.MarkAsync(browser, sheet, "d", from: 2)).Location);
        await browser.PostAsync($"{sheet}/undo", new() { ["step"] = "2" }, $"{sheet}/steps/3");
        var again = await browser.PostAsync($"{sheet}/undo", new() { ["step"] = "2" }, $"{sheet}/steps/2");

        Assert.Equal($"{sheet}/steps/2", again.Location);
    }

    [Fact]
    public async Task The_impression_is_said_before_the_points_are_shown_and_changes_nothing()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, AllDone);
        var page = (await browser.GetAsync($"{sheet}/sign-off")).Html;
        Assert.DoesNotContain("of 40 points", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Passed", page, StringComparison.Ordinal);
        Assert.DoesNotContain("checked", page, StringComparison.Ordinal);
        var fields = await ClassRoom.SignOffAsync(browser, sheet, impression: "NotReady");

        var silent = await browser.PostExactlyAsync($"{sheet}/signature", [.. fields.Where(field => field.Key != "Impression")]);
        Assert.Equal((422, true, false), (
            silent.Status, silent.Html.Contains("The overall impression is not said.", StringComparison.Ordinal), silent.Html.Contains("of 40 points", StringComparison.Ordinal)));
        await browser.PostExactlyAsync($"{sheet}/signature", fields);

        var stored = Assert.Single(await StoredAsync(sheet));
        Assert.Equal((Impression.NotReady, PracticalOutcome.Passed), (stored.Sheet.Impression, stored.Results[^1].Result.Outcome));
        var sent = (await browser.GetAsync(sheet)).Html;
        Assert.Contains("Passed with 40 of 40 points.", sent, StringComparison.Ordinal);
        Assert.Contains("<p>Not ready</p>", sent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_timed_drill_asks_how_long_it_took_and_a_second_too_much_is_told_as_such()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var drill = shared.Site.Shelf.Find("handler")!.Checklists.Single(list => list.Id == "bite-drill");
        var sheet = await room.StartAsync(browser, new(ClassRoom.Form()) { ["Checklist"] = drill.Id });
        Assert.Contains("more time, so nobody gets more here", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
        await ClassRoom.MarkAsync(browser, sheet, new string('d', drill.Steps.Count));

        foreach (var typed in new[] { "", "soon", "4:75", "-4:10" })
        {
            var refused = await browser.PostExactlyAsync($"{sheet}/signature", await ClassRoom.SignOffAsync(browser, sheet, seconds: typed));
            Assert.Equal((422, true), (refused.Status, refused.Html.Contains("It is not said how long the drill took", StringComparison.Ordinal)));
        }

        await browser.PostExactlyAsync($"{sheet}/signature", await ClassRoom.SignOffAsync(browser, sheet, seconds: "10:01"));
        var stored = Assert.Single(await StoredAsync(sheet));
        Assert.Equal((601, PracticalOutcome.Failed), (stored.Sheet.Seconds, stored.Results[^1].Result.Outcome));
        Assert.Equal([new ScoresheetReason.OverTime(601, 600)], stored.Results[^1].Result.Reasons);
        Assert.Contains("Not passed: it took 10:01, and the limit is 10:00.", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handling_is_never_timed()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, AllDone);
        Assert.DoesNotContain("name=\"Seconds\"", (await browser.GetAsync($"{sheet}/sign-off")).Html, StringComparison.Ordinal);

        var answer = await browser.PostExactlyAsync($"{sheet}/signature", [.. await ClassRoom.SignOffAsync(browser, sheet), new("Seconds", "4:35")]);

        Assert.Equal((422, true), (answer.Status, answer.Html.Contains("A time is given where nothing is timed.", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Of_a_practical_that_was_broken_off_no_impression_is_asked()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, "dd");
        var fields = await ClassRoom.SignOffAsync(browser, sheet);
        Assert.DoesNotContain(fields, field => field.Key == "Impression");

        var said = await browser.PostExactlyAsync($"{sheet}/signature", [.. fields, new("Impression", "Ready")]);
        Assert.Equal((422, true), (said.Status, said.Html.Contains("not seen whole", StringComparison.Ordinal)));
        Assert.Equal(303, (await browser.PostExactlyAsync($"{sheet}/signature", fields)).Status);
        Assert.Null(Assert.Single(await StoredAsync(sheet)).Sheet.Impression);
    }

    [Fact]
    public async Task What_was_signed_is_what_the_screen_showed_whatever_another_tab_did()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, AllDone);
        var onScreen = await ClassRoom.SignOffAsync(browser, sheet, remarks: "Calm, exact.");
        await ClassRoom.MarkAsync(browser, sheet, "n", from: 20);

        var answer = await browser.PostExactlyAsync($"{sheet}/signature", onScreen);

        Assert.Equal((303, sheet), (answer.Status, answer.Location));
        var stored = Assert.Single(await StoredAsync(sheet));
        Assert.Equal(Observation.Done, stored.Sheet.Observations[^1].Observation);
        Assert.Equal(("Winifred Oakley", "Calm, exact.", "Dry gravel, low sun", 24), (
            stored.Sheet.SignedName, stored.Sheet.Remarks, stored.Sheet.Conditions.Surroundings, stored.Sheet.Conditions.AirTemperature));
        Assert.Equal(PracticalOutcome.Passed, stored.Results[^1].Result.Outcome);
    }

    [Fact]
    public async Task The_same_content_twice_is_one_sheet_even_days_later()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, AllDone);
        var fields = await ClassRoom.SignOffAsync(browser, sheet);

        var first = await browser.PostExactlyAsync($"{sheet}/signature", fields);
        var second = await browser.PostExactlyAsync($"{sheet}/signature", fields);

        Assert.Equal((303, 303), (first.Status, second.Status));
        Assert.Single(await StoredAsync(sheet));
    }

    [Fact]
    public async Task Other_content_under_the_same_id_is_409_and_both_are_kept()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, AllDone);
        var fields = await ClassRoom.SignOffAsync(browser, sheet);
        await browser.PostExactlyAsync($"{sheet}/signature", fields);

        var answer = await browser.PostExactlyAsync($"{sheet}/signature", Changed(fields, "Remarks", "Scored again from memory."));

        Assert.Equal(409, answer.Status);
        Assert.Contains("Both versions of this scoresheet are kept.", answer.Html, StringComparison.Ordinal);
        Assert.Contains("A programme lead looks at both", answer.Html, StringComparison.Ordinal);
        Assert.Equal([1, 2], (await StoredAsync(sheet)).Select(copy => copy.Copy));
        Assert.Contains("Other versions of this sheet that came later: 1.", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_missing_step_an_unknown_step_and_no_confirmed_identity_are_refused_with_everything_kept()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, AllDone);
        var fields = await ClassRoom.SignOffAsync(browser, sheet, remarks: "Typed with gloves on.");
        var withoutLast = fields.Where(field => field is not { Key: "Marks" } || !field.Value.StartsWith("leave=", StringComparison.Ordinal)).ToList();

        (IReadOnlyList<KeyValuePair<string, string>> Fields, string Told)[] cases =
        [
            (withoutLast, "The step “leave” has no mark."),
            ([.. fields, new("Marks", "tube-restraint=Done")], "The checklist has no step “tube-restraint”."),
            (Changed(fields, "IdentityConfirmed", "false"), "The candidate’s identification was not looked at."),
            (Changed(fields, "SignedName", "  "), "The sheet is not signed."),
        ];
        foreach (var (posted, told) in cases)
        {
            var answer = await browser.PostExactlyAsync($"{sheet}/signature", posted);

            Assert.Equal((422, true, true), (answer.Status, answer.Html.Contains(told, StringComparison.Ordinal), answer.Html.Contains("Typed with gloves on.", StringComparison.Ordinal)));
        }

        Assert.Empty(await StoredAsync(sheet));
    }

    [Fact]
    public async Task A_mark_after_the_signature_changes_nothing_and_shows_what_was_sent()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.ScoreAsync(browser, AllDone);

        Assert.Equal(sheet, (await ClassRoom.MarkAsync(browser, sheet, "n")).Location);
        Assert.Equal(sheet, (await browser.GetAsync($"{sheet}/sign-off")).Location);
        Assert.Equal(Observation.Done, Assert.Single(await StoredAsync(sheet)).Sheet.Observations[0].Observation);
        Assert.Contains("passed", (await browser.GetAsync("/en/sent-scoresheets")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sheet_that_was_kept_without_a_start_here_is_shown_to_its_instructor()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var checklist = room.Checklist;
        var sheet = new Scoresheet(
            Guid.CreateVersion7(), room.ClassId, room.CandidateId, room.InstructorId, shared.Site.Shelf.Find("handler")!.Hash, checklist.Id, checklist.Version,
            Subject.Model, 1, [.. checklist.Steps.Select(step => new StepObservation(step.Id, Observation.Done))], null, null,
            new("Dry gravel", null, "H-2", [new(ClassRoom.HookId, ClassRoom.HookInspectionId)]), Language.English, IdentityConfirmed: true, shared.Site.Clock.Now, "Winifred Oakley", "");
        await shared.Site.RecordAsync(async records => Assert.IsType<Kept.Stored>(await records.KeepAsync(
            sheet, new(checklist.Version, PracticalOutcome.Passed, 40, 40, []), ClassRoom.Today, "America/Denver", shared.Site.Clock.Now, Cancel)));
        using var browser = await room.SignInAsync();

        var answer = await browser.GetAsync($"/en/scoresheets/{sheet.Id}");

        Assert.Equal((200, true), (answer.Status, answer.Html.Contains("Passed with 40 of 40 points.", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_sheet_of_another_instructor_is_not_there()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var mine = await room.SignInAsync();
        var sheet = await room.StartAsync(mine);
        await ClassRoom.MarkAsync(mine, sheet, "ddd");
        var fields = await ClassRoom.SignOffAsync(mine, sheet);
        using var theirs = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.Instructor, "Hollis Draper"));
        var token = fields[^1];

        foreach (var path in new[] { "", "/steps/1", "/stop", "/sign-off" }) Assert.Equal(404, (await theirs.GetAsync(sheet + path)).Status);
        Assert.Equal(404, (await theirs.PostAsync($"{sheet}/steps/4", new() { ["observation"] = "NotDone" })).Status);
        Assert.Equal(404, (await theirs.PostAsync($"{sheet}/undo", new() { ["step"] = "3" })).Status);
        Assert.Equal(404, (await theirs.PostAsync($"{sheet}/stop", new() { ["step"] = "4" })).Status);
        Assert.Equal(404, (await theirs.PostAsync($"{sheet}/signature", new() { ["SignedName"] = "Hollis Draper" })).Status);
        Assert.Equal($"{sheet}/steps/4", (await mine.GetAsync(sheet)).Location);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(21)]
    public async Task A_step_that_the_checklist_does_not_have_is_not_there(int number)
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);

        Assert.Equal(404, (await browser.GetAsync($"{sheet}/steps/{number}")).Status);
        Assert.Equal(404, (await browser.PostAsync($"{sheet}/steps/{number}", new() { ["observation"] = "Done" })).Status);
        Assert.Equal(400, (await browser.PostAsync($"{sheet}/steps/1", new() { ["observation"] = "Perhaps" })).Status);
    }

    [Fact]
    public async Task A_form_without_its_token_is_refused_and_nothing_is_marked()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);

        Assert.Equal(400, (await browser.PostExactlyAsync($"{sheet}/steps/1", new KeyValuePair<string, string>("observation", "Done"))).Status);
        Assert.Equal(200, (await browser.GetAsync(sheet)).Status);
    }

    [Theory]
    [InlineData("Siobhán O'Dwyer-D'Angelo")]
    [InlineData("María José Ñúñez del Río <b>")]
    [InlineData("محمد بن عبد الله")]
    [InlineData("Tobias 🐍 Redfern")]
    public async Task Names_are_shown_as_they_are_on_every_page_and_signed_as_typed(string name)
    {
        var room = await ClassRoom.OpenAsync(shared.Site, name);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);
        await ClassRoom.MarkAsync(browser, sheet, "dddddn");
        foreach (var path in new[] { $"/en/class-days/{room.ClassId}", $"{sheet}/stop", $"{sheet}/sign-off" })
            Assert.Contains($"<bdi>{name}</bdi>", (await browser.GetAsync(path)).Html, StringComparison.Ordinal);

        await browser.PostExactlyAsync($"{sheet}/signature", await ClassRoom.SignOffAsync(browser, sheet, name));

        Assert.Equal(name, Assert.Single(await StoredAsync(sheet)).Sheet.SignedName);
        Assert.Contains($"<bdi>{name}</bdi>", (await browser.GetAsync("/es/sent-scoresheets")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_of_two_hundred_characters_is_shown_and_signed_whole()
    {
        var name = string.Join(' ', Enumerable.Repeat("Wolfeschlegelsteinhausen", 8));
        var room = await ClassRoom.OpenAsync(shared.Site, name);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);

        Assert.Contains(name, (await browser.GetAsync($"{sheet}/steps/1")).Html, StringComparison.Ordinal);
    }

    private async Task<IReadOnlyList<StoredScoresheet>> StoredAsync(string sheet)
    {
        IReadOnlyList<StoredScoresheet> stored = [];
        await shared.Site.RecordAsync(async records => stored = await records.CopiesOfScoresheetAsync(ClassRoom.IdOf(sheet), Cancel));
        return stored;
    }

    private static List<KeyValuePair<string, string>> Changed(List<KeyValuePair<string, string>> fields, string name, string value) =>
        [.. fields.Select(field => field.Key == name ? new KeyValuePair<string, string>(name, value) : field)];
}
