using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.SiteSpecies;

/// <summary>A lead names the snakes of a site; what its people read and are asked follows.</summary>
public sealed class SiteSpeciesControllerTests(SharedSite shared)
{
    private static string Page(Guid siteId) => $"/en/programme/sites/{siteId}/species";

    private async Task<(ProgrammeCast Cast, Guid Site)> InStateAsync(string region)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        var site = Guid.CreateVersion7();
        await shared.Site.RecordAsync(async records =>
        {
            records.Add(new Records.Site { Id = site, EmployerId = cast.Employer, Name = $"Block {site.ToString()[^6..]}", Zone = "America/Phoenix", Region = region });
            await records.SaveChangesAsync();
        });
        return (cast, site);
    }

    private static async Task<Reply> NameAsync(PlainBrowser lead, Guid site, params string[] species) => await lead.PostExactlyAsync(
        Page(site),
        [await lead.TokenAsync(Page(site)), new("Id", Guid.CreateVersion7().ToString()), .. species.Select(id => new KeyValuePair<string, string>("SpeciesIds", id))]);

    private static async Task<string> FirstOfPracticeAsync(PlainBrowser browser)
    {
        var round = await browser.GetAsync("/en/my/courses/awareness/practice");
        return (await browser.GetAsync(round.Location!)).Html; // not null: it leads to a round
    }

    [Fact]
    public async Task What_the_sources_suggest_for_the_state_is_ticked_and_nothing_is_kept_yet()
    {
        var (cast, site) = await InStateAsync("US-AZ");
        using var lead = await shared.Site.SignInAsync(cast.Lead);

        var html = (await lead.GetAsync(Page(site))).Html;

        Assert.Contains("nobody has named its snakes yet", html, StringComparison.Ordinal);
        Assert.Contains("value=\"sonoran-coral-snake\" checked", html, StringComparison.Ordinal);
        Assert.Contains("value=\"eastern-massasauga\">", html, StringComparison.Ordinal);
        Assert.DoesNotContain("value=\"gopher-snakes\"", html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.Null(await records.FindSiteSpeciesAsync(site, CancellationToken.None)));
    }

    [Fact]
    public async Task Questions_about_a_snake_that_the_site_lacks_are_not_drawn_and_the_page_says_how_many()
    {
        var (cast, _) = await InStateAsync("US");
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        Assert.Equal(303, (await NameAsync(lead, cast.Site, "western-diamondback")).Status);
        using var worker = await shared.Site.SignInAsync(cast.Worker);

        var course = shared.Site.Shelf.Find("awareness")!;
        var place = SnakesOfPlace.Of([shared.Site.Shelf.Species.Find("western-diamondback")!]);
        var left = course.Questions.Count - course.AskedAt(place).Questions.Count;
        Assert.True(left > 0, "the awareness pool asks about no snake in particular");
        Assert.Contains($"{left} questions are not asked here", (await lead.GetAsync(Page(cast.Site))).Html, StringComparison.Ordinal);

        // Practice goes once through all that fits; its own count says how many there are.
        var asked = await FirstOfPracticeAsync(worker);
        Assert.Contains($"of {course.Questions.Count - left}", asked, StringComparison.Ordinal);
        var sitting = Guid.CreateVersion7();
        await worker.PostAsync("/en/my/courses/awareness/sittings", new() { ["sittingId"] = sitting.ToString() }, page: "/en/my/courses/awareness/quiz");
        await shared.Site.RecordAsync(async records =>
        {
            var drawn = (await records.FindStartedSittingAsync(cast.Worker, sitting, CancellationToken.None))!.Draw.Questions; // not null: just started
            Assert.All(drawn, one => Assert.True(place.Has(course.Questions.Single(question => question.Id == one.QuestionId).Snakes)));
        });
    }

    [Fact]
    public async Task The_module_shows_the_list_and_the_passages_of_the_readers_site()
    {
        var (cast, _) = await InStateAsync("US");
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        const string module = "/en/courses/awareness/what-lives-here";
        const string bite = "/en/courses/awareness/bite";
        var course = shared.Site.Shelf.Find("awareness")!;
        var coral = course.Modules.Single(one => one.Id == "bite").Pages[Language.English].Parts.OfType<PagePart.Text>().First(part => part.Snakes.Count > 0);
        var words = System.Net.WebUtility.HtmlDecode(coral.Html)[..60];

        Assert.Contains("has not named the snakes of your site", (await worker.GetAsync(module)).Html, StringComparison.Ordinal);
        Assert.Contains(words, (await worker.GetAsync(bite)).Html, StringComparison.Ordinal);
        await NameAsync(lead, cast.Site, "western-diamondback");
        var after = await worker.GetAsync(module);
        Assert.Contains("href=\"/en/species/western-diamondback\"", after.Html, StringComparison.Ordinal);
        Assert.DoesNotContain(words, (await worker.GetAsync(bite)).Html, StringComparison.Ordinal);

        // A stranger reads everything, and nothing of any site.
        var (_, stranger) = await shared.Site.GetAsync(module);
        Assert.Contains("Signed in, you see the list of your own site here.", stranger, StringComparison.Ordinal);
        Assert.DoesNotContain("western-diamondback", stranger, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_list_taken_back_lets_everything_be_asked_again_and_the_earlier_one_stays_on_record()
    {
        var (cast, site) = await InStateAsync("US-AZ");
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        await NameAsync(lead, site, "western-diamondback", "no-such-snake");
        shared.Site.Clock.Now += TimeSpan.FromSeconds(1);
        await NameAsync(lead, site);

        Assert.Contains("no snake is named, so everything is taught and asked", (await lead.GetAsync(Page(site))).Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.Equal(
            ["western-diamondback", ""],
            (await records.SiteSpecies.Where(row => row.SiteId == site).OrderBy(row => row.KeptAt).ToListAsync()).Select(row => string.Join(' ', row.SpeciesIds))));
    }

    [Fact]
    public async Task The_same_form_twice_is_one_list_and_a_site_that_there_is_not_is_not_found()
    {
        var (cast, site) = await InStateAsync("US-AZ");
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        Dictionary<string, string> form = new() { ["Id"] = Guid.CreateVersion7().ToString(), ["SpeciesIds"] = "sidewinder" };
        await lead.PostAsync(Page(site), form, page: Page(site));
        await lead.PostAsync(Page(site), form, page: Page(site));

        await shared.Site.RecordAsync(async records => Assert.Equal(1, await records.SiteSpecies.CountAsync(row => row.SiteId == site)));
        var nowhere = Page(Guid.CreateVersion7());
        Assert.Equal((404, 404), ((await lead.GetAsync(nowhere)).Status, (await lead.PostAsync(nowhere, form, page: Page(site))).Status));
    }
}
