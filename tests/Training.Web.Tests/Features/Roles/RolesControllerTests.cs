using Microsoft.EntityFrameworkCore;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Roles;

public sealed class RolesControllerTests(SharedSite shared)
{
    private static string Page(Guid personId) => $"/en/programme/people/{personId}/roles";

    private static Dictionary<string, string> Form(string role, string startsOn = "2026-11-25") =>
        new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Role"] = role, ["Languages"] = "es", ["StartsOn"] = startsOn };

    [Theory]
    [InlineData("Instructor", "/en/class-days")]
    [InlineData("ProgrammeLead", "/en/programme")]
    public async Task A_role_acts_from_its_first_day_on_and_ends_with_its_last(string role, string start)
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using var lead = await site.SignInAsync(cast.Lead);
        var person = await site.PersonAsync();
        using var browser = await site.SignInAsync(person);

        var answer = await lead.PostAsync(Page(person), Form(role), page: Page(person));

        Assert.Equal((303, Page(person)), (answer.Status, answer.Location));
        Assert.Equal(start, (await browser.GetAsync("/en/start")).Location);
        var id = await RoleAsync(site, person);
        Assert.Equal(303, (await lead.PostAsync($"{Page(person)}/{id}/end", [], page: Page(person))).Status);
        Assert.Contains("from 25 November 2026 through 25 November 2026", (await lead.GetAsync(Page(person))).Html, StringComparison.Ordinal);
        site.Clock.Now += TimeSpan.FromDays(1);
        using var later = await site.SignInAsync(person);
        Assert.Equal("/en/my", (await later.GetAsync("/en/start")).Location);
    }

    [Fact]
    public async Task Somebody_sees_the_people_of_an_employer_and_of_no_other()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        var (other, _) = await shared.Site.EmployerAsync();
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var person = await shared.Site.PersonAsync();

        Assert.Equal(303, (await lead.PostAsync(Page(person), Form(cast.Employer.ToString()), page: Page(person))).Status);

        using var browser = await shared.Site.SignInAsync(person);
        Assert.Equal((200, 404), ((await browser.GetAsync($"/en/employers/{cast.Employer}")).Status, (await browser.GetAsync($"/en/employers/{other}")).Status));
    }

    [Theory]
    [InlineData("Role", "", "Choose a role")]
    [InlineData("Role", "Owner", "Choose a role")]
    [InlineData("Languages", "", "Tick at least one language")]
    [InlineData("StartsOn", "tomorrow", "Choose the first day")]
    public async Task A_bad_entry_is_told_beside_its_field(string field, string value, string words)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var form = Form("Instructor");
        form[field] = value;

        var answer = await lead.PostAsync(Page(cast.Worker), form, page: Page(cast.Worker));

        Assert.Equal(422, answer.Status);
        Assert.Contains(words, answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_role_is_not_held_twice_at_once_and_the_same_form_is_one()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var form = Form("Instructor");

        var first = await lead.PostAsync(Page(cast.Worker), form, page: Page(cast.Worker));
        var again = await lead.PostAsync(Page(cast.Worker), form, page: Page(cast.Worker));
        var second = await lead.PostAsync(Page(cast.Worker), Form("Instructor", "2026-12-01"), page: Page(cast.Worker));

        Assert.Equal((303, 303, 422), (first.Status, again.Status, second.Status));
    }

    [Fact]
    public async Task Nobody_ends_a_role_of_their_own()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);

        Assert.Equal(404, (await lead.PostAsync($"{Page(cast.Lead)}/{await RoleAsync(shared.Site, cast.Lead)}/end", [], page: Page(cast.Lead))).Status);
        Assert.Equal(200, (await lead.GetAsync("/en/programme")).Status);
    }

    private static async Task<Guid> RoleAsync(RunningSite site, Guid personId)
    {
        var id = Guid.Empty;
        await site.RecordAsync(async records => id = await records.Appointments.Where(row => row.PersonId == personId).Select(row => row.Id).SingleAsync());
        return id;
    }
}
