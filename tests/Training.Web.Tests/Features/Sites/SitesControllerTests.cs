using Microsoft.EntityFrameworkCore;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Sites;

public sealed class SitesControllerTests(SharedSite shared)
{
    private static Dictionary<string, string> Form() => new()
    {
        ["Id"] = Guid.CreateVersion7().ToString(), ["EmergencyServices"] = "911", ["PoisonControl"] = "1-800-222-1222",
        ["OnSite"] = "Shift lead, radio channel 2", ["WithoutSignal"] = "Radio channel 2: control calls",
    };

    private static string Page(ProgrammeCast cast) => $"/en/programme/sites/{cast.Site}";

    [Fact]
    public async Task What_guidance_advises_is_offered_and_what_was_checked_stands_on_the_workers_first_page()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        var before = (await lead.GetAsync(Page(cast))).Html;
        Assert.Contains("nobody wrote down whom to call", before, StringComparison.Ordinal);
        Assert.Contains("value=\"911\"", before, StringComparison.Ordinal);
        Assert.Contains("value=\"1-800-222-1222\"", before, StringComparison.Ordinal);
        Assert.DoesNotContain("If somebody is bitten at", (await worker.GetAsync("/en/my")).Html, StringComparison.Ordinal);

        var answer = await lead.PostAsync($"{Page(cast)}/emergency-numbers", Form(), page: Page(cast));

        Assert.Equal((303, Page(cast)), (answer.Status, answer.Location));
        Assert.Contains("whom to call was checked on 25 November 2026", (await lead.GetAsync(Page(cast))).Html, StringComparison.Ordinal);
        var mine = (await worker.GetAsync("/en/my")).Html;
        Assert.Contains("If somebody is bitten at Ridge 4", mine, StringComparison.Ordinal);
        Assert.Contains("Shift lead, radio channel 2", mine, StringComparison.Ordinal);
        Assert.Contains("href=\"tel:911\"", mine, StringComparison.Ordinal);
        Assert.Contains("href=\"tel:18002221222\"", mine, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_later_check_takes_the_place_of_the_earlier_one_which_stays()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using var lead = await site.SignInAsync(cast.Lead);
        await lead.PostAsync($"{Page(cast)}/emergency-numbers", Form(), page: Page(cast));
        site.Clock.Now += TimeSpan.FromMinutes(1);
        var later = Form();
        later["OnSite"] = "Gate house, radio channel 9";
        await lead.PostAsync($"{Page(cast)}/emergency-numbers", later, page: Page(cast));
        await lead.PostAsync($"{Page(cast)}/emergency-numbers", later, page: Page(cast));

        var html = (await lead.GetAsync(Page(cast))).Html;

        Assert.Contains("Gate house, radio channel 9", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Shift lead, radio channel 2", html, StringComparison.Ordinal);
        await site.RecordAsync(async records => Assert.Equal(2, await records.EmergencyNumbers.CountAsync(row => row.SiteId == cast.Site)));
    }

    [Theory]
    [InlineData("EmergencyServices")]
    [InlineData("PoisonControl")]
    [InlineData("OnSite")]
    [InlineData("WithoutSignal")]
    public async Task Nothing_of_it_may_be_empty_and_what_was_typed_stays(string field)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var form = Form();
        form[field] = " ";

        var answer = await lead.PostAsync($"{Page(cast)}/emergency-numbers", form, page: Page(cast));

        Assert.Equal(422, answer.Status);
        Assert.Contains($"id=\"{field}-mend\"", answer.Html, StringComparison.Ordinal);
        if (field != "OnSite") Assert.Contains("Shift lead, radio channel 2", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_site_that_there_is_not_is_not_found()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var page = $"/en/programme/sites/{Guid.CreateVersion7()}";

        Assert.Equal((404, 404), ((await lead.GetAsync(page)).Status, (await lead.PostAsync($"{page}/emergency-numbers", Form())).Status));
    }
}
