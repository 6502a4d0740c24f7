using Microsoft.Playwright;

namespace Training.Browser.Tests;

public sealed class WithoutScriptTests(Chromium chromium)
{
    [Fact]
    public async Task No_page_breaks_its_own_policy_or_asks_elsewhere()
    {
        var page = await chromium.OpenAsync(width: 1280);
        var said = new List<string>();
        page.Console += (_, message) => said.Add(message.Text);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(chromium.Site.Client.BaseAddress!.ToString(), StringComparison.Ordinal)) said.Add(request.Url);
        };
        foreach (var path in chromium.Pages) await page.GotoAsync(path);

        // A page that is not there on purpose logs its 404.
        Assert.DoesNotContain(said, message => !message.Contains("404", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_guard_types_a_serial_and_reads_the_verdict()
    {
        var page = await chromium.OpenAsync(width: 390);
        await page.GotoAsync("/en");
        var serial = chromium.Current["/en/verify/".Length..];

        await page.GetByLabel("Serial on the paper").FillAsync($" {serial[..4]}-{serial[4..8]} {serial[8..]}".ToLowerInvariant());
        await page.GetByRole(AriaRole.Button, new() { Name = "Check it" }).ClickAsync();

        Assert.Equal("Genuine, and current today.", await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).InnerTextAsync());
        await page.GetByRole(AriaRole.Link, new() { Name = "Español" }).ClickAsync();
        Assert.Equal("Auténtico y vigente hoy.", await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).InnerTextAsync());
    }

    [Fact]
    public async Task A_worker_reads_a_course_from_first_part_to_last()
    {
        var page = await chromium.OpenAsync(width: 390);
        await page.GotoAsync("/es");
        var course = chromium.Site.Shelf.Find("awareness")!;
        await page.GetByRole(AriaRole.Link, new() { Name = course.Scheme.Words[Courses.Language.Spanish].Title }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Empezar por la parte 1" }).ClickAsync();

        foreach (var module in course.Modules)
        {
            Assert.Equal(module.Pages[Courses.Language.Spanish].Title, await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).InnerTextAsync());
            await page.Locator(".turn .do").ClickAsync();
        }

        Assert.EndsWith("/es/courses/awareness#completion", page.Url, StringComparison.Ordinal);
    }
}
