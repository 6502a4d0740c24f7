using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Home;

public sealed class HomeControllerTests(SharedSite shared)
{
    [Theory]
    [InlineData("", "/en")]
    [InlineData("es", "/es")]
    [InlineData("es-MX,es;q=0.9,en;q=0.8", "/es")]
    [InlineData("fr,es;q=0.4,en;q=0.7", "/en")]
    [InlineData("fr-FR,de", "/en")]
    [InlineData("en;q=0,es;q=0.1", "/es")]
    [InlineData(";;;q=x", "/en")]
    public async Task The_address_alone_leads_to_the_language_that_the_browser_asks_for(string asked, string page)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        if (asked.Length > 0) request.Headers.TryAddWithoutValidation("Accept-Language", asked);
        using var answer = await shared.Site.Client.SendAsync(request);

        Assert.Equal((302, page), ((int)answer.StatusCode, answer.Headers.Location!.OriginalString));
        Assert.Equal("Accept-Language", answer.Headers.Vary.ToString());
    }

    [Fact]
    public async Task The_front_page_names_the_provider_and_every_course_and_checks_a_serial()
    {
        var (_, html) = await shared.Site.GetAsync("/en");

        Assert.Contains("Quillback Field Safety trains and certifies people who work where venomous snakes live.", html, StringComparison.Ordinal);
        foreach (var course in shared.Site.Shelf.Courses)
        {
            Assert.Contains($"href=\"/en/courses/{course.Id}\"", html, StringComparison.Ordinal);
            Assert.Contains($"<span class=\"figure\">{course.Modules.Sum(module => module.Minutes)}<small>", html, StringComparison.Ordinal);
        }

        Assert.Contains("action=\"/en/verify\"", html, StringComparison.Ordinal);
    }
}
