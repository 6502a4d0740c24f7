using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Features.Shared;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Held;

/// <summary>What is held, lapsed, suspended and withdrawn, over all employers.</summary>
public sealed class HeldController(RecordsContext records, CourseShelf shelf) : Controller
{
    private const int MostEmployers = 1000;

    /// <summary>The list, filtered. Standing is worked out in the database, never stored.</summary>
    [HttpGet("/{language:language}/programme/standing")]
    public async Task<IActionResult> List(HeldFilter filter, int? page, CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        var all = Standings(filter, today);
        // Distinct, so that engines which group by no looked-up value group rows that are there.
        var counts = await all.Select(row => new { row.PersonId, row.SchemeId, row.Standing }).Distinct()
            .GroupBy(row => row.Standing).Select(rows => new { Standing = rows.Key, Count = rows.Count() })
            .ToDictionaryAsync(row => row.Standing, row => row.Count, cancellation);
        var count = filter.Standing is { } standing ? counts.GetValueOrDefault(standing) : counts.Values.Sum();
        var turning = Turning.To(page, count, Address(filter));
        var shown = await all.Where(row => filter.Standing == null || row.Standing == filter.Standing)
            .OrderBy(row => row.ExpiresOn).ThenBy(row => row.PersonId).ThenBy(row => row.SchemeId)
            .Skip(turning.Before).Take(Turning.Rows)
            .Select(row => new HeldLine(row.PersonId, row.SchemeId, row.Standing, row.ExpiresOn)).ToListAsync(cancellation);
        var employers = await records.Employers.OrderBy(employer => employer.NameKey).Take(MostEmployers)
            .Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        return View(new HeldPage(
            today, counts, count, shown, await records.NamesOfAsync(shown.Select(line => line.PersonId), today, cancellation),
            shelf.Courses.Titles(HttpContext.PageLanguageOf()), employers.ConvertAll(employer => (employer.Id, employer.Name)),
            [.. shelf.Courses.Select(course => course.Id)], filter, turning));
    }

    private IQueryable<StandingRow> Standings(HeldFilter filter, DateOnly today)
    {
        var all = records.StandingsOn(today);
        if (!string.IsNullOrEmpty(filter.Scheme)) all = all.Where(row => row.SchemeId == filter.Scheme);
        if (filter.Employer is { } employerId)
        {
            all = all.Where(row => records.Employments.Any(employment => employment.PersonId == row.PersonId && employment.EmployerId == employerId
                && employment.StartsOn <= today && (employment.EndsOn == null || employment.EndsOn >= today)));
        }

        return all;
    }

    private string Address(HeldFilter filter) =>
        $"/{HttpContext.PageLanguageOf().Tag()}/programme/standing?employer={filter.Employer}"
        + $"&scheme={Uri.EscapeDataString(filter.Scheme ?? "")}&standing={filter.Standing}&";
}
