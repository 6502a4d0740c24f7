using Microsoft.Playwright;
using Training.Web.Tests.House;

[assembly: AssemblyFixture(typeof(Training.Browser.Tests.Chromium))]

namespace Training.Browser.Tests;

/// <summary>Debian's Chromium, and a site to look at with a paper of every standing.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    internal RunningSite Site { get; } = RunningSite.Start(isDemo: true, [new("Training:Verify:ChecksPerMinute", "10000")]);

    /// <summary>Every kind of page once, in both languages; all modules.</summary>
    internal IReadOnlyList<string> Pages { get; private set; } = [];

    /// <summary>The check of a paper that is current.</summary>
    internal string Current { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("TEST_CHROMIUM") ?? "/usr/bin/chromium",
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
        Pages = [.. PublicPages.Of(Site), .. checks, $"/en/verify/{unknown}", $"/es/verify/{unknown}", "/en/nothing", "/es/nothing"];
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
        Site.Dispose();
    }

    /// <summary>A window of its own.</summary>
    internal async Task<IPage> OpenAsync(int width, ColorScheme colours = ColorScheme.Light, int height = 844)
    {
        var context = await browser!.NewContextAsync(new() // not null: InitializeAsync ran
        {
            BaseURL = Site.Client.BaseAddress!.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = colours,
        });
        return await context.NewPageAsync();
    }
}
