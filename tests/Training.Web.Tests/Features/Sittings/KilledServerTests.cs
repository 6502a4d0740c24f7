using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Sittings;

/// <summary>
/// Nothing that was confirmed is lost. Fifty workers take a quiz against the program in a process of its own, and each time it is killed
/// at a random moment (SIGKILL). After the restart there is either the whole submission, or every answer that was confirmed.
/// </summary>
public sealed class KilledServerTests
{
    private const int Kills = 50;
    private const string Quiz = "awareness";

    private static readonly DateOnly Long = new(2020, 1, 1);
    private static readonly Course Course = CourseReader.Read(CourseFiles.FromFolder(Repository.Path("courses"))).Courses.Single(course => course.Id == Quiz);

    private static readonly int QuestionCount = Course.Quiz.Blueprint.Sum(row => row.Questions);

    [Fact]
    public async Task Killed_at_any_moment_of_a_quiz_it_keeps_what_it_confirmed()
    {
        var folder = Directory.CreateTempSubdirectory("training-kill-");
        using var server = new ServerProcess(folder.FullName);
        await server.StartAsync();
        await server.RecordAsync(AddWorkersAsync);
        // This seed lets eight of them come to the submission.
        var random = new SplitMix64(5);
        var lengths = new List<int>();
        var whole = 0;

        for (var kill = 0; kill < Kills; kill++)
        {
            var taken = new Taken();
            var quiz = TakeQuizAsync(server, kill, taken);
            await WaitForAnswersAsync(quiz, taken, (int)random.NextBelow((ulong)QuestionCount + 2), (int)random.NextBelow(40));
            server.Kill();
            await Assert.ThrowsAnyAsync<HttpRequestException>(async () =>
            {
                await quiz;
                throw new HttpRequestException("It was through before the kill.");
            });

            await server.RecordAsync(async records => whole += await LookAsync(records, taken) ? 1 : 0);
            lengths.Add(taken.Confirmed.Count);
            await server.StartAsync();
        }

        folder.Delete(recursive: true);
        // The kills hit what they were meant to hit: quizzes in the middle, and some around the submission.
        Assert.True(lengths.Count(length => length > 0 && length < QuestionCount) >= Kills / 2, string.Join(' ', lengths));
        Assert.InRange(whole, 1, Kills - 1);
    }

    // So many answers (one more than there are: until it is sent), and a little more: the kill falls into a request as often as between two.
    private static async Task WaitForAnswersAsync(Task quiz, Taken taken, int answers, int milliseconds)
    {
        while (taken.Confirmed.Count < answers && !quiz.IsCompleted) await Task.Delay(1);
        await Task.Delay(milliseconds);
    }

    private static async Task TakeQuizAsync(ServerProcess server, int worker, Taken taken)
    {
        using var browser = server.OpenBrowser();
        await ConfirmAsync(browser.PostAsync("/en/sign-in", new() { ["Name"] = Name(worker), ["Password"] = Accounts.Password }));
        var token = await browser.TokenAsync("/en/my/password");
        taken.SittingId = Guid.CreateVersion7();
        await ConfirmAsync(browser.PostExactlyAsync($"/en/my/courses/{Quiz}/sittings", token, new("sittingId", taken.SittingId.ToString())));
        IReadOnlyList<Question> drawn = [];
        await server.RecordAsync(async records => drawn = Drawn((await records.StartedSittings.SingleAsync(row => row.Id == taken.SittingId)).Draw));
        foreach (var (place, question) in drawn.Index())
        {
            await ConfirmAsync(browser.PostExactlyAsync($"/en/my/sittings/{taken.SittingId}/questions/{place + 1}", [token, new("go", "review"), .. Fields(question)]));
            taken.Confirmed.Add(question.Id);
        }

        await ConfirmAsync(browser.PostExactlyAsync($"/en/my/sittings/{taken.SittingId}/submission", token));
        taken.IsSent = true;
    }

    private static async Task ConfirmAsync(Task<Reply> sending)
    {
        var answer = await sending;
        Assert.True(answer.Status == 303, $"{answer.Status} {answer.Html}");
    }

    private static IReadOnlyList<Question> Drawn(Draw draw) =>
        [.. draw.Questions.Select(shown => Course.Questions.Single(question => question.Id == shown.QuestionId))];

    private static IEnumerable<KeyValuePair<string, string>> Fields(Question question) => question.Key switch
    {
        QuestionKey.One one => [new("Chosen", one.OptionId)],
        QuestionKey.Several several => several.OptionIds.Select(option => new KeyValuePair<string, string>("Chosen", option)),
        QuestionKey.Order order => order.OptionIds.Select((option, place) => new KeyValuePair<string, string>($"Place[{option}]", $"{place + 1}")),
        QuestionKey.Number number => [new("typed", number.Value.ToString(System.Globalization.CultureInfo.InvariantCulture))],
        QuestionKey.Match match => match.Pairs.Select(pair => new KeyValuePair<string, string>($"Match[{pair.OptionId}]", pair.MatchId)),
        QuestionKey.Spot spot => [new("Chosen", spot.RegionId)],
        _ => throw new InvalidOperationException(),
    };

    /// <summary>True where the whole submission is there; else every confirmed answer must be.</summary>
    private static async Task<bool> LookAsync(RecordsContext records, Taken taken)
    {
        var sent = await records.FindSittingAsync(taken.SittingId, CancellationToken.None);
        if (sent is null)
        {
            Assert.False(taken.IsSent, "A confirmed submission is gone.");
            Assert.Empty(taken.Confirmed.Except(await records.StartedAnswers.Where(row => row.SittingId == taken.SittingId).Select(row => row.QuestionId).ToListAsync()));
            return false;
        }

        Assert.Equal(taken.Confirmed.Order(), sent.Sitting.Answers.Select(answer => answer.QuestionId).Order());
        Assert.True(Assert.Single(sent.Results).Result.IsPassed);
        return true;
    }

    private static Task AddWorkersAsync(RecordsContext records)
    {
        // A lead has read every question, or nothing could be drawn.
        var reviewer = new Person { Id = Guid.CreateVersion7(), Language = Language.English };
        var formId = Guid.CreateVersion7();
        records.Add(reviewer);
        records.AddRange(Course.Questions.Select(question => new QuestionReview
        {
            FormId = formId, CourseId = Course.Id, QuestionId = question.Id, QuestionVersion = question.Version, Outcome = ReviewOutcome.Accepted,
            ReviewerId = reviewer.Id, ReviewedAt = new(Long.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero),
        }));

        string? hash = null;
        for (var worker = 0; worker < Kills; worker++)
        {
            var personId = Guid.CreateVersion7();
            records.Add(new Person { Id = personId, Language = Language.English });
            records.Add(new PersonName { Id = Guid.CreateVersion7(), PersonId = personId, Text = Name(worker), StartsOn = Long });
            var account = new Account { Id = Guid.CreateVersion7(), PersonId = personId, UserName = Name(worker), NormalizedUserName = KeyText.Of(Name(worker)) };
            account.PasswordHash = hash ??= new PasswordHasher<Account>().HashPassword(account, Accounts.Password);
            records.Add(account);
        }

        return records.SaveChangesAsync();
    }

    private static string Name(int worker) => $"worker-{worker}";

    /// <summary>What the worker's phone was told.</summary>
    private sealed class Taken
    {
        public Guid SittingId { get; set; }

        public System.Collections.Concurrent.ConcurrentBag<string> Confirmed { get; } = [];

        public bool IsSent { get; set; }
    }
}
