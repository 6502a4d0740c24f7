using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Reminders;

/// <summary>A programme lead looks after reminders.</summary>
public sealed class RemindersController(RecordsContext records, CourseShelf shelf, TimeProvider clock) : Controller
{
    private const int Most = 50;

    /// <summary>What goes out in the next 14 days, what went, what failed.</summary>
    [HttpGet("/{language:language}/programme/reminders")]
    public async Task<IActionResult> Show(CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var today = visitor.Today;
        var ahead = await AheadAsync(today, cancellation);
        var made = await (from reminder in records.Reminders.AsNoTracking()
                          join mail in records.OutgoingMails.AsNoTracking() on reminder.MailId equals mail.Id into mails
                          from mail in mails.DefaultIfEmpty()
                          orderby reminder.MadeAt descending, reminder.Id descending
                          select new { reminder, mail }).Take(Most).ToListAsync(cancellation);
        var givenUp = await records.OutgoingMails.AsNoTracking().Where(mail => mail.GivenUpAt != null)
            .OrderByDescending(mail => mail.GivenUpAt).Take(Most).ToListAsync(cancellation);
        // Only where the address is still the one in use: another address mends it.
        var unreachable = await records.UnreachableAddresses.AsNoTracking()
            .Where(row => records.Persons.Any(person => person.Id == row.PersonId && person.MailAddress == row.Address))
            .OrderByDescending(row => row.FoundAt).Take(Most).ToListAsync(cancellation);
        var shown = ahead.Take(RemindersPage.MostAhead).ToList();
        var people = shown.Select(next => next.PersonId).Concat(made.Select(row => row.reminder.PersonId))
            .Concat(givenUp.Select(mail => mail.PersonId)).Concat(unreachable.Select(row => row.PersonId));
        return View(new RemindersPage(
            TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone), shown, ahead.Count, made.ConvertAll(row => (row.reminder, (OutgoingMail?)row.mail)), givenUp, unreachable,
            await records.NamesOfAsync(people, today, cancellation), shelf.Courses.Titles(HttpContext.PageLanguageOf())));
    }

    /// <summary>Tries a mail again that was given up; the same again changes nothing.</summary>
    [HttpPost("/{language:language}/programme/reminders/mails/{mailId:guid}/tries")]
    public async Task<IActionResult> TryAgain(Guid mailId, CancellationToken cancellation)
    {
        if (!await records.OutgoingMails.AnyAsync(mail => mail.Id == mailId, cancellation)) return NotFound();
        await records.TryAgainAsync(mailId, clock.GetUtcNow(), cancellation);
        return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/reminders");
    }

    private async Task<List<Reminder>> AheadAsync(DateOnly today, CancellationToken cancellation)
    {
        var through = today.AddDays(RemindersPage.DaysAhead);
        var ahead = new List<Reminder>();
        foreach (var scheme in shelf.Courses.Select(course => course.Scheme))
        {
            foreach (var span in Certification.Reminders.ComingSpans(scheme.Remind, today, through))
            {
                await foreach (var batch in records.HeldEndingAsync(scheme.Id, span, MadeReminders.Included, today, cancellation))
                    ahead.AddRange(batch.SelectMany(held => Certification.Reminders.Ahead(held, scheme.Remind, today, through)));
            }
        }

        return [.. ahead.OrderBy(next => next.DueOn).ThenBy(next => next.PersonId)];
    }
}
