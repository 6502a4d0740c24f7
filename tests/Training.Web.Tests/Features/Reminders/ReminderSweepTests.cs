using System.Diagnostics;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Reminders;
using Training.Web.Mail;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Reminders;

/// <summary>Reminders through the records and a mail server that is not ours.</summary>
public sealed class ReminderSweepTests : IAsyncLifetime
{
    // 25 November 2026, 10:44 in Denver.
    private static readonly DateOnly Today = new(2026, 11, 25);

    private readonly MailServer server = new();
    private RunningSite site = null!; // made by InitializeAsync

    public ValueTask InitializeAsync()
    {
        site = RunningSite.Start(isDemo: false, [.. server.Settings, new("Training:Provider:TimeZone", "America/Denver")]);
        return default;
    }

    public async ValueTask DisposeAsync()
    {
        site.Dispose();
        await server.DisposeAsync();
    }

    [Fact]
    public async Task The_holder_is_told_once_in_their_language_and_by_a_mail_that_others_can_read()
    {
        var holder = await HoldAsync(Today.AddDays(6), "ileana@example.org", Language.Spanish);

        await RunAsync();
        await RunAsync();

        var mail = Assert.Single(server.Accepted);
        Assert.Equal("ileana@example.org", Assert.Single(mail.To.Mailboxes).Address);
        Assert.Equal("training@quillback.example.org", Assert.Single(mail.From.Mailboxes).Address);
        Assert.Equal("“Manejo de serpientes solo con herramientas” vence el 1 de diciembre de 2026", mail.Subject);
        Assert.Contains("Ya puede renovar", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("https://training.example.org/es/my", mail.TextBody, StringComparison.Ordinal);
        Assert.Equal("auto-generated", mail.Headers["Auto-Submitted"]);
        Assert.Equal("es", mail.Body!.Headers["Content-Language"]);
        await site.RecordAsync(async records =>
        {
            var reminder = await records.Reminders.SingleAsync(row => row.PersonId == holder);
            Assert.Equal(("P7D", Today.AddDays(-1)), (reminder.Milestone, reminder.DueOn));
            Assert.NotNull((await records.OutgoingMails.SingleAsync(row => row.Id == reminder.MailId)).SentAt);
        });
    }

    /// <summary>Read by Python's <c>email</c> package, which shares no code with what wrote it.</summary>
    [Fact]
    public async Task Another_program_reads_the_same_subject_text_and_ids()
    {
        await HoldAsync(Today.AddDays(6), "ileana@example.org", Language.Spanish);
        await RunAsync();
        var file = Path.GetTempFileName();
        await File.WriteAllBytesAsync(file, Assert.Single(server.Received));

        var read = await PythonAsync(
            "import email,email.policy,json,sys; m=email.message_from_binary_file(open(sys.argv[1],'rb'),policy=email.policy.default); "
            + "print(json.dumps({'subject':m['Subject'],'to':m['To'].addresses[0].addr_spec,'from':m['From'].addresses[0].display_name,'id':m['Message-ID'],"
            + "'date':m['Date'].datetime.isoformat(),'auto':m['Auto-Submitted'],'language':m['Content-Language'],'type':m.get_content_type(),'charset':m.get_content_charset(),"
            + "'text':m.get_content(),'defects':len(m.defects)}))",
            file);

        var mail = Assert.Single(server.Accepted);
        Assert.Equal(
            (mail.Subject, "ileana@example.org", "Quillback Field Safety", $"<{mail.MessageId}>", "auto-generated", "es", "text/plain", "utf-8"),
            (read["subject"], read["to"], read["from"], read["id"], read["auto"], read["language"], read["type"], read["charset"]));
        Assert.Equal(mail.TextBody!.ReplaceLineEndings("\n"), read["text"].ReplaceLineEndings("\n")); // not null: it is plain text
        Assert.Equal("2026-11-25T17:44:00+00:00", read["date"]);
        Assert.Equal("0", read["defects"]);
        File.Delete(file);
    }

    [Fact]
    public async Task A_server_whose_certificate_nobody_vouches_for_gets_no_mail()
    {
        using var certificate = Certificates.SelfSigned();
        await using var other = new MailServer(certificate);
        using var own = RunningSite.Start(isDemo: false, [.. other.Settings, new("Training:Mail:Security", "StartTls")]);
        await HoldAsync(own, Today.AddDays(6), "ileana@example.org", Language.English);

        await own.Services.GetRequiredService<ReminderJob>().RunAsync(default);

        Assert.Empty(other.Accepted);
        await own.RecordAsync(async records =>
        {
            var mail = await records.OutgoingMails.SingleAsync();
            Assert.Equal((1, true), (mail.FailedTries, mail.LastAnswer!.Contains("certificate", StringComparison.OrdinalIgnoreCase))); // not null: it failed
        });
    }

    [Fact]
    public async Task Whoever_has_no_address_goes_onto_the_list_of_the_crew()
    {
        var holder = await HoldAsync(Today.AddDays(6), address: null);

        await RunAsync();

        Assert.Empty(server.Accepted);
        await site.RecordAsync(async records => Assert.Null((await records.Reminders.SingleAsync(row => row.PersonId == holder)).MailId));
    }

    [Fact]
    public async Task An_address_that_the_server_refuses_is_not_tried_again_until_it_is_kept_anew()
    {
        var holder = await HoldAsync(Today.AddDays(6), "nobody@example.org");
        await RunAsync();
        site.Clock.Now = site.Clock.Now.AddDays(7);                 // the day after its last day
        await RunAsync();

        await site.RecordAsync(async records =>
        {
            Assert.Equal([true, false], await records.Reminders.Where(row => row.PersonId == holder).OrderBy(row => row.MadeAt).Select(row => row.MailId != null).ToListAsync());
            Assert.NotNull((await records.OutgoingMails.SingleAsync()).GivenUpAt);
            Assert.Equal("nobody@example.org", (await records.UnreachableAddresses.SingleAsync()).Address);
            await records.KeepMailAddressAsync(holder, "nobody@example.org", default);
            Assert.Empty(records.UnreachableAddresses);
        });
    }

    [Theory]
    [InlineData("2026-11-25T13:59:00Z", 0)]      // 06:59 in Denver
    [InlineData("2026-11-25T14:00:00Z", 1)]
    [InlineData("2026-11-26T02:59:00Z", 1)]      // 19:59
    [InlineData("2026-11-26T03:00:00Z", 0)]
    [InlineData("2027-03-14T13:00:00Z", 1)]      // 07:00 on the day on which clocks go forward there (tz database: 2 a.m. becomes 3 a.m.)
    [InlineData("2027-03-14T12:59:00Z", 0)]
    public async Task Nothing_is_made_in_the_quiet_hours_of_the_site(string now, int made)
    {
        site.Clock.Now = DateTimeOffset.Parse(now, System.Globalization.CultureInfo.InvariantCulture);
        await HoldAsync(DateOnly.FromDateTime(site.Clock.Now.Date).AddDays(6), "ileana@example.org");

        await RunAsync();

        Assert.Equal(made, server.Accepted.Count);
    }

    [Fact]
    public async Task After_a_time_without_a_sweep_only_the_latest_goes_out()
    {
        await HoldAsync(Today.AddDays(100), "ileana@example.org");
        await RunAsync();
        site.Clock.Now = site.Clock.Now.AddDays(95);
        await RunAsync();

        Assert.Contains("5 March 2027", Assert.Single(server.Accepted).Subject, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Many_sweeps_at_once_make_each_reminder_once_and_send_it_once()
    {
        for (var holder = 0; holder < 10; holder++) await HoldAsync(Today.AddDays(6), $"holder-{holder}@example.org");

        for (var round = 0; round < 50; round++)
        {
            await Task.WhenAll(RunAsync(), RunAsync());
            site.Clock.Now = site.Clock.Now.AddMinutes(1);
        }

        Assert.Equal(10, server.Accepted.Count);
        Assert.Equal(10, server.Accepted.Select(mail => mail.MessageId).Distinct().Count());
    }

    /// <summary>The server accepted, our record of it was not written: the mail goes again, and only then, with the same id.</summary>
    [Fact]
    public async Task Broken_off_between_acceptance_and_record_a_mail_may_repeat_and_is_never_lost()
    {
        for (var holder = 0; holder < 50; holder++) await HoldAsync(Today.AddDays(6), $"holder-{holder}@example.org");
        await site.Services.GetRequiredService<ReminderSweep>().RunAsync(default);
        var sender = new BreaksOff(site.Services.GetRequiredService<IMailSender>());
        var delivery = ActivatorUtilities.CreateInstance<MailDelivery>(site.Services, sender);

        for (var kill = 0; kill < 50; kill++) await Assert.ThrowsAsync<OperationCanceledException>(() => delivery.RunAsync(default));
        Assert.Equal(50, server.Accepted.Count);
        await RunAsync();
        Assert.Equal(50, server.Accepted.Count);                     // still leased to who was killed
        site.Clock.Now += MailKeeping.Lease;
        await RunAsync();

        Assert.Equal(100, server.Accepted.Count);
        Assert.Equal(50, server.Accepted.Select(mail => mail.MessageId).Distinct().Count());
        Assert.All(server.Accepted.GroupBy(mail => mail.MessageId), mails => Assert.Single(mails.Select(mail => mail.To.ToString()).Distinct()));
    }

    [Fact]
    public async Task A_mail_that_is_not_taken_is_tried_again_later_each_time_and_then_given_up()
    {
        await HoldAsync(Today.AddDays(6), "ileana@example.org");
        await server.DisposeAsync();
        var tries = new List<DateTimeOffset>();
        await RunAsync();
        for (var wait = 0; wait < 10; wait++)
        {
            OutgoingMail mail = null!; // read at once
            await site.RecordAsync(async records => mail = await records.OutgoingMails.SingleAsync());
            if (mail.GivenUpAt is not null) break;
            tries.Add(mail.NextTryAt);
            site.Clock.Now = mail.NextTryAt;
            await site.Services.GetRequiredService<MailDelivery>().RunAsync(default);
        }

        Assert.Equal(6, tries.Count);
        Assert.Equal(tries.Order(), tries);
        await site.RecordAsync(async records => Assert.NotNull((await records.OutgoingMails.SingleAsync()).GivenUpAt));
    }

    [Fact]
    public async Task An_employer_gets_one_summary_a_week_with_who_lapses_and_whom_to_tell()
    {
        var representative = await HoldAsync(Today.AddDays(300), "delphine@example.org");
        var holder = await HoldAsync(Today.AddDays(6), address: null);
        var employer = new Employer { Id = Guid.CreateVersion7(), Name = "Ocotillo Bench Solar" };
        await site.RecordAsync(async records =>
        {
            records.Add(employer);
            records.Add(new Representative { Id = Guid.CreateVersion7(), PersonId = representative, EmployerId = employer.Id, StartsOn = new(2026, 1, 1) });
            records.Add(new Employment { Id = Guid.CreateVersion7(), PersonId = holder, EmployerId = employer.Id, StartsOn = new(2026, 1, 1) });
            await records.SaveChangesAsync();
        });

        for (var day = 0; day < 14; day++)
        {
            await RunAsync();
            site.Clock.Now = site.Clock.Now.AddDays(1);
        }

        // Wednesday 25 November to Tuesday 8 December: three weeks are touched.
        var mails = server.Accepted.ToList();
        Assert.Equal(3, mails.Count);
        Assert.All(mails, mail => Assert.Equal("Ocotillo Bench Solar: who lapses within 90 days", mail.Subject));
        Assert.Contains("“Tool-only snake handler”, 1 December 2026", mails[0].TextBody, StringComparison.Ordinal);
        Assert.Contains("No mail reaches these people. Please tell them:\r\n- Ileana Prado-Whitt", mails[0].TextBody!.ReplaceLineEndings("\r\n"), StringComparison.Ordinal); // not null: asserted above
        Assert.Contains("Lapsed in the last 30 days", mails[2].TextBody, StringComparison.Ordinal);
    }

    private Task RunAsync() => site.Services.GetRequiredService<ReminderJob>().RunAsync(default);

    private Task<Guid> HoldAsync(DateOnly expiresOn, string? address, Language language = Language.English) => HoldAsync(site, expiresOn, address, language);

    private static async Task<Dictionary<string, string>> PythonAsync(string program, string file)
    {
        using var python = Process.Start(new ProcessStartInfo("/usr/bin/python3", ["-c", program, file]) { RedirectStandardOutput = true, UseShellExecute = false })!; // not null: started
        var json = await python.StandardOutput.ReadToEndAsync();
        await python.WaitForExitAsync();
        return JsonDocument.Parse(json).RootElement.EnumerateObject().ToDictionary(value => value.Name, value => value.Value.ToString(), StringComparer.Ordinal);
    }

    private static async Task<Guid> HoldAsync(RunningSite site, DateOnly expiresOn, string? address, Language language)
    {
        var (_, personId, _) = await site.IssueAsync("handler", expiresOn.AddMonths(-12), expiresOn);
        await site.RecordAsync(async records =>
        {
            var person = await records.Persons.SingleAsync(row => row.Id == personId);
            (person.MailAddress, person.Language) = (address, language);
            await records.SaveChangesAsync();
        });
        return personId;
    }

    private sealed class BreaksOff(IMailSender sender) : IMailSender
    {
        public async Task<MailAnswer> SendAsync(MimeKit.MimeMessage message, CancellationToken cancellation)
        {
            await sender.SendAsync(message, cancellation);
            throw new OperationCanceledException("Killed after the server accepted.");
        }
    }
}
