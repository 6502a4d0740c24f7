using System.Text.RegularExpressions;
using Training.Courses;
using Training.Web.Places;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Species;

public sealed partial class SpeciesControllerTests(SharedSite shared)
{
    private readonly RunningSite site = shared.Site;

    public static TheoryData<string> Tags => ["en", "es"];

    [Fact]
    public async Task The_list_says_first_that_nobody_has_to_name_a_snake_and_then_how_far_away_to_stay()
    {
        var (_, html) = await site.GetAsync("/en/species");

        Assert.Matches("<h1[^>]*>You do not have to name a snake to stay away from it\\.</h1>\\s*<p class=\"lead\">If you are not sure what it is, treat it as venomous\\..*10 feet \\(3\\.0 metres\\) away\\.", html);
        Assert.True(html.IndexOf("10 feet", StringComparison.Ordinal) < html.IndexOf("/en/species/", StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Tags))]
    public async Task The_list_leads_to_every_sheet_and_names_every_set(string tag)
    {
        var (_, html) = await site.GetAsync($"/{tag}/species");

        foreach (var sheet in site.Shelf.Species.Species) Assert.Contains($"href=\"/{tag}/species/{sheet.Id}\">{sheet.Words[LanguageTags.Find(tag)!.Value].Name}</a>", html, StringComparison.Ordinal);
        foreach (var region in site.Shelf.Species.Regions) Assert.Contains($"<h2 id=\"{region.Id}\">{region.Names[LanguageTags.Find(tag)!.Value]}</h2>", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_state_shows_what_a_source_names_what_it_may_mean_and_what_it_places_elsewhere()
    {
        var (_, html) = await site.GetAsync("/en/species?state=US-GA");

        Assert.Equal(["florida-cottonmouth"], Under(html, "The source names Georgia"));
        Assert.Contains("timber-rattlesnake", Under(html, "The source gives an area in words and does not name Georgia"));
        Assert.Contains("texas-coral-snake", Under(html, "The source names other states, and not Georgia"));
        Assert.Contains("<option value=\"US-GA\" selected=\"selected\">Georgia</option>", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_asks_for_a_state_meets_every_venomous_snake_that_a_source_names_for_it()
    {
        foreach (var state in UsStates.All)
        {
            var (_, html) = await site.GetAsync($"/en/species?state={state}");
            var named = site.Shelf.Species.Species.Where(sheet => sheet.Where?.States.Contains(state) == true).Select(sheet => sheet.Id).Order().ToList();

            Assert.Equal(named, Under(html, $"The source names {Regions.NameOf(state, Language.English)}").Order());
        }
    }

    [Fact]
    public async Task A_state_in_no_set_is_never_called_free_of_snakes()
    {
        var (_, html) = await site.GetAsync("/en/species?state=US-AK");

        Assert.Contains("No source of a sheet speaks of Alaska, so we list none. That does not say that no venomous snake lives there.", html, StringComparison.Ordinal);
    }

    [Theory, InlineData("US-ZZ"), InlineData("nowhere"), InlineData("US"), InlineData("")]
    public async Task A_state_that_does_not_exist_is_taken_for_none(string state)
    {
        var (status, html) = await site.GetAsync($"/en/species?state={state}");

        Assert.Equal(200, status);
        Assert.Contains("id=\"desert-southwest\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_state_code_of_the_sheets_has_a_name_on_the_pages() =>
        Assert.All(UsStates.All, state => Assert.NotEqual(state, Regions.NameOf(state, Language.Spanish)));

    [Fact]
    public async Task A_sheet_that_does_not_exist_is_not_found() => Assert.Equal(404, (await site.GetAsync("/en/species/unicorn")).Status);

    /// <summary>Two thirds of 244 cm are 162.7; with 30 cm of margin 192.7; both are shown rounded up, and so are the inches (64.04 and 75.9).</summary>
    [Fact]
    public async Task Reach_and_minimum_working_length_are_reckoned_with_the_greatest_length_and_rounded_up()
    {
        var (_, html) = await site.GetAsync("/en/species/eastern-diamondback");

        Assert.Equal("163 cm (65 in)", Cell(html, "Strike reach"));
        Assert.Equal("193 cm (76 in)", Cell(html, "Minimum working length of a tool"));
        Assert.Contains("The largest share that a source gives (two-thirds), of the greatest length: 244 cm (96 in). Looked up in a source.", html, StringComparison.Ordinal);
    }

    /// <summary>A field guide is remembered to give 189 cm, a page was looked up that says more than 183: the longer one is reckoned with, and said to be a memory.</summary>
    [Fact]
    public async Task A_length_from_memory_says_so_wherever_it_is_used()
    {
        var (_, html) = await site.GetAsync("/en/species/timber-rattlesnake");

        Assert.Matches("more than 183 cm \\(72 in\\)<sup.*?</sup>\\s*<span class=\"soft\">Looked up in a source\\.", html);
        Assert.Matches("189 cm \\(74 in\\)<sup.*?</sup>\\s*<span class=\"soft\">From memory; not looked up yet\\.", html);
        Assert.Contains("The largest share that a source gives (two-thirds), of the greatest length: 189 cm (74 in). From memory; not looked up yet.", html, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Tags))]
    public async Task Every_value_says_its_standing_and_every_number_leads_to_a_source(string tag)
    {
        foreach (var sheet in site.Shelf.Species.Species)
        {
            var (_, html) = await site.GetAsync($"/{tag}/species/{sheet.Id}");
            var memory = sheet.Typical.Concat(sheet.Greatest).Count(length => length.Fact.Standing == FactStanding.FromMemory)
                + sheet.Words[LanguageTags.Find(tag)!.Value].Texts.Values.Count(text => text.Facts.All(fact => fact.Standing == FactStanding.FromMemory))
                + (sheet.Longest?.Fact.Standing == FactStanding.FromMemory ? 1 : 0);

            var article = html[html.IndexOf("<article>", StringComparison.Ordinal)..html.IndexOf("</article>", StringComparison.Ordinal)];

            Assert.Equal(memory, article.Split(tag == "en" ? "From memory; not looked up yet." : "De memoria; todavía no consultado.").Length - 1);
            Assert.All(NoteNumber().Matches(html), note => Assert.Contains($"<li id=\"note-{note.Groups["number"].Value}\">", html, StringComparison.Ordinal));
            Assert.All(BackNumber().Matches(html), back => Assert.Equal(2, html.Split($" id=\"note-{back.Groups["number"].Value}-here\"").Length));
        }
    }

    [Fact]
    public async Task What_no_source_says_is_said_to_be_missing()
    {
        var (_, html) = await site.GetAsync("/en/species/watersnakes");

        Assert.Equal("No source was found.", Cell(html, "Adults, usual length"));
        Assert.Contains("No greatest length with a source was found, so no reach is worked out here.", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Minimum working length", html, StringComparison.Ordinal);
        Assert.Equal("10 feet (3.0 metres)", Cell(html, "Stand-off in force, for everybody who is not handling"));
    }

    [Theory]
    [InlineData("timber-rattlesnake", "Pressure bandage, pit viper", "not recommended")]
    [InlineData("texas-coral-snake", "Pressure bandage, coral snake", "to be considered")]
    [InlineData("texas-coral-snake", "Pressure bandage, snake not identified", "not recommended")]
    [InlineData("milksnakes", "Pressure bandage, snake not identified", "not recommended")]
    public async Task First_aid_is_the_guidance_in_force_for_the_group_and_beside_it_for_a_snake_that_nobody_named(string id, string row, string value)
    {
        var (_, html) = await site.GetAsync($"/en/species/{id}");

        Assert.Equal(value, Cell(html, row));
        Assert.Equal("911", Cell(html, "First: emergency services"));
        Assert.Contains("href=\"/en/courses/awareness/bite\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheets_lead_to_what_they_are_taken_for_from_both_sides()
    {
        Assert.Contains("href=\"/es/species/gopher-snakes\"", (await site.GetAsync("/es/species/western-diamondback")).Html, StringComparison.Ordinal);
        Assert.Contains("href=\"/es/species/western-diamondback\"", (await site.GetAsync("/es/species/gopher-snakes")).Html, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Tags))]
    public async Task Every_page_ends_with_the_caution_and_calls_nothing_safe(string tag)
    {
        string[] deferences = tag == "en" ? ["site", "law", "local codes", "poison control", "licensed medical"] : ["sitio", "ley", "códigos locales", "envenenamientos", "médico"];
        foreach (var path in PublicPages.Of(site).Where(path => path.StartsWith($"/{tag}/species", StringComparison.Ordinal)))
        {
            var (_, html) = await site.GetAsync(path);
            var main = html[html.IndexOf("<main", StringComparison.Ordinal)..html.IndexOf("</main>", StringComparison.Ordinal)];
            var caution = main[Math.Max(main.LastIndexOf("id=\"caution\"", StringComparison.Ordinal), main.LastIndexOf("class=\"caution\"", StringComparison.Ordinal))..];

            Assert.All(deferences, word => Assert.Contains(word, caution, StringComparison.Ordinal));
            Assert.DoesNotMatch("safe (distance|length)|distancia segura|largo seguro", main);
        }
    }

    [Fact]
    public async Task The_front_page_and_every_course_lead_here()
    {
        Assert.Contains("href=\"/es/species\"", (await site.GetAsync("/es")).Html, StringComparison.Ordinal);
        Assert.Contains("href=\"/en/species\"", (await site.GetAsync("/en/courses/awareness")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_broken_sheet_changes_nothing_for_readers_and_a_mended_one_is_served()
    {
        using var own = RunningSite.Start();
        var words = Path.Combine(own.CoursesFolder, "en/species.md");
        var text = await File.ReadAllTextAsync(words);
        var before = await own.GetAsync("/en/species/sidewinder");

        await File.WriteAllTextAsync(words, text.Replace("- `name` Sidewinder\n", "", StringComparison.Ordinal));
        await own.LookAsync();
        Assert.Equal(before, await own.GetAsync("/en/species/sidewinder"));

        await File.WriteAllTextAsync(words, text.Replace("- `name` Sidewinder\n", "- `name` Quite new\n", StringComparison.Ordinal));
        await own.LookAsync();
        Assert.Contains(">Quite new</h1>", (await own.GetAsync("/en/species/sidewinder")).Html, StringComparison.Ordinal);
    }

    private static List<string> Under(string html, string heading)
    {
        var at = html.IndexOf($"<h3>{heading}</h3>", StringComparison.Ordinal);
        if (at < 0) return [];
        return [.. SheetAddress().Matches(html[at..html.IndexOf("</ul>", at, StringComparison.Ordinal)]).Select(link => link.Groups["id"].Value)];
    }

    /// <summary>What stands first in the row: up to its source or its explanation.</summary>
    private static string Cell(string html, string row)
    {
        var at = html.IndexOf($"<th scope=\"row\">{row}</th>", StringComparison.Ordinal);
        Assert.True(at >= 0, row);
        var cell = html[(html.IndexOf("<td>", at, StringComparison.Ordinal) + 4)..html.IndexOf("</td>", at, StringComparison.Ordinal)];
        return Tag().Replace(cell.Split("<sup")[0], "").Trim();
    }

    [GeneratedRegex("href=\"#note-(?<number>\\d+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NoteNumber();

    [GeneratedRegex("href=\"#note-(?<number>\\d+)-here\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex BackNumber();

    [GeneratedRegex("/species/(?<id>[a-z-]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SheetAddress();

    [GeneratedRegex("<[^>]+>", RegexOptions.None, 1000)]
    private static partial Regex Tag();
}
