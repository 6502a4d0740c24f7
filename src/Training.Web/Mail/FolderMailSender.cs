using MimeKit;
using Training.Web.Settings;

namespace Training.Web.Mail;

/// <summary>Writes each mail as a file into <c>mail/</c> of the data folder, for an operator without a mail server: any mail program opens it.</summary>
public sealed class FolderMailSender(TrainingOptions options) : IMailSender
{
    /// <inheritdoc/>
    public async Task<MailAnswer> SendAsync(MimeMessage message, CancellationToken cancellation)
    {
        var folder = Path.Combine(Path.GetFullPath(options.DataFolder), "mail");
        var file = Path.Combine(folder, $"{message.MessageId!.Split('@')[0]}.eml"); // not null: MailDelivery gives each mail its id
        try
        {
            Directory.CreateDirectory(folder);
            // Under another name first: nobody finds half a mail, and the same mail again is the same file.
            var half = $"{file}.{Guid.NewGuid():N}.half";
            await message.WriteToAsync(half, cancellation);
            File.Move(half, file, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new MailAnswer.NotAccepted(e.Message);
        }

        return new MailAnswer.Accepted();
    }
}
