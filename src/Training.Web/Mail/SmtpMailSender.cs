using System.Net.Sockets;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;
using MimeKit;
using Training.Web.Settings;

namespace Training.Web.Mail;

/// <summary>Hands a mail to the server of the settings (RFC 5321).</summary>
public sealed class SmtpMailSender(TrainingOptions options) : IMailSender
{
    /// <summary>Longest wait for one answer; a whole try stays far below <see cref="Records.MailKeeping.Lease"/>.</summary>
    private const int AnswerMilliseconds = 30_000;

    /// <inheritdoc/>
    public async Task<MailAnswer> SendAsync(MimeMessage message, CancellationToken cancellation)
    {
        using var client = new SmtpClient { Timeout = AnswerMilliseconds };
        try
        {
            await client.ConnectAsync(options.Mail.Host, options.Mail.Port, Security(options.Mail.Security), cancellation);
            if (options.Mail.User.Length > 0) await client.AuthenticateAsync(options.Mail.User, options.Mail.Password, cancellation);
            await client.SendAsync(message, cancellation);
        }
        catch (SmtpCommandException e) when (e.ErrorCode == SmtpErrorCode.RecipientNotAccepted && (int)e.StatusCode >= 500)
        {
            return new MailAnswer.AddressRefused(Line(e));
        }
        catch (Exception e) when (e is CommandException or ProtocolException or AuthenticationException or SslHandshakeException or IOException
            or SocketException or TimeoutException or ServiceNotAuthenticatedException or NotSupportedException)
        {
            return new MailAnswer.NotAccepted(Line(e));
        }

        try
        {
            await client.DisconnectAsync(quit: true, cancellation);
        }
        catch (Exception e) when (e is CommandException or ProtocolException or IOException or SocketException)
        {
            // It has the mail; how the connection ended is nothing to anybody.
        }

        return new MailAnswer.Accepted();
    }

    private static SecureSocketOptions Security(MailSecurity security) => security switch
    {
        MailSecurity.StartTls => SecureSocketOptions.StartTls,
        MailSecurity.Tls => SecureSocketOptions.SslOnConnect,
        MailSecurity.None => SecureSocketOptions.None,
    };

    private static string Line(Exception e) => e.Message.ReplaceLineEndings(" ");
}
