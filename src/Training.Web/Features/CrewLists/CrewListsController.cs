using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
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
        if (await records.FindWorkforceAsync(visitor, employerId, cancellation) is not { } workforce) return NotFound();
        var people = records.PeopleSeenBy(visitor, employerId).Select(person => person.Id);
        var from = workforce.Today.AddDays(-Certification.Reminders.DaysLate);
        var reminders = await records.Reminders.AsNoTracking()
            .Where(row => row.MailId == null && row.ExpiresOn >= from && people.Contains(row.PersonId))
            .OrderByDescending(row => row.MadeAt).Take(Most).ToListAsync(cancellation);
        return View(CrewListsPage.Of(workforce, reminders, shelf.Courses.Titles(HttpContext.PageLanguageOf())));
    }
}
