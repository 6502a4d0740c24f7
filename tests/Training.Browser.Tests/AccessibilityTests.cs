using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Training.Web.Doors;

namespace Training.Browser.Tests;

public sealed class AccessibilityTests(Chromium chromium)
{
    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 390)]
    public async Task Axe_finds_nothing_on_any_page(ColorScheme colours, int width)
    {
        var findings = new List<string>();
        // Colours do not depend on the language: the dark ones are looked at in one.
        var visits = colours == ColorScheme.Dark ? chromium.In("/en") : chromium.Visits;
        await foreach (var (page, path) in chromium.VisitAsync(visits, width, colours))
        {
            var result = await page.RunAxe(new AxeRunOptions
            {
                RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
            });
            findings.AddRange(result.Violations.Select(found => $"{path}: {found.Id}: {string.Join(" | ", found.Nodes.Select(node => node.Html))}"));
        }

        Assert.True(findings.Count == 0, string.Join('\n', findings));
    }

    // The narrowest phone (WCAG 2.2, 1.4.10), a usual one, and each side of the widths at which the stylesheet changes.
    private static readonly int[] Widths = [320, 388, 390, 417, 481, 545, 641, 705, 833, 897];

    [Fact]
    public async Task No_page_scrolls_sideways()
    {
        var findings = new List<string>();
        await foreach (var (page, path) in chromium.VisitAsync(chromium.Visits, width: Widths[0], height: 568))
        {
            foreach (var width in Widths)
            {
                await page.SetViewportSizeAsync(width, 568);
                if (await page.EvaluateAsync<int>("document.documentElement.scrollWidth") is var wide && wide > width) findings.Add($"{path} at {width}: {wide}");
            }
        }

        Assert.True(findings.Count == 0, string.Join('\n', findings));
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
        await foreach (var (page, path) in chromium.VisitAsync(chromium.Visits, width: 320, height: 568))
        {
            await page.EvaluateAsync(Space);

            Assert.Equal((path, 320), (path, await page.EvaluateAsync<int>("document.documentElement.scrollWidth")));
        }
    }

    [Theory]
    [InlineData(null, "/en", "/es/verify", "/en/courses/handler", "/en/courses/awareness/distances")]
    [InlineData(Role.Worker, "/es/my", "/en/my/password", "/en/my/courses/awareness")]
    [InlineData(Role.Instructor, "/en/class-days")]
    [InlineData(Role.Employer, "/es/employers/{0}", "/en/employers/{0}/matrix")]
    [InlineData(Role.ProgrammeLead, "/es/programme", "/en/programme/people")]
    public async Task The_keyboard_reaches_every_control_in_reading_order_and_shows_where_it_is(Role? role, params string[] paths)
    {
        var page = await chromium.OpenAsync(width: 1280, role: role);
        foreach (var path in paths.Select(path => path.Replace("{0}", chromium.Demo.Own.EmployerId.ToString(), StringComparison.Ordinal)))
        {
            await page.GotoAsync(path);
            var controls = await page.EvaluateAsync<int>($"{Controls}.length");
            Assert.True(controls > 2, path);
            for (var step = 0; step < controls; step++)
            {
                // Inside a date field the day, the month and the year are stops of their own.
                do await page.Keyboard.PressAsync("Tab");
                while (step > 0 && await page.EvaluateAsync<bool>($"document.activeElement.type === 'date' && {Controls}.indexOf(document.activeElement) === {step - 1}"));
                var focus = await page.EvaluateAsync<Focus>($$"""
                    () => {
                      const e = document.activeElement, box = e.getBoundingClientRect();
                      return { index: {{Controls}}.indexOf(e), outline: parseFloat(getComputedStyle(e).outlineWidth), where: `${e.outerHTML} ${box.top} ${box.bottom} ${innerHeight}`, isSeen: box.width > 0 && box.left >= 0 && box.top < innerHeight && box.bottom > 0 && (box.height > innerHeight / 2 || box.top >= 0 && box.bottom < innerHeight + 1) };
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
        await foreach (var (page, path) in chromium.VisitAsync(chromium.Visits, width: 390))
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

    // What takes the keyboard: of a group of radio buttons one, where none is chosen the first; a scrolling region too.
    private const string Controls = """
        [...document.querySelectorAll('a[href], button, summary, input:not([type=hidden]), select, textarea, [tabindex="0"]')]
          .filter(e => e.type !== 'radio' || e === ([...document.getElementsByName(e.name)].find(r => r.checked) ?? document.getElementsByName(e.name)[0]))
        """;

    private sealed class Focus
    {
        public int Index { get; set; }

        public string Where { get; set; } = "";

        public double Outline { get; set; }

        public bool IsSeen { get; set; }
    }
}
