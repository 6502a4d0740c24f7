using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Provider;
using Training.Web.Tests.House;
using Microsoft.Extensions.DependencyInjection;

namespace Training.Web.Tests.Features.Provider;

public sealed class ProviderControllerTests : IDisposable
{
    private const string Page = "/en/programme/provider";

    private readonly RunningSite site = RunningSite.Start();

    public void Dispose() => site.Dispose();

    private static Dictionary<string, string> Form(string name = "Cañada Honda Safety") => new()
    {
        ["Id"] = Guid.CreateVersion7().ToString(), ["Name"] = name, ["Address"] = "12 Spillway Road, Cañon Alto", ["Zone"] = "America/Phoenix", ["Region"] = "US-AZ",
    };

    private async Task<PlainBrowser> LeadAsync() => await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

    [Fact]
    public async Task What_is_kept_serves_at_once_on_every_page_and_the_settings_serve_before()
    {
        using var lead = await LeadAsync();
        Assert.Contains("Quillback Field Safety trains and certifies", (await site.GetAsync("/en")).Html, StringComparison.Ordinal);

        var answer = await lead.PostAsync(Page, Form(), page: Page);

        Assert.Equal((303, Page), (answer.Status, answer.Location));
        Assert.Contains("Cañada Honda Safety, 12 Spillway Road, Cañon Alto", (await site.GetAsync("/es")).Html, StringComparison.Ordinal);
        Assert.Equal(("America/Phoenix", "US-AZ"), (Ours.Zone, Ours.Region));
    }

    [Fact]
    public async Task The_newest_serves_the_older_stay_and_the_same_form_twice_is_one()
    {
        using var lead = await LeadAsync();
        var first = Form("First Name");
        await lead.PostAsync(Page, first, page: Page);
        await lead.PostAsync(Page, first, page: Page);
        site.Clock.Now += TimeSpan.FromMinutes(1);
        await lead.PostAsync(Page, Form("Second Name"), page: Page);

        Assert.Equal("Second Name", Ours.Name);
        await site.RecordAsync(async records => Assert.Equal(
            ["First Name", "Second Name"], await records.ProviderDetails.OrderBy(row => row.SinceAt).Select(row => row.Name).ToListAsync()));
        using var again = site.Restart();
        Assert.Equal("Second Name", again.Services.GetRequiredService<OurProvider>().Name);
    }

    [Theory]
    [InlineData("Name", "", "Write the name that certificates print.")]
    [InlineData("Address", " ", "Write the postal address")]
    [InlineData("Zone", "Mars/Olympus", "Choose a time zone")]
    [InlineData("Region", "Arizona", "Choose a state")]
    public async Task A_bad_entry_is_told_beside_its_field_and_nothing_changes(string field, string value, string words)
    {
        using var lead = await LeadAsync();
        var form = Form();
        form[field] = value;

        var answer = await lead.PostAsync(Page, form, page: Page);

        Assert.Equal(422, answer.Status);
        Assert.Contains($"id=\"{field}-mend\"", answer.Html, StringComparison.Ordinal);
        Assert.Contains(words, answer.Html, StringComparison.Ordinal);
        Assert.Equal("Quillback Field Safety", Ours.Name);
    }

    [Fact]
    public async Task The_public_address_is_confirmed_as_it_stood_on_the_page_and_no_other()
    {
        using var lead = await LeadAsync();
        await lead.PostAsync($"{Page}/address-confirmation", new() { ["address"] = "https://elsewhere.example.org/" }, page: Page);
        Assert.Contains("This address is right", (await lead.GetAsync(Page)).Html, StringComparison.Ordinal);

        for (var times = 0; times < 2; times++)
            Assert.Equal(303, (await lead.PostAsync($"{Page}/address-confirmation", new() { ["address"] = "https://training.example.org/" }, page: Page)).Status);

        Assert.Contains("A programme lead confirmed it.", (await lead.GetAsync(Page)).Html, StringComparison.Ordinal);
    }

    private OurProvider Ours => site.Services.GetRequiredService<OurProvider>();
}
