using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.Reminders;

/// <summary>
/// Works out from the records who is to be reminded now, and writes it: a mail that waits to be sent, or a line on the crew's list. Safe to
/// run twice, to run on several servers at once and to be killed: what was written is not written again, what was not is still due.
/// </summary>
public sealed class ReminderSweep(
    IDbContextFactory<RecordsContext> factory, CourseShelf shelf, TrainingOptions options, TimeProvider clock, ILogger<ReminderSweep> logger)
{
    /// <summary>One look at everybody.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        var utcToday = DateOnly.FromDateTime(now.UtcDateTime);
        var schemes = shelf.Courses.Select(course => course.Scheme).ToDictionary(scheme => scheme.Id, StringComparer.Ordinal);
        if (schemes.Count == 0) return;
        await using var records = await factory.CreateDbContextAsync(cancellation);
        // One day more at each end: at some site it is already tomorrow, at another still yesterday.
        var last = schemes.Values.SelectMany(scheme => scheme.Remind).Max(before => before.After(utcToday)).AddDays(1);
        var (mails, told) = (0, 0);
        await foreach (var held in records.HeldCertificationsEndingAsync(utcToday.AddDays(-Certification.Reminders.DaysLate - 1), last, cancellation))
        {
            if (!schemes.TryGetValue(held.SchemeId, out var scheme)) continue;
            if (await RemindAsync(records, held, scheme, now, cancellation) is not { } made) continue;
            if (made.MailId is null) told++;
            else mails++;
        }

        if (mails + told > 0) Log.Reminded(logger, mails, told);
    }

    // Null where nothing stands, it is quiet there, or it was made before.
    private async Task<ReminderRecord?> RemindAsync(
        RecordsContext records, HeldCertification held, Scheme scheme, DateTimeOffset now, CancellationToken cancellation)
    {
        var site = await records.FindSiteAsync(held.PersonId, DateOnly.FromDateTime(now.UtcDateTime), cancellation);
        var zone = TimeZoneInfo.FindSystemTimeZoneById(site?.Zone ?? options.Provider.TimeZone);
        var today = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(now, zone).DateTime);
        if (Certification.Reminders.On(held, scheme.Remind, today) is not { } due || options.Reminders.IsQuiet(now, zone)) return null;
        var milestone = due.Milestone.ToString();
        if (await records.Reminders.AnyAsync(
            row => row.PersonId == held.PersonId && row.SchemeId == scheme.Id && row.PeriodNumber == due.PeriodNumber && row.Milestone == milestone,
            cancellation)) return null;

        var mail = await MailAsync(records, due, held.Periods[due.PeriodNumber - 1], scheme, today, now, cancellation);
        var reminder = new ReminderRecord
        {
            Id = Guid.CreateVersion7(), PersonId = due.PersonId, SchemeId = due.SchemeId, PeriodNumber = due.PeriodNumber, Milestone = milestone,
            DueOn = due.DueOn, ExpiresOn = due.ExpiresOn, MadeAt = now, MailId = mail?.Id, SiteId = site?.Id,
        };
        return await records.TryKeepAsync(reminder, mail, cancellation) ? reminder : null;
    }

    // Null where the holder has no address that mail reaches.
    private async Task<OutgoingMail?> MailAsync(
        RecordsContext records, Reminder due, Period period, Scheme scheme, DateOnly today, DateTimeOffset now, CancellationToken cancellation)
    {
        var person = await records.Persons.AsNoTracking().SingleAsync(row => row.Id == due.PersonId, cancellation);
        if (person.MailAddress is not { } address
            || await records.UnreachableAddresses.AnyAsync(row => row.PersonId == person.Id && row.Address == address, cancellation)) return null;
        var names = await records.NamesOfAsync([person.Id], today, cancellation);
        var letter = Letter.Of(
            due, period, names.GetValueOrDefault(person.Id), scheme.Words[person.Language].Title, today,
            new Uri(options.PublicAddress ?? new Uri("http://localhost"), $"/{person.Language.Tag()}/my"), options.Provider.Name, person.Language);
        return new OutgoingMail
        {
            Id = Guid.CreateVersion7(), PersonId = person.Id, Address = address, Language = person.Language, Subject = letter.Subject,
            Text = letter.Text, MadeAt = now, NextTryAt = now,
        };
    }
}
