using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Distances;

/// <summary>
/// The calculator's page. What it works out is held to the check values by the tests of <c>StrikeDistances</c>; here the worked examples F-EX-05 and
/// F-EX-08 are read off the page, judged by two thirds as design asks.
/// </summary>
public sealed class DistancesControllerTests(SharedSite shared)
{
    private async Task<(int Status, string Text)> AskAsync(string query, string tag = "en")
    {
        var (status, html) = await shared.Site.GetAsync($"/{tag}/distances{query}");
        return (status, html);
    }

    [Theory]
    [InlineData("?Snake=150&Tool=122", "No tool at hand is long enough: stand off and call.", "130 cm (52 inches)")]
    [InlineData("?Snake=244&Tool=152.4", "No tool at hand is long enough: stand off and call.", "193 cm (76 inches)")]
    [InlineData("?Snake=59&Unit=in&Tool=48", "No tool at hand is long enough: stand off and call.", "130 cm (52 inches)")]
    [InlineData("?Snake=120&Tool=122", "122 cm (48 inches) is at least the minimum working length of 110 cm (44 inches).", "110 cm (44 inches)")]
    [InlineData("?Snake=120&Tool=122&Ground=braced", "No tool at hand is long enough: stand off and call.", "150 cm (60 inches)")]
    [InlineData("?Snake=100", "A tool needs a working length of at least 97 cm (39 inches).", "305 cm (120 inches)")]
    [InlineData("?Snake=100,5", "A tool needs a working length of at least 97 cm (39 inches).", "67 cm (27 inches)")]
    [InlineData("?Snake=290", "A tool needs a working length of at least 224 cm (88 inches).", "320 cm (126 inches)")]
    public async Task The_first_line_answers_and_needed_lengths_are_rounded_up(string query, string says, string figure)
    {
        var (status, html) = await AskAsync(query);

        Assert.Equal(200, status);
        Assert.Contains(says, html, StringComparison.Ordinal);
        Assert.Contains(figure, html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_kind_of_snake_stands_in_with_its_greatest_length_and_a_typed_length_binds_over_it()
    {
        var sheet = shared.Site.Shelf.Species.Find("western-diamondback")!;
        var longest = sheet.Longest!.LongestCm; // not null: the sheet has one
        var byLength = (await AskAsync($"?Snake={longest.ToString(System.Globalization.CultureInfo.InvariantCulture)}")).Text;
        var says = byLength[(byLength.IndexOf("<h1", StringComparison.Ordinal))..byLength.IndexOf("</h1>", StringComparison.Ordinal)];

        var byKind = (await AskAsync("?Snake=&Species=western-diamondback")).Text;
        Assert.Contains(says, byKind, StringComparison.Ordinal);
        Assert.Contains("the greatest length that a source gives for this kind", byKind, StringComparison.Ordinal);
        Assert.Contains("97 cm (39 inches)", (await AskAsync("?Snake=100&Species=western-diamondback")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_kind_that_there_is_not_asks_for_a_length()
    {
        var (status, html) = await AskAsync("?Snake=&Species=dragon");

        Assert.Equal(422, status);
        Assert.Contains("Write a high estimate of its length instead.", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_tool_a_hair_too_short_is_too_short()
    {
        Assert.Contains("stand off and call", (await AskAsync("?Snake=150&Tool=129.99")).Text, StringComparison.Ordinal);
        Assert.Contains("is at least the minimum working length", (await AskAsync("?Snake=150&Tool=130")).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?Snake=", "Snake", "Write the length of the snake as a number")]
    [InlineData("?Snake=long", "Snake", "Write the length of the snake as a number")]
    [InlineData("?Snake=0", "Snake", "must be above zero")]
    [InlineData("?Snake=-3", "Snake", "must be above zero")]
    [InlineData("?Snake=1500", "Snake", "longer than any")]
    [InlineData("?Snake=150&Unit=in", "Snake", "longer than any")]
    [InlineData("?Snake=150&Tool=x", "Tool", "Write the working length as a number")]
    [InlineData("?Snake=79228162514264337593543950336", "Snake", "Write the length of the snake as a number")]
    public async Task Wrong_or_absurd_input_is_told_plainly_and_stays(string query, string field, string words)
    {
        var (status, html) = await AskAsync(query);

        Assert.Equal(422, status);
        Assert.Contains($"id=\"{field}-mend\"", html, StringComparison.Ordinal);
        Assert.Contains(words, html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Smaller_shares_stand_beside_the_one_that_decides_each_with_its_source()
    {
        var (_, html) = await AskAsync("?Snake=150");

        foreach (var entry in shared.Site.Shelf.Guidance.Entries.Where(entry => entry.Subject is "strike-reach-largest" or "strike-reach-usual" or "strike-reach-lower-bound"))
            Assert.Contains(entry.Source, html, StringComparison.Ordinal);
        Assert.Contains("two-thirds, decides", html, StringComparison.Ordinal);
        Assert.DoesNotContain("safe distance", html, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Without_a_question_it_asks_one_in_either_language()
    {
        Assert.Contains("How long is the snake?", (await AskAsync("")).Text, StringComparison.Ordinal);
        Assert.Contains("¿Cuánto mide la serpiente?", (await AskAsync("", "es")).Text, StringComparison.Ordinal);
    }
}
