using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Reminders;
using Training.Web.Tests.Demo;
using Training.Web.Tests.House;

namespace Training.Browser.Tests;

/// <summary>
/// The demo's clock is moved, and a site that will drop below its cover keeps it: seen, planned, accepted, invited, attended, renewed. Planning and what the
/// employer sees go through the screens; quizzes and scoresheets of a whole class through the same addresses without a window.
/// </summary>
public sealed partial class CoverStoryTests(Chromium chromium)
{
    private const string SiteName = "Rim Line West";
    private const int Weeks = 7;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_site_that_would_drop_below_its_cover_keeps_it()
    {
        await using var demo = new MadeDemo();
        await demo.InitializeAsync();
        using var site = RunningSite.Start(isDemo: true,
        [
            new("Training:Database:Connection", $"Data Source={demo.Place.Database}"), new("Training:PublicAddress", "http://localhost:5080"),
            new("Training:Provider:TimeZone", "America/Phoenix"), new("Training:Reminders:QuietFromHour", "0"), new("Training:Reminders:QuietUntilHour", "0"),
        ]);
        site.Clock.Now = new(MadeDemo.Today, new(17, 44), TimeSpan.Zero);
        var employerId = await EmployerAsync(site);
        var home = $"/en/employers/{employerId}";

        var employer = await OpenAsync(site, "osgood.laramore");
        await employer.GotoAsync(home);
        var foreseen = await employer.InnerTextAsync("main");
        Assert.True(foreseen.Contains($"{SiteName} drops below the 6 handlers it needs on ", StringComparison.Ordinal), foreseen);
        var below = DayIn(foreseen);
        Assert.InRange(below.DayNumber - MadeDemo.Today.DayNumber, (Weeks * 7) - 3, (Weeks * 7) + 3);

        var lead = await OpenAsync(site, "marguerite.ashcombe");
        await lead.GotoAsync($"{home}/cover");
        await lead.GetByRole(AriaRole.Link, new() { Name = "Plan classes" }).ClickAsync();
        await lead.GetByRole(AriaRole.Button, new() { Name = "Propose classes" }).ClickAsync();
        Assert.Matches("class(es)? renews?", await SaysAsync(lead));
        List<Guid> earlier = [];
        await site.RecordAsync(async records => earlier = await records.Classes.Select(day => day.Id).ToListAsync(Cancel));
        await lead.GetByRole(AriaRole.Button, new() { Name = "Accept this plan" }).ClickAsync();
        Assert.StartsWith("Accepted: ", await SaysAsync(lead), StringComparison.Ordinal);
        await employer.GotoAsync($"{home}/cover");
        Assert.True(DayIn(await employer.InnerTextAsync("main")) > below, "with the seats the first day below is a later one");

        await site.Services.GetRequiredService<ReminderJob>().RunAsync(Cancel);
        var classes = await NewClassesAsync(site, employerId, earlier);
        Assert.NotEmpty(classes);
        foreach (var day in classes) await AttendAndRenewAsync(site, day);

        site.Clock.Now = new(below, new(18, 0), TimeSpan.Zero);
        var onThatDay = await OpenAsync(site, "osgood.laramore");
        await onThatDay.GotoAsync($"{home}/cover");
        var kept = await onThatDay.InnerTextAsync("main");
        Assert.DoesNotContain($"{SiteName} is below", kept, StringComparison.Ordinal);
        Assert.True(DayIn(kept) > below, kept);
    }

    /// <summary>Everybody who has a seat was invited, comes, passes what the renewal asks, and is renewed by a lead who neither taught nor scored.</summary>
    private static async Task AttendAndRenewAsync(RunningSite site, PlannedDay day)
    {
        await site.RecordAsync(async records =>
        {
            foreach (var person in day.People) Assert.True(await records.ClassInvitations.AnyAsync(row => row.ClassId == day.Id && row.PersonId == person, Cancel), "no invitation");
        });
        site.Clock.Now = new(day.HeldOn, new(17, 0), TimeSpan.Zero);
        using var scorer = await SignInAsync(site, await SignInNameAsync(site, day.ScorerId));
        var page = $"/en/class-days/{day.Id}";
        var course = site.Shelf.Find("handler")!; // not null: a shipped course
        foreach (var person in day.People)
        {
            var came = await scorer.PostAsync($"{page}/presences", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["PersonId"] = person.ToString() }, page);
            Assert.True(came.Status == 303, came.Html);
            var room = ClassRoom.At(site, day.Id, day.ScorerId, person);
            foreach (var asked in course.Scheme.Renewal.OfType<Requirement.PassedPractical>())
            {
                var form = ClassRoom.Form();
                (form["Checklist"], form["Kit"]) = (asked.ChecklistId, day.KitId.ToString());
                var owner = site.Shelf.Courses.Single(one => one.Checklists.Any(list => list.Id == asked.ChecklistId));
                await room.ScoreAsync(scorer, new string('d', owner.Checklists.Single(list => list.Id == asked.ChecklistId).Steps.Count), form);
                site.Clock.Now += TimeSpan.FromMinutes(1);
            }

            await site.SitAsync(person, (ulong)person.GetHashCode(), courseId: "handler-refresher");
            using var lead = await SignInAsync(site, "marguerite.ashcombe");
            var decision = $"/en/programme/people/{person}/decisions/handler";
            var granted = await lead.PostAsync(decision, new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Verdict"] = "Grant" }, decision);
            Assert.True(granted.Status == 303, granted.Html);
        }
    }

    private static async Task<PlainBrowser> SignInAsync(RunningSite site, string name)
    {
        var browser = site.OpenBrowser();
        Assert.Equal(303, (await browser.PostAsync("/en/sign-in", new() { ["Name"] = name, ["Password"] = ServedDemo.Password })).Status);
        return browser;
    }

    private static async Task<string> SignInNameAsync(RunningSite site, Guid personId)
    {
        var name = "";
        await site.RecordAsync(async records => name = await records.Accounts.Where(account => account.PersonId == personId).Select(account => account.UserName!).SingleAsync(Cancel)); // not null: everybody signs in with a name
        return name;
    }

    private static async Task<Guid> EmployerAsync(RunningSite site)
    {
        var id = Guid.Empty;
        await site.RecordAsync(async records => id = await records.Sites.Where(place => place.Name == SiteName).Select(place => place.EmployerId).SingleAsync(Cancel));
        return id;
    }

    private static async Task<IReadOnlyList<PlannedDay>> NewClassesAsync(RunningSite site, Guid employerId, List<Guid> earlier)
    {
        var found = new List<PlannedDay>();
        await site.RecordAsync(async records =>
        {
            var kit = await records.KitPieces.Where(piece => piece.LabelKey == KeyText.Of("H-03")).Select(piece => piece.Id).SingleAsync(Cancel);
            var days = await (from day in records.Classes
                              join place in records.Sites on day.SiteId equals place.Id
                              where place.EmployerId == employerId && !earlier.Contains(day.Id)
                              orderby day.HeldOn
                              select day).ToListAsync(Cancel);
            foreach (var day in days)
            {
                found.Add(new(
                    day.Id, day.HeldOn, await records.ClassScorers.Where(row => row.ClassId == day.Id).Select(row => row.InstructorId).FirstAsync(Cancel), kit,
                    await records.ClassAttendances.Where(row => row.ClassId == day.Id).Select(row => row.PersonId).ToListAsync(Cancel)));
            }
        });
        return found;
    }

    private async Task<IPage> OpenAsync(RunningSite site, string name)
    {
        var page = await chromium.OpenAsync(site, 1280);
        await page.GotoAsync("/en/sign-in");
        await page.GetByLabel("Sign-in name").FillAsync(name);
        await page.GetByLabel("Password").FillAsync(ServedDemo.Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await page.Locator(".hats").WaitForAsync();
        return page;
    }

    private static Task<string> SaysAsync(IPage page) => page.Locator("h1.says").InnerTextAsync();

    private static DateOnly DayIn(string text) => DateOnly.ParseExact(
        DropsOn().Match(text).Groups["day"].Value, "d MMMM yyyy", System.Globalization.CultureInfo.GetCultureInfo("en-US"));

    [GeneratedRegex("drops below the 6 handlers it needs on (?<day>\\d{1,2} \\w+ \\d{4})", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex DropsOn();

    private sealed record PlannedDay(Guid Id, DateOnly HeldOn, Guid ScorerId, Guid KitId, IReadOnlyList<Guid> People);
}
