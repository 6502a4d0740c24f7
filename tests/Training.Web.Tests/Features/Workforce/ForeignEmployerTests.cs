using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Workforce;

/// <summary>What is not theirs looks as if it did not exist.</summary>
public sealed class ForeignEmployerTests(SharedSite shared)
{
    private RunningSite Site => shared.Site;

    [Fact]
    public async Task Of_another_employer_nothing_is_found()
    {
        var (own, _) = await Site.EmployerAsync();
        var (other, site) = await Site.EmployerAsync();
        var worker = await Site.HandlerAsync(other, site, "Somebody Else", "2026-12-07");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(own));
        string[] paths =
        [
            $"employers/{other}", $"employers/{other}/matrix", $"employers/{other}/matrix.csv", $"employers/{other}/people/{worker}",
            $"employers/{own}/people/{worker}", $"employers/{own}/people/{Guid.CreateVersion7()}", $"employers/{Guid.CreateVersion7()}",
            $"employers/{own}?site={site}", $"employers/{own}/matrix?site={site}", $"employers/{own}/matrix.csv?site={site}",
            $"employers/{own}/matrix?scheme=nothing", $"employers/{own}/matrix?standing=nothing", $"employers/{own}/matrix?standing=0",
        ];

        foreach (var path in paths)
        {
            var answer = await browser.GetAsync($"/en/{path}");

            Assert.Equal((path, 404), (path, answer.Status));
            Assert.DoesNotContain("Somebody Else", answer.Html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_lead_finds_every_employer_and_a_worker_or_instructor_none()
    {
        var (employer, site) = await Site.EmployerAsync();
        var worker = await Site.HandlerAsync(employer, site, "Somebody Here", "2026-12-07");
        string[] paths = [$"/en/employers/{employer}", $"/en/employers/{employer}/matrix", $"/en/employers/{employer}/matrix.csv", $"/en/employers/{employer}/people/{worker}"];
        using var lead = await Site.SignInAsync(await Site.AppointedAsync(AppointedRole.ProgrammeLead));
        using var instructor = await Site.SignInAsync(await Site.AppointedAsync(AppointedRole.Instructor));
        using var themselves = await Site.SignInAsync(worker);
        using var nobody = Site.OpenBrowser();

        foreach (var path in paths)
        {
            Assert.Equal((path, 200), (path, (await lead.GetAsync(path)).Status));
            Assert.Equal((path, 404), (path, (await instructor.GetAsync(path)).Status));
            Assert.Equal((path, 404), (path, (await themselves.GetAsync(path)).Status));
            Assert.Equal((path, 303), (path, (await nobody.GetAsync(path)).Status));
        }
    }

    [Fact]
    public async Task Somebody_who_works_for_two_shows_each_only_what_is_its_own()
    {
        var (own, _) = await Site.EmployerAsync();
        var (other, otherSite) = await Site.EmployerAsync();
        var worker = await Site.WorkerAsync(other, otherSite, "Works Twice");
        await Site.AddAsync(new Employment { Id = Guid.CreateVersion7(), PersonId = worker, EmployerId = own, StartsOn = new(2026, 1, 1) });
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(own));

        var page = await browser.GetAsync($"/en/employers/{own}/people/{worker}");
        var matrix = await browser.GetAsync($"/en/employers/{own}/matrix");

        Assert.Contains("Badge none. Site: none. Crew: none.", page.Html.Replace("<bdi>", "", StringComparison.Ordinal).Replace("</bdi>", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("Works Twice", matrix.Html, StringComparison.Ordinal);
        Assert.DoesNotContain($"B-{worker:N}", matrix.Html + page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Rim Line East</bdi>", matrix.Html + page.Html, StringComparison.Ordinal);
    }
}
