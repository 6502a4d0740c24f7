using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.Panels;

/// <summary>A judge says what they find, or a lead types it for somebody who cannot sign in.</summary>
[Route("/{language:language}")]
public sealed class PanelRatingsController(
    RecordsContext records, PanelReading reading, TimeProvider clock, IStringLocalizer<PanelText> localizer) : Controller
{
    private const string Own = "my/panels/{panelId:guid}";
    private const string RateView = "~/Features/Panels/Rate.cshtml";
    private const string ForOthers = "programme/panels/{panelId:guid}/judges/{judgeId:guid}";

    private readonly IStringLocalizer<PanelText> Text = localizer;

    /// <summary>The questions or steps, with what the judge said.</summary>
    [HttpGet(Own)]
    [HttpGet(ForOthers)]
    public async Task<IActionResult> Show(Guid panelId, Guid? judgeId, CancellationToken cancellation) =>
        await FindAsync(panelId, judgeId, null, null, cancellation) is { } page ? View(RateView, page) : NotFound();

    /// <summary>Keeps what the judge said in the open round.</summary>
    [HttpPost($"{Own}/ratings")]
    [HttpPost($"{ForOthers}/ratings")]
    public async Task<IActionResult> Rate(Guid panelId, Guid? judgeId, RatingsForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await FindAsync(panelId, judgeId, form, null, cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty || form.Round is < 1 or > PanelFile.Rounds) return BadRequest();
        var now = clock.GetUtcNow();
        var ratings = new List<PanelRating>();
        foreach (var (item, typed) in form.Percent.Where(one => page.Judged.File.Panel.ItemIds.Contains(one.Key, StringComparer.Ordinal)))
        {
            if (string.IsNullOrWhiteSpace(typed)) continue;
            if (RatingsFile.ReadPercent(typed) is not { } percent) ModelState.AddModelError($"Percent-{item}", Text["PercentForm"]);
            else ratings.Add(RatingOf(item, percent));
        }

        if (!ModelState.IsValid) return this.Mend(RateView, page);
        var problems = new List<Problem>();
        if ((await records.KeepAsync(panelId, ratings, cancellation)).IsKept(problems)) return this.SeeOther($"{PathOf(page)}#ratings");
        foreach (var problem in problems) ModelState.Add("Ratings", problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View(RateView, page);

        PanelRating RatingOf(string item, int percent) => new()
        {
            FormId = form.Id, JudgeId = page.Judge.Id, ItemId = item, Round = form.Round, Percent = percent, KeptById = HttpContext.Visitor().PersonId, KeptAt = now,
        };
    }

    /// <summary>Keeps what the judge would accept.</summary>
    [HttpPost($"{Own}/bounds")]
    [HttpPost($"{ForOthers}/bounds")]
    public async Task<IActionResult> Bound(Guid panelId, Guid? judgeId, BoundsForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await FindAsync(panelId, judgeId, null, form, cancellation) is not { } page) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        var (leastCut, greatestCut) = ReadRange(nameof(form.LeastCut), form.LeastCut, nameof(form.GreatestCut), form.GreatestCut);
        var (leastFail, greatestFail) = ReadRange(nameof(form.LeastFail), form.LeastFail, nameof(form.GreatestFail), form.GreatestFail);
        if (!ModelState.IsValid) return this.Mend(RateView, page);
        var kept = await records.KeepAsync(
            new PanelBounds
            {
                Id = form.Id, JudgeId = page.Judge.Id, LeastCut = leastCut, GreatestCut = greatestCut, LeastFail = leastFail, GreatestFail = greatestFail,
                KeptById = HttpContext.Visitor().PersonId, KeptAt = clock.GetUtcNow(),
            },
            cancellation);
        if (kept is not Kept.Refused refused) return this.SeeOther($"{PathOf(page)}#bounds");
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.LeastCut), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View(RateView, page);
    }

    private (int Least, int Greatest) ReadRange(string leastField, string? least, string greatestField, string? greatest)
    {
        var (low, high) = (RatingsFile.ReadPercent(least), RatingsFile.ReadPercent(greatest));
        if (low is null) ModelState.AddModelError(leastField, Text["PercentForm"]);
        if (high is null) ModelState.AddModelError(greatestField, Text["PercentForm"]);
        if (low > high) ModelState.AddModelError(greatestField, Text["RangeSwapped"]);
        return (low ?? 0, high ?? 0);
    }

    private string PathOf(RatingPage page) => $"/{HttpContext.PageLanguageOf().Tag()}{page.Path}";

    /// <summary>Null where the panel is not there, the visitor does not judge in it, or the judge can sign in and says it themselves.</summary>
    private async Task<RatingPage?> FindAsync(Guid panelId, Guid? judgeId, RatingsForm? ratings, BoundsForm? bounds, CancellationToken cancellation)
    {
        if (await reading.FindAsync(panelId, cancellation) is not { } judged) return null;
        var (visitor, file) = (HttpContext.Visitor(), judged.File);
        var judge = judgeId is null ? file.Judges.FirstOrDefault(judge => judge.PersonId == visitor.PersonId) : file.Judges.FirstOrDefault(judge => judge.Id == judgeId);
        if (judge is null || (judgeId is not null && !(await reading.TypedForAsync(file, cancellation)).Contains(judge.Id))) return null;
        var names = await reading.NamesOfAsync(file, visitor.Today, cancellation);
        var round = file.OpenRound ?? PanelFile.Rounds;
        var counting = file.Counting(judge.Id, round);
        return new(
            judged,
            judge,
            names.GetValueOrDefault(judge.Id) ?? Text["NameErased"],
            judgeId is null,
            PanelTarget.Of(judged.Course, HttpContext.PageLanguageOf()).Single(target => target.TargetId == file.Panel.TargetId),
            // The first round is judged alone, without what others did.
            file.Ends.Count == 0 ? new Dictionary<string, (int Asked, int Right)>(StringComparer.Ordinal) : await reading.SharesAsync(judged, cancellation),
            ratings ?? new()
            {
                Id = Guid.CreateVersion7(),
                Round = round,
                Percent = counting.ToDictionary(one => one.Key, one => (string?)Whole(one.Value), StringComparer.Ordinal),
            },
            bounds ?? BoundsOf(file.Bounds.GetValueOrDefault(judge.Id)));
    }

    private static BoundsForm BoundsOf(PanelBounds? kept) => new()
    {
        Id = Guid.CreateVersion7(),
        LeastCut = kept is null ? null : Whole(kept.LeastCut),
        GreatestCut = kept is null ? null : Whole(kept.GreatestCut),
        LeastFail = kept is null ? null : Whole(kept.LeastFail),
        GreatestFail = kept is null ? null : Whole(kept.GreatestFail),
    };

    private static string Whole(int percent) => percent.ToString(CultureInfo.InvariantCulture);
}
