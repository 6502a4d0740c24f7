using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MimeKit;
using Training.Certification;
using Training.Records;
using Training.Web.Features.Reminders;
using Training.Web.Tests.Demo;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Reminders;

/// <summary>The demo's programme, the clock moved day by day over 14 months: what was made, what was written and what the rule says are the same.</summary>
public sealed class ReminderYearTests
{
    private const int Days = 426;

    [Fact]
    public async Task Day_by_day_over_fourteen_months_exactly_what_the_rule_says_goes_out()
    {
        await using var demo = new ServedDemo();
        await demo.InitializeAsync();
        var all = new List<HeldCertification>();
        await demo.Site.RecordAsync(async records =>
        {
            // Every other person has an address.
            var people = await records.Persons.OrderBy(person => person.Id).ToListAsync();
            foreach (var (place, person) in people.Index()) person.MailAddress = place % 2 == 0 ? $"person-{place}@example.org" : null;
            await records.SaveChangesAsync();
            await foreach (var held in records.AllHeldCertificationsAsync(CancellationToken.None)) all.Add(held);
        });
        // Today's were made when the demo was opened.
        var job = demo.Site.Services.GetRequiredService<ReminderJob>();
        var start = demo.Site.Clock.Now;
        for (var day = 1; day <= Days; day++)
        {
            demo.Site.Clock.Now = start.AddDays(day);
            await job.RunAsync(CancellationToken.None);
        }

        var expected = all.SelectMany(held => Enumerable.Range(0, Days + 1).Select(day => Stands(held, MadeDemo.Today.AddDays(day)))).OfType<string>().ToHashSet();
        var made = new List<ReminderRecord>();
        var weekly = new List<Guid>();
        var sent = new List<OutgoingMail>();
        await demo.Site.RecordAsync(async records =>
        {
            made = await records.Reminders.ToListAsync();
            weekly = await records.Digests.Where(digest => digest.MailId != null).Select(digest => digest.MailId!.Value).ToListAsync();
            sent = await records.OutgoingMails.Where(mail => mail.SentAt != null).ToListAsync();
        });
        Assert.True(expected.Count > 200, $"{expected.Count} expected");
        Assert.Equal(expected.Order(), made.Select(row => Key(row.PersonId, row.SchemeId, row.PeriodNumber, row.DueOn)).Order());
        Assert.Equal(made.Where(row => row.MailId is not null).Select(row => row.MailId!.Value).Concat(weekly).Order(), sent.Select(mail => mail.Id).Order());
        var files = Directory.GetFiles(demo.Site.MailFolder, "*.eml").Select(file => MimeMessage.Load(file)).ToList();
        Assert.Equal(sent.Select(mail => $"{mail.Id:N}@localhost").Order(), files.Select(file => file.MessageId).Order());
    }

    // A second implementation, by counting days: docs/rules.md, "Reminders".
    private static string? Stands(HeldCertification held, DateOnly day)
    {
        var period = held.Periods.Where(one => one.StartsOn <= day).OrderBy(one => one.Number).LastOrDefault();
        if (period is null || day.DayNumber - period.ExpiresOn.DayNumber > 30) return null;
        if (held.Withdrawals.Any(one => one.On <= day && period.StartsOn <= one.On)) return null;
        if (held.Suspensions.Any(one => one.From <= day && !(one.Reinstatement?.On < day) && !held.Withdrawals.Any(end => one.From <= end.On && end.On < day))) return null;
        int? before = new[] { 90, 60, 30, 7, -1 }
            .Where(days => period.ExpiresOn.DayNumber - days <= day.DayNumber && period.ExpiresOn.DayNumber - days > period.StartsOn.DayNumber)
            .Select(days => (int?)days).Min();
        return before is null ? null : Key(held.PersonId, held.SchemeId, period.Number, period.ExpiresOn.AddDays(-before.Value));
    }

    private static string Key(Guid personId, string schemeId, int number, DateOnly dueOn) => $"{personId} {schemeId} {number} {dueOn:O}";
}
