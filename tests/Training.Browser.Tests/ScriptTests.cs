using Microsoft.Playwright;
using Training.Web.Doors;

namespace Training.Browser.Tests;

/// <summary>Reading out, and following a file. <see cref="OfflineCheckTests"/> has the scripts of the check.</summary>
public sealed class ScriptTests(Chromium chromium)
{
    // Chromium on a server has no voice; this one writes down what it is given to say.
    private const string Voice = """
        window.said = [];
        class Utterance extends EventTarget { constructor(text) { super(); this.text = text; } }
        window.SpeechSynthesisUtterance = Utterance;
        Object.defineProperty(window, "speechSynthesis", { value: Object.assign(new EventTarget(), {
          getVoices: () => [{ lang: "LANGUAGE", name: "stub" }],
          speak: (one) => window.said.push([one.lang, one.text]),
          cancel: () => window.said.push(["", "stopped"]),
        }) });
        """;

    [Fact]
    public async Task A_module_is_read_out_in_its_language_with_its_drawings_and_without_numbers_of_sources()
    {
        var page = await chromium.OpenAsync(width: 390);
        await page.AddInitScriptAsync(Voice.Replace("LANGUAGE", "es-MX", StringComparison.Ordinal));
        await page.GotoAsync("/es/courses/awareness/meeting");

        await page.GetByRole(AriaRole.Button, new() { Name = "Léamelo en voz alta" }).ClickAsync();

        var said = await page.EvaluateAsync<string[][]>("window.said");
        Assert.All(said.Where(line => line[1] != "stopped"), line => Assert.Equal("es", line[0]));
        var description = await page.Locator("article svg desc").First.TextContentAsync();
        Assert.Contains(said, line => line[1].Contains(description!, StringComparison.Ordinal)); // not null: every figure has one
        Assert.DoesNotContain(said, line => System.Text.RegularExpressions.Regex.IsMatch(line[1], @"(?<!\d)[.!?]\d", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Equal(said.Length, said.Select(line => line[1]).Distinct().Count());
        await page.GetByRole(AriaRole.Button, new() { Name = "Parar la lectura" }).ClickAsync();
        Assert.Equal("stopped", (await page.EvaluateAsync<string[][]>("window.said"))[^1][1]);
    }

    [Fact]
    public async Task A_question_is_read_out_before_its_answers()
    {
        var page = await chromium.OpenAsync(width: 390, role: Role.Worker);
        await page.AddInitScriptAsync(Voice.Replace("LANGUAGE", "en-US", StringComparison.Ordinal));
        await page.GotoAsync("/en/my/courses/awareness/practice");

        await page.GetByRole(AriaRole.Button, new() { Name = "Read it out to me" }).ClickAsync();

        var said = (await page.EvaluateAsync<string[][]>("window.said")).Select(line => line[1]).Where(line => line != "stopped").ToList();
        Assert.Equal(System.Text.RegularExpressions.Regex.Replace(await page.Locator("#stem").InnerTextAsync(), @"\s+", " ", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)), said[0]);
        Assert.True(said.Count > 1, "the answers are not read");
    }

    [Fact]
    public async Task Without_a_voice_of_the_language_there_is_no_button()
    {
        var page = await chromium.OpenAsync(width: 390);
        await page.AddInitScriptAsync(Voice.Replace("LANGUAGE", "fr-FR", StringComparison.Ordinal));
        await page.GotoAsync("/en/courses/awareness/meeting");
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);

        Assert.Equal(0, await page.GetByRole(AriaRole.Button, new() { Name = "Read it out to me" }).CountAsync());
    }

    [Fact]
    public async Task A_preview_follows_the_file_while_it_is_open()
    {
        var page = await chromium.OpenAsync(width: 1280, role: Role.ProgrammeLead);
        var site = chromium.Demo.Site;
        var file = Path.Combine(site.CoursesFolder, "instructor", "en", "modules", "hats.md");
        var before = await File.ReadAllTextAsync(file);
        await page.GotoAsync("/en/programme/courses/instructor/modules/hats/preview");
        await page.EvaluateAsync("window.stays = true");

        try
        {
            await File.WriteAllTextAsync(file, before.Replace("\n## Caution", "\nA sentence that was just typed.\n\n## Caution", StringComparison.Ordinal));
            await site.LookAsync();

            await page.GetByText("A sentence that was just typed.").WaitForAsync();
            Assert.True(await page.EvaluateAsync<bool>("window.stays"), "the page was loaded anew");
        }
        finally
        {
            await File.WriteAllTextAsync(file, before);
            await site.LookAsync();
        }
    }
}
