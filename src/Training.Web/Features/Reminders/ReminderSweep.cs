using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.Reminders;

/// <summary>
/// Works out from the records who is to be reminded now, and writes it: a mail that waits to be sent, or a line on the crew's list. Safe to
/// run twice, to run on several servers at once and to be killed: what was written is not written again, what was not is still due.
/// </summary>
public sealed class ReminderSweep(
    IDbContextFactory<RecordsContext> factory, CourseShelf shelf, TrainingOptions options, OurProvider provider, TimeProvider clock, ILogger<ReminderSweep> logger)
{
    /// <summary>One look at everybody.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        var utcToday = DateOnly.FromDateTime(now.UtcDateTime);
        // At some site it is already tomorrow, at another still yesterday.
        DateOnly[] days = [utcToday.AddDays(-1), utcToday, utcToday.AddDays(1)];
        await using var records = await factory.CreateDbContextAsync(cancellation);
        var (mails, told) = (0, 0);
        foreach (var scheme in shelf.Courses.Select(course => course.Scheme))
        {
            foreach (var span in Spans(scheme, days))
            {
                await foreach (var batch in records.HeldEndingAsync(scheme.Id, span, MadeReminders.LeftOut, days[0], cancellation))
                {
                    foreach (var reminder in await RemindAsync(records, batch, scheme, days[0], now, cancellation))
                    {
                        if (reminder.MailId is null) told++;
                        else mails++;
                    }
                }
            }
        }

        if (mails + told > 0) Log.Reminded(logger, mails, told);
    }

    // Where a milestone stands on any of the days; what stands at the holder's site is looked at then.
    private static IEnumerable<MilestoneSpan> Spans(Scheme scheme, IReadOnlyList<DateOnly> days) =>
        days.SelectMany(day => Certification.Reminders.StandingSpans(scheme.Remind, day)).GroupBy(span => span.Milestone)
            .Select(spans => new MilestoneSpan(spans.Key, spans.Min(span => span.From), spans.Max(span => span.Through)));

    private async Task<IReadOnlyList<ReminderRecord>> RemindAsync(
        RecordsContext records, IReadOnlyList<HeldCertification> batch, Scheme scheme, DateOnly firstDay, DateTimeOffset now, CancellationToken cancellation)
    {
        var people = batch.Select(held => held.PersonId).ToList();
        var made = await records.MadeRemindersAsync(scheme.Id, people, firstDay.AddDays(-Certification.Reminders.DaysLate), cancellation);
        var sites = await records.SitesOfPeopleAsync(people, DateOnly.FromDateTime(now.UtcDateTime), cancellation);
        var reminded = new List<ReminderRecord>();
        foreach (var held in batch)
        {
            if (await RemindAsync(records, held, scheme, sites.GetValueOrDefault(held.PersonId), made, now, cancellation) is { } reminder) reminded.Add(reminder);
        }

        return reminded;
    }

    // Null where nothing stands at the holder's site, it is quiet there, or it was made before.
    private async Task<ReminderRecord?> RemindAsync(
        RecordsContext records, HeldCertification held, Scheme scheme, Records.Site? site, IReadOnlySet<ReminderKey> made, DateTimeOffset now, CancellationToken cancellation)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(site?.Zone ?? provider.Zone);
        var today = DecisionDay.On(now, zone);
        if (options.Reminders.IsQuiet(now, zone) || Certification.Reminders.On(held, scheme.Remind, today) is not { } due || made.Contains(KeyOf(due))) return null;

        var to = await records.GetRecipientAsync(due.PersonId, cancellation);
        var mail = to.Address is null ? null : (await LetterAsync(records, due, held, scheme, to.Language, today, cancellation)).To(to, now);
        var reminder = new ReminderRecord
        {
            Id = Guid.CreateVersion7(), PersonId = due.PersonId, SchemeId = due.SchemeId, PeriodNumber = due.PeriodNumber, Milestone = due.Milestone.ToString(),
            DueOn = due.DueOn, ExpiresOn = due.ExpiresOn, MadeAt = now, MailId = mail?.Id, SiteId = site?.Id,
        };
        return await records.TryKeepAsync(reminder, mail, cancellation) ? reminder : null;
    }

    private async Task<Letter> LetterAsync(
        RecordsContext records, Reminder due, HeldCertification held, Scheme scheme, Language language, DateOnly today, CancellationToken cancellation)
    {
        var names = await records.NamesOfAsync([due.PersonId], today, cancellation);
        return Letter.Of(
            due, held.Periods[due.PeriodNumber - 1], names.GetValueOrDefault(due.PersonId), scheme.Words[language].Title, today,
            options.PublicPage($"{language.Tag()}/my"), provider.Name, language);
    }

    private static ReminderKey KeyOf(Reminder due) => new(due.PersonId, due.SchemeId, due.PeriodNumber, due.Milestone.ToString());
}
