using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.FirstLead;

public sealed partial class FirstLeadControllerTests
{
    private const string Page = "/en/first-lead";

    private static Dictionary<string, string> Form(string code) => new()
    {
        ["Code"] = code, ["FullName"] = "Ximena Albarrán", ["Name"] = "ximena", ["NewPassword"] = Accounts.Password, ["Again"] = Accounts.Password,
    };

    private static async Task<string> CodeAsync(RunningSite site, DateTimeOffset? madeAt = null)
    {
        var (code, at) = (OneTimeCode.Draw(), madeAt ?? site.Clock.Now);
        await site.RecordAsync(records => records.KeepAsync(
            new FirstLeadCode { Id = Guid.CreateVersion7(), CodeHash = OneTimeCode.HashOf(code), MadeAt = at, EndsAt = at + OneTimeCode.Lasts }, CancellationToken.None));
        return code;
    }

    [Fact]
    public async Task The_code_of_the_console_makes_the_first_lead_and_logs_say_nothing_of_them()
    {
        var folder = Directory.CreateTempSubdirectory("training-first-lead-").FullName;
        using (var server = new ServerProcess(folder, "--Logging:LogLevel:Default=Information", "--Logging:Console:FormatterName=json"))
        {
            await server.StartAsync();
            var invitations = server.Lines.Where(line => line.Contains("/first-lead", StringComparison.Ordinal)).ToList();
            Assert.Equal(LanguageTags.All.Count, invitations.Count);
            using var browser = server.OpenBrowser();

            var answer = await browser.PostAsync(Page, Form(Code().Match(invitations[0]).Value), page: Page);

            Assert.Equal((303, "/en/programme/first-day"), (answer.Status, answer.Location));
            Assert.Contains("7 steps to the first certificate", (await browser.GetAsync(answer.Location!)).Html, StringComparison.Ordinal); // not null: 303
            Assert.Equal(404, (await browser.GetAsync(Page)).Status);
            foreach (var line in server.Lines.Except(invitations).Where(line => line.Length > 0))
            {
                // One JSON object a line, and nothing of anybody's in it.
                Assert.Equal(JsonValueKind.Object, JsonDocument.Parse(line).RootElement.ValueKind);
                Assert.DoesNotContain("imena", line, StringComparison.Ordinal);
            }
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_new_site_leads_there_from_its_front_page_and_from_its_sign_in()
    {
        using var site = RunningSite.StartEmpty();

        Assert.Contains("href=\"/en/first-lead\"", (await site.GetAsync("/en")).Html, StringComparison.Ordinal);
        using var answer = await site.Client.GetAsync("/es/sign-in");
        Assert.Equal("/es/first-lead", answer.Headers.Location?.OriginalString);
    }

    [Fact]
    public async Task Where_somebody_can_sign_in_nobody_becomes_the_first_lead_any_more()
    {
        using var site = RunningSite.Start();
        using var somebody = await site.SignInAsync(await site.PersonAsync());
        var code = await CodeAsync(site);

        Assert.Equal(404, (await site.GetAsync(Page)).Status);
        Assert.Equal(404, (await somebody.PostAsync(Page, Form(code))).Status);
        Assert.DoesNotContain("first-lead", (await site.GetAsync("/en")).Html, StringComparison.Ordinal);
        await site.RecordAsync(async records => Assert.False(await records.Appointments.AnyAsync()));
    }

    [Theory]
    [InlineData("Code", "2345-6789-BCDF-GHJK", "This code does not work")]
    [InlineData("Code", "", "This code does not work")]
    [InlineData("FullName", " ", "Write your name")]
    [InlineData("Name", "", "Choose a sign-in name")]
    [InlineData("Again", "another one altogether", "The two are not the same")]
    [InlineData("NewPassword", "short", "15 characters or more")]
    public async Task What_cannot_be_kept_is_told_beside_its_field_and_nothing_is_written(string field, string value, string words)
    {
        using var site = RunningSite.StartEmpty();
        using var browser = site.OpenBrowser();
        var form = Form(await CodeAsync(site));
        form[field] = value;

        var answer = await browser.PostAsync(Page, form, page: Page);

        Assert.Equal(422, answer.Status);
        Assert.Contains($"id=\"{field}-mend\"", answer.Html, StringComparison.Ordinal);
        Assert.Contains(words, answer.Html, StringComparison.Ordinal);
        await site.RecordAsync(async records => Assert.Equal((0, 0), (await records.Accounts.CountAsync(), await records.Persons.CountAsync())));
        if (field != "Code") Assert.Equal(303, (await browser.PostAsync(Page, Form(form["Code"]), page: Page)).Status);
    }

    [Fact]
    public async Task A_code_works_for_seven_days_until_a_newer_one_is_made_and_once_for_two_at_the_same_moment()
    {
        using var site = RunningSite.StartEmpty();
        var late = await CodeAsync(site, site.Clock.Now - OneTimeCode.Lasts);
        using var first = site.OpenBrowser();
        using var second = site.OpenBrowser();
        Assert.Equal(422, (await first.PostAsync(Page, Form(late), page: Page)).Status);
        var replaced = await CodeAsync(site);
        var code = await CodeAsync(site);
        Assert.Equal(422, (await first.PostAsync(Page, Form(replaced), page: Page)).Status);

        var other = Form(code);
        other["Name"] = "another";
        var answers = await Task.WhenAll(first.PostAsync(Page, Form(code), page: Page), second.PostAsync(Page, other, page: Page));

        Assert.Single(answers, answer => answer.Status == 303);
        await site.RecordAsync(async records => Assert.Equal(1, await records.Accounts.CountAsync()));
    }

    [Fact]
    public async Task A_guesser_must_wait()
    {
        using var site = RunningSite.StartEmpty();
        using var browser = site.OpenBrowser();
        for (var tries = 0; tries < SignInThrottle.FromStrangers; tries++)
            Assert.Equal(422, (await browser.PostAsync(Page, Form("wrong"), page: Page)).Status);

        var answer = await browser.PostAsync(Page, Form(await CodeAsync(site)), page: Page);

        Assert.Equal(429, answer.Status);
        Assert.Contains("Wait 15 minutes", answer.Html, StringComparison.Ordinal);
    }

    [GeneratedRegex("[2-9A-Z]{4}(-[2-9A-Z]{4}){3}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Code();
}
