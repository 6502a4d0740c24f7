using Training.Web.Features.Invitations;
using Training.Web.Mail;

namespace Training.Web.Features.Reminders;

/// <summary>What the clock starts: looks who is to be reminded, then sends what waits. It may be lost or run twice; the records decide.</summary>
public sealed class ReminderJob(ReminderSweep reminders, InvitationSweep invitations, DigestSweep digests, ReviewSweep reviews, MailDelivery delivery)
{
    /// <summary>One round.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        await reminders.RunAsync(cancellation);
        await reviews.RunAsync(cancellation);
        await invitations.RunAsync(cancellation);
        await digests.RunAsync(cancellation);
        await delivery.RunAsync(cancellation);
    }
}
