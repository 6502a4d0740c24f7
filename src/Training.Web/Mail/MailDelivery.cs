using System.Globalization;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using Training.Courses;
using Training.Records;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Mail;

/// <summary>Sends the mails that wait. Any number of servers may do so at once.</summary>
public sealed class MailDelivery(
    IDbContextFactory<RecordsContext> factory, IMailSender sender, TrainingOptions options, OurProvider provider, TimeProvider clock, ILogger<MailDelivery> logger)
{
    /// <summary>Most mails of one run; the next run takes up where this one ends.</summary>
    private const int Most = 500;

    // After these waits a mail is given up and shown to the leads: about two days in all.
    private static readonly TimeSpan[] Waits =
    [
        TimeSpan.FromMinutes(1), TimeSpan.FromMinutes(10), TimeSpan.FromHours(1), TimeSpan.FromHours(6), TimeSpan.FromHours(12), TimeSpan.FromDays(1),
    ];

    /// <summary>Tries each mail that is to be tried now, once.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        await using var records = await factory.CreateDbContextAsync(cancellation);
        for (var count = 0; count < Most && await records.TakeMailAsync(clock.GetUtcNow(), cancellation) is { } mail; count++)
        {
            var answer = await sender.SendAsync(Message(mail), cancellation);
            await KeepAsync(records, mail, answer, cancellation);
        }
    }

    private async Task KeepAsync(RecordsContext records, OutgoingMail mail, MailAnswer answer, CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        switch (answer)
        {
            case MailAnswer.Accepted:
                await records.KeepSentAsync(mail, now, cancellation);
                break;
            case MailAnswer.AddressRefused(var said):
                await records.KeepUnreachableAsync(mail.PersonId, mail.Address, said, now, cancellation);
                await records.KeepFailureAsync(mail, said, nextTryAt: null, now, cancellation);
                Log.MailAddressRefused(logger, mail.Id, mail.PersonId);
                break;
            case MailAnswer.NotAccepted(var said):
                DateTimeOffset? next = mail.FailedTries < Waits.Length ? now + Waits[mail.FailedTries] : null;
                await records.KeepFailureAsync(mail, said, next, now, cancellation);
                if (next is null) Log.MailGivenUp(logger, mail.Id, mail.PersonId);
                break;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private MimeMessage Message(OutgoingMail mail)
    {
        var host = options.PublicPage("").Host;
        var text = new TextPart("plain") { Text = mail.Text, ContentTransferEncoding = ContentEncoding.QuotedPrintable };
        text.Headers.Add(HeaderId.ContentLanguage, mail.Language.Tag());
        var message = new MimeMessage
        {
            Subject = mail.Subject,
            // The same mail always has the same id: whoever gets it twice can tell.
            MessageId = string.Create(CultureInfo.InvariantCulture, $"{mail.Id:N}@{host}"),
            Date = mail.MadeAt,
            Body = mail.Calendar is { } calendar ? new Multipart("mixed") { text, CalendarPart(calendar) } : text,
        };
        message.From.Add(new MailboxAddress(provider.Name, options.MailFrom()));
        message.To.Add(MailboxAddress.Parse(mail.Address));
        // RFC 3834: a holiday notice or another machine must not answer it.
        message.Headers.Add("Auto-Submitted", "auto-generated");
        return message;
    }

    // RFC 6047, 2.4: the type names the method, and the letters are UTF-8 whatever servers lie between.
    private static TextPart CalendarPart(string calendar)
    {
        var part = new TextPart("calendar")
        {
            Text = calendar, ContentTransferEncoding = ContentEncoding.Base64,
            ContentDisposition = new ContentDisposition(ContentDisposition.Attachment) { FileName = "class.ics" },
        };
        part.ContentType.Parameters["method"] = "PUBLISH";
        return part;
    }
}
