using Training.Courses;
using Training.Records;
using Training.Web.Shelf;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Shelf;

/// <summary>The rules of the handler scheme change while somebody is certified by those before.</summary>
public sealed class SchemeChangesTests
{
    private const string Page = "/en/courses/handler";

    private static string Rules(RunningSite site) => Path.Combine(site.CoursesFolder, "handler/course.yaml");

    private static void Change(RunningSite site, string text, string with)
    {
        var old = File.ReadAllText(Rules(site));
        Assert.Contains(text, old, StringComparison.Ordinal);
        File.WriteAllText(Rules(site), old.Replace(text, with, StringComparison.Ordinal));
    }

    /// <summary>Writes a transition from the rules on the shelf, in force from a day on, with its words.</summary>
    private static void Announce(RunningSite site, string from, string more = "")
    {
        Change(site, "effective-from: 2022-01-01", $"effective-from: {from}");
        Change(site, "  grant:\n", $"  transition:\n    from: {SchemeRules.MarkOf(site.Shelf.Find("handler")!)}\n{more}  grant:\n");
        File.AppendAllText(Path.Combine(site.CoursesFolder, "handler/en/course.md"), "\n## Before {#transition}\n\nRead the new part first.\n");
        File.AppendAllText(Path.Combine(site.CoursesFolder, "handler/es/course.md"), "\n## Antes {#transition}\n\nLea primero la parte nueva.\n");
    }

    private static async Task HoldAsync(RunningSite site, Guid person) => await site.HoldAsync(person, "handler", new(2026, 8, 25), new(2027, 8, 25));

    [Fact]
    public async Task Changed_rules_without_a_rule_for_those_certified_stay_out_of_force_now_and_after_a_restart()
    {
        var site = RunningSite.Start();
        try
        {
            await HoldAsync(site, await site.PersonAsync());
            var mark = SchemeRules.MarkOf(site.Shelf.Find("handler")!);
            Change(site, "window: P60D", "window: P45D");
            await site.LookAsync();

            void AssertRefused()
            {
                Assert.Equal(new(60, DurationUnit.Days), site.Shelf.Find("handler")!.Scheme.Terms.Window);
                var finding = Assert.Single(site.Shelf.Findings);
                Assert.Equal((ShelfProblems.TransitionMissing, "handler/course.yaml"), (finding.Code, finding.Place.File));
                Assert.Equal([mark], finding.Arguments);
            }

            AssertRefused();
            await site.LookAsync(); // nothing changed since: the finding stays
            AssertRefused();
            site = site.Restart();
            AssertRefused();
            using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
            Assert.Contains($"Add “transition” with “from: {mark}”", (await lead.GetAsync("/en/programme/courses")).Html, StringComparison.Ordinal);
        }
        finally
        {
            site.Dispose();
        }
    }

    [Fact]
    public async Task With_it_they_are_in_force_and_everybody_reads_what_those_certified_before_do()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        await HoldAsync(site, cast.Worker);
        Announce(site, "2026-11-25", "    by: 2026-12-31\n    also:\n      - quiz: handler-refresher-quiz\n        greatest-age: P6M\n");
        Change(site, "window: P60D", "window: P45D");
        await site.LookAsync();
        using var worker = await site.SignInAsync(cast.Worker);
        using var lead = await site.SignInAsync(cast.Lead);

        Assert.Empty(site.Shelf.Findings);
        Assert.Equal(new(45, DurationUnit.Days), site.Shelf.Find("handler")!.Scheme.Terms.Window);
        Assert.Contains("Read the new part first.", (await site.GetAsync(Page)).Html, StringComparison.Ordinal);
        Assert.Contains("Asked besides, by 31 December 2026:", (await site.GetAsync(Page)).Html, StringComparison.Ordinal);
        Assert.Contains("Lea primero la parte nueva.", (await site.GetAsync("/es/courses/handler")).Html, StringComparison.Ordinal);
        var own = (await worker.GetAsync("/en/my/courses/handler")).Html;
        Assert.Contains("You have not done yet what is asked besides. The last day for it is 31 December 2026.", own, StringComparison.Ordinal);
        Assert.DoesNotContain("Changed rules, not done in time", (await lead.GetAsync("/en/programme")).Html, StringComparison.Ordinal);

        site.Clock.Now = new(2027, 1, 1, 18, 0, 0, TimeSpan.Zero);
        using var later = await site.SignInAsync(cast.Lead);
        var programme = (await later.GetAsync("/en/programme")).Html;
        Assert.Contains("Changed rules, not done in time", programme, StringComparison.Ordinal);
        Assert.Contains("Was asked by 31 December 2026", programme, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Before_their_first_day_they_are_announced_and_on_it_they_are_in_force()
    {
        using var site = RunningSite.Start();
        await HoldAsync(site, await site.PersonAsync());
        Announce(site, "2026-12-01");
        Change(site, "window: P60D", "window: P45D");
        await site.LookAsync();

        Assert.Empty(site.Shelf.Findings);
        Assert.Equal(new(60, DurationUnit.Days), site.Shelf.Find("handler")!.Scheme.Terms.Window);
        Assert.Contains("Other rules will be in force from 1 December 2026 on.", (await site.GetAsync(Page)).Html, StringComparison.Ordinal);

        site.Clock.Now = new(2026, 12, 1, 18, 0, 0, TimeSpan.Zero);
        await site.LookAsync();
        Assert.Equal(new(45, DurationUnit.Days), site.Shelf.Find("handler")!.Scheme.Terms.Window);
        Assert.Contains("These rules are in force from 1 December 2026 on.", (await site.GetAsync(Page)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_transition_of_an_earlier_change_and_an_old_first_day_do_not_do()
    {
        using var site = RunningSite.Start();
        await HoldAsync(site, await site.PersonAsync());
        Announce(site, "2026-11-25");
        Change(site, "window: P60D", "window: P45D");
        await site.LookAsync();

        Change(site, "window: P45D", "window: P40D"); // the transition still takes over from the rules before those
        await site.LookAsync();
        Assert.Equal([ShelfProblems.TransitionMissing], site.Shelf.Findings.Select(finding => finding.Code));

        var text = await File.ReadAllTextAsync(Rules(site));
        await File.WriteAllTextAsync(Rules(site), System.Text.RegularExpressions.Regex.Replace(
            text, "from: [0-9a-f]{12}", $"from: {SchemeRules.MarkOf(site.Shelf.Find("handler")!)}", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)));
        await site.LookAsync();
        Assert.Equal([ShelfProblems.NotLater], site.Shelf.Findings.Select(finding => finding.Code));
        Assert.Equal(new(45, DurationUnit.Days), site.Shelf.Find("handler")!.Scheme.Terms.Window);
    }

    [Fact]
    public async Task Where_nobody_is_certified_and_where_only_words_change_nothing_is_asked()
    {
        using var site = RunningSite.Start();
        Change(site, "window: P60D", "window: P45D");
        await site.LookAsync();
        Assert.Equal(new(45, DurationUnit.Days), site.Shelf.Find("handler")!.Scheme.Terms.Window);

        await HoldAsync(site, await site.PersonAsync());
        await File.AppendAllTextAsync(Path.Combine(site.CoursesFolder, "handler/en/course.md"), "\n");
        Change(site, "review-by: 2027-12-31", "review-by: 2028-12-31");
        await site.LookAsync();
        Assert.Empty(site.Shelf.Findings);
        Assert.Equal(new DateOnly(2028, 12, 31), site.Shelf.Find("handler")!.Scheme.ReviewBy);
    }

    /// <summary>Past its grace nobody holds anything: the day on which that begins, and the day before.</summary>
    [Theory]
    [InlineData("2026-10-25", false)]
    [InlineData("2026-10-26", true)]
    public async Task Who_may_still_renew_late_counts_as_certified(string lastDay, bool isAsked)
    {
        using var site = RunningSite.Start();
        await site.HoldAsync(await site.PersonAsync(), "handler", new(2025, 10, 22), DateOnly.Parse(lastDay, System.Globalization.CultureInfo.InvariantCulture));
        Change(site, "window: P60D", "window: P45D");
        await site.LookAsync();

        Assert.Equal(isAsked, site.Shelf.Findings.Count == 1);
    }
}
