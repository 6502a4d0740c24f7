using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
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

    /// <summary>The list, filtered. Standing is worked out, never stored: every certification that the filter leaves is read, in batches.</summary>
    [HttpGet("/{language:language}/programme/standing")]
    public async Task<IActionResult> List(HeldFilter filter, int? page, CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        var lines = await LinesAsync(filter, today, cancellation);
        var counts = lines.CountBy(line => line.Standing).ToDictionary();
        var fitting = lines.Where(line => filter.Standing is null || line.Standing == filter.Standing)
            .OrderBy(line => line.ExpiresOn).ThenBy(line => line.PersonId).ThenBy(line => line.SchemeId, StringComparer.Ordinal).ToList();
        var turning = Turning.To(page, fitting.Count, Address(filter));
        var shown = fitting.Skip(turning.Before).Take(Turning.Rows).ToList();
        var employers = await records.Employers.OrderBy(employer => employer.NameKey).Take(MostEmployers)
            .Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        return View(new HeldPage(
            today, counts, fitting.Count, shown, await records.NamesOfAsync(shown.Select(line => line.PersonId), today, cancellation),
            shelf.Courses.Titles(HttpContext.PageLanguageOf()), employers.ConvertAll(employer => (employer.Id, employer.Name)),
            [.. shelf.Courses.Select(course => course.Id)], filter, turning));
    }

    private async Task<List<HeldLine>> LinesAsync(HeldFilter filter, DateOnly today, CancellationToken cancellation)
    {
        var all = filter.Employer is { } employerId
            ? records.HeldCertificationsOfEmployerAsync(employerId, today, cancellation)
            : records.AllHeldCertificationsAsync(cancellation);
        var lines = new List<HeldLine>();
        await foreach (var held in all)
        {
            if (!string.IsNullOrEmpty(filter.Scheme) && held.SchemeId != filter.Scheme) continue;
            if (Standings.On(held, today) is { } standing && Standings.ExpiresOn(held, today) is { } expiresOn)
                lines.Add(new(held.PersonId, held.SchemeId, standing, expiresOn));
        }

        return lines;
    }

    private string Address(HeldFilter filter) =>
        $"/{HttpContext.PageLanguageOf().Tag()}/programme/standing?employer={filter.Employer}"
        + $"&scheme={Uri.EscapeDataString(filter.Scheme ?? "")}&standing={filter.Standing}&";
}
