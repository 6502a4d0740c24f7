using System.Text.RegularExpressions;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Refusals;

public sealed class RefusalsTests(SharedSite shared)
{
    [Theory]
    [InlineData("/en/courses/nothing", "There is no page at this address.")]
    [InlineData("/es/courses/awareness/nothing", "No hay ninguna página en esta dirección.")]
    [InlineData("/de", "There is no page at this address.")]
    [InlineData("/en/courses/..%2f..%2fsecret", "There is no page at this address.")]
    [InlineData("/refusals/500", "There is no page at this address.")]
    public async Task What_is_not_there_is_said_in_the_language_of_the_address(string path, string sentence)
    {
        var (status, html) = await shared.Site.GetAsync(path);

        Assert.Equal(404, status);
        Assert.Contains(sentence, html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "Something failed on our side.")]
    [InlineData("es", "Algo falló de nuestro lado.")]
    public async Task A_failure_says_so_without_a_word_about_how_the_program_works(string tag, string sentence)
    {
        using var site = RunningSite.Start();
        await site.RecordAsync(records => Tables.DropAsync(records, "Papers"));

        var (status, html) = await site.GetAsync($"/{tag}/verify/{Papers.ASerial()}");

        Assert.Equal(500, status);
        Assert.Contains(sentence, html, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex("Exception|SQLite|   at |Training\\.", RegexOptions.None, TimeSpan.FromSeconds(1)), html);
    }
}
