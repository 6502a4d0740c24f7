using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.CrewLists;

/// <summary>Whom no mail reaches is told by whoever posts the list of the crew.</summary>
public sealed class CrewListsControllerTests : IDisposable
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    private readonly RunningSite site = RunningSite.Start();

    public void Dispose() => site.Dispose();

    private async Task<(Guid Employer, Guid Site, PlainBrowser Browser)> EmployerAsync()
    {
        var (employer, place) = await site.EmployerAsync();
        return (employer, place, await site.SignInAsync(await site.RepresentativeAsync(employer)));
    }

    private async Task<Guid> HolderAsync(Guid employer, Guid place, string name, DateOnly expiresOn)
    {
        var person = await site.WorkerAsync(employer, place, name);
        await site.HoldAsync(person, "handler", expiresOn.AddMonths(-12), expiresOn);
        return person;
    }

    private static ReminderRecord Reminder(Guid person, DateOnly expiresOn, Guid? mailId = null, string milestone = "P7D") => new()
    {
        Id = Guid.CreateVersion7(), PersonId = person, SchemeId = "handler", PeriodNumber = 1, Milestone = milestone, DueOn = expiresOn.AddDays(-7),
        ExpiresOn = expiresOn, MadeAt = RunningSite.Now, MailId = mailId, SiteId = null,
    };

    [Fact]
    public async Task A_reminder_that_became_no_mail_stands_on_the_list_and_one_that_did_does_not()
    {
        var (employer, place, browser) = await EmployerAsync();
        using var _ = browser;
        var told = await HolderAsync(employer, place, "Solveig Amaro", Today.AddDays(6));
        var written = await HolderAsync(employer, place, "Anselm Pike", Today.AddDays(6));
        var mail = new OutgoingMail
        {
            Id = Guid.CreateVersion7(), PersonId = written, Address = "anselm@example.org", Language = Courses.Language.English, Subject = "s", Text = "t",
            MadeAt = RunningSite.Now, NextTryAt = RunningSite.Now,
        };
        await site.AddAsync(mail);
        await site.AddAsync(Reminder(told, Today.AddDays(6)), Reminder(told, Today.AddDays(6), milestone: "P30D"), Reminder(written, Today.AddDays(6), mail.Id));

        var html = (await browser.GetAsync($"/en/employers/{employer}/crew-lists")).Html;

        Assert.Contains("One person is to be told.", html, StringComparison.Ordinal);
        Assert.Equal(2, html.Split("Solveig Amaro").Length);
        Assert.DoesNotContain("Anselm Pike", html, StringComparison.Ordinal);
        Assert.Contains("1 December 2026", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_renewed_or_lapsed_long_ago_or_is_anothers_is_not_on_it()
    {
        var (employer, place, browser) = await EmployerAsync();
        using var _ = browser;
        var (elsewhere, there) = await site.EmployerAsync();
        var stranger = await HolderAsync(elsewhere, there, "Osgood Laramore", Today.AddDays(6));
        var renewed = await HolderAsync(employer, place, "Solveig Amaro", Today.AddDays(300));
        var gone = await HolderAsync(employer, place, "Anselm Pike", Today.AddDays(-31));
        await site.AddAsync(Reminder(stranger, Today.AddDays(6)), Reminder(renewed, Today.AddDays(-5)), Reminder(gone, Today.AddDays(-31)));

        Assert.Contains("Nobody is to be told.", (await browser.GetAsync($"/en/employers/{employer}/crew-lists")).Html, StringComparison.Ordinal);
        Assert.Equal(404, (await browser.GetAsync($"/en/employers/{elsewhere}/crew-lists")).Status);
    }
}
