using Microsoft.Playwright;
using Training.Web.Doors;

namespace Training.Browser.Tests;

/// <summary>Takes pictures of pages: of every page into the folder that TEST_PICTURES names, for somebody to look at; else of a few.</summary>
public sealed class PictureTests(Chromium chromium)
{
    private static readonly string? Asked = Environment.GetEnvironmentVariable("TEST_PICTURES");

    private static readonly string Folder = Asked ?? Path.Combine(Path.GetTempPath(), "training-pictures");

    // Somebody who looks wants every page on all four; a run that nobody looks at finds out with a few whether pictures can be taken.
    private static readonly (int Width, ColorScheme Colours)[] Screens = Asked is null
        ? [(390, ColorScheme.Light)]
        : [(390, ColorScheme.Light), (390, ColorScheme.Dark), (1280, ColorScheme.Light), (1280, ColorScheme.Dark)];

    private readonly int pagesARole = Asked is null ? 3 : int.MaxValue;

    [Fact]
    public async Task Pages_can_be_looked_at()
    {
        await foreach (var (page, path) in chromium.VisitAsync(FirstOf(chromium.Visits), width: 390))
        {
            foreach (var (width, colours) in Screens)
            {
                await page.SetViewportSizeAsync(width, 844);
                await page.EmulateMediaAsync(new() { ColorScheme = colours });
                await page.ScreenshotAsync(new() { Path = Named(path, $"{width}-{colours}.png"), FullPage = true });

                Assert.True(new FileInfo(Named(path, $"{width}-{colours}.png")).Length > 5_000);
            }
        }
    }

    [Fact]
    public async Task Pages_can_be_printed()
    {
        await foreach (var (page, path) in chromium.VisitAsync(FirstOf(chromium.In("/en")), width: 1280))
        {
            await page.PdfAsync(new() { Path = Named(path, "print.pdf"), Format = "Letter" });

            Assert.True(new FileInfo(Named(path, "print.pdf")).Length > 5_000);
        }
    }

    private IReadOnlyList<(Role? Role, IReadOnlyList<string> Paths)> FirstOf(IReadOnlyList<(Role? Role, IReadOnlyList<string> Paths)> visits) =>
        [.. visits.Select(visit => (visit.Role, (IReadOnlyList<string>)[.. visit.Paths.Take(pagesARole)]))];

    private static string Named(string path, string ending) => Path.Combine(Folder, $"{path.Trim('/').Replace('/', '-')}-{ending}");
}
