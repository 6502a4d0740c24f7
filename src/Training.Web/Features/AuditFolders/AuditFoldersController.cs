using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Files;
using Training.Web.Features.Shared;
using Training.Web.Features.Workforce;
using Training.Web.Languages;

namespace Training.Web.Features.AuditFolders;

/// <summary>Makes folders for auditors: an employer of its own people, a programme lead of anybody.</summary>
public sealed class AuditFoldersController(
    RecordsContext records, AuditFolderWriter writer, IStringLocalizer<AuditFoldersText> text, TimeProvider clock) : Controller
{
    private const int MostListed = 50;
    private const int MostEmployers = 1000;

    /// <summary>Makes a folder about an employer's people and sends it once it is whole.</summary>
    [HttpPost("/{language:language}/employers/{employerId:guid}/audit-folders")]
    public async Task<IActionResult> Make(Guid employerId, FilesForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var employer = await records.FindEmployerAsync(visitor, employerId, cancellation);
        if (employer is null || !employer.TryFindSite(form.Site, out var siteId)) return NotFound();
        if (form.FormId == Guid.Empty) return BadRequest();
        var back = $"/{HttpContext.PageLanguageOf().Tag()}/employers/{employerId}/files?from={form.From}&through={form.Through}&site={form.Site}&badge={Uri.EscapeDataString(form.Badge ?? "")}";
        if (!form.TryReadDays(employer.Today, out var from, out var through)) return this.SeeOther(back);
        Guid? personId = null;
        if (!string.IsNullOrWhiteSpace(form.Badge))
        {
            personId = await records.FindPersonByBadgeAsync(employerId, form.Badge, cancellation);
            if (personId is null) return this.SeeOther($"{back}&told=badge");
        }

        // An employer sees the people whom it employs today; a lead all whom it employed on any of those days.
        var isFull = visitor.Is(Role.ProgrammeLead);
        var scope = new AuditScope(employerId, siteId, personId, from, through, isFull ? null : employer.Today);
        return await MakeAsync(form.FormId, scope, isFull, employer.Name, back, cancellation);
    }

    /// <summary>What a lead can make, and what was made by anybody.</summary>
    [HttpGet("/{language:language}/programme/audit-folders")]
    public async Task<IActionResult> List(FilesForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var isGood = form.TryReadDays(visitor.Today, out var from, out var through);
        var made = await records.AuditFoldersAsync(null, MostListed, cancellation);
        var employers = await records.Employers.OrderBy(employer => employer.NameKey).Take(MostEmployers)
            .Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        var page = new AuditFoldersPage(
            Guid.CreateVersion7(clock.GetUtcNow()), isGood, from, through, form.Told == "size", employers.ConvertAll(employer => (employer.Id, employer.Name)), made,
            await records.NamesOfAsync(made.Select(folder => folder.MadeById), visitor.Today, cancellation), TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone));
        return isGood ? View(page) : this.Mend("List", page);
    }

    /// <summary>Makes a folder about everybody, or about all people of an employer, and sends it once it is whole.</summary>
    [HttpPost("/{language:language}/programme/audit-folders")]
    public async Task<IActionResult> MakeAny(Guid? employer, FilesForm form, CancellationToken cancellation)
    {
        if (form.FormId == Guid.Empty) return BadRequest();
        var name = employer is null ? null : await records.Employers.Where(row => row.Id == employer).Select(row => row.Name).SingleOrDefaultAsync(cancellation);
        if (employer is not null && name is null) return NotFound();
        var back = $"/{HttpContext.PageLanguageOf().Tag()}/programme/audit-folders?from={form.From}&through={form.Through}";
        if (!form.TryReadDays(HttpContext.Visitor().Today, out var from, out var through)) return this.SeeOther(back);
        return await MakeAsync(form.FormId, new(employer, null, null, from, through, null), isFull: true, name ?? text["Everybody"], back, cancellation);
    }

    private async Task<IActionResult> MakeAsync(Guid id, AuditScope scope, bool isFull, string whose, string back, CancellationToken cancellation)
    {
        var language = HttpContext.PageLanguageOf();
        var file = SheetFiles.NewFile();
        try
        {
            var written = await writer.WriteAsync(
                records, scope, isFull, text["FolderOf", whose, scope.From.Iso(), scope.Through.Iso()], language, file, cancellation);
            if (written is null) return await RefusedAsync();
            var kept = await records.KeepAsync(
                new AuditFolder
                {
                    Id = id, MadeById = HttpContext.Visitor().PersonId, MadeAt = clock.GetUtcNow(), IsFull = isFull, EmployerId = scope.EmployerId, SiteId = scope.SiteId,
                    PersonId = scope.PersonId, StartsOn = scope.From, EndsOn = scope.Through, Language = language, People = written.People, Files = written.Files,
                    Bytes = written.Bytes, IndexSha256 = written.IndexSha256,
                },
                cancellation);
            if (kept is Kept.Refused)
            {
                await file.DisposeAsync();
                return Conflict();
            }

            file.Position = 0;
            Response.Headers.Append("X-Index-SHA256", written.IndexSha256);
            return File(file, "application/zip", $"audit-{scope.From.Iso()}-{scope.Through.Iso()}.zip");
        }
        catch (AuditFolderTooLargeException)
        {
            return await RefusedAsync();
        }
        catch
        {
            await file.DisposeAsync();
            throw;
        }

        async Task<IActionResult> RefusedAsync()
        {
            await file.DisposeAsync();
            return this.SeeOther($"{back}&told=size");
        }
    }
}
