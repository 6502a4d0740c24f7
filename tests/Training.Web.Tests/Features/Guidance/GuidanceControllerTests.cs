using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Guidance;

public sealed class GuidanceControllerTests(SharedSite shared)
{
    [Fact]
    public async Task Each_value_shows_its_source_its_day_and_every_place_that_names_it()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);

        var html = (await lead.GetAsync("/en/programme/guidance")).Html;

        Assert.Contains("Stand-off for everybody who is not handling", html, StringComparison.Ordinal);
        Assert.Contains("superseded by stand-off-us-2024", html, StringComparison.Ordinal);
        Assert.All(
            shared.Site.Shelf.LastReading.GuidanceUses.Where(use => use.EntryId == "stand-off-us-2024"),
            use => Assert.Contains($"{use.Place.File}:{use.Place.Line}", html, StringComparison.Ordinal));
    }
}
