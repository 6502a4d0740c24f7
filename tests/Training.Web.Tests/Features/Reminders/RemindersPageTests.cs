using Microsoft.EntityFrameworkCore;
using Training.Web.Doors;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Reminders;

/// <summary>What a programme lead sees of reminders, and does about mail that does not arrive.</summary>
[Collection(ServedDemoTests.Name)]
public sealed class RemindersPageTests(ServedDemo demo)
{
    [Fact]
    public async Task The_page_says_what_goes_out_what_went_and_what_was_given_up()
    {
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);

        var page = (await lead.GetAsync("/en/programme/reminders")).Html;

        Assert.Contains("In the next 14 days", page, StringComparison.Ordinal);
        Assert.Contains("no address: told by the employer", page, StringComparison.Ordinal);
        Assert.Contains("Araceli Norcross", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mail_that_was_given_up_is_tried_again_on_request()
    {
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);
        var mailId = demo.Foreign.MailId;

        var answer = await lead.PostAsync($"/en/programme/reminders/mails/{mailId}/tries", [], "/en/my/password");

        Assert.Equal((303, "/en/programme/reminders"), (answer.Status, answer.Location));
        await demo.Site.RecordAsync(async records => Assert.Null((await records.OutgoingMails.SingleAsync(mail => mail.Id == mailId)).GivenUpAt));
    }

    [Theory]
    [InlineData("yolanda@example.org", 303)]
    [InlineData("", 303)]
    [InlineData("yolanda", 422)]
    [InlineData("Yolanda <yolanda@example.org>", 422)]
    [InlineData("a@example.org, b@example.org", 422)]
    public async Task One_mail_address_is_kept_and_anything_else_says_how_to_write_it(string typed, int status)
    {
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);
        var path = $"/en/programme/people/{demo.Own.EmployeeId}/mail-address";

        var answer = await lead.PostAsync(path, new() { ["address"] = typed }, path);

        Assert.Equal(status, answer.Status);
        if (status != 303) Assert.Contains("This is not one mail address.", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_address_whose_mail_came_back_is_not_written_to_until_it_is_kept_anew()
    {
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);
        var path = $"/en/programme/people/{demo.Foreign.EmployeeId}/mail-address";
        await lead.PostAsync(path, new() { ["address"] = "moved@example.org" }, path);

        await lead.PostAsync($"{path}/returns", [], path);

        Assert.Contains("Mail does not reach", (await lead.GetAsync(path)).Html, StringComparison.Ordinal);
        Assert.Contains("moved@example.org", (await lead.GetAsync("/en/programme/reminders")).Html, StringComparison.Ordinal);
        await lead.PostAsync(path, new() { ["address"] = "moved@example.org" }, path);
        Assert.Contains("Mail reaches", (await lead.GetAsync(path)).Html, StringComparison.Ordinal);
    }
}
