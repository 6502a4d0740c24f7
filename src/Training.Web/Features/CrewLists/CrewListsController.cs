using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Features.Workforce;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.CrewLists;

/// <summary>Reminders that became no mail, as lists to post where each crew meets.</summary>
public sealed class CrewListsController(RecordsContext records, CourseShelf shelf) : Controller
{
    private const int Most = 5000;

    /// <summary>One list a crew, all of an employer's.</summary>
    [HttpGet("/{language:language}/employers/{employerId:guid}/crew-lists")]
    public async Task<IActionResult> Show(Guid employerId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindEmployerAsync(visitor, employerId, cancellation) is not { } employer) return NotFound();
        var people = records.PeopleSeenBy(visitor, employerId).Select(person => person.Id);
        var from = employer.Today.AddDays(-Certification.Reminders.DaysLate);
        var reminders = await records.Reminders.AsNoTracking()
            .Where(row => row.MailId == null && row.ExpiresOn >= from && people.Contains(row.PersonId))
            .OrderByDescending(row => row.MadeAt).Take(Most).ToListAsync(cancellation);
        var told = new List<EmployedPerson>();
        var held = new List<HeldCertification>();
        foreach (var ids in reminders.Select(row => row.PersonId).Distinct().Chunk(PersonFileQueries.MostFiles))
        {
            told.AddRange(await records.EmployedAsync(ids, employerId, employer.Today, cancellation));
            held.AddRange(await records.HeldCertificationsAsync(ids, cancellation));
        }

        var onHold = Holds.On(await records.HoldsOfAsync(people, cancellation), employer.Today).Select(hold => hold.PersonId).Distinct().Take(PersonFileQueries.MostFiles);
        var notices = await (from row in records.ClassInvitations.AsNoTracking()
                             where row.MailId == null && row.HeldOn >= employer.Today && people.Contains(row.PersonId)
                                 && !records.ClassInvitations.Any(later => later.ClassId == row.ClassId && later.PersonId == row.PersonId && later.Sequence > row.Sequence)
                             join day in records.Classes on row.ClassId equals day.Id
                             join site in records.Sites on day.SiteId equals site.Id
                             orderby row.HeldOn, row.Id
                             select new { Row = row, day.CourseId, site.Name }).Take(PersonFileQueries.MostFiles).ToListAsync(cancellation);
        var invited = await records.EmployedAsync([.. notices.Select(notice => notice.Row.PersonId).Distinct()], employerId, employer.Today, cancellation);
        return View(CrewListsPage.Of(employer, told, held, reminders, shelf.Courses.Titles(HttpContext.PageLanguageOf())) with
        {
            Classes = CrewListsPage.ClassesOf(invited, notices.Select(notice => (notice.Row, notice.CourseId, notice.Name))),
            OnHold = await records.EmployedAsync(onHold, employerId, employer.Today, cancellation),
        });
    }
}
