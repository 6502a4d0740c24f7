using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.SignIn;

public sealed class SignInControllerTests(SharedSite shared)
{
    private readonly RunningSite site = shared.Site;

    [Fact]
    public async Task Somebody_signs_in_and_out_and_the_cookie_is_worth_nothing_afterwards()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync("Tomás Okafor Prado"));
        var inside = await browser.GetAsync("/en/my/password");
        var copied = browser.Cookies.ToDictionary();

        var left = await browser.PostAsync("/en/sign-out", new(), page: "/en/my/password");

        Assert.Equal(200, inside.Status);
        Assert.Contains("Tomás Okafor Prado", inside.Html, StringComparison.Ordinal);
        Assert.Contains("no-store", inside.Headers["Cache-Control"], StringComparison.Ordinal);
        Assert.Equal((303, "/en"), (left.Status, left.Location));
        foreach (var (name, value) in copied) browser.Cookie(name, value);
        Assert.Equal((303, "/en/sign-in?back=%2Fen%2Fmy%2Fpassword"), await WhereAsync(browser, "/en/my/password"));
    }

    [Fact]
    public async Task Cookies_cannot_be_read_by_scripts_or_sent_without_encryption_or_by_other_sites()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());

        Assert.All(browser.Cookies.Keys, name => Assert.StartsWith("__Host-", name, StringComparison.Ordinal));
        var answer = await browser.PostAsync("/en/sign-in", await FormAsync(await site.PersonAsync()), page: "/en/first-sign-in");
        Assert.All(answer.Headers["Set-Cookie"].Split(", __Host-"), cookie =>
        {
            foreach (var attribute in new[] { "httponly", "secure", "path=/" }) Assert.Contains(attribute, cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Matches("(?i)samesite=(lax|strict)", cookie);
        });
    }

    [Theory]
    [InlineData("/en/my/password", "/en/my/password")]
    [InlineData("//elsewhere.example/x", "/en/start")]
    [InlineData("https://elsewhere.example/x", "/en/start")]
    [InlineData("/\\elsewhere.example", "/en/start")]
    [InlineData(null, "/en/start")]
    public async Task It_leads_back_to_pages_of_this_site_only(string? back, string where)
    {
        using var browser = site.OpenBrowser();
        var fields = await FormAsync(await site.PersonAsync());
        if (back is not null) fields["Back"] = back;

        Assert.Equal((303, where), await WhereToAsync(browser, fields));
    }

    [Fact]
    public async Task An_unknown_name_and_a_wrong_password_get_the_same_answer()
    {
        using var browser = site.OpenBrowser();
        var known = await FormAsync(await site.PersonAsync());

        var wrong = await browser.PostAsync("/en/sign-in", new(known) { ["Password"] = "not the right one at all" });
        var unknown = await browser.PostAsync("/en/sign-in", new() { ["Name"] = known["Name"], ["Password"] = "x", ["Back"] = "" });

        Assert.Equal((422, 422), (wrong.Status, unknown.Status));
        Assert.Contains("This name and password do not go together.", wrong.Html, StringComparison.Ordinal);
        Assert.Contains($"value=\"{known["Name"]}\"", wrong.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("not the right one", wrong.Html, StringComparison.Ordinal);
        Assert.Contains("This name and password do not go together.", unknown.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_sent_after_the_sign_out_is_told_that_it_was_not_kept()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());
        await browser.PostAsync("/en/sign-out", new(), page: "/en/my/password");

        var stale = await browser.PostExactlyAsync("/en/my/password", new KeyValuePair<string, string>("Current", "x"));

        Assert.Equal((303, "/en/sign-in?back=%2Fen%2Fmy%2Fpassword&unkept=1"), (stale.Status, stale.Location));
        Assert.Contains("what you just sent was not kept", (await browser.GetAsync(stale.Location!)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_without_its_token_changes_nothing()
    {
        using var browser = await site.SignInAsync(await site.PersonAsync());

        var answer = await browser.PostExactlyAsync("/en/sign-out");

        Assert.Equal(400, answer.Status);
        Assert.Equal(200, (await browser.GetAsync("/en/my/password")).Status);
    }

    [Fact]
    public async Task A_session_ends_after_an_hour_unused_and_after_a_day_used()
    {
        using var own = RunningSite.Start();
        using var browser = await own.SignInAsync(await own.PersonAsync());

        for (var hours = 0.5; hours < 23.9; hours += 0.5)
        {
            own.Clock.Now = RunningSite.Now.AddHours(hours);
            Assert.Equal((hours, 200), (hours, (await browser.GetAsync("/en/my/password")).Status));
        }

        own.Clock.Now = RunningSite.Now.AddHours(24);
        Assert.Equal(303, (await browser.GetAsync("/en/my/password")).Status);

        using var idle = await own.SignInAsync(await own.PersonAsync());
        own.Clock.Now += Sessions.Idle;
        Assert.Equal(303, (await idle.GetAsync("/en/my/password")).Status);
    }

    [Fact]
    public async Task A_guesser_must_wait_and_the_crew_member_at_their_own_phone_need_not()
    {
        using var own = RunningSite.Start();
        var personId = await own.PersonAsync();
        using var phone = await own.SignInAsync(personId);
        var fields = await FormAsync(personId, own);
        using var guesser = own.OpenBrowser();

        for (var guess = 0; guess < SignInThrottle.FromStrangers; guess++)
            Assert.Equal(422, (await guesser.PostAsync("/en/sign-in", new(fields) { ["Password"] = $"guess number {guess} of many" })).Status);
        var stopped = await guesser.PostAsync("/en/sign-in", fields);

        Assert.Equal(429, stopped.Status);
        Assert.Equal("900", stopped.Headers["Retry-After"]);
        Assert.Contains("Wait 15 minutes", stopped.Html, StringComparison.Ordinal);
        await phone.PostAsync("/en/sign-out", new(), page: "/en/my/password");
        Assert.Equal(303, (await phone.PostAsync("/en/sign-in", fields)).Status);
        own.Clock.Now += SignInThrottle.Window;
        Assert.Equal(303, (await guesser.PostAsync("/en/sign-in", fields)).Status);
    }

    [Fact]
    public async Task A_hundred_failures_in_a_row_close_the_account_to_strangers_only()
    {
        using var own = RunningSite.Start();
        var personId = await own.PersonAsync();
        using var phone = await own.SignInAsync(personId);
        var fields = await FormAsync(personId, own);
        await own.RecordAsync(records => records.Accounts.ExecuteUpdateAsync(set => set.SetProperty(account => account.AccessFailedCount, 100)));
        using var stranger = own.OpenBrowser();

        Assert.Equal(422, (await stranger.PostAsync("/en/sign-in", fields)).Status);
        Assert.Equal(303, (await phone.PostAsync("/en/sign-in", fields, page: "/en/my/password")).Status);
        Assert.Equal(303, (await stranger.PostAsync("/en/sign-in", fields)).Status);
    }

    [Theory]
    [InlineData("fourteen signs", 422, "15 characters or more")]
    [InlineData("passwordpasswordpassword", 422, "Guessers try this one early")]
    [InlineData("aaaaaaaaaaaaaaaaaaaa", 422, "Guessers try this one early")]
    [InlineData("qwertyuiopasdfghjkl", 422, "Guessers try this one early")]
    [InlineData("QuillbackFieldSafety", 422, "Guessers try this one early")]
    [InlineData("rattlesnakerattlesnake", 422, "Guessers try this one early")]
    [InlineData("teléfono rojo sin mesa", 303, "")]
    [InlineData("gravel umbrella 🦎 kettle", 303, "")]
    [InlineData("only lower case letters here", 303, "")]
    public async Task A_first_password_is_long_and_not_a_known_one_and_nothing_else(string password, int status, string says)
    {
        var (name, code) = await CodeAsync(await site.PersonAsync());
        using var browser = site.OpenBrowser();

        var answer = await browser.PostAsync("/en/first-sign-in", new() { ["Name"] = name, ["Code"] = code.ToLowerInvariant(), ["NewPassword"] = password, ["Again"] = password });

        Assert.Equal(status, answer.Status);
        Assert.Contains(says, answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_code_works_once_and_ends_every_earlier_sign_in()
    {
        var personId = await site.PersonAsync();
        using var before = await site.SignInAsync(personId);
        var (name, code) = await CodeAsync(personId);
        var fields = new Dictionary<string, string> { ["Name"] = name, ["Code"] = code, ["NewPassword"] = "kettle gravel umbrella", ["Again"] = "kettle gravel umbrella" };
        using var browser = site.OpenBrowser();

        Assert.Equal(303, (await browser.PostAsync("/en/first-sign-in", fields)).Status);
        Assert.Equal(303, (await before.GetAsync("/en/my/password")).Status);
        using var again = site.OpenBrowser();
        var second = await again.PostAsync("/en/first-sign-in", fields);
        Assert.Equal(422, second.Status);
        Assert.Contains("This code does not work for this name", second.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_code_of_somebody_else_or_of_last_week_does_not_work()
    {
        using var own = RunningSite.Start();
        var (name, code) = await CodeAsync(await own.PersonAsync(), own);
        var (other, _) = await CodeAsync(await own.PersonAsync(), own);
        using var browser = own.OpenBrowser();
        Dictionary<string, string> Fields(string who) => new() { ["Name"] = who, ["Code"] = code, ["NewPassword"] = "kettle gravel umbrella", ["Again"] = "kettle gravel umbrella" };

        Assert.Equal(422, (await browser.PostAsync("/en/first-sign-in", Fields(other))).Status);
        own.Clock.Now += OneTimeCode.Lasts;
        Assert.Equal(422, (await browser.PostAsync("/en/first-sign-in", Fields(name))).Status);
    }

    [Fact]
    public async Task A_change_of_roles_acts_on_the_next_request()
    {
        var personId = await site.PersonAsync();
        using var browser = await site.SignInAsync(personId);
        var before = await WhereAsync(browser, "/en/start");

        var (employerId, _) = await site.EmployerAsync();
        await site.AddAsync(new Representative { Id = Guid.CreateVersion7(), PersonId = personId, EmployerId = employerId, StartsOn = new(2026, 11, 1) });

        Assert.Equal((302, "/en/my"), before);
        Assert.Equal((302, $"/en/employers/{employerId}"), await WhereAsync(browser, "/en/start"));
    }

    private static async Task<(int, string?)> WhereAsync(PlainBrowser browser, string path)
    {
        var answer = await browser.GetAsync(path);
        return (answer.Status, answer.Location);
    }

    private static async Task<(int, string?)> WhereToAsync(PlainBrowser browser, Dictionary<string, string> fields)
    {
        var answer = await browser.PostAsync("/en/sign-in", fields);
        return (answer.Status, answer.Location);
    }

    private async Task<Dictionary<string, string>> FormAsync(Guid personId, RunningSite? at = null) =>
        new() { ["Name"] = await Accounts.EnsureAsync((at ?? site).Services, personId), ["Password"] = Accounts.Password };

    private async Task<(string Name, string Code)> CodeAsync(Guid personId, RunningSite? at = null)
    {
        var (running, code) = (at ?? site, "");
        var name = await Accounts.EnsureAsync(running.Services, personId);
        await running.RecordAsync(async records =>
        {
            var account = await records.Accounts.SingleAsync(row => row.PersonId == personId);
            code = await records.MakeCodeAsync(account.Id, madeById: null, RunningSite.Now, CancellationToken.None);
        });
        return (name, code);
    }
}
