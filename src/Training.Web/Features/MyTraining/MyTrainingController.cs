using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Appeals;
using Training.Web.Features.Lives;
using Training.Web.Features.Programme;
using Training.Web.Features.TrainingChanges;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.MyTraining;

/// <summary>A worker's own pages: how I stand and what comes next, my courses, my certificates.</summary>
public sealed class MyTrainingController(
    RecordsContext records, CourseShelf shelf, TrainingChangeReading changes, OurProvider provider, TimeProvider clock,
    IStringLocalizer<AppealText> appealText) : Controller
{
    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>How I stand under every scheme, and what to do next by when.</summary>
    [HttpGet("/{language:language}/my")]
    public async Task<IActionResult> Overview(CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var all = shelf.Courses;
        var used = shelf.Used.Select(course => course.Id).ToHashSet(StringComparer.Ordinal);
        var site = await records.FindSiteAsync(visitor.PersonId, visitor.Today, cancellation);
        var read = await records.ReadPartsAsync(all, visitor.PersonId, site?.Id, cancellation);
        var open = await records.OpenSittingsOfAsync(visitor.PersonId, cancellation);
        // One file serves every scheme: only the rules differ.
        var file = all.Count == 0 ? null : await records.FindCaseFileAsync(visitor.PersonId, all[0].Scheme, cancellation);
        // What somebody holds is told also where the provider no longer uses its course.
        var told = all.Where(course => used.Contains(course.Id) || file?.Held.Any(held => held.SchemeId == course.Scheme.Id) == true);
        var lines = file is null ? [] : told.Select(course => SchemeLine.Of(
            course, all, file with { Scheme = course.Scheme }, visitor.Today, Language, read[course.Id].Count, open));
        var titles = all.ToDictionary(course => course.Scheme.Id, course => course.Scheme.Words[Language].Title, StringComparer.Ordinal);
        var numbers = site is null ? null : await records.FindEmergencyNumbersAsync(site.Id, cancellation);
        var holds = await records.HoldsOfAsync(visitor.PersonId, cancellation);
        return View(MyPage.Of(
            lines, await records.PapersOfAsync(visitor.PersonId, titles, clock.GetUtcNow(), cancellation),
            await changes.OfAsync(visitor.PersonId, visitor.Today, Language, cancellation),
            await records.AppealsOfAsync(visitor.PersonId, cancellation), new(appealText, all.Titles(Language), new Dictionary<Guid, string>()),
            provider.DayOf(clock.GetUtcNow()), site is not null && numbers is not null ? (site.Name, numbers) : null) with
        {
            Holds = [.. Holds.On(holds, visitor.Today)],
            Reviewed = [.. holds.Where(hold => hold.Conclusion?.On >= visitor.Today.AddDays(-MyPage.DaysConcluded)).OrderByDescending(hold => hold.Conclusion?.On)],
        });
    }

    /// <summary>One course: what I read, my quiz, my practical.</summary>
    [HttpGet("/{language:language}/my/courses/{courseId}")]
    public async Task<IActionResult> Course(string courseId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindOfferedAsync(shelf, visitor.PersonId, courseId, cancellation) is not { } course) return NotFound();
        var file = await records.FindCaseFileAsync(visitor.PersonId, course.Scheme, cancellation)
            ?? throw new InvalidOperationException($"Account {visitor.AccountId} belongs to nobody.");
        var site = await records.FindSiteAsync(visitor.PersonId, visitor.Today, cancellation);
        var read = (await records.ReadPartsAsync([course], visitor.PersonId, site?.Id, cancellation))[course.Id];
        var open = await records.OpenSittingsOfAsync(visitor.PersonId, cancellation);
        var line = SchemeLine.Of(course, shelf.Courses, file, visitor.Today, Language, read.Count, open);
        var sent = await records.SentSittingsOfAsync(visitor.PersonId, cancellation);
        return View(MyCoursePage.Of(course, line, file, read, sent,
            OwnChange.Of(course, shelf.FindComing(courseId), shelf.Courses, file, visitor.Today, Language), await LifeAsync(course, cancellation), visitor.Zone, Language));
    }

    private async Task<LifeView?> LifeAsync(Course course, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var kept = (await records.KeptCertificationsAsync(visitor.PersonId, cancellation)).FirstOrDefault(one => one.SchemeId == course.Scheme.Id);
        if (kept is null) return null;
        var names = await records.NamesOfAsync(LifeView.LeadsIn([kept]), visitor.Today, cancellation);
        return LifeView.Of(kept, visitor.Today, LifeReader.Holder, names);
    }

    /// <summary>Keeps that a part was read, and leads to the next one; after the last to the course.</summary>
    [HttpPost("/{language:language}/my/courses/{courseId}/modules/{moduleId}/reading")]
    public async Task<IActionResult> Read(string courseId, string moduleId, [FromForm] string? text, CancellationToken cancellation)
    {
        var modules = shelf.Find(courseId)?.Modules ?? [];
        var index = modules.Index().FirstOrDefault(part => part.Item.Id == moduleId, (-1, null!)).Index;
        if (index < 0) return NotFound();
        if (text is null) return BadRequest();
        // The text that was on the page, which may be older than the one that serves now.
        if (await records.FindCourseIdAsync(text, cancellation) != courseId) return NotFound();
        var (visitor, now) = (HttpContext.Visitor(), clock.GetUtcNow());
        var reading = new ModuleReading
        {
            PersonId = visitor.PersonId, CourseHash = text, ModuleId = moduleId, CourseId = courseId, Language = Language, ReadAt = now,
        };
        await records.KeepAsync(reading, cancellation);
        if (modules[index].IsOfSite && await records.FindSiteAsync(visitor.PersonId, visitor.Today, cancellation) is { } site)
        {
            var there = new SiteReading
            {
                PersonId = visitor.PersonId, SiteId = site.Id, CourseHash = text, ModuleId = moduleId, CourseId = courseId, Language = Language, ReadAt = now,
            };
            await records.KeepAsync(there, cancellation);
        }

        var tag = Language.Tag();
        return this.SeeOther(index + 1 < modules.Count ? $"/{tag}/courses/{courseId}/{modules[index + 1].Id}" : $"/{tag}/my/courses/{courseId}");
    }

    /// <summary>The file of one of my certificates, in the language of the page.</summary>
    [HttpGet("/{language:language}/my/certificates/{serial}")]
    public async Task<IActionResult> Certificate(string serial, CancellationToken cancellation)
    {
        if (!Serial.TryParse(serial, out var read)) return NotFound();
        var file = await records.FindCertificateAsync(HttpContext.Visitor().PersonId, read, Language, cancellation);
        if (file is null) return NotFound();
        // Shown, not only saved: at a gate it is opened on a phone.
        Response.Headers.ContentDisposition = $"inline; filename=\"{read}-{Language.Tag()}.pdf\"";
        return File(file.Bytes.ToArray(), "application/pdf");
    }
}
