using System.Text.Json;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Health;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Health;

public sealed class HealthTests
{
    private static async Task<(int Status, string Parts)> HealthAsync(RunningSite site)
    {
        var (status, json) = await site.GetAsync("/healthz");
        var parts = JsonSerializer.Deserialize<Dictionary<string, string>>(json)!; // not null: an object was written
        return (status, string.Join(", ", parts.Select(part => $"{part.Key} {part.Value}")));
    }

    private static OutgoingMail Mail(Guid personId) => new()
    {
        Id = Guid.CreateVersion7(), PersonId = personId, Address = "ileana@example.org", Language = Language.English, Subject = "A reminder", Text = "A reminder",
        MadeAt = RunningSite.Now, NextTryAt = RunningSite.Now.AddHours(1),
    };

    [Fact]
    public async Task A_site_that_can_serve_says_so_of_each_part()
    {
        using var site = RunningSite.Start();

        Assert.Equal((200, "process ok, database ok, mail ok, disk ok"), await HealthAsync(site));
    }

    [Fact]
    public async Task A_database_that_cannot_answer_is_down_and_courses_still_serve()
    {
        using var site = RunningSite.Start();
        await site.RecordAsync(records => Tables.DropAsync(records, "Papers"));

        Assert.Equal((503, "process ok, database down, mail ok, disk ok"), await HealthAsync(site));
        Assert.Equal(200, (await site.GetAsync("/en/courses/awareness")).Status);
    }

    [Fact]
    public async Task Mail_that_waits_after_a_failure_wants_attention_and_the_site_serves_on()
    {
        using var site = RunningSite.Start();
        var mail = Mail(await site.PersonAsync());
        await site.AddAsync(mail);
        Assert.Equal((200, "process ok, database ok, mail ok, disk ok"), await HealthAsync(site));

        await site.RecordAsync(records => records.KeepFailureAsync(mail, "421 try later", RunningSite.Now.AddHours(2), RunningSite.Now, CancellationToken.None));
        Assert.Equal((200, "process ok, database ok, mail attention, disk ok"), await HealthAsync(site));

        await site.RecordAsync(records => records.KeepSentAsync(mail, RunningSite.Now, CancellationToken.None));
        Assert.Equal((200, "process ok, database ok, mail ok, disk ok"), await HealthAsync(site));
    }

    [Fact]
    public async Task A_mail_that_was_given_up_is_told_for_two_days()
    {
        using var site = RunningSite.Start();
        var mail = Mail(await site.PersonAsync());
        mail.GivenUpAt = RunningSite.Now;
        await site.AddAsync(mail);

        Assert.Contains("mail attention", (await HealthAsync(site)).Parts, StringComparison.Ordinal);
        site.Clock.Now += MailHealthCheck.Told;
        Assert.Contains("mail ok", (await HealthAsync(site)).Parts, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_data_folder_that_is_gone_wants_attention()
    {
        // The database lies elsewhere, so that only the disk is missed.
        var elsewhere = Directory.CreateTempSubdirectory("training-health-").FullName;
        using (var site = RunningSite.Start(settings: [new("Training:Database:Connection", $"Data Source={Path.Combine(elsewhere, "training.db")}")]))
        {
            Directory.Delete(site.DataFolder, recursive: true);

            Assert.Equal((200, "process ok, database ok, mail ok, disk attention"), await HealthAsync(site));
        }

        Directory.Delete(elsewhere, recursive: true);
    }
}
