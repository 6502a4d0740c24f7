using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Employers;

public sealed class EmployersControllerTests(SharedSite shared)
{
    private const string Employers = "/en/programme/employers";

    private static Dictionary<string, string> Site(string name, string zone = "America/Phoenix", string region = "US") =>
        new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Name"] = name, ["Zone"] = zone, ["Region"] = region };

    [Fact]
    public async Task An_employer_is_added_once_and_its_name_is_its_own()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        Dictionary<string, string> form = new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Name"] = $"Dry Fork Solar {cast.Lead}" };

        var first = await browser.PostAsync(Employers, form);
        var again = await browser.PostAsync(Employers, form);
        form["Id"] = Guid.CreateVersion7().ToString();
        form["Name"] = form["Name"].ToUpperInvariant();
        var other = await browser.PostAsync(Employers, form);

        Assert.Equal((303, 303, 422), (first.Status, again.Status, other.Status));
        Assert.Contains("is taken already", other.Html, StringComparison.Ordinal);
        Assert.Equal(200, (await browser.GetAsync(first.Location!)).Status);
    }

    [Theory]
    [InlineData("America/Phoenix")]
    [InlineData("america/new york")]
    public async Task A_site_lies_in_a_zone_that_there_is(string zone)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync($"{Employers}/{cast.Employer}/sites", Site("Bench 12", zone, region: "us"));

        Assert.Equal(303, answer.Status);
        Assert.Contains("Bench 12", (await browser.GetAsync(answer.Location!)).Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Zone", "Mars/Olympus", "There is no such time zone.")]
    [InlineData("Zone", "Mountain Standard Time", "There is no such time zone.")]
    [InlineData("Zone", "", "There is no such time zone.")]
    [InlineData("Region", "Texas", "Choose a state from the list.")]
    [InlineData("Name", "", "Write the name.")]
    [InlineData("Name", "Ridge 4", "is taken already")]
    public async Task A_bad_entry_is_told_and_what_was_typed_stays(string field, string value, string words)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var form = Site("Bench <12>");
        form[field] = value;

        var answer = await browser.PostAsync($"{Employers}/{cast.Employer}/sites", form);

        Assert.Equal(422, answer.Status);
        Assert.Contains($"id=\"{field}-mend\"", answer.Html, StringComparison.Ordinal);
        Assert.Contains(words, answer.Html, StringComparison.Ordinal);
        if (field != "Name") Assert.Contains("Bench <12>", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_does_not_exist_is_not_found_and_a_form_without_its_token_is_refused()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        Assert.Equal(404, (await browser.GetAsync($"{Employers}/{Guid.CreateVersion7()}")).Status);
        Assert.Equal(404, (await browser.PostAsync($"{Employers}/{Guid.CreateVersion7()}/sites", Site("Bench 12"))).Status);
        Assert.Equal(400, (await browser.PostExactlyAsync(Employers, new KeyValuePair<string, string>("Name", "x"))).Status);
    }
}
