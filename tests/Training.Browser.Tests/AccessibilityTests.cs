using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Training.Browser.Tests;

public sealed class AccessibilityTests(Chromium chromium)
{
    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 390)]
    public async Task Axe_finds_nothing_on_any_page(ColorScheme colours, int width)
    {
        var findings = new List<string>();
        await foreach (var (page, path) in chromium.VisitAsync(colours == ColorScheme.Light ? chromium.Visits : chromium.Public, width, colours))
        {
            var result = await page.RunAxe(new AxeRunOptions
            {
                RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
            });
            findings.AddRange(result.Violations.Select(found => $"{path}: {found.Id}: {string.Join(" | ", found.Nodes.Select(node => node.Html))}"));
        }

        Assert.True(findings.Count == 0, string.Join('\n', findings));
    }

    [Fact]
    public async Task No_page_scrolls_sideways_on_the_narrowest_phone()
    {
        await foreach (var (page, path) in chromium.VisitAsync(chromium.Public, width: 320, height: 568))
        {
            Assert.Equal((path, 320), (path, await page.EvaluateAsync<int>("document.documentElement.scrollWidth")));
        }
    }

    [Fact]
    public async Task Wider_letters_and_lines_still_fit()
    {
        // The spacing of WCAG 2.2, 1.4.12, put in through the style sheet's own object: the policy forbids style elements.
        const string Space = """
            const sheet = new CSSStyleSheet();
            sheet.replaceSync('* { line-height: 1.5 !important; letter-spacing: .12em !important; word-spacing: .16em !important } p { margin-bottom: 2em !important }');
            document.adoptedStyleSheets = [sheet];
            """;
        await foreach (var (page, path) in chromium.VisitAsync(chromium.Public, width: 320, height: 568))
        {
            await page.EvaluateAsync(Space);

            Assert.Equal((path, 320), (path, await page.EvaluateAsync<int>("document.documentElement.scrollWidth")));
        }
    }

    [Fact]
    public async Task The_keyboard_reaches_every_control_in_reading_order_and_shows_where_it_is()
    {
        var page = await chromium.OpenAsync(width: 1280);
        foreach (var path in new[] { "/en", "/es/verify", "/en/courses/handler", "/en/courses/awareness/distances" })
        {
            await page.GotoAsync(path);
            var controls = await page.EvaluateAsync<int>("[...document.querySelectorAll('a[href], button, input')].length");
            for (var step = 0; step < controls; step++)
            {
                await page.Keyboard.PressAsync("Tab");
                var focus = await page.EvaluateAsync<Focus>("""
                    () => {
                      const all = [...document.querySelectorAll('a[href], button, input')], e = document.activeElement, box = e.getBoundingClientRect();
                      return { index: all.indexOf(e), outline: parseFloat(getComputedStyle(e).outlineWidth), where: `${e.outerHTML} ${box.top} ${box.bottom} ${innerHeight}`, isSeen: box.width > 0 && box.left >= 0 && box.top >= 0 && box.bottom < innerHeight + 1 };
                    }
                    """);

                Assert.Equal((path, step), (path, focus.Index));
                Assert.True(focus.Outline >= 2 && focus.IsSeen, $"{path}: control {step}: {focus.Where}");
            }
        }
    }

    [Fact]
    public async Task Every_control_is_large_enough_for_a_finger()
    {
        // 44 px on worker pages (WCAG 2.2, 2.5.5); links inside a sentence are exempt by its own words.
        const string Small = """
            () => [...document.querySelectorAll('header a:not(.skip), .hats a, button, .do, input:not([type=hidden], [type=radio], [type=checkbox]), select, label:has(input), .turn a, .ledger h3 a, .above a')]
              .filter(e => { const b = e.getBoundingClientRect(); return b.width > 0 && Math.round(b.height) < 40; })
              .map(e => `${e.textContent} ${e.getBoundingClientRect().height}`)
            """;
        await foreach (var (page, path) in chromium.VisitAsync(chromium.Public, width: 390))
        {
            Assert.Equal((path, ""), (path, string.Join("; ", await page.EvaluateAsync<string[]>(Small))));
        }
    }

    [Fact]
    public async Task Labels_of_drawings_can_be_read_on_a_phone()
    {
        const string Smallest = "Math.min(99, ...[...document.querySelectorAll('figure text')].map(e => e.getBoundingClientRect().height))";
        var page = await chromium.OpenAsync(width: 360);
        foreach (var path in chromium.Pages)
        {
            await page.GotoAsync(path);

            Assert.InRange(await page.EvaluateAsync<double>(Smallest), 14, 99);
        }
    }

    private sealed class Focus
    {
        public int Index { get; set; }

        public string Where { get; set; } = "";

        public double Outline { get; set; }

        public bool IsSeen { get; set; }
    }
}
