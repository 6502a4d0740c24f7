using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Decisions;
using Training.Web.Tests.Features.Sittings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Corrections;

/// <summary>A question turns out wrong: who is touched is seen first, each result keeps its former self, and nothing is taken away.</summary>
public sealed class CorrectionsControllerTests : IDisposable
{
    private const string Corrections = "/en/programme/courses/awareness/corrections";

    private readonly RunningSite site = RunningSite.Start();

    public void Dispose() => site.Dispose();

    private Course Course => site.Shelf.Find("awareness")!; // not null: a shipped course

    [Fact]
    public async Task Who_would_pass_anew_is_seen_first_then_passes_and_is_told()
    {
        var (bad, worker, sitting) = await FailedByAsync();
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        var preview = await lead.GetAsync($"{Corrections}/new?question={bad.Id}&version={bad.Version}&remedy=LeaveOut");
        Assert.Contains("1 sittings drew it; 1 would newly pass, 0 would no longer pass.", preview.Html, StringComparison.Ordinal);
        Assert.Contains("Ileana Prado-Whitt", preview.Html, StringComparison.Ordinal);
        Assert.Single(await ResultsAsync(sitting));

        var applied = await ApplyAsync(lead, bad, "Two answers were right.");

        Assert.Equal(303, applied.Status);
        Assert.Equal([(false, 9, 10), (true, 9, 9)], (await ResultsAsync(sitting)).Select(result => (result.IsPassed, result.Points, result.MaxPoints)));
        var shown = await lead.GetAsync(applied.Location!);
        Assert.Contains($"{bad.Id} is corrected, and every sitting follows.", shown.Html, StringComparison.Ordinal);
        Assert.Contains("9 of 10, not passed", shown.Html, StringComparison.Ordinal);
        using var reader = await site.SignInAsync(worker);
        var own = (await reader.GetAsync($"/en/my/sittings/{sitting}")).Html;
        Assert.Contains("Before: not passed, 9 of 10. A question turned out wrong:", own, StringComparison.Ordinal);
        Assert.Contains("Two answers were right.", own, StringComparison.Ordinal);
        await site.RecordAsync(async records =>
        {
            var mail = Assert.Single(await records.OutgoingMails.Where(mail => mail.PersonId == worker).ToListAsync());
            Assert.Contains("Before: 9 of 10 points. Now: 9 of 9 points.", mail.Text, StringComparison.Ordinal);
            // The rule grants what the corrected result earns.
            Assert.Single(await records.Periods.Where(period => period.PersonId == worker && period.SchemeId == "awareness").ToListAsync());
        });
    }

    [Fact]
    public async Task The_wrong_text_is_drawn_no_more()
    {
        var (bad, _, _) = await FailedByAsync();
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        await ApplyAsync(lead, bad, "Two answers were right.");

        await site.RecordAsync(async records =>
            Assert.DoesNotContain(bad.Id, (await records.AskedAsync(Course, default)).Questions.Select(question => question.Id)));
    }

    [Fact]
    public async Task A_sitting_under_way_is_graded_by_the_correction_when_it_is_sent()
    {
        await site.SitAsync(await site.PersonAsync(), 3);
        using var quiz = await TakenQuiz.StartAsync(site);
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        for (var number = 2; number <= quiz.Count; number++) await quiz.AnswerAsync(number);
        await quiz.AnswerAsync(1, isRight: false);
        await ApplyAsync(lead, quiz.QuestionAt(1), "Two answers were right.");

        await quiz.SubmitAsync();

        var result = Assert.Single(await ResultsAsync(quiz.Id));
        Assert.Equal((true, 9, 9, Mark.LeftOut), (result.IsPassed, result.Points, result.MaxPoints, result.Questions[0].Mark));
    }

    [Fact]
    public async Task The_same_form_twice_is_one_correction_and_each_result_is_added_once()
    {
        var (bad, worker, sitting) = await FailedByAsync();
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        var id = Guid.CreateVersion7();

        await ApplyAsync(lead, bad, "Two answers were right.", id);
        await ApplyAsync(lead, bad, "Two answers were right.", id);

        Assert.Equal(2, (await ResultsAsync(sitting)).Count);
        await site.RecordAsync(async records =>
        {
            Assert.Single(await records.KeyCorrections.ToListAsync());
            Assert.Single(await records.OutgoingMails.Where(mail => mail.PersonId == worker).ToListAsync());
        });
    }

    [Fact]
    public async Task A_correction_that_a_later_one_replaced_waits_for_nothing_and_grades_nothing()
    {
        var (bad, _, sitting) = await FailedByAsync();
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        var first = await ApplyAsync(lead, bad, "Two answers were right.");
        await site.RecordAsync(async records => await records.KeepAsync(
            new()
            {
                Id = Guid.CreateVersion7(), CourseId = "awareness", QuizId = Course.Quiz.Id, QuestionId = bad.Id, QuestionVersion = bad.Version,
                Remedy = CorrectionRemedy.OtherKey, ByHash = Course.Hash, ByVersion = "a later text", Reason = "The key is known now.",
                LeadId = await site.AppointedAsync(AppointedRole.ProgrammeLead), MadeAt = site.Clock.GetUtcNow().AddMinutes(1),
            },
            setAside: null,
            default));

        var again = await lead.PostAsync($"{first.Location}/regrading", [], page: first.Location!);

        Assert.Equal(303, again.Status);
        Assert.Equal(2, (await ResultsAsync(sitting)).Count);
        Assert.Contains("every sitting follows", (await lead.GetAsync(first.Location!)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_with_other_entries_is_refused_and_the_first_stands()
    {
        var (bad, _, sitting) = await FailedByAsync();
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        var id = Guid.CreateVersion7();
        await ApplyAsync(lead, bad, "Two answers were right.", id);

        Assert.Equal(409, (await ApplyAsync(lead, bad, "No answer was right.", id)).Status);

        Assert.Equal(2, (await ResultsAsync(sitting)).Count);
        await site.RecordAsync(async records => Assert.Equal("Two answers were right.", (await records.KeyCorrections.SingleAsync()).Reason));
    }

    [Fact]
    public async Task Without_a_reason_nothing_is_kept_and_the_page_says_so()
    {
        var (bad, _, sitting) = await FailedByAsync();
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        var refused = await ApplyAsync(lead, bad, " ");

        Assert.Equal(422, refused.Status);
        Assert.Contains("Write why. Nothing was changed.", refused.Html, StringComparison.Ordinal);
        Assert.Single(await ResultsAsync(sitting));
    }

    [Fact]
    public async Task A_certificate_on_a_result_that_fails_anew_stays_and_is_put_before_a_lead()
    {
        // Eight of ten pass; without one of the eight it is seven of nine.
        var worker = await site.PersonAsync();
        var missed = new List<string>();
        var sitting = await site.SitAsync(worker, 11, question =>
            question is { IsCritical: false, Key: QuestionKey.One one, Topic: not "bite" } && missed.Count < 2 && Add(missed, question.Id)
                ? question.OptionIds.First(option => option != one.OptionId)
                : null);
        var before = Assert.Single(await ResultsAsync(sitting));
        Assert.Equal((true, 8), (before.IsPassed, before.Points));
        var decisionId = await GrantAsync(worker);
        var bad = await FindDrawnAsync(sitting, question => !missed.Contains(question.Id) && !question.IsCritical);
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        var applied = await ApplyAsync(lead, bad, "No answer was right.");

        Assert.Equal([true, false], (await ResultsAsync(sitting)).Select(result => result.IsPassed));
        Assert.Contains("a corrected question touches certifications", (await lead.GetAsync("/en/programme")).Html, StringComparison.OrdinalIgnoreCase);
        var page = (await lead.GetAsync(applied.Location!)).Html;
        Assert.Contains("One certification rests on a result that no longer passes.", page, StringComparison.Ordinal);
        await site.RecordAsync(async records =>
        {
            Assert.Single(await records.Periods.Where(period => period.DecisionId == decisionId).ToListAsync());
            Assert.Empty(await records.Suspensions.Where(row => row.PersonId == worker).ToListAsync());
        });

        var concluded = await lead.PostAsync(
            $"{applied.Location}/cases/{decisionId}", new() { ["Conclusion"] = "Sat again and passed." }, page: applied.Location!);
        Assert.Equal(303, concluded.Status);
        Assert.Contains("is corrected, and every sitting follows.", (await lead.GetAsync(applied.Location!)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_question_that_nobody_was_asked_has_no_correction()
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        Assert.Equal(404, (await lead.GetAsync($"{Corrections}/new?question={Course.Questions[0].Id}&version={Course.Questions[0].Version}")).Status);
        Assert.Contains("no question has turned out wrong", (await lead.GetAsync(Corrections)).Html, StringComparison.Ordinal);
    }

    private static bool Add(List<string> list, string id)
    {
        list.Add(id);
        return true;
    }

    /// <summary>Somebody who missed one critical question and nothing else.</summary>
    private async Task<(Question Bad, Guid Worker, Guid Sitting)> FailedByAsync()
    {
        var worker = await site.PersonAsync();
        await site.RecordAsync(records => records.KeepMailAddressAsync(worker, "ileana@example.org", default));
        Question? bad = null;
        var sitting = await site.SitAsync(worker, 7, question =>
        {
            if (bad is not null || question is not { IsCritical: true, Key: QuestionKey.One one }) return null;
            bad = question;
            return question.OptionIds.First(option => option != one.OptionId);
        });
        Assert.False(Assert.Single(await ResultsAsync(sitting)).IsPassed);
        return (bad!, worker, sitting); // not null: the draw has critical questions with one answer
    }

    private async Task<Question> FindDrawnAsync(Guid sitting, Func<Question, bool> fits)
    {
        Question? found = null;
        await site.RecordAsync(async records =>
        {
            var stored = await records.FindSittingAsync(sitting, default);
            found = stored!.Sitting.Draw.Questions.Select(drawn => Course.Questions.Single(question => question.Id == drawn.QuestionId)).First(fits);
        });
        return found!; // not null: set above
    }

    private async Task<Guid> GrantAsync(Guid worker)
    {
        var id = Guid.CreateVersion7();
        await site.RecordAsync(async records =>
        {
            var problems = new List<Problem>();
            await records.DecideAsync(
                id, worker, Course, new Decider.Rule(), DateOnly.FromDateTime(site.Clock.GetUtcNow().UtcDateTime), "America/Phoenix", site.Clock.GetUtcNow(), problems, default);
            Assert.Empty(problems);
        });
        return id;
    }

    private async Task<IReadOnlyList<SittingResult>> ResultsAsync(Guid sitting)
    {
        IReadOnlyList<SittingResult> results = [];
        await site.RecordAsync(async records =>
            results = [.. (await records.FindSittingAsync(sitting, default))!.Results.Select(stored => stored.Result)]); // not null: it was kept
        return results;
    }

    private static Task<Reply> ApplyAsync(PlainBrowser lead, Question bad, string reason, Guid? id = null) => lead.PostAsync(
        Corrections,
        new()
        {
            ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["Question"] = bad.Id, ["Version"] = bad.Version, ["Remedy"] = "LeaveOut", ["Reason"] = reason,
        },
        page: "/en/programme/calibrations");
}
