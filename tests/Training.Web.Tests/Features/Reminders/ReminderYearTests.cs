using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Certification;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Reminders;
using Training.Web.Tests.Demo;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Reminders;

/// <summary>The demo's programme, the clock moved day by day over 14 months: what was made, what was written and what the rule says are the same.</summary>
public sealed partial class ReminderYearTests
{
    private const int Days = 426;

    [Fact]
    public async Task Day_by_day_over_fourteen_months_exactly_what_the_rule_says_goes_out()
    {
        await using var server = new MailServer();
        await using var demo = new ServedDemo(server.Settings);
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
        using var lead = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);
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
        var others = new List<Guid>();
        var sent = new List<OutgoingMail>();
        await demo.Site.RecordAsync(async records =>
        {
            made = await records.Reminders.ToListAsync();
            // The weekly summaries, and what the sweeps of classes and reviews say meanwhile: one letter may tell of several changes.
            others =
            [
                .. await records.Digests.Where(row => row.MailId != null).Select(row => row.MailId!.Value).ToListAsync(),
                .. await records.ClassInvitations.Where(row => row.MailId != null).Select(row => row.MailId!.Value).ToListAsync(),
                .. await records.ClassReminders.Where(row => row.MailId != null).Select(row => row.MailId!.Value).ToListAsync(),
                .. await records.ReviewNotices.Where(row => row.MailId != null).Select(row => row.MailId!.Value).ToListAsync(),
                .. await records.GuidanceNotices.Where(row => row.MailId != null).Select(row => row.MailId!.Value).ToListAsync(),
            ];
            sent = await records.OutgoingMails.Where(mail => mail.SentAt != null).ToListAsync();
        });
        Assert.True(expected.Count > 200, $"{expected.Count} expected");
        Assert.Equal(expected.Order(), made.Select(row => Key(row.PersonId, row.SchemeId, row.PeriodNumber, row.DueOn)).Order());
        Assert.Equal(made.Where(row => row.MailId is not null).Select(row => row.MailId!.Value).Concat(others.Distinct()).Order(), sent.Select(mail => mail.Id).Order());
        // The server that is not ours got each of them once, to the address on record.
        Assert.Equal(
            sent.Select(mail => $"{mail.Id:N}@localhost {mail.Address}").Order(),
            server.Accepted.Select(mail => $"{mail.MessageId} {mail.To.Mailboxes.Single().Address}").Order());
        // The log counted them, and names nobody.
        var logged = demo.Site.Log.Lines.Where(line => line.Event == "Reminded").ToList();
        Assert.Equal(
            (made.Count(row => row.MailId is not null), made.Count(row => row.MailId is null)),
            (logged.Sum(line => (int)line.Values["Mails"]!), logged.Sum(line => (int)line.Values["Told"]!))); // not null: both are counts
        Assert.DoesNotContain(demo.Site.Log.Lines, line => line.Line.Contains("example.org", StringComparison.Ordinal));
        // The leads' page lists the newest of them, in their order.
        var newest = made.OrderByDescending(row => row.MadeAt).ThenByDescending(row => row.Id).Take(50).Select(row => row.PersonId);
        Assert.Equal(newest, await ShownAsync(demo, lead));
    }

    /// <summary>Who stands under the last heading of the leads' page.</summary>
    private static async Task<IEnumerable<Guid>> ShownAsync(ServedDemo demo, PlainBrowser lead)
    {
        // Sessions end after a day; the clock went on by more than a year.
        using var again = await demo.SignInAsync(ServedDemo.Actors[Role.ProgrammeLead]);
        Assert.Equal(303, (await lead.GetAsync("/en/programme/reminders")).Status);
        var html = (await again.GetAsync("/en/programme/reminders")).Html;
        return Person().Matches(html[html.LastIndexOf("<h2>", StringComparison.Ordinal)..]).Select(match => Guid.Parse(match.Groups["id"].Value));
    }

    [GeneratedRegex("/en/programme/people/(?<id>[0-9a-f-]{36})", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Person();

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
