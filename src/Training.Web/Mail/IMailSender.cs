using MimeKit;

namespace Training.Web.Mail;

/// <summary>The way out for a mail: a mail server, or a folder where there is none.</summary>
public interface IMailSender
{
    /// <summary>Tries once.</summary>
    Task<MailAnswer> SendAsync(MimeMessage message, CancellationToken cancellation);
}
