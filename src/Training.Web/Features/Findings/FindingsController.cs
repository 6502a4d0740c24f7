using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Findings;

/// <summary>The courses as a lead sees them: which text serves, and what to mend in the files.</summary>
public sealed class FindingsController(RecordsContext records, CourseShelf shelf) : Controller
{
    private const int VersionLength = 8;

    /// <summary>All courses with their findings.</summary>
    [HttpGet("/{language:language}/programme/courses")]
    public async Task<IActionResult> List(CancellationToken cancellation)
    {
        var (language, courses, findings) = (HttpContext.PageLanguageOf(), shelf.Courses, shelf.Findings);
        var hashes = courses.Select(course => course.Hash).ToList();
        var since = await records.CoursesInForce.Where(row => hashes.Contains(row.Hash))
            .GroupBy(row => row.Hash).Select(group => new { Hash = group.Key, SinceAt = group.Max(row => row.SinceAt) })
            .ToDictionaryAsync(row => row.Hash, row => row.SinceAt, cancellation);
        var served = courses.Select(course => new ServedCourse(
            course.Id, course.Scheme.Words[language].Title, course.Scheme.Kind, course.Hash[..VersionLength],
            since.TryGetValue(course.Hash, out var at) ? at : null, course.Scheme.ReviewBy,
            [.. findings.Where(finding => FolderOf(finding) == course.Id)])).ToList();
        var others = findings.Where(finding => served.TrueForAll(course => course.Id != FolderOf(finding))).ToList();
        return View(new FindingsPage(served, others, findings.Count));
    }

    private static string? FolderOf(Problem finding) => finding.Place.File?.Split('/')[0];
}
