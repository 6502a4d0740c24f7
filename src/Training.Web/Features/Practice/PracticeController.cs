using System.Security.Cryptography;
using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.MyTraining;
using Training.Web.Features.Sittings;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Practice;

/// <summary>Practice: every accepted question of the pool that fits the visitor’s site once through, one question a page, each explained. Nothing is stored and nothing counts.</summary>
public sealed class PracticeController(RecordsContext records, CourseShelf shelf, TimeProvider clock) : Controller
{
    private const string Address = "/{language:language}/my/courses/{courseId}/practice";

    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>A question of a round; without a round, on to a new one.</summary>
    [HttpGet(Address)]
    public async Task<IActionResult> Ask(string courseId, ulong? round, CancellationToken cancellation, int number = 1)
    {
        if (await FindAsync(courseId, cancellation) is not { Questions.Count: > 0 } course || number < 1 || number > course.Questions.Count) return NotFound();
        return round is { } seed
            ? View("Ask", PracticePage.Of(course, seed, number, Language))
            : this.SeeOther($"/{Language.Tag()}/my/courses/{course.Id}/practice?round={NewRound()}");
    }

    /// <summary>Tells about an answer. It writes nothing, so the page is the answer to the post itself.</summary>
    [HttpPost(Address)]
    public async Task<IActionResult> Tell(
        string courseId, [FromQuery] ulong round, [FromQuery] int number, [FromForm] AnswerForm form, CancellationToken cancellation)
    {
        if (await FindAsync(courseId, cancellation) is not { Questions.Count: > 0 } course || number > course.Questions.Count) return NotFound();
        if (number < 1) return BadRequest();
        var question = PracticePage.QuestionOf(course, round, number);
        var reading = form.Read(question, Language, clock.GetUtcNow());
        if ((reading.Fault ?? FaultOf(question, reading.Answer)) is { } fault)
        {
            Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
            return View("Ask", PracticePage.Of(course, round, number, Language, form, fault));
        }

        return View("Tell", PracticePage.Of(course, round, number, Language, form).Telling(course, reading.Answer, Language));
    }

    private async Task<Course?> FindAsync(string courseId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindOfferedAsync(shelf, visitor.PersonId, courseId, cancellation) is not { } course) return null;
        var snakes = await records.SnakesAroundAsync(shelf.Species, visitor.PersonId, visitor.Today, cancellation);
        return (await records.AskedAsync(course, cancellation)).AskedAt(snakes);
    }

    private static AnswerFault? FaultOf(Question question, Answer? answer)
    {
        var problems = new List<Problem>();
        if (answer is not null) AnswerCheck.Run(question, answer, problems);
        return problems.Count == 0 ? null : AnswerFault.NotOffered;
    }

    // Short enough to be read out of an address; nothing hangs on guessing it.
    private static int NewRound() => RandomNumberGenerator.GetInt32(int.MaxValue);
}
