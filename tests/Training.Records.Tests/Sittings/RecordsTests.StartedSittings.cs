using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_started_sitting_and_its_answers_read_back_as_they_were()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);
        var given = new Answer("reach", [], 130.50m, Language.Spanish, Cast.Now.AddMinutes(3));

        Assert.Equal(new Kept.Stored(id), await SaveAsync(cast, id, given));

        var kept = await FindAsync(cast, id);
        Assert.Equal((cast.Worker, cast.CourseId, 1, Cast.Now, Cast.Today, Cast.Zone, false),
            (kept.PersonId, kept.CourseId, kept.Number, kept.StartedAt, kept.TakenOn, kept.Zone, kept.IsSubmitted));
        Assert.Equal(Text(DrawOf(cast)), Text(kept.Draw));
        Assert.Equal((Text(given), false), (Text(Assert.Single(kept.Answers).Answer), kept.Answers[0].IsLate));
    }

    [Fact]
    public async Task Pairs_are_kept_each_as_option_and_match_and_sent_as_they_were()
    {
        var cast = await Cast.CreateAsync(Database);
        var question = QuestionOf(
            "tools", ["hook", "tongs"], new QuestionKey.Match(["lift", "hold", "weigh"], [new("hook", "lift"), new("tongs", "hold")]));
        var course = CourseOf(cast) with { Questions = [question] };
        var draw = DrawOf(cast) with { Questions = [new(question.Id, question.Version, ["tongs", "hook", "weigh", "lift", "hold"])] };
        var id = Guid.CreateVersion7();
        await using (var records = Database.Open()) await records.StartSittingAsync(id, cast.Worker, draw, Cast.Today, Cast.Zone, ReadOut.Nobody, Cast.Now, Cancellation);
        var given = new Answer(question.Id, ["hook=weigh", "tongs=hold"], null, Language.Spanish, Cast.Now.AddMinutes(1));

        Assert.Equal(new Kept.Stored(id), await SaveAsync(cast, id, given, course));
        Assert.IsType<Kept.Refused>(await SaveAsync(cast, id, given with { OptionIds = ["hook=hold", "tongs=hold"] }, course));
        Assert.IsType<Kept.Refused>(await SaveAsync(cast, id, given with { OptionIds = ["hook=lift"] }, course));
        await SubmitAsync(cast, id);

        await using var after = Database.Open();
        var sent = Assert.IsType<StoredSitting>(await after.FindSittingAsync(id, Cancellation)).Sitting;
        Assert.Equal(Text(draw), Text(sent.Draw));
        Assert.Equal(Text(given), Text(Assert.Single(sent.Answers)));
    }

    [Fact]
    public async Task Starting_again_goes_on_with_the_open_sitting_and_its_questions()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);

        Assert.Equal(id, await StartAsync(cast, id));
        Assert.Equal(id, await StartAsync(cast, seed: 99));
        Assert.Equal(DrawOf(cast).Seed, (await FindAsync(cast, id)).Draw.Seed);
    }

    [Fact]
    public async Task Who_reads_it_out_is_kept_from_the_start_and_told_with_what_was_sent()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = Guid.CreateVersion7();
        var reading = new ReadOut(ReadingAid.Person, "intérprete");
        await using (var records = Database.Open()) await records.StartSittingAsync(id, cast.Worker, DrawOf(cast), Cast.Today, Cast.Zone, reading, Cast.Now, Cancellation);
        await StartAsync(cast, id);
        await SubmitAsync(cast, id);

        await using var after = Database.Open();
        Assert.Equal(reading, (await after.FindSittingAsync(id, Cancellation))?.Reading);
    }

    [Fact]
    public async Task Twelve_starts_at_once_are_one_sitting()
    {
        var cast = await Cast.CreateAsync(Database);

        var ids = await Task.WhenAll(Enumerable.Range(0, 12).Select(number => Task.Run(() => StartAsync(cast, seed: (ulong)number))));

        Assert.Single(ids.Distinct());
        await using var records = Database.Open();
        Assert.Single(await records.OpenSittingsOfAsync(cast.Worker, Cancellation));
    }

    [Fact]
    public async Task After_a_submission_another_one_starts_and_the_old_id_still_names_the_old_one()
    {
        var cast = await Cast.CreateAsync(Database);
        var first = await StartAsync(cast);
        await SubmitAsync(cast, first);

        var second = await StartAsync(cast);

        Assert.NotEqual(first, second);
        Assert.Equal(2, (await FindAsync(cast, second)).Number);
        Assert.Equal(first, await StartAsync(cast, first));
    }

    [Fact]
    public async Task Another_persons_sitting_is_not_found()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);
        var answer = new Answer("silent-snake", ["wait"], null, Language.English, Cast.Now);
        await using var records = Database.Open();

        Assert.Null(await records.FindStartedSittingAsync(cast.Instructor, id, Cancellation));
        Assert.Null(await records.SaveAnswerAsync(CourseOf(cast), cast.Instructor, id, answer, Cancellation));
        Assert.Null(await records.TakeBackAnswerAsync(CourseOf(cast), cast.Instructor, id, "silent-snake", Cast.Now, Cast.Now, Cancellation));
        Assert.Null(await records.StartSittingAsync(id, cast.Instructor, DrawOf(cast), Cast.Today, Cast.Zone, ReadOut.Nobody, Cast.Now, Cancellation));
        Assert.Empty(await records.OpenSittingsOfAsync(cast.Instructor, Cancellation));
        Assert.Empty((await FindAsync(cast, id)).Answers);
        await SubmitAsync(cast, id);
        Assert.Null(await records.FindSittingAsync(cast.Instructor, id, Cancellation));
        Assert.NotNull(await records.FindSittingAsync(cast.Worker, id, Cancellation));
    }

    [Fact]
    public async Task A_later_answer_takes_the_place_of_an_earlier_one()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);

        await SaveAsync(cast, id, new("silent-snake", ["wait"], null, Language.English, Cast.Now.AddMinutes(1)));
        await SaveAsync(cast, id, new("silent-snake", ["prod"], null, Language.Spanish, Cast.Now.AddMinutes(2)));

        var only = Assert.Single((await FindAsync(cast, id)).Answers).Answer;
        Assert.Equal(("prod", Language.Spanish, Cast.Now.AddMinutes(2)), (only.OptionIds[0], only.Language, only.SavedAt));
    }

    [Fact]
    public async Task Answers_saved_at_once_from_many_tabs_are_all_kept()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);
        Answer[] given =
        [
            new("silent-snake", ["wait"], null, Language.English, Cast.Now), new("reach", [], 4, Language.English, Cast.Now),
            new("first-steps", ["call", "keep-still", "take-rings-off"], null, Language.English, Cast.Now),
        ];

        await Task.WhenAll(Enumerable.Repeat(given, 4).SelectMany(all => all).Select(answer => Task.Run(() => SaveAsync(cast, id, answer))));

        Assert.Equal(3, (await FindAsync(cast, id)).Answers.Count);
    }

    public static TheoryData<string, string[], int?, string> Impossible => new()
    {
        { "never-drawn", ["a"], null, SittingProblems.AnswerNotDrawn },
        { "silent-snake", ["dance"], null, SittingProblems.OptionUnknown },
        { "silent-snake", ["wait", "prod"], null, SittingProblems.AnswerShape },
        { "silent-snake", [], 3, SittingProblems.AnswerShape },
        { "reach", [], null, SittingProblems.AnswerShape },
        { "first-steps", ["call", "call", "keep-still"], null, SittingProblems.OptionRepeated },
        { "first-steps", ["call"], null, SittingProblems.AnswerShape },
    };

    [Theory, MemberData(nameof(Impossible))]
    public async Task An_answer_that_the_question_cannot_have_is_refused_and_the_earlier_one_stays(
        string questionId, string[] optionIds, int? number, string code)
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);
        await SaveAsync(cast, id, new("silent-snake", ["wait"], null, Language.English, Cast.Now));

        var kept = await SaveAsync(cast, id, new(questionId, optionIds, number, Language.English, Cast.Now.AddMinutes(1)));

        Assert.Equal([code], Codes(kept!));
        Assert.Equal("wait", Assert.Single((await FindAsync(cast, id)).Answers).Answer.OptionIds[0]);
    }

    [Fact]
    public async Task What_comes_after_the_submission_is_refused_and_what_was_sent_stands()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);
        await SaveAsync(cast, id, new("silent-snake", ["wait"], null, Language.English, Cast.Now));
        await SubmitAsync(cast, id);
        await using var records = Database.Open();

        var late = await SaveAsync(cast, id, new("silent-snake", ["prod"], null, Language.English, Cast.Now.AddMinutes(9)));
        var emptied = await records.TakeBackAnswerAsync(CourseOf(cast), cast.Worker, id, "silent-snake", Cast.Now, Cast.Now, Cancellation);

        Assert.Equal([RecordsProblems.SittingSubmitted], Codes(late!));
        Assert.Equal([RecordsProblems.SittingSubmitted], Codes(emptied!));
        Assert.True((await FindAsync(cast, id)).IsSubmitted);
        var sent = (await records.FindSittingAsync(cast.Worker, id, Cancellation))!.Sitting;
        Assert.Equal("wait", Assert.Single(sent.Answers).OptionIds[0]);
        var listed = Assert.Single(await records.SentSittingsOfAsync(cast.Worker, Cancellation));
        Assert.Equal((id, "handler-quiz", false, 2, 3), (listed.Id, listed.QuizId, listed.IsPassed, listed.Points, listed.MaxPoints));
    }

    [Fact]
    public async Task An_answer_is_either_refused_or_in_what_was_submitted_however_close_they_come()
    {
        var cast = await Cast.CreateAsync(Database);
        for (var round = 0; round < 8; round++)
        {
            var id = await StartAsync(cast);
            var saving = Task.Run(() => SaveAsync(cast, id, new("reach", [], 7, Language.English, Cast.Now)));
            var submitting = Task.Run(() => SubmitAsync(cast, id));
            await Task.WhenAll(saving, submitting);

            await using var records = Database.Open();
            var sent = (await records.FindSittingAsync(cast.Worker, id, Cancellation))!.Sitting;
            Assert.Equal(await saving is Kept.Stored ? 1 : 0, sent.Answers.Count);
        }
    }

    [Fact]
    public async Task A_late_answer_is_kept_beside_the_one_in_time_which_counts()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);
        var course = CourseOf(cast, timeLimitMinutes: 30);
        await SaveAsync(cast, id, new("silent-snake", ["wait"], null, Language.English, Cast.Now.AddMinutes(30)), course);

        await SaveAsync(cast, id, new("silent-snake", ["prod"], null, Language.English, Cast.Now.AddMinutes(31)), course);
        await SaveAsync(cast, id, new("reach", [], 7, Language.English, Cast.Now.AddMinutes(31)), course);

        var kept = await FindAsync(cast, id);
        Assert.Equal(3, kept.Answers.Count);
        Assert.Equal(("wait", false), (kept.FindCounting("silent-snake")!.Answer.OptionIds[0], kept.FindCounting("silent-snake")!.IsLate));
        Assert.Equal(("prod", true), (kept.FindLast("silent-snake")!.Answer.OptionIds[0], kept.FindLast("silent-snake")!.IsLate));
        Assert.Equal((7m, true), (kept.FindCounting("reach")!.Answer.Number, kept.FindCounting("reach")!.IsLate));
        Assert.Equal(["silent-snake", "reach"], kept.SubmittedAt(Cast.Now.AddHours(1)).Answers.Select(answer => answer.QuestionId));
    }

    [Fact]
    public async Task Only_the_answer_that_was_seen_is_taken_back()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);
        var savedAt = Cast.Now.AddMinutes(2);
        await SaveAsync(cast, id, new("reach", [], 7, Language.English, savedAt));
        await using var records = Database.Open();

        await records.TakeBackAnswerAsync(CourseOf(cast), cast.Worker, id, "reach", savedAt.AddMinutes(-1), Cast.Now, Cancellation);
        Assert.Single((await FindAsync(cast, id)).Answers);

        await records.TakeBackAnswerAsync(CourseOf(cast), cast.Worker, id, "reach", savedAt, Cast.Now, Cancellation);
        Assert.Empty((await FindAsync(cast, id)).Answers);
    }

    [Fact]
    public async Task Open_sittings_tell_how_far_they_are()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await StartAsync(cast);
        await SaveAsync(cast, id, new("reach", [], 7, Language.English, Cast.Now));
        await using var records = Database.Open();

        Assert.Equal(
            new OpenSitting(id, "handler-quiz", Cast.Now, Cast.Today, 3, 1),
            Assert.Single(await records.OpenSittingsOfAsync(cast.Worker, Cancellation)));
        await SubmitAsync(cast, id);
        Assert.Empty(await records.OpenSittingsOfAsync(cast.Worker, Cancellation));
    }

    [Fact]
    public async Task A_sitting_is_held_only_inside_a_transaction()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        await Assert.ThrowsAsync<InvalidOperationException>(() => records.HoldStartedSittingAsync(cast.Worker, Guid.CreateVersion7(), Cancellation));
    }

    [Fact]
    public void A_clock_that_ran_ahead_does_not_put_an_answer_behind_the_submission()
    {
        var answer = new Answer("reach", [], 7, Language.English, Cast.Now.AddSeconds(2));
        var kept = new KeptSitting(
            Guid.CreateVersion7(), Guid.CreateVersion7(), "handler", 1, DrawOf(new Cast()), Cast.Now.AddMinutes(-5), Cast.Today, Cast.Zone,
            [new(answer, IsLate: false)], IsSubmitted: false);

        Assert.Equal(answer.SavedAt, kept.SubmittedAt(Cast.Now).SubmittedAt);
        Assert.Equal(Cast.Now.AddMinutes(1), kept.SubmittedAt(Cast.Now.AddMinutes(1)).SubmittedAt);
    }

    private async Task<Guid> StartAsync(Cast cast, Guid? id = null, ulong seed = 7)
    {
        await using var records = Database.Open();
        var started = await records.StartSittingAsync(
            id ?? Guid.CreateVersion7(), cast.Worker, DrawOf(cast) with { Seed = seed }, Cast.Today, Cast.Zone, ReadOut.Nobody, Cast.Now, Cancellation);
        return Assert.NotNull(started);
    }

    private async Task<Kept?> SaveAsync(Cast cast, Guid id, Answer answer, Course? course = null)
    {
        await using var records = Database.Open();
        return await records.SaveAnswerAsync(course ?? CourseOf(cast), cast.Worker, id, answer, Cancellation);
    }

    private async Task<KeptSitting> FindAsync(Cast cast, Guid id)
    {
        await using var records = Database.Open();
        return Assert.IsType<KeptSitting>(await records.FindStartedSittingAsync(cast.Worker, id, Cancellation));
    }

    private async Task SubmitAsync(Cast cast, Guid id)
    {
        await using var records = Database.Open();
        await using var transaction = await records.Database.BeginTransactionAsync(Cancellation);
        var held = Assert.IsType<KeptSitting>(await records.HoldStartedSittingAsync(cast.Worker, id, Cancellation));
        var sitting = held.SubmittedAt(Cast.Now.AddMinutes(40));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(sitting, cast.Failed(sitting), held.TakenOn, held.Zone, Cast.Now.AddMinutes(40), Cancellation));
        await transaction.CommitAsync(Cancellation);
    }

    private static Draw DrawOf(Cast cast) => cast.Sitting().Draw with { Seed = 7, Questions = [.. CourseOf(cast).Questions.Select(question => new DrawnQuestion(question.Id, question.Version, question.OptionIds))] };

    private static Course CourseOf(Cast cast, int? timeLimitMinutes = null) => new(
        cast.CourseId, cast.CourseHash, SchemeOf(cast), ["meeting"], [], [],
        [
            QuestionOf("silent-snake", ["prod", "step-back", "wait"], new QuestionKey.One("step-back")),
            QuestionOf("reach", [], new QuestionKey.Number(130, 2.5m, "cm")),
            QuestionOf("first-steps", ["call", "keep-still", "take-rings-off"], new QuestionKey.Order(["call", "keep-still", "take-rings-off"])),
        ],
        new Quiz("handler-quiz", 80, timeLimitMinutes, [new("meeting", 3, 0, 0)]), [], new Dictionary<Language, CourseWords>(), []);

    private static Question QuestionOf(string id, IReadOnlyList<string> optionIds, QuestionKey key) => new(
        id, "meeting", "meet", Difficulty.Easy, false, new Passage("meeting", "stop"), "F-AID-02", [], optionIds, key,
        new Dictionary<Language, QuestionWords>(), id.PadRight(64, '0'));
}
