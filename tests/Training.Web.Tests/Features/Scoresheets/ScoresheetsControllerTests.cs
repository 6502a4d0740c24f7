using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Scoresheets;

public sealed class ScoresheetsControllerTests(SharedSite shared)
{
    private const string AllDone = "dddddddddddddddddddd";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Somebody_who_is_not_in_the_class_has_no_start()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var stranger = await shared.Site.PersonAsync("Desmond Baca");
        using var browser = await room.SignInAsync();
        var path = $"/en/class-days/{room.ClassId}/candidates/{stranger}/scoresheets";

        Assert.Equal(404, (await browser.GetAsync(path)).Status);
        Assert.Equal(404, (await browser.PostAsync(path, ClassRoom.Form(), room.StartPath)).Status);
    }

    [Fact]
    public async Task An_instructor_of_another_class_finds_nothing_here()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var other = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await other.SignInAsync();

        Assert.Equal(404, (await browser.GetAsync($"/en/class-days/{room.ClassId}")).Status);
        Assert.Equal(404, (await browser.GetAsync(room.StartPath)).Status);
        Assert.Equal(404, (await browser.PostAsync(room.StartPath, ClassRoom.Form(), other.StartPath)).Status);
    }

    [Fact]
    public async Task Who_only_teaches_sees_the_class_and_scores_nobody()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var teacher = await shared.Site.AppointedAsync(AppointedRole.Instructor, "Hollis Draper");
        await shared.Site.AddAsync(new ClassTeaching { ClassId = room.ClassId, InstructorId = teacher });
        using var browser = await shared.Site.SignInAsync(teacher);

        var day = await browser.GetAsync($"/en/class-days/{room.ClassId}");

        Assert.Equal(200, day.Status);
        Assert.Contains("score nobody", day.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("/scoresheets\"", day.Html, StringComparison.Ordinal);
        Assert.Equal(404, (await browser.GetAsync(room.StartPath)).Status);
        Assert.Equal(404, (await browser.PostAsync(room.StartPath, ClassRoom.Form(), "/en/class-days")).Status);
    }

    [Fact]
    public async Task Nobody_scores_themselves()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        await shared.Site.AddAsync(new ClassAttendance { ClassId = room.ClassId, PersonId = room.InstructorId });
        using var browser = await room.SignInAsync();
        var path = $"/en/class-days/{room.ClassId}/candidates/{room.InstructorId}/scoresheets";

        var answer = await browser.PostAsync(path, ClassRoom.Form(), room.StartPath);

        Assert.Equal(422, answer.Status);
        Assert.Contains("Instructor and candidate are the same person.", answer.Html, StringComparison.Ordinal);
        Assert.Contains("You cannot score yourself", (await browser.GetAsync($"/en/class-days/{room.ClassId}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_with_everything_wrong_comes_back_with_everything_typed_and_every_reason()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var form = ClassRoom.Form();
        foreach (var box in new[] { "IdentityConfirmed", "Kit" }) form.Remove(box);
        (form["Surroundings"], form["AirTemperature"]) = ("Wind & \"dust\" in the lane", "warm");

        var answer = await browser.PostAsync(room.StartPath, form, room.StartPath);

        Assert.Equal(422, answer.Status);
        foreach (var told in new[] { "identification was not looked at", "No kit that may be used is chosen", "“warm” is no whole number" })
            Assert.Contains(told, answer.Html, StringComparison.Ordinal);
        Assert.Contains("Wind & \"dust\" in the lane", answer.Html, StringComparison.Ordinal);
        Assert.Contains($"value=\"{form["Id"]}\"", answer.Html, StringComparison.Ordinal);
        Assert.Contains("id=\"IdentityConfirmed-mend\"", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_start_twice_is_one_sheet_and_another_content_is_told_so()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var form = ClassRoom.Form();

        var first = await room.StartAsync(browser, form);
        var again = await room.StartAsync(browser, form);
        var other = await browser.PostAsync(room.StartPath, new(form) { ["Surroundings"] = "Shade" }, room.StartPath);

        Assert.Equal(first, again);
        Assert.Equal(409, other.Status);
        Assert.Contains("started before with other entries", other.Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records =>
            Assert.Equal("Dry gravel, low sun", (await records.StartedScoresheets.SingleAsync(sheet => sheet.ClassId == room.ClassId, Cancel)).Surroundings));
    }

    [Fact]
    public async Task Kit_that_may_not_be_used_is_grey_on_the_form_and_refused_when_posted_anyway()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var mark = room.ClassId.ToString()[^6..];
        (Guid Id, string Label, string Told)[] blocked =
        [
            (Guid.CreateVersion7(), $"N-{mark}", $"<bdi>N-{mark}</bdi>, hook. Not inspected yet."),
            (Guid.CreateVersion7(), $"U-{mark}", $"<bdi>U-{mark}</bdi>, hook. Found not fit on 1 December 2023: Tip bent."),
            (Guid.CreateVersion7(), $"D-{mark}", $"<bdi>D-{mark}</bdi>, hook. The inspection held through 24 November 2026."),
        ];
        await shared.Site.RecordAsync(async records =>
        {
            foreach (var (id, label, _) in blocked) await records.KeepAsync(ClassRoom.Piece(id, label, room.InstructorId), Cancel);
            await records.KeepAsync(ClassRoom.Inspection(Guid.CreateVersion7(), blocked[1].Id, room.InstructorId, unfit: "Tip bent."), Cancel);
            await records.KeepAsync(ClassRoom.Inspection(Guid.CreateVersion7(), blocked[2].Id, room.InstructorId, dueOn: new(2026, 11, 24)), Cancel);
        });
        using var browser = await room.SignInAsync();

        var page = (await browser.GetAsync(room.StartPath)).Html;
        foreach (var (id, _, told) in blocked)
        {
            Assert.Contains($"value=\"{id}\" disabled", page, StringComparison.Ordinal);
            Assert.Contains(told, page, StringComparison.Ordinal);
            var answer = await browser.PostAsync(room.StartPath, new(ClassRoom.Form()) { ["Kit"] = id.ToString() }, room.StartPath);
            Assert.Equal((422, true), (answer.Status, answer.Html.Contains("id=\"Kit-mend\"", StringComparison.Ordinal)));
        }

        await shared.Site.RecordAsync(async records => Assert.False(await records.StartedScoresheets.AnyAsync(sheet => sheet.ClassId == room.ClassId, Cancel)));
        var sheet = await room.ScoreAsync(browser, AllDone);
        Assert.Contains("H-2. Each piece was inspected and not overdue.", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    public async Task A_sheet_is_started_on_the_day_of_the_class_only(int days)
    {
        var room = await ClassRoom.OpenAsync(shared.Site, heldOn: ClassRoom.Today.AddDays(days));
        using var browser = await room.SignInAsync();

        var answer = await browser.PostAsync(room.StartPath, ClassRoom.Form(), "/en/class-days");

        Assert.Equal(422, answer.Status);
        Assert.Contains("This class is held on", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_form_of_a_live_sheet_offers_the_day_on_which_the_sites_bite_plan_was_checked()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        await room.ScoreAsync(browser, AllDone);
        Assert.Contains("name=\"BitePlanCheckedOn\" type=\"date\" aria-describedby", (await browser.GetAsync(room.StartPath)).Html, StringComparison.Ordinal);
        var siteId = Guid.Empty;
        await shared.Site.RecordAsync(async records =>
        {
            siteId = await records.Classes.Where(row => row.Id == room.ClassId).Select(row => row.SiteId).SingleAsync();
            records.Add(new BitePlan
            {
                Id = Guid.CreateVersion7(), SiteId = siteId, LeadId = room.InstructorId, KeptAt = RunningSite.Now, CheckedOn = new(2026, 9, 14), ReviewOn = new(2027, 3, 1),
                Latitude = 34.9m, Longitude = -117m, AccessWords = "Gate 2", Hospitals = [],
            });
            await records.SaveChangesAsync();
        });

        var html = (await browser.GetAsync(room.StartPath)).Html;

        Assert.Contains("name=\"BitePlanCheckedOn\" type=\"date\" value=\"2026-09-14\"", html, StringComparison.Ordinal);
        Assert.Contains($"href=\"/en/sites/{siteId}/bite-plan\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_live_snake_comes_only_after_a_pass_on_the_model_and_with_all_conditions()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var watcher = await shared.Site.PersonAsync("Theodora Vance");
        await shared.Site.AddAsync(new ClassAttendance { ClassId = room.ClassId, PersonId = watcher });
        using var browser = await room.SignInAsync();

        var tooEarly = await browser.PostAsync(room.StartPath, ClassRoom.LiveForm(watcher), room.StartPath);
        Assert.Equal(422, tooEarly.Status);
        Assert.Contains("There is no pass on the model yet.", tooEarly.Html, StringComparison.Ordinal);

        await room.ScoreAsync(browser, AllDone);
        shared.Site.Clock.Now = shared.Site.Clock.Now.AddSeconds(1);
        Assert.Contains("Score: Move a snake to a bucket with hook and tongs, on a live snake", (await browser.GetAsync($"/en/class-days/{room.ClassId}")).Html, StringComparison.Ordinal);
        var bare = new Dictionary<string, string>(ClassRoom.Form()) { ["Subject"] = "live", ["WatcherId"] = room.InstructorId.ToString() };
        var answer = await browser.PostAsync(room.StartPath, bare, room.StartPath);
        Assert.Equal(422, answer.Status);
        foreach (var told in new[] { "The permit number is missing", "bite plan was checked is missing", "time of the test call is missing", "No watcher is named" })
            Assert.Contains(told, answer.Html, StringComparison.Ordinal);

        var stale = new Dictionary<string, string>(ClassRoom.LiveForm(watcher)) { ["CommunicationsTestedAt"] = "2026-11-24T09:30" };
        Assert.Contains("not tried within 24 hours", (await browser.PostAsync(room.StartPath, stale, room.StartPath)).Html, StringComparison.Ordinal);

        var sheet = await room.ScoreAsync(browser, AllDone, ClassRoom.LiveForm(watcher));
        var sent = (await browser.GetAsync(sheet)).Html;
        foreach (var shown in new[] { "CW-2291", "checked on 1 November 2026", "tried on 25 November 2026, 09:30", "Theodora Vance" })
            Assert.Contains(shown, sent, StringComparison.Ordinal);
        Assert.Contains("Score: Close, label and lock away", (await browser.GetAsync($"/en/class-days/{room.ClassId}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_taught_the_candidate_writes_a_reason_and_it_shows()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var earlier = await ClassRoom.OpenAsync(shared.Site, heldOn: new(2024, 11, 26), instructorId: room.InstructorId);
        await shared.Site.AddAsync(
            new ClassTeaching { ClassId = earlier.ClassId, InstructorId = room.InstructorId },
            new ClassAttendance { ClassId = earlier.ClassId, PersonId = room.CandidateId });
        using var browser = await room.SignInAsync();

        var refused = await browser.PostAsync(room.StartPath, ClassRoom.Form(), room.StartPath);
        Assert.Equal(422, refused.Status);
        Assert.Contains("You taught this person on 26 November 2024, and no reason is written.", refused.Html, StringComparison.Ordinal);

        const string Reason = "The other scorer's truck broke down.";
        var sheet = await room.ScoreAsync(browser, AllDone, new(ClassRoom.Form()) { ["SeparationReason"] = Reason });
        Assert.Contains(Reason, (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records =>
        {
            var id = ClassRoom.IdOf(sheet);
            var row = await records.Scoresheets.SingleAsync(signed => signed.FormId == id, Cancel);
            Assert.Equal((Reason, room.InstructorId), await records.SeparationReasons.Where(written => written.ScoresheetId == row.Id)
                .Select(written => new ValueTuple<string, Guid>(written.Reason, written.WriterId)).SingleAsync(Cancel));
        });
    }

    [Fact]
    public async Task Exactly_two_years_after_teaching_no_reason_is_asked()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var earlier = await ClassRoom.OpenAsync(shared.Site, heldOn: new(2024, 11, 25), instructorId: room.InstructorId);
        await shared.Site.AddAsync(
            new ClassTeaching { ClassId = earlier.ClassId, InstructorId = room.InstructorId },
            new ClassAttendance { ClassId = earlier.ClassId, PersonId = room.CandidateId });
        using var browser = await room.SignInAsync();

        Assert.DoesNotContain("SeparationReason", (await browser.GetAsync(room.StartPath)).Html, StringComparison.Ordinal);
        await room.StartAsync(browser);
    }

    [Fact]
    public async Task After_three_failures_in_a_week_another_class_comes_first_and_what_was_broken_off_is_no_try()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        await room.ScoreAsync(browser, "d-d"); // broken off
        for (var failure = 0; failure < 3; failure++) await room.ScoreAsync(browser, "dn");

        var page = (await browser.GetAsync(room.StartPath)).Html;
        Assert.Contains("The practical was failed too often, last on 25 November 2026", page, StringComparison.Ordinal);
        var answer = await browser.PostAsync(room.StartPath, ClassRoom.Form(), room.StartPath);
        Assert.Equal((422, true), (answer.Status, answer.Html.Contains("id=\"Subject-mend\"", StringComparison.Ordinal)));

        // The same three failures at a class of three days ago; today they attend another.
        var later = await ClassRoom.OpenAsync(shared.Site);
        await shared.Site.RecordAsync(async records =>
        {
            var sheets = records.Scoresheets.Where(sheet => sheet.ClassId == room.ClassId);
            await sheets.ExecuteUpdateAsync(set => set.SetProperty(sheet => sheet.CandidateId, later.CandidateId)
                .SetProperty(sheet => sheet.ScoredOn, ClassRoom.Today.AddDays(-3)), Cancel);
        });
        using var other = await later.SignInAsync();
        await later.StartAsync(other);
    }

    [Fact]
    public async Task A_second_try_gets_the_next_number_and_both_count()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        await room.ScoreAsync(browser, "dn");

        var second = await room.ScoreAsync(browser, AllDone);

        Assert.Contains("Try 2", (await browser.GetAsync(second)).Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.Equal(
            [(1, 1), (2, 1)],
            await records.Scoresheets.Where(sheet => sheet.ClassId == room.ClassId).OrderBy(sheet => sheet.Try)
                .Select(sheet => new ValueTuple<int, int>(sheet.Try, sheet.Copy)).ToListAsync(Cancel)));
    }
}
