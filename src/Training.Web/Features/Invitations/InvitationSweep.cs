using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;
using Training.Web.Settings;

namespace Training.Web.Features.Invitations;

/// <summary>
/// Works out from the records who is to be told about classes ahead, and writes it: a mail with a calendar file that waits to be sent, or a line
/// on the crew's list. Whoever made the seat, moved the class or gave a seat back told nobody. Safe to run twice, on several servers at once
/// and to be killed, as reminders are.
/// </summary>
public sealed class InvitationSweep(
    IDbContextFactory<RecordsContext> factory, InvitationLetters letters, TrainingOptions options, TimeProvider clock, ILogger<InvitationSweep> logger)
{
    /// <summary>One look at every class ahead.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        // At some site it is still yesterday.
        var from = DateOnly.FromDateTime(now.UtcDateTime).AddDays(-1);
        await using var records = await factory.CreateDbContextAsync(cancellation);
        var seated = 0;
        foreach (var classId in await records.ClassesToFillAsync(from, cancellation))
            seated += (await records.SeatWaitingAsync(classId, now, cancellation)).Count;
        var told = 0;
        await foreach (var day in records.ClassesToTellAsync(from, cancellation))
        {
            foreach (var person in day.People)
            {
                if (await TellAsync(records, day, person, now, cancellation)) told++;
            }
        }

        if (told + seated > 0) Log.ToldOfClasses(logger, told, seated);
    }

    private async Task<bool> TellAsync(RecordsContext records, ClassToTell day, PersonToTell person, DateTimeOffset now, CancellationToken cancellation)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(day.Site.Zone);
        var today = DecisionDay.On(now, zone);
        var last = person.Last?.ToInvitation();
        if (Certification.Invitations.Owed(person.Part is not null, TimeOf(day), last, today) is { } owed)
            return !IsQuiet(now, zone, owed.Time.HeldOn, last, today) && await InviteAsync(records, day, person, owed, now, cancellation);
        if (person is not { Last: { } invitation, IsReminded: false } || options.Reminders.IsQuiet(now, zone)) return false;
        return Certification.Invitations.IsReminderDue(invitation.ToInvitation(), DecisionDay.On(invitation.MadeAt, zone), today)
            && await RemindAsync(records, day, person, invitation, now, cancellation);
    }

    // What concerns today cannot wait for the morning.
    private bool IsQuiet(DateTimeOffset now, TimeZoneInfo zone, DateOnly heldOn, Invitation? last, DateOnly today) =>
        options.Reminders.IsQuiet(now, zone) && heldOn != today && last?.Time.HeldOn != today;

    private async Task<bool> InviteAsync(
        RecordsContext records, ClassToTell day, PersonToTell person, Invitation owed, DateTimeOffset now, CancellationToken cancellation)
    {
        var to = await records.GetRecipientAsync(person.PersonId, cancellation);
        var mail = to.Address is null ? null : (await letters.OfAsync(records, day, person, owed, to, now, cancellation)).To(to, now);
        var row = new ClassInvitation
        {
            Id = Guid.CreateVersion7(), ClassId = day.Class.Id, PersonId = person.PersonId, Sequence = owed.Sequence, IsCancellation = owed.IsCancellation,
            HeldOn = owed.Time.HeldOn, StartsAt = owed.Time.StartsAt, LengthMinutes = owed.Time.LengthMinutes, MeetingPlace = owed.Time.MeetingPlace,
            MadeAt = now, MailId = mail?.Id,
        };
        return await records.TryKeepAsync(row, mail, cancellation);
    }

    private async Task<bool> RemindAsync(
        RecordsContext records, ClassToTell day, PersonToTell person, ClassInvitation last, DateTimeOffset now, CancellationToken cancellation)
    {
        var to = await records.GetRecipientAsync(person.PersonId, cancellation);
        var mail = to.Address is null ? null : (await letters.ReminderAsync(records, day, person, to, now, cancellation)).To(to, now);
        var row = new ClassReminder
        {
            Id = Guid.CreateVersion7(), ClassId = day.Class.Id, PersonId = person.PersonId, Sequence = last.Sequence, MadeAt = now, MailId = mail?.Id,
        };
        return await records.TryKeepAsync(row, mail, cancellation);
    }

    private static ClassTime TimeOf(ClassToTell day) =>
        new(day.Class.HeldOn, day.Class.StartsAt, day.Class.LengthMinutes, day.Briefing?.MeetingPlace ?? "");
}
