using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.Rosters;

/// <summary>An employer's roster: sent as a file, compared, and applied.</summary>
[Route("/{language:language}/employers/{employerId:guid}")]
public sealed class RostersController(RecordsContext records, RosterFile file, TimeProvider clock) : Controller
{
    private const int MostUploads = 10;

    /// <summary>What a roster is made of, and the form.</summary>
    [HttpGet("roster")]
    public async Task<IActionResult> Form(Guid employerId, CancellationToken cancellation) =>
        await FindPageAsync(employerId, Guid.CreateVersion7(), cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Keeps a file; it changes nobody.</summary>
    [HttpPost("roster")]
    [RosterSizeLimit]
    [RequestFormLimits(MultipartBodyLengthLimit = RosterSizeLimitAttribute.MostBytes)]
    public async Task<IActionResult> Send(Guid employerId, RosterForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await FindPageAsync(employerId, form.Id, cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        var problem = form.File switch
        {
            null or { Length: 0 } => new Problem(RosterProblems.FileMissing, Place.Of("file")),
            { Length: > RosterReader.MostBytes } => new Problem(
                RosterProblems.FileTooLarge, Place.Of("file"), RosterReader.MostMegabytes.ToString(CultureInfo.InvariantCulture)),
            _ => null,
        };
        if (problem is not null)
        {
            ModelState.Add(nameof(form.File), problem);
            return this.Mend("Form", page);
        }

        var upload = await ReadAsync(employerId, form, cancellation);
        return this.SeeOther(PathOf(employerId, await records.KeepAsync(upload, cancellation) switch
        {
            Kept.AlreadyStored stored => stored.Id,
            _ => upload.Id,
        }));
    }

    /// <summary>What a file would change, what is to be mended in it, or what came of it.</summary>
    [HttpGet("roster/uploads/{uploadId:guid}")]
    public async Task<IActionResult> Show(Guid employerId, Guid uploadId, CancellationToken cancellation)
    {
        if (await FindAsync(employerId, uploadId, cancellation) is not { } found) return NotFound();
        return found.Upload.AppliedAt is { } at
            ? View("Applied", await AppliedAsync(found, at, cancellation))
            : View("Difference", await DifferenceAsync(found, cancellation));
    }

    /// <summary>Everything that is to be mended in a file.</summary>
    [HttpGet("roster/uploads/{uploadId:guid}/findings.csv")]
    public async Task<IActionResult> Findings(Guid employerId, Guid uploadId, CancellationToken cancellation)
    {
        if (await FindAsync(employerId, uploadId, cancellation) is not { } found) return NotFound();
        return Csv(file.Write((await DifferenceAsync(found, cancellation)).Problems), "roster-findings.csv");
    }

    /// <summary>Applies a file, once, where what was looked at is still what it changes.</summary>
    [HttpPost("roster/uploads/{uploadId:guid}/application")]
    public async Task<IActionResult> Apply(Guid employerId, Guid uploadId, RosterApplicationForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await FindAsync(employerId, uploadId, cancellation) is not { } found) return NotFound();
        if (found.Upload.AppliedAt is not null) return this.SeeOther(PathOf(employerId, uploadId));
        var read = Read(found);
        if (read.Roster is null) return this.Mend("Difference", await DifferenceAsync(found, cancellation));
        var kept = await records.ApplyAsync(
            new(uploadId, employerId, read.Roster, Latest(found.Sites), form.Fingerprint ?? "", form.IsWhole ? RosterScope.Whole : RosterScope.Part,
                HttpContext.Visitor().PersonId, clock.GetUtcNow()),
            cancellation);
        if (kept is not Kept.Refused) return this.SeeOther(PathOf(employerId, uploadId));
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("Difference", await DifferenceAsync(found, cancellation) with { IsWhole = form.IsWhole, IsAnother = true });
    }

    /// <summary>The employer's people as a file that can be sent back.</summary>
    [HttpGet("roster.csv")]
    public async Task<IActionResult> Export(Guid employerId, CancellationToken cancellation)
    {
        if (await FindEmployerAsync(employerId, cancellation) is null) return NotFound();
        var people = await records.RosterPeopleAsync(employerId, Latest(await records.SitesOfAsync(employerId, cancellation)), cancellation);
        var present = people.Where(person => person.IsEmployed).OrderBy(person => person.Name, StringComparer.CurrentCulture)
            .ThenBy(person => person.Badge, StringComparer.Ordinal);
        return Csv(file.Write(present), $"roster-{HttpContext.Visitor().Today.Iso()}.csv");
    }

    /// <summary>A file to start from.</summary>
    [HttpGet("roster/sample.csv")]
    public async Task<IActionResult> Sample(Guid employerId, CancellationToken cancellation)
    {
        if (await FindEmployerAsync(employerId, cancellation) is null) return NotFound();
        var sites = await records.SitesOfAsync(employerId, cancellation);
        return Csv(file.WriteSample(sites.Count > 0 ? sites[0].Name : "", Latest(sites)), "roster-sample.csv");
    }

    private FileContentResult Csv(byte[] bytes, string name) => File(bytes, "text/csv; charset=utf-8", name);

    private string PathOf(Guid employerId, Guid uploadId) =>
        $"/{HttpContext.PageLanguageOf().Tag()}/employers/{employerId}/roster/uploads/{uploadId}";

    private async Task<RosterUpload> ReadAsync(Guid employerId, RosterForm form, CancellationToken cancellation)
    {
        using var bytes = new MemoryStream();
        await form.File!.CopyToAsync(bytes, cancellation); // not null: the caller looked
        var content = bytes.ToArray();
        var name = FormValues.ReadLine(form.File.FileName);
        return new()
        {
            Id = Guid.CreateVersion7(), FormId = form.Id, EmployerId = employerId, SentById = HttpContext.Visitor().PersonId, SentAt = clock.GetUtcNow(),
            FileName = name.Length <= Bounds.Name ? name : name[..Bounds.Name], Content = content, Sha256 = Convert.ToHexStringLower(SHA256.HashData(content)),
        };
    }

    private Task<Employer?> FindEmployerAsync(Guid employerId, CancellationToken cancellation) =>
        records.EmployersSeenBy(HttpContext.Visitor()).AsNoTracking().SingleOrDefaultAsync(row => row.Id == employerId, cancellation);

    private async Task<RosterPage?> FindPageAsync(Guid employerId, Guid formId, CancellationToken cancellation)
    {
        if (await FindEmployerAsync(employerId, cancellation) is not { } employer) return null;
        var people = await records.PeopleSeenBy(HttpContext.Visitor(), employerId).CountAsync(cancellation);
        var uploads = await records.RosterUploads.Where(row => row.EmployerId == employerId).OrderByDescending(row => row.SentAt).Take(MostUploads)
            .Select(row => new RosterUploadLine(row.Id, row.FileName, row.SentAt, row.AppliedAt)).ToListAsync(cancellation);
        return new(employerId, employer.Name, people, await records.SitesOfAsync(employerId, cancellation), formId, uploads);
    }

    private async Task<FoundUpload?> FindAsync(Guid employerId, Guid uploadId, CancellationToken cancellation)
    {
        if (await FindEmployerAsync(employerId, cancellation) is not { } employer) return null;
        var upload = await records.RosterUploads.AsNoTracking().SingleOrDefaultAsync(row => row.Id == uploadId && row.EmployerId == employerId, cancellation);
        return upload is null ? null : new(employer, upload, await records.SitesOfAsync(employerId, cancellation));
    }

    private RosterRead Read(FoundUpload found) => RosterReader.Read(found.Upload.Content, found.Sites, TodayOn);

    private async Task<RosterDifferencePage> DifferenceAsync(FoundUpload found, CancellationToken cancellation)
    {
        var read = Read(found);
        var difference = read.Roster is null ? null
            : RosterDifference.Between(await records.RosterPeopleAsync(found.Employer.Id, Latest(found.Sites), cancellation), read.Roster);
        if (difference is { Problems.Count: > 0 }) (read, difference) = (read with { Problems = difference.Problems }, null);
        return new(
            found.Employer.Id, found.Employer.Name, found.Upload.Id, found.Upload.FileName, difference, read.Problems, read.IgnoredColumns,
            IsWhole: false, IsAnother: false);
    }

    private async Task<RosterAppliedPage> AppliedAsync(FoundUpload found, DateTimeOffset at, CancellationToken cancellation)
    {
        var (visitor, upload) = (HttpContext.Visitor(), found.Upload);
        var name = upload.AppliedById is { } by ? await records.FindNameAsync(by, visitor.Today, cancellation) : null;
        return new(
            found.Employer.Id, found.Employer.Name, upload.FileName,
            TimeZoneInfo.ConvertTime(at, TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone)), name?.Text,
            upload.NewCount, upload.ReturningCount, upload.ChangedCount, upload.LeavingCount);
    }

    private DateOnly TodayOn(Records.Site site) => DecisionDay.On(clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(site.Zone));

    // One day for the whole file: what ended before it is over on every site.
    private DateOnly Latest(IReadOnlyList<Records.Site> sites) => sites.Count == 0 ? HttpContext.Visitor().Today : sites.Max(TodayOn);

    private sealed record FoundUpload(Employer Employer, RosterUpload Upload, IReadOnlyList<Records.Site> Sites);
}
