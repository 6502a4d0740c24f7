using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.Rosters;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Panels;

/// <summary>A lead opens panels, asks judges, ends rounds and adopts a cut.</summary>
[Route("/{language:language}/programme/panels")]
public sealed class PanelsController(
    RecordsContext records, CourseShelf shelf, PanelReading reading, TimeProvider clock, IStringLocalizer<PanelText> localizer) : Controller
{
    private readonly IStringLocalizer<PanelText> Text = localizer;

    private Language Language => HttpContext.PageLanguageOf();

    private string Here => $"/{Language.Tag()}/programme/panels";

    /// <summary>All panels.</summary>
    [HttpGet("")]
    public async Task<IActionResult> List(CancellationToken cancellation) =>
        View(await ListAsync(new() { Id = Guid.CreateVersion7() }, cancellation));

    /// <summary>Opens a panel on the text in force.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Open(PanelForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        var target = Targets().FirstOrDefault(target => target.Value == form.Target);
        if (target is null) ModelState.AddModelError(nameof(form.Target), Text["TargetMissing"]);
        var purpose = ModelState.ReadLine(nameof(form.Purpose), form.Purpose, Bounds.Reason, Text["PurposeMissing"]);
        var justCompetent = ModelState.ReadLine(nameof(form.JustCompetent), form.JustCompetent, Bounds.Reason, Text["JustCompetentMissing"]);
        var balance = ModelState.ReadLine(nameof(form.Balance), form.Balance, Bounds.Reason, Text["BalanceMissing"]);
        if (ModelState.IsValid && target is not null && shelf.Find(target.CourseId) is { } course)
        {
            var items = await ItemsOfAsync(course, target.TargetId, cancellation);
            if (items.Count == 0)
            {
                ModelState.AddModelError(nameof(form.Target), Text["NothingToRate"]);
                return this.Mend("List", await ListAsync(form, cancellation));
            }

            var kept = await records.KeepAsync(
                new Panel
                {
                    Id = form.Id, CourseId = course.Id, CourseHash = course.Hash, TargetId = target.TargetId, ItemIds = items, Purpose = purpose,
                    JustCompetent = justCompetent, Balance = balance, LeadId = HttpContext.Visitor().PersonId, OpenedAt = clock.GetUtcNow(),
                },
                cancellation);
            return kept is Kept.Refused refused ? Conflict("List", nameof(form.Target), refused, await ListAsync(form, cancellation)) : this.SeeOther($"{Here}/{form.Id}");
        }

        return this.Mend("List", await ListAsync(form, cancellation));
    }

    /// <summary>One panel: its judges, its rounds, what came of them.</summary>
    [HttpGet("{panelId:guid}")]
    public async Task<IActionResult> Show(Guid panelId, CancellationToken cancellation) =>
        await FindAsync(panelId, PanelForms.New(), [], cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Asks one more judge.</summary>
    [HttpPost("{panelId:guid}/judges")]
    public async Task<IActionResult> AddJudge(Guid panelId, JudgeForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await FindAsync(panelId, PanelForms.New() with { Judge = form }, [], cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        var outsider = FormValues.ReadLine(form.OutsiderName);
        if ((form.PersonId is null) == (outsider.Length == 0)) ModelState.AddModelError(nameof(form.OutsiderName), Text["JudgeMissing"]);
        if (form.PersonId is { } person && !await reading.MayJudgeAsync(person, HttpContext.Visitor().Today, cancellation)) ModelState.AddModelError(nameof(form.OutsiderName), Text["JudgeMissing"]);
        if (outsider.Length > Bounds.Name) ModelState.AddModelError(nameof(form.OutsiderName), Written.TooLong(Bounds.Name, outsider.Length));
        var qualification = ModelState.ReadLine(nameof(form.Qualification), form.Qualification, Bounds.Reason, Text["QualificationMissing"]);
        if (!ModelState.IsValid) return this.Mend("Show", page);
        var kept = await records.KeepAsync(
            new PanelJudge
            {
                Id = form.Id, PanelId = panelId, Number = 0, PersonId = form.PersonId, OutsiderName = form.PersonId is null ? outsider : null,
                Qualification = qualification, AddedById = HttpContext.Visitor().PersonId, AddedAt = clock.GetUtcNow(),
            },
            cancellation);
        return kept is Kept.Refused refused ? Conflict("Show", nameof(form.OutsiderName), refused, page) : this.SeeOther($"{Here}/{panelId}#judges");
    }

    /// <summary>Ends the open round: its ratings stand, and judges see their spread.</summary>
    [HttpPost("{panelId:guid}/round-ends")]
    public async Task<IActionResult> EndRound(Guid panelId, RoundEndForm form, CancellationToken cancellation)
    {
        if (await records.FindPanelAsync(panelId, cancellation) is not { } file) return NotFound();
        if (form.Round is < 1 or > PanelFile.Rounds) return BadRequest();
        // The page was about another round: that one has ended already, and nothing else ends unseen.
        if (form.Round == file.OpenRound)
        {
            await records.KeepAsync(
                new PanelRoundEnd { PanelId = panelId, Round = form.Round, LeadId = HttpContext.Visitor().PersonId, EndedAt = clock.GetUtcNow() }, cancellation);
        }

        return this.SeeOther($"{Here}/{panelId}#rounds");
    }

    /// <summary>Keeps the ratings of a file, all of them or none.</summary>
    [HttpPost("{panelId:guid}/ratings-files")]
    [RequestFormLimits(MultipartBodyLengthLimit = RatingsFile.MostBytes)]
    [RequestSizeLimit(RatingsFile.MostBytes)]
    public async Task<IActionResult> Send(Guid panelId, RatingsFileForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        var problems = new List<Problem>();
        if (await FindAsync(panelId, PanelForms.New() with { FileId = form.Id }, problems, cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        if (form.RatingsFile is not { Length: > 0 } file) problems.Add(new(RosterProblems.FileMissing, new()));
        else if (page.File.OpenRound is not { } round) problems.Add(new(PanelProblems.RoundClosed, new(), PanelFile.Rounds.ToString(CultureInfo.InvariantCulture)));
        else
        {
            using var content = new MemoryStream();
            await file.CopyToAsync(content, cancellation);
            var now = clock.GetUtcNow();
            var rows = RatingsFile.Read(content.ToArray(), page.File, round, problems);
            var kept = await records.KeepAsync(
                panelId,
                [
                    .. rows.Select(row => new PanelRating
                    {
                        FormId = form.Id, JudgeId = row.JudgeId, ItemId = row.ItemId, Round = round, Percent = row.Percent,
                        KeptById = HttpContext.Visitor().PersonId, KeptAt = now,
                    }),
                ],
                cancellation);
            if (problems.Count == 0 && kept.IsKept(problems)) return this.SeeOther($"{Here}/{panelId}#rounds");
        }

        return this.Mend("Show", page);
    }

    /// <summary>Everything that judges said, as a file.</summary>
    [HttpGet("{panelId:guid}/ratings.csv")]
    public async Task<IActionResult> Export(Guid panelId, CancellationToken cancellation) =>
        await records.FindPanelAsync(panelId, cancellation) is { } file
            ? File(RatingsFile.Write(file), "text/csv; charset=utf-8", "ratings.csv")
            : NotFound();

    /// <summary>Adopts a cut with its reason; the course's files are changed by hand.</summary>
    [HttpPost("{panelId:guid}/adoptions")]
    public async Task<IActionResult> Adopt(Guid panelId, AdoptionForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await FindAsync(panelId, PanelForms.New() with { Adoption = form }, [], cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        var cut = page.Adoptable.FirstOrDefault(cut => cut.Method.ToString() == form.Method);
        if (cut is null || cut.PassPercent != form.PassPercent) ModelState.AddModelError(nameof(form.Method), Text["CutMoved"]);
        var reason = ModelState.ReadLine(nameof(form.Reason), form.Reason, Bounds.Reason, Text["ReasonMissing"]);
        if (!ModelState.IsValid || cut is null) return this.Mend("Show", page);
        var kept = await records.KeepAsync(
            new CutAdoption
            {
                Id = form.Id, PanelId = panelId, Method = cut.Method, Mean = cut.Mean, PassPercent = cut.PassPercent, StandardError = cut.StandardError,
                StandardDeviation = cut.StandardDeviation, Judges = cut.Judges, Rounds = cut.Rounds, Reason = reason, LeadId = HttpContext.Visitor().PersonId,
                AdoptedOn = HttpContext.Visitor().Today, KeptAt = clock.GetUtcNow(),
            },
            cancellation);
        return kept is Kept.Refused refused ? Conflict("Show", nameof(form.Reason), refused, page) : this.SeeOther($"{Here}/{panelId}#adopted");
    }

    private IEnumerable<PanelTarget> Targets() => shelf.Courses.SelectMany(course => PanelTarget.Of(course, Language));

    /// <summary>Steps of a checklist; of a quiz the questions that may be drawn now.</summary>
    private async Task<IReadOnlyList<string>> ItemsOfAsync(Course course, string targetId, CancellationToken cancellation)
    {
        var cells = course.Checklists.FirstOrDefault(list => list.Id == targetId) is { } checklist
            ? RatedCell.Of(checklist)
            : RatedCell.Of(course.Quiz, (await records.AskedAsync(course, cancellation)).Questions);
        return [.. cells.SelectMany(cell => cell.ItemIds)];
    }

    private async Task<PanelsPage> ListAsync(PanelForm form, CancellationToken cancellation)
    {
        var (targets, zone) = (Targets().ToList(), TimeZoneInfo.FindSystemTimeZoneById(HttpContext.Visitor().Zone));
        var panels = await records.PanelsAsync(cancellation);
        return new(
            [.. panels.Select(line => new PanelRow(line, TitleOf(targets, line), DecisionDay.On(line.OpenedAt, zone)))], targets, form);
    }

    private string TitleOf(IReadOnlyList<PanelTarget> targets, PanelLine line) =>
        targets.FirstOrDefault(target => target.CourseId == line.CourseId && target.TargetId == line.TargetId) is not { } target ? line.TargetId
            : target.ChecklistTitle ?? Text["QuizOf", target.CourseTitle];

    private async Task<PanelPage?> FindAsync(Guid panelId, PanelForms forms, IReadOnlyList<Problem> problems, CancellationToken cancellation)
    {
        if (await reading.FindAsync(panelId, cancellation) is not { } judged) return null;
        var visitor = HttpContext.Visitor();
        return new(
            judged,
            PanelTarget.Of(judged.Course, Language).Single(target => target.TargetId == judged.File.Panel.TargetId),
            DecisionDay.On(judged.File.Panel.OpenedAt, TimeZoneInfo.FindSystemTimeZoneById(visitor.Zone)),
            await reading.NamesOfAsync(judged.File, visitor.Today, cancellation),
            await reading.TypedForAsync(judged.File, cancellation),
            await reading.PeopleAsync(visitor.Today, cancellation),
            await reading.ScoresAsync(judged, cancellation),
            await reading.ImpressionsAsync(judged, cancellation),
            await reading.SharesAsync(judged, cancellation),
            shelf.Find(judged.Course.Id),
            forms,
            problems);
    }

    private ViewResult Conflict(string view, string field, Kept.Refused refused, object page)
    {
        foreach (var problem in refused.Problems) ModelState.Add(field, problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View(view, page);
    }
}
