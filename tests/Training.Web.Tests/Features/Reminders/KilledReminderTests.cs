using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Reminders;

/// <summary>
/// The program itself, killed in the middle of sending (SIGKILL, 50 times) at the worst moment: the mail server has the mail and the program does
/// not know it yet.
/// </summary>
public sealed class KilledReminderTests : IAsyncLifetime
{
    private const int Kills = 50;
    private const int Holders = 60;

    private readonly string folder = Directory.CreateTempSubdirectory("training-killed-mail-").FullName;
    private readonly MailServer server = new();

    public ValueTask InitializeAsync() => default;

    public async ValueTask DisposeAsync()
    {
        await server.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Killed_in_fifty_sweeps_no_reminder_is_lost_and_only_the_same_mail_comes_twice()
    {
        await HoldAsync();
        for (var kill = 1; kill <= Kills; kill++)
        {
            var accepted = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            using var process = Server(server);
            server.OnAccepted = () =>
            {
                // Before our answer is on its way.
                process.Kill();
                accepted.TrySetResult();
            };
            process.Begin();
            await accepted.Task.WaitAsync(TimeSpan.FromMinutes(2));
            Assert.Equal(kill, server.Accepted.Count);
        }

        server.OnAccepted = () => { };
        using var last = Server(server);
        // What was killed is leased for ten minutes; the test does not wait for them.
        await last.RecordAsync(records => records.OutgoingMails.ExecuteUpdateAsync(set => set.SetProperty(mail => mail.LeaseEndsAt, (DateTimeOffset?)null)));
        last.Begin();
        await UntilAllAreSentAsync(last);

        var ids = server.Accepted.Select(mail => mail.MessageId).ToList();
        Assert.Equal(Holders, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(Holders + Kills, ids.Count);
        Assert.All(
            server.Accepted.GroupBy(mail => mail.MessageId),
            mails => Assert.Single(mails.Select(mail => $"{mail.To} {mail.Subject} {mail.TextBody}").Distinct(StringComparer.Ordinal)));
    }

    [Fact]
    public async Task A_server_that_the_machine_trusts_is_given_mail_over_an_encrypted_connection()
    {
        using var certificate = Certificates.SelfSigned();
        await using var encrypted = new MailServer(certificate);
        await HoldAsync();
        var trusted = Path.Combine(folder, "trusted.pem");
        await File.WriteAllTextAsync(trusted, certificate.ExportCertificatePem());
        using var process = Server(encrypted, "--Training:Mail:Security=StartTls", "--Training:Mail:Host=localhost");
        process.Environment["SSL_CERT_FILE"] = trusted;

        process.Begin();
        await UntilAllAreSentAsync(process);

        Assert.Equal(Holders, encrypted.Accepted.Count);
        Assert.All(encrypted.Encrypted, Assert.True);
    }

    // No hour is quiet: the process lives by the clock of the machine.
    private ServerProcess Server(MailServer mails, params IReadOnlyList<string> more) => new(
        folder, [.. mails.Settings.Select(setting => $"--{setting.Key}={setting.Value}"), "--Training:Reminders:QuietFromHour=0", "--Training:Reminders:QuietUntilHour=0", .. more]);

    private static async Task UntilAllAreSentAsync(ServerProcess process)
    {
        for (var tries = 0; tries < 1200; tries++)
        {
            var sent = 0;
            await process.RecordAsync(async records => sent = await records.OutgoingMails.CountAsync(mail => mail.SentAt != null));
            if (sent == Holders) return;
            await Task.Delay(100);
        }

        Assert.Fail("Not every mail was sent within two minutes.");
    }

    private async Task HoldAsync()
    {
        using var site = RunningSite.Start(isDemo: false, [new("Training:Database:Connection", $"Data Source={Path.Combine(folder, "training.db")}")]);
        var today = DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime);
        for (var holder = 0; holder < Holders; holder++)
        {
            var (_, personId, _) = await site.IssueAsync("handler", today.AddMonths(-12), today.AddDays(6));
            await site.RecordAsync(records => records.KeepMailAddressAsync(personId, $"holder-{holder}@example.org", CancellationToken.None));
        }
    }
}
