using Microsoft.Extensions.DependencyInjection;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Questions;
using Training.Web.Shelf;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Questions;

/// <summary>Questions are read by the provider's own expert before anybody is asked them.</summary>
public sealed class QuestionsControllerTests : IDisposable
{
    private const string Overview = "/en/programme/courses/awareness/questions";

    private readonly RunningSite site = RunningSite.StartEmpty();

    public void Dispose() => site.Dispose();

    private Course Course => site.Shelf.Find("awareness")!; // not null: a shipped course

    private async Task<PlainBrowser> LeadAsync() => await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

    private static string Module(string moduleId) => $"/en/programme/courses/awareness/modules/{moduleId}/questions";

    private IEnumerable<Question> Of(string moduleId) => Course.Questions.Where(question => question.Passage.ModuleId == moduleId);

    private static async Task<Reply> JudgeAsync(PlainBrowser lead, string moduleId, params KeyValuePair<string, string>[] fields) =>
        await lead.PostExactlyAsync($"{Module(moduleId)}/reviews", [new("Id", Guid.CreateVersion7().ToString()), .. fields, await lead.TokenAsync(Module(moduleId))]);

    private Task<Reply> AcceptAllAsync(PlainBrowser lead, string moduleId) => JudgeAsync(
        lead, moduleId, [new("Accept", "all"), .. Of(moduleId).Select(question => new KeyValuePair<string, string>("Shown", ReviewForm.NameOf(question)))]);

    [Fact]
    public async Task Until_enough_questions_are_accepted_nobody_is_asked_one()
    {
        using var lead = await LeadAsync();
        using var worker = await site.SignInAsync(await site.PersonAsync());
        const string quiz = "/en/my/courses/awareness/quiz";

        var closed = await worker.GetAsync(quiz);
        var start = await worker.PostAsync("/en/my/courses/awareness/sittings", new() { ["sittingId"] = Guid.CreateVersion7().ToString() }, page: "/en/my/password");
        Assert.Contains("This quiz is not open yet.", closed.Html, StringComparison.Ordinal);
        Assert.Equal((303, quiz), (start.Status, start.Location));
        Assert.Equal(404, (await worker.GetAsync("/en/my/courses/awareness/practice?round=1")).Status);
        Assert.Contains("The quiz stays closed", (await lead.GetAsync(Overview)).Html, StringComparison.Ordinal);

        foreach (var module in Course.Modules) await AcceptAllAsync(lead, module.Id);

        Assert.Contains("every question was read", (await lead.GetAsync(Overview)).Html, StringComparison.Ordinal);
        Assert.DoesNotContain("not open yet", (await worker.GetAsync(quiz)).Html, StringComparison.Ordinal);
        Assert.StartsWith(
            "/en/my/sittings/",
            (await worker.PostAsync("/en/my/courses/awareness/sittings", new() { ["sittingId"] = Guid.CreateVersion7().ToString() }, page: "/en/my/password")).Location,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_question_of_a_module_is_shown_with_its_key_and_its_reason_in_both_languages()
    {
        using var lead = await LeadAsync();
        foreach (var module in Course.Modules)
        {
            var html = (await lead.GetAsync(Module(module.Id))).Html;

            foreach (var question in Of(module.Id))
            {
                Assert.Contains($"id=\"{question.Id}\"", html, StringComparison.Ordinal);
                foreach (var language in LanguageTags.All)
                {
                    Assert.Contains(System.Net.WebUtility.HtmlDecode(question.Words[language].ExplanationHtml), html, StringComparison.Ordinal);
                    if (question.Key is QuestionKey.One one)
                        Assert.Contains($"</strong>{System.Net.WebUtility.HtmlDecode(question.Words[language].OptionHtml[one.OptionId])}", html, StringComparison.Ordinal);
                }
            }
        }
    }

    [Fact]
    public async Task Only_what_was_ticked_is_accepted_and_what_is_set_aside_is_not_drawn()
    {
        using var lead = await LeadAsync();
        var (first, second) = (Of("bite").First(), Of("bite").Skip(1).First());
        await JudgeAsync(lead, "bite", new("Accept", "ticked"), new("Ticked", ReviewForm.NameOf(first)), new("Ticked", ReviewForm.NameOf(second)));
        Assert.Equal([first.Id, second.Id], await AskedAsync());

        site.Clock.Now += TimeSpan.FromMinutes(1);
        await JudgeAsync(lead, "bite", new KeyValuePair<string, string>("Aside", ReviewForm.NameOf(first)));

        Assert.Equal([second.Id], await AskedAsync());
        Assert.Contains("set it aside on", (await lead.GetAsync(Module("bite"))).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_question_whose_words_changed_waits_again_and_an_old_page_does_not_accept_the_new_words()
    {
        using var lead = await LeadAsync();
        await AcceptAllAsync(lead, "bite");
        var old = Of("bite").First();
        var file = Path.Combine(site.CoursesFolder, "awareness/en/questions.md");
        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)).Replace($"## {old.Id}\n\n", $"## {old.Id}\n\nPlease. ", StringComparison.Ordinal));
        await site.Services.GetRequiredService<CourseShelfWatch>().LookAsync(CancellationToken.None);
        Assert.NotEqual(old.Version, Of("bite").First().Version);
        Assert.DoesNotContain(old.Id, await AskedAsync());

        await JudgeAsync(lead, "bite", new("Accept", "all"), new("Shown", ReviewForm.NameOf(old)));

        Assert.DoesNotContain(old.Id, await AskedAsync());
    }

    [Fact]
    public async Task A_form_that_comes_again_with_another_tick_keeps_that_one_too()
    {
        using var lead = await LeadAsync();
        var (first, second) = (Of("bite").First(), Of("bite").Skip(1).First());
        KeyValuePair<string, string>[] form = [new("Id", Guid.CreateVersion7().ToString()), new("Accept", "ticked"), await lead.TokenAsync(Module("bite"))];
        static KeyValuePair<string, string> Ticked(Question question) => new("Ticked", ReviewForm.NameOf(question));

        await lead.PostExactlyAsync($"{Module("bite")}/reviews", [.. form, Ticked(first)]);
        await lead.PostExactlyAsync($"{Module("bite")}/reviews", [.. form, Ticked(first), Ticked(second)]);

        Assert.Equal([first.Id, second.Id], await AskedAsync());
    }

    [Fact]
    public async Task The_same_form_twice_is_one_review_and_it_leads_on_to_what_waits_next()
    {
        using var lead = await LeadAsync();
        var first = Course.Modules[0].Id;
        KeyValuePair<string, string>[] fields =
        [
            new("Id", Guid.CreateVersion7().ToString()), new("Accept", "all"), .. Of(first).Select(question => new KeyValuePair<string, string>("Shown", ReviewForm.NameOf(question))),
            await lead.TokenAsync(Module(first)),
        ];

        var once = await lead.PostExactlyAsync($"{Module(first)}/reviews", fields);
        var twice = await lead.PostExactlyAsync($"{Module(first)}/reviews", fields);

        Assert.Equal((303, Module(Course.Modules[1].Id)), (once.Status, once.Location));
        Assert.Equal((once.Status, once.Location), (twice.Status, twice.Location));
        await site.RecordAsync(records =>
        {
            Assert.Equal(Of(first).Count(), records.QuestionReviews.Count());
            return Task.CompletedTask;
        });
    }

    private async Task<IReadOnlyList<string>> AskedAsync()
    {
        IReadOnlyList<string> ids = [];
        await site.RecordAsync(async records => ids = [.. (await records.AskedAsync(Course, CancellationToken.None)).Questions.Select(question => question.Id)]);
        return ids;
    }
}
