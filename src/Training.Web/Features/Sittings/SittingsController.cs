using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Mvc;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Doors;
using Training.Web.Features.MyTraining;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.Sittings;

/// <summary>A worker's quiz: what to expect, one question a page, a look over it, and what it came to.</summary>
public sealed class SittingsController(
    RecordsContext records, CourseShelf shelf, CoursesByHash courses, StartedSittingSubmission submission, TimeProvider clock) : Controller
{
    private const string Sitting = "/{language:language}/my/sittings/{sittingId:guid}";

    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>Before the start: how many questions, what passes, what is kept.</summary>
    [HttpGet("/{language:language}/my/courses/{courseId}/quiz")]
    public async Task<IActionResult> Before(string courseId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindOfferedAsync(shelf, visitor.PersonId, courseId, cancellation) is not { } course) return NotFound();
        var open = await records.OpenSittingsOfAsync(visitor.PersonId, cancellation);
        var sent = await records.SentSittingsOfAsync(visitor.PersonId, cancellation);
        var file = await records.FindCaseFileAsync(visitor.PersonId, course.Scheme, cancellation)
            ?? throw new InvalidOperationException($"Account {visitor.AccountId} belongs to nobody.");
        var step = NextSteps.For(file, visitor.Today);
        var asked = await records.AskedAsync(course, cancellation);
        var retest = await records.MayTryQuizAsync(course, visitor.PersonId, visitor.Today, cancellation);
        return View(QuizPage.Of(course, asked, Language, open, sent, Guid.CreateVersion7(clock.GetUtcNow()), visitor.Today, step, retest));
    }

    /// <summary>Keeps that the visitor read the whole course again after failed quizzes.</summary>
    [HttpPost("/{language:language}/my/courses/{courseId}/rereadings")]
    public async Task<IActionResult> Reread(string courseId, [FromForm] Guid id, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindOfferedAsync(shelf, visitor.PersonId, courseId, cancellation) is not { } course) return NotFound();
        if (id == Guid.Empty) return BadRequest();
        var retest = await records.MayTryQuizAsync(course, visitor.PersonId, visitor.Today, cancellation);
        // The page offers it on a day after the last failure only, and whoever said so already has nothing more to say.
        if (retest is Retest.WhenTakenAgain(var failedOn) && failedOn < visitor.Today)
        {
            await records.KeepAsync(
                new CourseRereading
                {
                    Id = id, PersonId = visitor.PersonId, CourseId = course.Id, CourseHash = course.Hash, ReadOn = visitor.Today, KeptAt = clock.GetUtcNow(),
                },
                cancellation);
        }

        return this.SeeOther($"/{Language.Tag()}/my/courses/{course.Id}/quiz");
    }

    /// <summary>Starts a sitting, or goes on with the open one.</summary>
    [HttpPost("/{language:language}/my/courses/{courseId}/sittings")]
    public async Task<IActionResult> Start(string courseId, [FromForm] Guid sittingId, [FromForm] ReadOutForm reading, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        if (await records.FindOfferedAsync(shelf, visitor.PersonId, courseId, cancellation) is not { } course) return NotFound();
        if (sittingId == Guid.Empty) return BadRequest();
        var asked = await records.AskedAsync(course, cancellation);
        // The page before says why; it has no button then.
        var isOpen = (await records.OpenSittingsOfAsync(visitor.PersonId, cancellation)).Any(sitting => sitting.QuizId == course.Quiz.Id);
        var mayTry = isOpen || await records.MayTryQuizAsync(course, visitor.PersonId, visitor.Today, cancellation) is Retest.Allowed;
        if (asked.Gaps().Count > 0 || !mayTry) return this.SeeOther($"/{Language.Tag()}/my/courses/{course.Id}/quiz");
        // A secure seed: nobody can tell the questions before they are drawn.
        var snakes = await records.SnakesAroundAsync(shelf.Species, visitor.PersonId, visitor.Today, cancellation);
        var draw = QuizDraw.From(asked.AskedAt(snakes), BitConverter.ToUInt64(RandomNumberGenerator.GetBytes(sizeof(ulong))));
        var started = await records.StartSittingAsync(
            sittingId, visitor.PersonId, draw, visitor.Today, visitor.Zone, reading.Read(), clock.GetUtcNow(), cancellation);
        return started is { } id ? this.SeeOther(Address(id)) : NotFound();
    }

    /// <summary>Open: on to the first question without an answer. Sent: what it came to.</summary>
    [HttpGet(Sitting)]
    public async Task<IActionResult> Show(Guid sittingId, CancellationToken cancellation)
    {
        var person = HttpContext.Visitor().PersonId;
        if (await records.FindSittingAsync(person, sittingId, cancellation) is { } stored) return await ResultAsync(stored, cancellation);
        if (await records.FindStartedSittingAsync(person, sittingId, cancellation) is not { } open) return NotFound();
        var next = open.Draw.Questions.Index().FirstOrDefault(drawn => open.FindLast(drawn.Item.QuestionId) is null, (-1, null!)).Index;
        return this.SeeOther(next < 0 ? $"{Address(sittingId)}/review" : QuestionAddress(sittingId, next + 1));
    }

    /// <summary>One question, with what is kept for it.</summary>
    [HttpGet(Sitting + "/questions/{number:int}")]
    public async Task<IActionResult> Question(Guid sittingId, int number, int? kept, CancellationToken cancellation)
    {
        if (await FindAsync(sittingId, number, cancellation) is not { } found) return NotFound();
        return found.Sitting.IsSubmitted
            ? this.SeeOther(Address(sittingId))
            : View(QuestionPage.Of(found.Course, found.Sitting, number, Language, posted: null, kept));
    }

    /// <summary>Keeps the answer and goes on to where the button says.</summary>
    [HttpPost(Sitting + "/questions/{number:int}")]
    public async Task<IActionResult> Question([FromRoute] Guid sittingId, [FromRoute] int number, [FromForm] AnswerForm form, CancellationToken cancellation)
    {
        if (await FindAsync(sittingId, number, cancellation) is not { } found) return NotFound();
        var question = found.Course.Questions.Single(one => one.Id == found.Sitting.Draw.Questions[number - 1].QuestionId);
        var reading = form.Read(question, Language, clock.GetUtcNow());
        if (reading.Fault is { } fault) return Refused(found, number, form, fault);
        return await KeepAsync(found, question, form, reading, cancellation) switch
        {
            null => NotFound(),
            Kept.Refused refused when refused.Problems.Any(problem => problem.Code == RecordsProblems.SittingSubmitted) =>
                await SentAsync(sittingId, number, cancellation),
            Kept.Refused => Refused(found, number, form, AnswerFault.NotOffered),
            _ => this.SeeOther(Next(sittingId, number, form.Go, found.Sitting.Draw.Questions.Count)),
        };
    }

    /// <summary>Every question, answered or not, before anything is sent.</summary>
    [HttpGet(Sitting + "/review")]
    public async Task<IActionResult> Review(Guid sittingId, int? kept, CancellationToken cancellation)
    {
        if (await FindAsync(sittingId, 1, cancellation) is not { } found) return NotFound();
        return found.Sitting.IsSubmitted
            ? this.SeeOther(Address(sittingId))
            : View(ReviewPage.Of(found.Course, found.Sitting, Language, kept));
    }

    /// <summary>Sends the sitting, once; again is the same.</summary>
    [HttpPost(Sitting + "/submission")]
    public async Task<IActionResult> Submit(Guid sittingId, CancellationToken cancellation)
    {
        if (await FindAsync(sittingId, 1, cancellation) is not { } found) return NotFound();
        var (visitor, problems) = (HttpContext.Visitor(), new List<Problem>());
        var result = await submission.SubmitAsync(
            records, found.Course, visitor.PersonId, sittingId, visitor.Zone, clock.GetUtcNow(), problems, cancellation);
        if (result is not null) return this.SeeOther(Address(sittingId));
        // Every answer was checked when it was kept, so what is refused now is our fault and must be seen.
        throw new InvalidOperationException($"Sitting {sittingId} was refused: {string.Join(", ", problems.Select(problem => problem.Code))}");
    }

    private async Task<(KeptSitting Sitting, Course Course)?> FindAsync(Guid sittingId, int number, CancellationToken cancellation)
    {
        var sitting = await records.FindStartedSittingAsync(HttpContext.Visitor().PersonId, sittingId, cancellation);
        if (sitting is null || number < 1 || number > sitting.Draw.Questions.Count) return null;
        return (sitting, await CourseAsync(sitting.CourseId, sitting.Draw.CourseHash, cancellation));
    }

    private async Task<Course> CourseAsync(string courseId, string hash, CancellationToken cancellation) =>
        await courses.FindAsync(records, courseId, hash, cancellation)
        ?? throw new InvalidOperationException($"Snapshot {hash} was drawn from and never kept.");

    private Task<Kept?> KeepAsync(
        (KeptSitting Sitting, Course Course) found, Question question, AnswerForm form, AnswerReading reading, CancellationToken cancellation)
    {
        var (sitting, course) = found;
        if (reading.Answer is { } answer) return records.SaveAnswerAsync(course, sitting.PersonId, sitting.Id, answer, cancellation);
        // An empty form takes back only an answer that it had shown: an old tab must not wipe what another one kept.
        var seen = DateTimeOffset.FromUnixTimeMilliseconds(Math.Clamp(form.Seen ?? 0, 0, clock.GetUtcNow().ToUnixTimeMilliseconds()));
        return records.TakeBackAnswerAsync(course, sitting.PersonId, sitting.Id, question.Id, seen, clock.GetUtcNow(), cancellation);
    }

    private ViewResult Refused((KeptSitting Sitting, Course Course) found, int number, AnswerForm form, AnswerFault fault)
    {
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return View(nameof(Question), QuestionPage.Of(found.Course, found.Sitting, number, Language, (form, fault), keptBefore: null));
    }

    private async Task<IActionResult> SentAsync(Guid sittingId, int number, CancellationToken cancellation)
    {
        if (await records.FindSittingAsync(HttpContext.Visitor().PersonId, sittingId, cancellation) is not { } stored) return NotFound();
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View("Sent", SentPage.Of(stored, number));
    }

    private async Task<IActionResult> ResultAsync(StoredSitting stored, CancellationToken cancellation)
    {
        var graded = stored.Results[^1];
        var courseId = await records.FindCourseIdAsync(graded.Result.CourseHash, cancellation)
            ?? throw new InvalidOperationException($"Snapshot {graded.Result.CourseHash} graded and was never kept.");
        var course = await CourseAsync(courseId, graded.Result.CourseHash, cancellation);
        var serial = await records.FindSerialRestingOnAsync(graded.Id, cancellation);
        var visitor = HttpContext.Visitor();
        var retest = await records.MayTryQuizAsync(shelf.Find(courseId) ?? course, visitor.PersonId, visitor.Today, cancellation);
        return View("Result", ResultPage.Of(course, stored, Language, shelf.Guidance, serial) with { Retest = retest });
    }

    private string Next(Guid sittingId, int number, string? go, int count)
    {
        var kept = string.Create(CultureInfo.InvariantCulture, $"?kept={number}");
        return int.TryParse(go, CultureInfo.InvariantCulture, out var next) && next >= 1 && next <= count
            ? QuestionAddress(sittingId, next) + kept
            : $"{Address(sittingId)}/review{kept}";
    }

    private string Address(Guid sittingId) => $"/{Language.Tag()}/my/sittings/{sittingId}";

    private string QuestionAddress(Guid sittingId, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{Address(sittingId)}/questions/{number}");
}
