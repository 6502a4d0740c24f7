using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Held;

public sealed class HeldControllerTests
{
    [Fact]
    public async Task Held_and_lapsed_are_listed_over_all_employers_filtered_and_in_pages()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        await cast.HoldAsync();
        for (var number = 0; number < 55; number++)
            await site.IssueAsync("awareness", ProgrammeCast.Today.AddYears(-3), ProgrammeCast.Today.AddDays(-1 - number), $"Lapsed {number:00}");
        using var browser = await site.SignInAsync(cast.Lead);

        var all = await browser.GetAsync("/en/programme/standing");
        var lapsed = await browser.GetAsync("/en/programme/standing?standing=Lapsed&page=2");
        var ofEmployer = await browser.GetAsync($"/en/programme/standing?employer={cast.Employer}");
        var ofScheme = await browser.GetAsync("/en/programme/standing?scheme=handler");

        Assert.Contains("1 are current, 0 of them due for renewal; 55 have lapsed.", all.Html, StringComparison.Ordinal);
        Assert.Contains("Page 1 of 2", all.Html, StringComparison.Ordinal);
        Assert.Contains("Page 2 of 2", lapsed.Html, StringComparison.Ordinal);
        Assert.Contains("Lapsed 00", lapsed.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Íñigo", lapsed.Html, StringComparison.Ordinal);
        Assert.Contains("Íñigo", ofEmployer.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Lapsed 0", ofEmployer.Html, StringComparison.Ordinal);
        Assert.Contains("One fits", ofScheme.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_filter_that_means_nothing_finds_nothing_or_everything_and_breaks_nothing()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        await cast.HoldAsync();
        using var browser = await site.SignInAsync(cast.Lead);

        Assert.Contains("0 fit", (await browser.GetAsync("/en/programme/standing?scheme=%27%3B--")).Html, StringComparison.Ordinal);
        Assert.Equal(200, (await browser.GetAsync("/en/programme/standing?standing=Nonsense&employer=x&page=-4")).Status);
    }
}
