using System.Diagnostics;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Sittings;

namespace Training.Web.Tests.House;

/// <summary>Invented people who sat a quiz, graded and kept by the real code without a browser each.</summary>
internal static class Sitters
{
    /// <summary>One sitting of a shipped course; every answer is right but those that <paramref name="answer"/> gives.</summary>
    /// <param name="site">Where.</param>
    /// <param name="personId">Who.</param>
    /// <param name="seed">Of the draw.</param>
    /// <param name="answer">What is answered to a question; null: what is right.</param>
    /// <param name="courseId">Which course.</param>
    /// <returns>The form id.</returns>
    public static async Task<Guid> SitAsync(
        this RunningSite site, Guid personId, ulong seed, Func<Question, string?>? answer = null, string courseId = "awareness")
    {
        var course = site.Shelf.Find(courseId)!; // not null: a shipped course
        var (id, startedAt) = (Guid.CreateVersion7(), site.Clock.GetUtcNow().AddHours(-1));
        await site.RecordAsync(async records =>
        {
            var draw = QuizDraw.From((await records.AskedAsync(course, default)).AskedAt(SnakesOfPlace.Of([])), seed);
            var pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
            var answers = draw.Questions.Select((drawn, place) => AnswerOf(pool[drawn.QuestionId], answer?.Invoke(pool[drawn.QuestionId]), startedAt.AddSeconds(20 * (place + 1))));
            var problems = new List<Problem>();
            var result = await records.SubmitAsync(
                course, new(id, personId, draw, startedAt, startedAt.AddMinutes(30), [.. answers]), [], "America/Phoenix", site.Clock.GetUtcNow(), problems, default);
            Assert.Empty(problems);
            Assert.NotNull(result);
        });
        return id;
    }

    private static Answer AnswerOf(Question question, string? option, DateTimeOffset savedAt)
    {
        var (options, number) = option is not null ? ([option], null) : question.Key switch
        {
            QuestionKey.One one => ((IReadOnlyList<string>)[one.OptionId], (decimal?)null),
            QuestionKey.Several several => (several.OptionIds, null),
            QuestionKey.Order order => (order.OptionIds, null),
            QuestionKey.Number typed => ([], typed.Value),
            QuestionKey.Match match => ([.. match.Pairs.Select(pair => pair.ToString())], null),
            QuestionKey.Spot spot => ([spot.RegionId], null),
            _ => throw new UnreachableException(),
        };
        return new(question.Id, options, number, Language.English, savedAt);
    }
}
