using Training.Courses;
using Training.Records;
using Training.Web.Features.QuizStatistics;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.QuizStatistics;

/// <summary>What stored sittings say about a quiz, in sentences, pictures with their tables, and files.</summary>
public sealed class QuizStatisticsControllerTests : IDisposable
{
    private const string Statistics = "/en/programme/courses/awareness/statistics";

    private readonly RunningSite site = RunningSite.Start();

    public void Dispose() => site.Dispose();

    [Fact]
    public async Task Nobody_and_one_person_give_sentences_and_no_numbers_that_are_none()
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        var nobody = (await lead.GetAsync(Statistics)).Html;
        await site.SitAsync(await site.PersonAsync(), 1);
        var one = (await lead.GetAsync(Statistics)).Html;

        Assert.Contains("0 people sat the quiz, too few to judge its questions.", nobody, StringComparison.Ordinal);
        Assert.Contains("cannot be computed because nobody has answered yet", nobody, StringComparison.Ordinal);
        Assert.Contains("1 people sat the quiz", one, StringComparison.Ordinal);
        Assert.Contains("cannot be computed because there are too few people", one, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", nobody + one, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", nobody + one, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Everybody_right_gives_reasons_and_no_misleading_nought()
    {
        for (var person = 0; person < 32; person++) await site.SitAsync(await site.PersonAsync(), (ulong)person + 1);
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        var html = (await lead.GetAsync(Statistics)).Html;

        Assert.Contains("nothing stands out in 32 first sittings", html, StringComparison.Ordinal);
        Assert.Contains("cannot be computed because everybody has the same score on the rest", html, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_second_sitting_of_a_person_is_not_counted()
    {
        var worker = await site.PersonAsync();
        await site.SitAsync(worker, 1);
        site.Clock.Now = site.Clock.Now.AddHours(3);
        await site.SitAsync(worker, 2);
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        Assert.Contains("1 people sat the quiz", (await lead.GetAsync(Statistics)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_files_hold_every_answer_without_names_and_the_codebook_says_every_column()
    {
        var worker = await site.PersonAsync("Ileana Prado-Whitt");
        await site.SitAsync(worker, 1);
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        var answers = (await lead.GetAsync($"{Statistics}/answers.csv")).Html.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var questions = (await lead.GetAsync($"{Statistics}/questions.csv")).Html.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var codebook = (await lead.GetAsync($"{Statistics}/codebook.csv")).Html;

        Assert.Equal(11, answers.Length);
        Assert.Equal(11, questions.Length);
        Assert.All(answers.Skip(1), row => Assert.StartsWith("1,1,", row, StringComparison.Ordinal));
        Assert.DoesNotContain("Prado", string.Concat(answers), StringComparison.Ordinal);
        Assert.DoesNotContain(worker.ToString(), string.Concat(answers), StringComparison.OrdinalIgnoreCase);
        foreach (var column in answers[0].Split(',').Select(column => $"answers,{column},").Concat(questions[0].Split(',').Select(column => $"questions,{column},")))
            Assert.Contains(column, codebook, StringComparison.Ordinal);
        Assert.Equal(StatisticsFiles.Codebook.Count + 1, codebook.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public async Task A_question_shows_who_chose_what_and_leads_to_its_correction()
    {
        var course = site.Shelf.Find("awareness")!; // not null: a shipped course
        string? asked = null;
        for (var person = 0; person < 4; person++)
        {
            await site.SitAsync(await site.PersonAsync(), (ulong)person + 1, question =>
            {
                if (question is { Key: QuestionKey.One } && asked is null) asked = question.Id;
                return null;
            });
        }

        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        var html = (await lead.GetAsync($"{Statistics}/questions/{asked}")).Html;

        Assert.Contains("Fewer than 30 answers: too few to judge.", html, StringComparison.Ordinal);
        Assert.Contains($"corrections/new?question={asked}&version={course.Questions.Single(question => question.Id == asked).Version}", html, StringComparison.Ordinal);
        Assert.Equal(404, (await lead.GetAsync($"{Statistics}/questions/no-such-question")).Status);
    }
}
