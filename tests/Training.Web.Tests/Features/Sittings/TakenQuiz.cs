using System.Globalization;
using System.Text.RegularExpressions;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Sittings;

/// <summary>A quiz that somebody takes in a browser, each person and sitting of its own.</summary>
internal sealed partial class TakenQuiz : IDisposable
{
    private readonly RunningSite site;
    private string token = "";

    private TakenQuiz(RunningSite site, PlainBrowser browser, Guid personId, Course course, Guid id)
    {
        (this.site, Browser, PersonId, Course, Id) = (site, browser, personId, course, id);
    }

    public PlainBrowser Browser { get; }

    public Guid PersonId { get; }

    public Course Course { get; }

    public Guid Id { get; }

    public Draw Draw { get; private init; } = null!; // set by StartAsync, the only way in

    public string Path => PathIn("en");

    public int Count => Draw.Questions.Count;

    /// <summary>A site that can print papers: one names its provider's address.</summary>
    public static RunningSite StartPrintingSite() => RunningSite.Start(settings: [new("Training:Provider:Address", "12 Spillway Road, Cañon Alto")]);

    /// <summary>Starts a quiz with a draw in which every one of these types is asked.</summary>
    public static async Task<TakenQuiz> StartAsync(RunningSite site, string courseId = "awareness", Guid? personId = null, params Type[] types)
    {
        var person = personId ?? await site.PersonAsync();
        var course = site.Shelf.Find(courseId)!;
        var draw = Enumerable.Range(1, 20_000).Select(seed => QuizDraw.From(course, (ulong)seed))
            .First(candidate => types.All(type => candidate.Questions.Any(drawn => QuestionOf(course, drawn).Key.GetType() == type)));
        var id = Guid.CreateVersion7();
        await site.RecordAsync(records => records.StartSittingAsync(
            id, person, draw, DateOnly.FromDateTime(site.Clock.Now.Date), "America/Denver", ReadOut.Nobody, site.Clock.Now, CancellationToken.None));
        return new(site, await site.SignInAsync(person), person, course, id) { Draw = draw };
    }

    public string PathIn(string tag) => $"/{tag}/my/sittings/{Id}";

    public Question QuestionAt(int number) => QuestionOf(Course, Draw.Questions[number - 1]);

    /// <summary>The number of the first question of a type.</summary>
    public int NumberOf<T>() => 1 + Draw.Questions.Index().First(drawn => QuestionOf(Course, drawn.Item).Key is T).Index;

    public Task<Reply> AnswerAsync(int number, bool isRight = true, string tag = "en") => PostAsync(number, [.. Fields(number, isRight)], tag);

    public async Task<Reply> PostAsync(int number, KeyValuePair<string, string>[] fields, string tag = "en", PlainBrowser? browser = null)
    {
        if (token.Length == 0) token = await TokenAsync(Browser);
        var sent = browser is null ? token : await TokenAsync(browser);
        return await (browser ?? Browser).PostExactlyAsync($"{PathIn(tag)}/questions/{number}", [.. fields, new("__RequestVerificationToken", sent)]);
    }

    public async Task<Reply> SubmitAsync(PlainBrowser? browser = null) =>
        await (browser ?? Browser).PostExactlyAsync($"{Path}/submission", new KeyValuePair<string, string>("__RequestVerificationToken", await TokenAsync(browser ?? Browser)));

    public async Task<KeptSitting> KeptAsync()
    {
        KeptSitting? kept = null;
        await site.RecordAsync(async records => kept = await records.FindStartedSittingAsync(PersonId, Id, CancellationToken.None));
        return kept!; // not null: StartAsync made it
    }

    /// <summary>What a browser would send for an answer.</summary>
    public IEnumerable<KeyValuePair<string, string>> Fields(int number, bool isRight = true)
    {
        var question = QuestionAt(number);
        yield return new("go", (number + 1).ToString(CultureInfo.InvariantCulture));
        switch (question.Key)
        {
            case QuestionKey.One one:
                yield return new("chosen", isRight ? one.OptionId : question.OptionIds.First(id => id != one.OptionId));
                break;
            case QuestionKey.Several several:
                foreach (var id in isRight ? several.OptionIds : question.OptionIds.Except(several.OptionIds)) yield return new("chosen", id);
                break;
            case QuestionKey.Order order:
                foreach (var (index, id) in (isRight ? order.OptionIds : order.OptionIds.Reverse()).Index())
                    yield return new($"place[{id}]", (index + 1).ToString(CultureInfo.InvariantCulture));
                break;
            case QuestionKey.Match match:
                var moved = isRight ? 0 : 1;
                foreach (var (index, pair) in match.Pairs.Index())
                    yield return new($"match[{pair.OptionId}]", match.Pairs[(index + moved) % match.Pairs.Count].MatchId);
                break;
            case QuestionKey.Spot spot:
                yield return new("chosen", isRight ? spot.RegionId : question.OptionIds.First(id => id != spot.RegionId));
                break;
            case QuestionKey.Number typed:
                yield return new("typed", (isRight ? typed.Value : typed.Value + typed.Tolerance + 1).ToString(CultureInfo.InvariantCulture));
                break;
        }
    }

    public void Dispose() => Browser.Dispose();

    public static async Task<string> TokenAsync(PlainBrowser browser) =>
        Token().Match((await browser.GetAsync("/en/my/password")).Html).Groups["value"].Value;

    private static Question QuestionOf(Course course, DrawnQuestion drawn) => course.Questions.Single(question => question.Id == drawn.QuestionId);

    [GeneratedRegex("name=\"__RequestVerificationToken\" type=\"hidden\" value=\"(?<value>[^\"]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Token();
}
