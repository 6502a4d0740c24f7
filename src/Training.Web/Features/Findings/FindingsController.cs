using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Findings;

/// <summary>The courses as a lead sees them: which text serves, and what to mend in the files.</summary>
public sealed class FindingsController(
    RecordsContext records, CourseShelf shelf, ProviderWatch watch, TimeProvider clock, IStringLocalizer<FindingText> text) : Controller
{
    private const int VersionLength = 8;

    /// <summary>All courses with their findings.</summary>
    [HttpGet("/{language:language}/programme/courses")]
    public async Task<IActionResult> List(CancellationToken cancellation) => View(await PageAsync(Guid.CreateVersion7(), null, cancellation));

    /// <summary>Keeps which courses the provider uses.</summary>
    [HttpPost("/{language:language}/programme/course-choices")]
    public async Task<IActionResult> Choose(ChoiceForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        // In the order of the shelf; what is not on it cannot be chosen.
        var chosen = shelf.Courses.Select(course => course.Id).Where(form.CourseIds.Contains).ToList();
        if (chosen.Count == 0)
        {
            ModelState.AddModelError(nameof(form.CourseIds), text["ChooseOne"]);
            return this.Mend("List", await PageAsync(form.Id, chosen, cancellation));
        }

        var choice = new CourseChoice { Id = form.Id, LeadId = HttpContext.Visitor().PersonId, SinceAt = clock.GetUtcNow(), CourseIds = chosen };
        await records.KeepAsync(choice, cancellation);
        await watch.ReadAsync(cancellation);
        return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/courses");
    }

    private async Task<FindingsPage> PageAsync(Guid formId, IReadOnlyList<string>? chosen, CancellationToken cancellation)
    {
        var (language, courses, findings) = (HttpContext.PageLanguageOf(), shelf.Courses, shelf.Findings);
        var hashes = courses.Select(course => course.Hash).ToList();
        var since = await records.CoursesInForce.Where(row => hashes.Contains(row.Hash))
            .GroupBy(row => row.Hash).Select(group => new { Hash = group.Key, SinceAt = group.Max(row => row.SinceAt) })
            .ToDictionaryAsync(row => row.Hash, row => row.SinceAt, cancellation);
        var used = chosen?.ToHashSet(StringComparer.Ordinal) ?? shelf.Used.Select(course => course.Id).ToHashSet(StringComparer.Ordinal);
        var waiting = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var course in courses) waiting[course.Id] = course.Questions.Count - (await records.ReviewsOfAsync(course, cancellation)).Count;
        var served = courses.Select(course => new ServedCourse(
            course.Id, course.Scheme.Words[language].Title, course.Scheme.Kind, course.Hash[..VersionLength],
            since.TryGetValue(course.Hash, out var at) ? at : null, course.Scheme.ReviewBy, used.Contains(course.Id), waiting[course.Id],
            [.. findings.Where(finding => FolderOf(finding) == course.Id)])).ToList();
        var others = findings.Where(finding => served.TrueForAll(course => course.Id != FolderOf(finding))).ToList();
        return new(served, others, findings.Count, formId, await records.CourseChoices.AnyAsync(cancellation));
    }

    private static string? FolderOf(Problem finding) => finding.Place.File?.Split('/')[0];
}
