using Microsoft.Playwright;
using Training.Web.Doors;
using Training.Web.Tests.House;

[assembly: AssemblyFixture(typeof(Training.Browser.Tests.Chromium))]

namespace Training.Browser.Tests;

/// <summary>Debian's Chromium, and a site to look at with a paper of every standing.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Sheets = ["western-diamondback", "eastern-coral-snake", "gopher-snakes"];

    private IPlaywright? playwright;
    private IBrowser? browser;
    private Task<IReadOnlyList<PageMeasure>>? measures;

    internal RunningSite Site { get; } = RunningSite.Start(isDemo: true, [new("Training:Verify:ChecksPerMinute", "10000")]);

    /// <summary>The whole demo, served, for the pages behind doors.</summary>
    internal ServedDemo Demo { get; } = new();

    /// <summary>Every kind of public page once, in both languages; all modules.</summary>
    internal IReadOnlyList<string> Pages { get; private set; } = [];

    /// <summary>Every page there is: the public ones (no role), then those of each role, as the site's own table of addresses lists them.</summary>
    internal IReadOnlyList<(Role? Role, IReadOnlyList<string> Paths)> Visits { get; private set; } = [];

    /// <summary>The check of a paper that is current.</summary>
    internal string Current { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("TEST_CHROMIUM") ?? "/usr/bin/chromium-headless-shell",
            ChromiumSandbox = false,
            Args =
            [
                "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update",
                "--disable-sync",
            ],
        });

        DateOnly[] expiries = [new(2027, 6, 1), new(2026, 12, 7), new(2026, 11, 2)];
        var checks = new List<string>();
        foreach (var expiresOn in expiries)
        {
            var (serial, _, _) = await Site.IssueAsync("handler", new(2025, 11, 3), expiresOn);
            checks.AddRange([$"/en/verify/{serial.Value}", $"/es/verify/{serial.Value}"]);
        }

        Current = checks[0];
        var unknown = Papers.ASerial().Value;
        Pages = [.. PublicPages.Of(Site).Where(IsOneOfItsKind), .. checks, $"/en/verify/{unknown}", $"/es/verify/{unknown}", "/en/nothing", "/es/nothing"];
        await Demo.InitializeAsync();
        var behindDoors = (await Demo.PagesAsync()).Where(page => page.Role is not null).GroupBy(page => page.Role, page => page.Path);
        Visits = [(null, Pages), .. behindDoors.Select(role => (role.Key, (IReadOnlyList<string>)[.. role]))];
    }

    // Species sheets share one layout: a viper, a coral snake and a look-alike stand for all 34.
    private static bool IsOneOfItsKind(string path) =>
        !path.Contains("/species/", StringComparison.Ordinal) || Array.Exists(Sheets, sheet => path.EndsWith($"/{sheet}", StringComparison.Ordinal));

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
        Site.Dispose();
        await Demo.DisposeAsync();
    }

    /// <summary>The pages in one language, "/en" or "/es".</summary>
    internal IReadOnlyList<(Role? Role, IReadOnlyList<string> Paths)> In(string language) =>
        [.. Visits.Select(visit => (visit.Role, (IReadOnlyList<string>)[.. visit.Paths.Where(path => path.StartsWith(language, StringComparison.Ordinal))]))];

    /// <summary>How every page fits, measured at the first call; tests of one class run one after the other.</summary>
    internal Task<IReadOnlyList<PageMeasure>> MeasuresAsync() => measures ??= MeasureAsync();

    private async Task<IReadOnlyList<PageMeasure>> MeasureAsync()
    {
        var all = new List<PageMeasure>();
        await foreach (var (page, path) in VisitAsync(Visits, PageMeasure.Phone)) all.Add(await PageMeasure.OfAsync(page, path));
        return all;
    }

    /// <summary>Goes to each of these pages, signed in as who may see it.</summary>
    internal async IAsyncEnumerable<(IPage Page, string Path)> VisitAsync(
        IReadOnlyList<(Role? Role, IReadOnlyList<string> Paths)> visits, int width, ColorScheme colours = ColorScheme.Light, int height = 844)
    {
        foreach (var (role, paths) in visits)
        {
            var page = await OpenAsync(width, colours, height, role);
            foreach (var path in paths)
            {
                await page.GotoAsync(path);
                yield return (page, path);
            }

            await page.Context.CloseAsync();
        }
    }

    /// <summary>A window of its own, signed in where a role is given.</summary>
    internal async Task<IPage> OpenAsync(int width, ColorScheme colours = ColorScheme.Light, int height = 844, Role? role = null)
    {
        var page = await OpenAsync(role is null ? Site : Demo.Site, width, colours, height);
        if (role is { } signedIn) await SignInAsync(page, ServedDemo.Actors[signedIn]);
        return page;
    }

    /// <summary>A window on another site.</summary>
    internal async Task<IPage> OpenAsync(RunningSite site, int width, ColorScheme colours = ColorScheme.Light, int height = 844)
    {
        var context = await browser!.NewContextAsync(new() // not null: InitializeAsync ran
        {
            BaseURL = site.Client.BaseAddress!.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = colours,
        });
        return await context.NewPageAsync();
    }

    private static async Task SignInAsync(IPage page, string name)
    {
        await page.GotoAsync("/en/sign-in");
        await page.GetByLabel("Sign-in name").FillAsync(name);
        await page.GetByLabel("Password").FillAsync(ServedDemo.Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        // The strip of who is signed in: waiting for the address misses a page that came quickly.
        await page.Locator(".hats").WaitForAsync();
    }
}
