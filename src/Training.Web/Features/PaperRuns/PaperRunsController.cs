using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Documents.PocketCards;
using Training.Documents.Volumes;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.PocketCards;
using Training.Web.Features.Shared;
using Training.Web.Features.Workforce;
using Training.Web.Languages;
using Training.Web.Problems;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.PaperRuns;

/// <summary>Many papers at once: started by a lead, made by a job, printed in volumes.</summary>
[Route("/{language:language}/programme/paper-runs")]
public sealed class PaperRunsController(
    RecordsContext records, CourseShelf shelf, OurProvider provider, PocketCardReading cards, PrintedPapers papers, IStringLocalizer<PaperRunText> localizer,
    TimeProvider clock) : Controller
{
    private const int MostListed = 50;
    private const int MostEmployers = 1_000;
    private const int MostFailed = 500;

    private readonly IStringLocalizer<PaperRunText> Text = localizer;

    private string Here => $"/{HttpContext.PageLanguageOf().Tag()}/programme/paper-runs";

    /// <summary>The last runs, and the form of the next.</summary>
    [HttpGet("")]
    public async Task<IActionResult> List(CancellationToken cancellation) =>
        View(await ListAsync(new() { Id = Guid.CreateVersion7(clock.GetUtcNow()) }, cancellation));

    /// <summary>Starts a run; the same form again is the same run.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Start(PaperRunForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear(); // what could not be read is told in our own words
        if (form.Kind is not { } kind || !Enum.IsDefined(kind)) ModelState.AddModelError(nameof(form.Kind), Text["KindMissing"]);
        var isEmployer = form.EmployerId is not { } id || await records.Employers.AnyAsync(employer => employer.Id == id, cancellation);
        if (!isEmployer) ModelState.AddModelError(nameof(form.EmployerId), Text["EmployerMissing"]);
        if (form.SchemeId is { Length: > 0 } scheme && shelf.Used.All(course => course.Scheme.Id != scheme))
            ModelState.AddModelError(nameof(form.SchemeId), Text["SchemeMissing"]);
        if (provider.Address.Length == 0) ModelState.AddModelError(nameof(form.Kind), Text["AddressMissing"]);
        var reason = ModelState.ReadLine(nameof(form.Reason), form.Reason, Bounds.Reason, Text["ReasonMissing"]);
        if (!ModelState.IsValid) return this.Mend("List", await ListAsync(form, cancellation));
        var run = new PaperRun
        {
            Id = form.Id, Kind = form.Kind ?? default, EmployerId = form.EmployerId, SchemeId = form.SchemeId is { Length: > 0 } ? form.SchemeId : null, Reason = reason,
            LeadId = HttpContext.Visitor().PersonId, StartedAt = clock.GetUtcNow(),
        };
        if (await records.StartAsync(run, HttpContext.Visitor().Today, cancellation) is not Kept.Refused refused) return this.SeeOther($"{Here}/{form.Id}");
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Kind), problem);
        return this.Mend("List", await ListAsync(form, cancellation));
    }

    /// <summary>How far one run has come, and its volumes.</summary>
    [HttpGet("{runId:guid}")]
    public async Task<IActionResult> Show(Guid runId, CancellationToken cancellation)
    {
        if (await records.FindProgressAsync(runId, cancellation) is not { } progress) return NotFound();
        var visitor = HttpContext.Visitor();
        var language = HttpContext.PageLanguageOf();
        var failed = await records.FailedPapersAsync(runId, MostFailed, cancellation);
        var names = await records.NamesOfAsync(failed.Select(paper => paper.PersonId).Append(progress.Run.LeadId), visitor.Today, cancellation);
        var employer = progress.Run.EmployerId is { } id ? await records.Employers.Where(row => row.Id == id).Select(row => row.Name).SingleAsync(cancellation) : null;
        return View(new PaperRunPage(
            progress, employer, progress.Run.SchemeId is { } schemeId ? shelf.TitleOf(schemeId, language) : null, names.GetValueOrDefault(progress.Run.LeadId),
            [
                .. failed.Select(paper => (
                    names.GetValueOrDefault(paper.PersonId), shelf.TitleOf(paper.SchemeId, language),
                    ProblemText.Line(paper.Problem, CultureInfo.CurrentUICulture))),
            ],
            TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone)));
    }

    /// <summary>One volume for the printer: so many papers of the run behind one another, as far as they are made.</summary>
    [HttpGet("{runId:guid}/volumes/{number:int}/{paperLanguage:language}")]
    public async Task<IActionResult> Volume(Guid runId, int number, string paperLanguage, CancellationToken cancellation)
    {
        if (FindPositions(number) is not var (first, last) || LanguageTags.Find(paperLanguage) is not { } language) return NotFound();
        var files = await records.FilesOf(runId, first, last, language).ToListAsync(cancellation);
        if (files.Count == 0) return NotFound();
        Response.Headers.CacheControl = "no-store";
        return File(PaperVolume.Write(files, Text["VolumeTitle", number]), "application/pdf", $"papers-{number}-{paperLanguage}.pdf");
    }

    /// <summary>The pocket cards of one volume, eight to a sheet: of those papers that are current. Where some cannot be printed, they are named
    /// first; <paramref name="others"/> prints the others.</summary>
    [HttpGet("{runId:guid}/volumes/{number:int}/{paperLanguage:language}/cards.pdf")]
    public async Task<IActionResult> Cards(Guid runId, int number, string paperLanguage, bool others, CancellationToken cancellation)
    {
        if (FindPositions(number) is not var (first, last) || LanguageTags.Find(paperLanguage) is not { } language) return NotFound();
        var serials = await records.SerialsOfAsync(runId, first, last, cancellation);
        if (serials.Count == 0) return NotFound();
        var pages = await cards.ReadAsync(serials, personId: null, language, cancellation);
        var problems = new List<Problem>();
        var printed = pages.Where(page => CanPrint(page, problems)).ToList();
        if (pages.Count == 0) problems.Add(new(PocketCardProblems.NoneCurrent, Place.Of(Text["Volume", first, last])));
        if (printed.Count == 0) return PrintedPapers.CannotPrint(this, problems);
        if (printed.Count < pages.Count && !others)
            return PrintedPapers.CannotPrint(this, problems, new($"{Here}/{runId}/volumes/{number}/{paperLanguage}/cards.pdf?others=true", printed.Count));
        return File(PocketCardWriter.WriteSheet(printed, papers.Size, papers.Faces), "application/pdf", $"cards-{number}-{paperLanguage}.pdf");
    }

    // Positions of the papers of a volume; null where no run has so many.
    private static (int First, int Last)? FindPositions(int number) =>
        number < 1 || number > PaperRunKeeping.MostItems / PaperVolume.MostPapers
            ? null
            : (((number - 1) * PaperVolume.MostPapers) + 1, number * PaperVolume.MostPapers);

    // Of a hundred cards, which: by the serial before the field.
    private bool CanPrint(PocketCardPage page, List<Problem> problems)
    {
        var own = new List<Problem>();
        var canPrint = PocketCardChecks.CanPrint(page, papers.Faces, own);
        problems.AddRange(own.Select(problem => problem with { Place = Place.Of($"{page.Serial}, {problem.Place.Part}") }));
        return canPrint;
    }

    private async Task<PaperRunsPage> ListAsync(PaperRunForm form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var language = HttpContext.PageLanguageOf();
        var runs = await records.RunsAsync(MostListed, cancellation);
        var employers = await records.Employers.OrderBy(employer => employer.NameKey).Take(MostEmployers)
            .Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        return new(
            runs, await records.NamesOfAsync(runs.Select(run => run.Run.LeadId), visitor.Today, cancellation), employers.ConvertAll(employer => (employer.Id, employer.Name)),
            [.. shelf.Used.Select(course => (course.Scheme.Id, course.Scheme.Words[language].Title))], TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone), form);
    }
}
