using Microsoft.Playwright;

namespace Training.Browser.Tests;

/// <summary>Takes a picture of every page for somebody to look at; into the folder that TEST_PICTURES names, else a temporary one.</summary>
public sealed class PictureTests(Chromium chromium)
{
    private static readonly string Folder =
        Environment.GetEnvironmentVariable("TEST_PICTURES") ?? Path.Combine(Path.GetTempPath(), "training-pictures");

    // Somebody who looks wants all four; a run that nobody looks at finds out with one whether pictures can be taken.
    private static readonly (int Width, ColorScheme Colours)[] Screens = Environment.GetEnvironmentVariable("TEST_PICTURES") is null
        ? [(390, ColorScheme.Light)]
        : [(390, ColorScheme.Light), (390, ColorScheme.Dark), (1280, ColorScheme.Light), (1280, ColorScheme.Dark)];

    [Fact]
    public async Task Every_page_can_be_looked_at()
    {
        await foreach (var (page, path) in chromium.VisitAsync(chromium.Visits, width: 390))
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
    public async Task Every_page_can_be_printed()
    {
        await foreach (var (page, path) in chromium.VisitAsync(chromium.In("/en"), width: 1280))
        {
            await page.PdfAsync(new() { Path = Named(path, "print.pdf"), Format = "Letter" });

            Assert.True(new FileInfo(Named(path, "print.pdf")).Length > 5_000);
        }
    }

    private static string Named(string path, string ending) => Path.Combine(Folder, $"{path.Trim('/').Replace('/', '-')}-{ending}");
}
