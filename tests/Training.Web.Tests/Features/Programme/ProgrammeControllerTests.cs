using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Programme;

public sealed class ProgrammeControllerTests
{
    [Fact]
    public async Task The_first_line_says_what_waits()
    {
        using var site = RunningSite.Start();
        var first = await ProgrammeCast.CreateAsync(site, "Solveig Amaro Quist");
        using var browser = await site.SignInAsync(first.Lead);
        var nothing = await browser.GetAsync("/en/programme");
        await first.PassEverythingAsync();
        var second = await ProgrammeCast.CreateAsync(site);
        await second.PassEverythingAsync();
        var suspended = await site.PersonAsync("Anselm Pike");
        await site.HoldAsync(suspended, "handler", ProgrammeCast.Today.AddMonths(-3), ProgrammeCast.Today.AddMonths(9));
        await site.RecordAsync(records => records.SuspendAsync(
            Guid.CreateVersion7(), suspended, "handler", new(ProgrammeCast.Today.AddDays(-3), first.Lead, "Seen on site.", new(2026, 12, 9), null),
            RunningSite.Now, default));

        var (english, spanish) = (await browser.GetAsync("/en/programme"), await browser.GetAsync("/es/programme"));

        Assert.Contains("Nothing waits for you today.", nothing.Html, StringComparison.Ordinal);
        Assert.Contains("Two decisions wait for you; one suspension must be settled by 9 December 2026.", english.Html, StringComparison.Ordinal);
        Assert.Contains("Dos decisiones le esperan; hay que resolver una suspensión a más tardar el 9 de diciembre de 2026.", spanish.Html, StringComparison.Ordinal);
        Assert.Contains("10<small>days waiting</small>", english.Html, StringComparison.Ordinal);
        Assert.Contains("14<small>days left</small>", english.Html, StringComparison.Ordinal);
    }

    /// <summary>On its deadline it is in time; the day after it leads the page. Only its deadline changes: nothing happens to it by itself.</summary>
    [Theory]
    [InlineData("2026-11-25", "Two decisions wait for you; one suspension must be settled by 25 November 2026.", false)]
    [InlineData("2026-11-24", "One suspension should have been settled by 24 November 2026; two decisions wait for you.", true)]
    public async Task An_overdue_suspension_comes_first_in_words_and_lasts(string deadline, string says, bool isFirst)
    {
        using var site = RunningSite.Start();
        var first = await ProgrammeCast.CreateAsync(site);
        var second = await ProgrammeCast.CreateAsync(site);
        await first.PassEverythingAsync();
        await second.PassEverythingAsync();
        var suspended = await site.PersonAsync("Anselm Pike");
        await site.HoldAsync(suspended, "handler", ProgrammeCast.Today.AddMonths(-3), ProgrammeCast.Today.AddMonths(9));
        var settleBy = DateOnly.Parse(deadline, System.Globalization.CultureInfo.InvariantCulture);
        await site.RecordAsync(records => records.SuspendAsync(
            Guid.CreateVersion7(), suspended, "handler", new(ProgrammeCast.Today.AddDays(-30), first.Lead, "Seen on site.", settleBy, null),
            RunningSite.Now, default));
        using var browser = await site.SignInAsync(first.Lead);

        var page = (await browser.GetAsync("/en/programme")).Html;

        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Equal(isFirst, page.IndexOf("id=\"suspensions\"", StringComparison.Ordinal) < page.IndexOf("id=\"decisions\"", StringComparison.Ordinal));
        Assert.Equal(isFirst, page.Contains("Should have been settled by 24 November 2026", StringComparison.Ordinal));
        await site.RecordAsync(async records => Assert.Null(
            Assert.Single(Assert.Single(await records.HeldCertificationsAsync(suspended, default)).Suspensions).Reinstatement));
    }

    [Fact]
    public async Task A_sheet_that_came_twice_is_listed_and_shown_with_the_person()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        await cast.DisputeAsync();
        using var browser = await site.SignInAsync(cast.Lead);

        var (programme, person) = (await browser.GetAsync("/en/programme"), await browser.GetAsync($"/en/programme/people/{cast.Worker}"));

        Assert.Contains("Some results came twice with different content.", programme.Html, StringComparison.Ordinal);
        Assert.Contains($"/en/programme/people/{cast.Worker}#results", programme.Html, StringComparison.Ordinal);
        Assert.Contains("this content counts for nothing", person.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_but_a_lead_comes_in()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using var worker = await site.SignInAsync(cast.Worker);
        using var instructor = await site.SignInAsync(cast.Teacher);

        foreach (var path in new[] { "", "/decisions", "/people", $"/people/{cast.Worker}", "/employers", "/classes", "/courses", "/standing" })
        {
            Assert.Equal(404, (await worker.GetAsync("/en/programme" + path)).Status);
            Assert.Equal(404, (await instructor.GetAsync("/en/programme" + path)).Status);
        }
    }
}
