using Microsoft.AspNetCore.Mvc;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.InstructorFiles;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Programme;

/// <summary>A programme lead's first page: what waits.</summary>
public sealed class ProgrammeController(RecordsContext records, CourseShelf shelf, InstructorReading instructors) : Controller
{
    /// <summary>Everything that waits for a lead, each with its action.</summary>
    [HttpGet("/{language:language}/programme")]
    public async Task<IActionResult> Show(CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        var decisions = await records.WaitingDecisionsAsync(shelf.Courses, visitor.Today, cancellation);
        var suspensions = await records.OpenSuspensionsAsync(cancellation);
        var transitions = await records.OverdueTransitionsAsync(shelf.Courses, visitor.Today, cancellation);
        var proposals = await records.OpenProposalsAsync(cancellation);
        var disputes = await records.DisputedCopiesAsync(cancellation);
        var corrected = await records.OpenCorrectionCasesAsync(visitor.Today, cancellation);
        var reviews = await records.OpenReviewsAsync(cancellation);
        var shown = decisions.Take(ProgrammePage.MostDecisions).Select(one => one.PersonId)
            .Concat(suspensions.Select(one => one.PersonId))
            .Concat(transitions.Select(one => one.PersonId))
            .Concat(proposals.SelectMany(one => new[] { one.PersonId, one.LeadId }))
            .Concat(disputes.Select(one => one.PersonId))
            .Concat(corrected.Select(one => one.PersonId))
            .Concat(reviews.Take(ProgrammePage.MostReviews).Select(one => one.Review.PersonId).OfType<Guid>());
        return View(new ProgrammePage(
            visitor.Today, visitor.PersonId, decisions, suspensions, transitions, proposals, disputes, corrected,
            await records.OpenAppealsAsync(cancellation), await records.RestedCasesAsync(cancellation),
            await instructors.CountWaitingAsync(cancellation), shelf.Findings.Count,
            await records.NamesOfAsync(shown, visitor.Today, cancellation), shelf.Courses.Titles(HttpContext.PageLanguageOf()))
        {
            Reviews = reviews,
        });
    }
}
