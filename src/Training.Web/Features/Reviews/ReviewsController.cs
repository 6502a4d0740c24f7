using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.Reviews;

/// <summary>A lead reads the reviews that events opened, and concludes them.</summary>
[Route("/{language:language}/programme/reviews")]
public sealed class ReviewsController(RecordsContext records, TimeProvider clock, IStringLocalizer<ReviewText> localizer) : Controller
{
    private const int MostConcluded = 50;

    private readonly IStringLocalizer<ReviewText> Text = localizer;

    /// <summary>Open ones, oldest first, then the last that were concluded.</summary>
    [HttpGet("")]
    public async Task<IActionResult> List(CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        var open = await records.OpenReviewsAsync(cancellation);
        var concluded = await records.ConcludedReviewsAsync(MostConcluded, cancellation);
        var people = open.Select(one => one.Review.PersonId).Concat(concluded.Select(one => one.Review.PersonId))
            .Concat(concluded.Select(one => (Guid?)one.Conclusion.LeadId)).OfType<Guid>();
        return View(new ReviewsPage(today, open, concluded, await records.NamesOfAsync(people, today, cancellation)));
    }

    /// <summary>One review with its event.</summary>
    [HttpGet("{reviewId:guid}")]
    public async Task<IActionResult> Show(Guid reviewId, CancellationToken cancellation) =>
        await PageAsync(reviewId, new(), cancellation) is { } page ? View(page) : NotFound();

    /// <summary>Ends the review, and with it the hold that it set. The same again changes nothing.</summary>
    [HttpPost("{reviewId:guid}/conclusion")]
    public async Task<IActionResult> Conclude(Guid reviewId, ConclusionForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (await PageAsync(reviewId, form, cancellation) is not { } page) return NotFound();
        var words = ReadWords(ModelState, nameof(form.Words), form.Words, Text["WordsMissing"]);
        if (words is null) return this.Mend("Show", page);
        var visitor = HttpContext.Visitor();
        var kept = await records.ConcludeReviewAsync(reviewId, new(visitor.Today, visitor.PersonId, words), clock.GetUtcNow(), cancellation);
        if (kept is not Kept.Refused refused) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/reviews/{reviewId}");
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Words), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("Show", (await PageAsync(reviewId, form, cancellation))!); // not null: it was there a moment ago, and reviews do not go away
    }

    internal static string? ReadWords(
        Microsoft.AspNetCore.Mvc.ModelBinding.ModelStateDictionary fields, string field, string? typed, string missing)
    {
        var words = typed?.Trim() ?? "";
        if (words.Length is > 0 and <= Bounds.Reason) return words;
        fields.AddModelError(field, words.Length == 0 ? missing : Written.TooLong(Bounds.Reason, words.Length));
        return null;
    }

    private async Task<ReviewCasePage?> PageAsync(Guid reviewId, ConclusionForm form, CancellationToken cancellation)
    {
        if (await records.FindReviewAsync(reviewId, cancellation) is not { } found) return null;
        var visitor = HttpContext.Visitor();
        var people = new[] { found.Review.PersonId, found.Conclusion?.LeadId, found.Entry?.LeadId }.OfType<Guid>();
        return new(found, visitor.Today, found.Review.PersonId == visitor.PersonId, await records.NamesOfAsync(people, visitor.Today, cancellation), form);
    }
}
