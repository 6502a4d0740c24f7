using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Statistics;
using Training.Web.Languages;
using Training.Web.Shelf;

namespace Training.Web.Features.QuizStatistics;

/// <summary>What stored sittings say about a quiz and its questions, for programme leads and, as files, for an outside statistician.</summary>
[Route("/{language:language}/programme/courses/{courseId}/statistics")]
public sealed class QuizStatisticsController(
    RecordsContext records, CourseShelf shelf, QuizReading reading, IStringLocalizer<QuizStatisticsText> text) : Controller
{
    private const string Csv = "text/csv; charset=utf-8";

    private Language Language => HttpContext.PageLanguageOf();

    /// <summary>The quiz as a whole.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(string courseId, StatisticsChoice choice, CancellationToken cancellation) =>
        shelf.Find(courseId) is { } course
            ? View(QuizStatisticsPage.Of(await reading.ReadAsync(course, choice, cancellation), Language, text))
            : NotFound();

    /// <summary>One question, in each of its texts.</summary>
    [HttpGet("questions/{questionId}")]
    public async Task<IActionResult> Question(string courseId, string questionId, StatisticsChoice choice, CancellationToken cancellation)
    {
        if (shelf.Find(courseId) is not { } course) return NotFound();
        var figures = await reading.ReadAsync(course, choice, cancellation);
        IReadOnlyList<QuestionLine> lines =
        [
            .. figures.Analysis.Questions.Where(question => question.QuestionId == questionId)
                .Select(question => QuestionLine.Of(question, figures, Language)).OrderBy(line => line.IsOld).ThenByDescending(line => line.Analysis.Asked),
        ];
        return lines.Count == 0 && course.Questions.All(question => question.Id != questionId)
            ? NotFound()
            : View(new QuestionStatisticsPage(course.Id, course.Scheme.Words[Language].Title, questionId, lines));
    }

    /// <summary>The figures of all questions.</summary>
    [HttpGet("questions.csv")]
    public async Task<IActionResult> Questions(string courseId, StatisticsChoice choice, CancellationToken cancellation) =>
        shelf.Find(courseId) is { } course
            ? File(StatisticsFiles.WriteQuestions((await reading.ReadAsync(course, choice, cancellation)).Analysis), Csv, $"{courseId}-questions.csv")
            : NotFound();

    /// <summary>Every answer; written while it is read.</summary>
    [HttpGet("answers.csv")]
    public async Task<IActionResult> Answers(string courseId, StatisticsChoice choice, CancellationToken cancellation)
    {
        if (shelf.Find(courseId) is not { } course) return NotFound();
        var texts = await reading.ComparableTextsAsync(course, cancellation);
        var hashes = texts.Select(one => one.Text.CourseHash).Where(hash => hash.StartsWith(choice.Text ?? "", StringComparison.Ordinal)).ToList();
        var sittings = records.AnsweredSittingsAsync(course.Quiz.Id, hashes, cancellation)
            .Where(sitting => choice.Language is null || sitting.Language == choice.Language);
        Response.ContentType = Csv;
        Response.Headers.ContentDisposition = $"attachment; filename={courseId}-answers.csv";
        HttpContext.Features.GetRequiredFeature<IHttpResponseBodyFeature>().DisableBuffering();
        await PlainFile.WriteAsync(StatisticsFiles.AnswerRows(sittings, cancellation), Response.Body, cancellation);
        return new EmptyResult();
    }

    /// <summary>What the columns of the files mean.</summary>
    [HttpGet("codebook.csv")]
    public IActionResult Codebook(string courseId) =>
        shelf.Find(courseId) is null ? NotFound() : File(StatisticsFiles.WriteCodebook(), Csv, "codebook.csv");
}
