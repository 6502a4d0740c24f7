using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Findings;

public sealed class FindingsControllerTests
{
    [Fact]
    public async Task A_broken_file_is_told_with_its_line_and_its_mend_and_the_last_good_text_serves()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using var browser = await site.SignInAsync(cast.Lead);
        var before = await browser.GetAsync("/en/programme/courses");
        var rules = Path.Combine(site.CoursesFolder, "handler", "course.yaml");
        await File.WriteAllTextAsync(rules, (await File.ReadAllTextAsync(rules)).Replace("topic: identification", "topic: no-such-topic", StringComparison.Ordinal));
        await site.LookAsync();

        var page = await browser.GetAsync("/en/programme/courses");
        var programme = await browser.GetAsync("/en/programme");

        Assert.Contains("courses read without findings", before.Html, StringComparison.Ordinal);
        Assert.Matches("handler/course\\.yaml:\\d+", page.Html);
        Assert.Contains("no-such-topic", page.Html, StringComparison.Ordinal);
        Assert.Contains($"Text {site.Shelf.Find("handler")!.Hash[..8]} serves since", page.Html, StringComparison.Ordinal);
        Assert.Contains("in the course files", programme.Html, StringComparison.Ordinal);
    }
}
