using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Training.Web.Doors;

namespace Training.Browser.Tests;

public sealed class AccessibilityTests(Chromium chromium)
{
    [Fact]
    public Task Axe_finds_nothing_on_any_page() => FindsNothingAsync(chromium.Visits, 1280, ColorScheme.Light, new()
    {
        Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
    });

    // Names, roles and order are the same in the dark and on a phone; colours and sizes are not, and they do not depend on the language.
    [Fact]
    public Task Axe_finds_nothing_in_the_dark_on_a_phone() => FindsNothingAsync(chromium.In("/en"), 390, ColorScheme.Dark, new()
    {
        Type = "rule", Values = ["color-contrast", "link-in-text-block", "scrollable-region-focusable", "target-size"],
    });

    private async Task FindsNothingAsync(IReadOnlyList<(Role? Role, IReadOnlyList<string> Paths)> visits, int width, ColorScheme colours, RunOnlyOptions rules)
    {
        var findings = new List<string>();
        await foreach (var (page, path) in chromium.VisitAsync(visits, width, colours))
        {
            var result = await page.RunAxe(new AxeRunOptions { RunOnly = rules, ResultTypes = [ResultType.Violations] });
            findings.AddRange(result.Violations.Select(found => $"{path}: {found.Id}: {string.Join(" | ", found.Nodes.Select(node => node.Html))}"));
        }

        Assert.True(findings.Count == 0, string.Join('\n', findings));
    }

    [Fact]
    public async Task No_page_scrolls_sideways() =>
        Assert.Empty((await chromium.MeasuresAsync()).SelectMany(page => page.TooWideAt.Select(wide => $"{page.Path} at {wide.Window}: {wide.Content}")));

    [Fact]
    public async Task Wider_letters_and_lines_still_fit() =>
        Assert.Empty((await chromium.MeasuresAsync()).Where(page => page.SpacedWidth > PageMeasure.Narrowest).Select(page => $"{page.Path}: {page.SpacedWidth}"));

    [Fact]
    public async Task Every_control_is_large_enough_for_a_finger() =>
        Assert.Empty((await chromium.MeasuresAsync()).SelectMany(page => page.SmallControls.Select(control => $"{page.Path}: {control}")));

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
