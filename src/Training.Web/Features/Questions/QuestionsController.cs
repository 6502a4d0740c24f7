using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Questions;

/// <summary>A lead reads the questions of a course, module by module, before anybody is asked them.</summary>
[Route("/{language:language}/programme/courses/{courseId}")]
public sealed class QuestionsController(RecordsContext records, CourseShelf shelf, TimeProvider clock) : Controller
{
    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>How far the review is.</summary>
    [HttpGet("questions")]
    public async Task<IActionResult> Overview(string courseId, CancellationToken cancellation)
    {
        if (shelf.Find(courseId) is not { } course) return NotFound();
        var reviews = await records.ReviewsOfAsync(course, cancellation);
        return View(new QuestionsPage(
            course.Id, course.Scheme.Words[Language].Title,
            [.. course.Modules.Select(module => CountOf(module, course, reviews))],
            course.Asking(reviews).Gaps(), course.Words[Language].Topics));
    }

    /// <summary>The questions of one module, with what is right and why.</summary>
    [HttpGet("modules/{moduleId}/questions")]
    public async Task<IActionResult> Module(string courseId, string moduleId, CancellationToken cancellation)
    {
        if (Find(courseId, moduleId) is not ({ } course, { } module)) return NotFound();
        var reviews = await records.ReviewsOfAsync(course, cancellation);
        var names = await records.NamesOfAsync(reviews.Values.Select(review => review.ReviewerId), HttpContext.Visitor().Today, cancellation);
        var notes = module.Pages[Language].Notes;
        return View(new ModuleReviewPage(
            course.Id, course.Scheme.Words[Language].Title, module.Id, module.Pages[Language].Title, Guid.CreateVersion7(),
            [.. course.Questions.Where(question => question.Passage.ModuleId == moduleId).Select(question =>
            {
                var review = reviews.GetValueOrDefault(question.Id);
                return new QuestionToReview(
                    question, notes.FirstOrDefault(note => note.Id == question.FactId), review,
                    review is null ? null : names.GetValueOrDefault(review.ReviewerId));
            })]));
    }

    /// <summary>Keeps what was judged, and leads on: to the next module with waiting questions, else back to the overview.</summary>
    [HttpPost("modules/{moduleId}/questions/reviews")]
    public async Task<IActionResult> Review(string courseId, string moduleId, ReviewForm form, CancellationToken cancellation)
    {
        if (Find(courseId, moduleId) is not ({ } course, { } module)) return NotFound();
        if (form.Id == Guid.Empty) return BadRequest();
        var here = $"/{Language.Tag()}/programme/courses/{course.Id}";
        var reviews = form.Read(course, HttpContext.Visitor().PersonId, clock.GetUtcNow());
        await records.KeepAsync(reviews, cancellation);
        var judged = await records.ReviewsOfAsync(course, cancellation);
        var next = course.Modules.SkipWhile(other => other.Id != module.Id)
            .FirstOrDefault(other => course.Questions.Any(question => question.Passage.ModuleId == other.Id && !judged.ContainsKey(question.Id)));
        return this.SeeOther(next is null ? $"{here}/questions" : $"{here}/modules/{next.Id}/questions");
    }

    private ModuleQuestions CountOf(Module module, Course course, IReadOnlyDictionary<string, QuestionReview> reviews)
    {
        var outcomes = course.Questions.Where(question => question.Passage.ModuleId == module.Id)
            .Select(question => reviews.GetValueOrDefault(question.Id)?.Outcome).ToList();
        var (waiting, accepted) = (outcomes.Count(outcome => outcome is null), outcomes.Count(outcome => outcome == ReviewOutcome.Accepted));
        return new(module.Id, module.Pages[Language].Title, waiting, accepted, outcomes.Count - waiting - accepted);
    }

    private (Course? Course, Module? Module) Find(string courseId, string moduleId)
    {
        var course = shelf.Find(courseId);
        return (course, course?.Modules.FirstOrDefault(module => module.Id == moduleId));
    }
}
