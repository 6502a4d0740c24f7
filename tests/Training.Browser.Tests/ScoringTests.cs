using System.Globalization;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Training.Web.Tests.House;

namespace Training.Browser.Tests;

/// <summary>Scoring as an instructor does it: in gloves, in the sun, with one hand and nothing but taps.</summary>
public sealed class ScoringTests(Chromium chromium)
{
    public static TheoryData<int, int, ColorScheme> Screens => new()
    {
        { 360, 740, ColorScheme.Dark },
        { 390, 844, ColorScheme.Light },
        { 744, 1133, ColorScheme.Dark },
        { 820, 1180, ColorScheme.Light },
    };

    [Theory, MemberData(nameof(Screens))]
    public async Task Targets_are_large_apart_and_low_and_everything_is_black_on_white(int width, int height, ColorScheme colours)
    {
        var (page, sheet) = await StartAsync(width, height, colours);
        foreach (var language in new[] { "en", "es" })
        {
            await page.GotoAsync($"/{language}{sheet}/steps/1");
            if (language == "en") await page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
            else await page.GotoAsync($"/es{sheet}/steps/2");
            var targets = await page.EvaluateAsync<Target[]>(Targets);
            var at = $"{language} {width}";

            Assert.Equal((at, 6), (at, targets.Length));
            Assert.All(targets, target => Assert.True(target is { Width: >= 96, Height: >= 96 }, $"{at}: {target}"));
            var stop = Assert.Single(targets, target => target.Text.StartsWith(language == "en" ? "STOP" : "ALTO", StringComparison.Ordinal));
            Assert.True(stop.Height >= 120 && stop.Width > width * 0.5 && stop.Colour == "rgb(168, 18, 12)", $"{at}: {stop}");
            // STOP stands alone in its row, below all others; between any two targets lie at least 8 px.
            Assert.All(targets.Where(target => target != stop), target => Assert.True(target.Bottom + 20 <= stop.Top, $"{at}: {target} {stop}"));
            foreach (var (one, other) in targets.SelectMany(one => targets.Where(other => other.Top > one.Top || (other.Top == one.Top && other.Left > one.Left)).Select(other => (one, other))))
                Assert.True(other.Top - one.Bottom >= 8 || other.Left - one.Right >= 8, $"{at}: {one} {other}");
            // Where the page fits, the marks lie in the lower half of the screen.
            if (await page.EvaluateAsync<bool>("document.documentElement.scrollHeight <= innerHeight + 1"))
                Assert.All(targets, target => Assert.True((target.Top + target.Bottom) / 2 > height * 0.45, $"{at}: {target}"));

            Assert.Empty(await page.EvaluateAsync<string[]>(SmallOrThin));
            Assert.Equal(["rgb(255, 255, 255)", "rgb(0, 0, 0)"], await page.EvaluateAsync<string[]>("[getComputedStyle(document.body).backgroundColor, getComputedStyle(document.querySelector('h1')).color]"));
            Assert.Equal(width, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        }
    }

    [Fact]
    public async Task A_candidate_who_fails_critically_at_step_six_is_signed_off_with_nothing_but_taps()
    {
        var (page, sheet) = await StartAsync(390, 844, ColorScheme.Light);
        await page.GotoAsync($"/en{sheet}");
        await Press(page, "I read this aloud. On to the steps");
        for (var step = 1; step <= 5; step++) await Press(page, "Done");
        await Press(page, "Not done");

        Assert.Equal("STOP", await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).InnerTextAsync());
        await Press(page, "It was a slip: undo");
        Assert.Contains("step 6 of 20", await page.InnerTextAsync(".top"), StringComparison.Ordinal);
        await Press(page, "Not done");
        await Press(page, "Go to sign-off");
        Assert.Equal("Not passed: stopped at step 6.", await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).InnerTextAsync());
        await page.GetByLabel("Type your name to sign").FillAsync("Winifred Oakley");
        await Press(page, "Sign and send");

        Assert.EndsWith($"/en{sheet}", page.Url, StringComparison.Ordinal);
        Assert.Contains("Not passed: stopped at step 6.", await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).InnerTextAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("light", 1280)]
    [InlineData("dark", 320)]
    public async Task Axe_finds_nothing_on_the_pages_of_an_instructor(string theme, int width)
    {
        var colours = theme == "dark" ? ColorScheme.Dark : ColorScheme.Light;
        var (page, sheet) = await StartAsync(width, 800, colours);
        var start = new Uri(page.Url).AbsolutePath;
        var findings = new List<string>();
        foreach (var path in await PagesAsync(page, sheet, start))
        {
            await page.GotoAsync(path);
            await PictureAsync(page, $"{theme}-{width}-{findings.Count}-{path.Trim('/').Replace('/', '_')}");
            var result = await page.RunAxe(new AxeRunOptions
            {
                RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
            });
            findings.AddRange(result.Violations.Select(found => $"{path}: {found.Id}: {string.Join(" | ", found.Nodes.Select(node => node.Html))}"));
            if (await page.EvaluateAsync<int>("document.documentElement.scrollWidth") is var wide && wide > width) findings.Add($"{path}: {wide} px wide");
        }

        Assert.Empty(findings);
    }

    // Walks one sheet to its end and notes each kind of page on the way.
    private static async Task<IReadOnlyList<string>> PagesAsync(IPage page, string sheet, string start)
    {
        var day = start[..start.IndexOf("/candidates", StringComparison.Ordinal)];
        await page.GotoAsync($"/en{sheet}/steps/1");
        await page.GetByRole(AriaRole.Button, new() { Name = "After a prompt" }).ClickAsync();
        return ["/en/class-days", "/es/class-days", day, start, start.Replace("/en/", "/es/", StringComparison.Ordinal), $"/en{sheet}/steps/2", $"/es{sheet}/sign-off", "/en/sent-scoresheets"];
    }

    private static Task Press(IPage page, string name) =>
        page.Locator(".press").And(page.GetByText(name, new() { Exact = true })).ClickAsync();

    private static async Task PictureAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("TEST_PICTURES") is { Length: > 0 } folder)
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}.png"), FullPage = true });
    }

    /// <summary>Signs an instructor in, starts a sheet through its form, and gives the sheet's address below the language.</summary>
    private async Task<(IPage Page, string Sheet)> StartAsync(int width, int height, ColorScheme colours)
    {
        var room = await ClassRoom.OpenAsync(chromium.Site);
        var page = await chromium.OpenAsync(width, colours, height);
        await page.GotoAsync("/en/sign-in");
        await page.FillAsync("#Name", await Accounts.EnsureAsync(chromium.Site.Services, room.InstructorId));
        await page.FillAsync("#Password", Accounts.Password);
        await page.ClickAsync("main .do");
        await page.GotoAsync(room.StartPath);
        await page.CheckAsync("#IdentityConfirmed");
        await page.FillAsync("#Surroundings", "Dry gravel, low sun");
        await page.GetByLabel("H-2, hook", new() { Exact = true }).CheckAsync();
        await page.ClickAsync("main .do");
        var sheet = new Uri(page.Url).AbsolutePath["/en".Length..];
        Assert.StartsWith("/scoresheets/", sheet, StringComparison.Ordinal);
        await Press(page, "I read this aloud. On to the steps");
        await page.GotoAsync(room.StartPath);
        return (page, sheet);
    }

    private const string Targets = """
        () => [...document.querySelectorAll('a[href], button')].map(e => {
          const b = e.getBoundingClientRect();
          return { text: e.textContent.trim(), left: b.left, top: b.top + scrollY, right: b.right, bottom: b.bottom + scrollY, width: b.width, height: b.height, colour: getComputedStyle(e).backgroundColor };
        })
        """;

    // Every element with text of its own: its letters and their weight.
    private const string SmallOrThin = """
        () => [...document.querySelectorAll('main *')]
          .filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()))
          .map(e => ({ text: e.textContent.trim(), size: parseFloat(getComputedStyle(e).fontSize), weight: +getComputedStyle(e).fontWeight }))
          .filter(e => e.size < 20 || e.weight < 600).map(e => `${e.text} ${e.size} ${e.weight}`)
        """;

    private sealed class Target
    {
        public string Text { get; set; } = "";

        public string Colour { get; set; } = "";

        public double Left { get; set; }

        public double Top { get; set; }

        public double Right { get; set; }

        public double Bottom { get; set; }

        public double Width { get; set; }

        public double Height { get; set; }

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Text}: {Left:0},{Top:0} {Width:0} by {Height:0}, {Colour}");
    }
}
