using Microsoft.Playwright;

namespace Training.Browser.Tests;

/// <summary>How a page fits into windows that are not its author's.</summary>
/// <param name="Path">Its address.</param>
/// <param name="TooWideAt">Widths of windows at which it is wider than they are, in CSS pixels.</param>
/// <param name="SpacedWidth">How wide it is in the narrowest window with the letter, word and line spacing of WCAG 2.2, 1.4.12.</param>
/// <param name="SmallControls">Controls that are too low for a finger on a phone, with their heights.</param>
internal sealed record PageMeasure(
    string Path, IReadOnlyList<(int Window, int Content)> TooWideAt, int SpacedWidth, IReadOnlyList<string> SmallControls)
{
    /// <summary>The narrowest phone (WCAG 2.2, 1.4.10).</summary>
    public const int Narrowest = 320;

    /// <summary>A usual phone.</summary>
    public const int Phone = 390;

    private const int Height = 568;

    // The narrowest phone, a usual one, and each side of the widths at which the stylesheet changes.
    private static readonly int[] Widths = [Narrowest, 388, Phone, 417, 481, 545, 641, 705, 833, 897];

    // 44 px on worker pages (WCAG 2.2, 2.5.5); links inside a sentence are exempt by its own words.
    private const string Small = """
        () => [...document.querySelectorAll('header a:not(.skip), .hats a, button, .do, input:not([type=hidden], [type=radio], [type=checkbox]), select, label:has(input), .turn a, .ledger h3 a, .above a')]
          .filter(e => { const b = e.getBoundingClientRect(); return b.width > 0 && Math.round(b.height) < 40; })
          .map(e => `${e.textContent} ${e.getBoundingClientRect().height}`)
        """;

    // Put in through the style sheet's own object: the policy forbids style elements.
    private const string Space = """
        const sheet = new CSSStyleSheet();
        sheet.replaceSync('* { line-height: 1.5 !important; letter-spacing: .12em !important; word-spacing: .16em !important } p { margin-bottom: 2em !important }');
        document.adoptedStyleSheets = [sheet];
        """;

    /// <summary>Measures a page that was opened <see cref="Phone"/> wide.</summary>
    public static async Task<PageMeasure> OfAsync(IPage page, string path)
    {
        var small = await page.EvaluateAsync<string[]>(Small);
        var wide = new List<(int, int)>();
        foreach (var width in Widths)
        {
            await page.SetViewportSizeAsync(width, Height);
            if (await WidthOfAsync(page) is var content && content > width) wide.Add((width, content));
        }

        await page.SetViewportSizeAsync(Narrowest, Height);
        await page.EvaluateAsync(Space);
        var spaced = await WidthOfAsync(page);
        await page.SetViewportSizeAsync(Phone, Height);
        return new(path, wide, spaced, small);
    }

    private static Task<int> WidthOfAsync(IPage page) => page.EvaluateAsync<int>("document.documentElement.scrollWidth");
}
