using System.Data.Common;
using System.Text.Json;
using CsCheck;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Training.Courses;
using Training.Scoring;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_sitting_and_its_result_read_back_as_they_were()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        var result = cast.Failed(sitting);
        await using var records = Database.Open();

        var kept = Assert.IsType<Kept.Stored>(await records.KeepAsync(sitting, result, Cast.Today, Cast.Zone, Cast.Now, Cancellation));

        var stored = await records.FindSittingAsync(sitting.Id, Cancellation);
        Assert.NotNull(stored);
        Assert.Equal((Cast.Today, Cast.Zone, 1), (stored.TakenOn, stored.Zone, stored.Copy));
        Assert.Equal(Text(sitting), Text(stored.Sitting));
        var graded = Assert.Single(stored.Results);
        Assert.Equal((kept.Id, Cast.Now), (graded.Id, graded.GradedAt));
        Assert.Equal(Text(result with { Reasons = [] }), Text(graded.Result with { Reasons = [] }));
        Assert.Equal(result.Reasons, graded.Result.Reasons);
    }

    [Fact]
    public async Task Whatever_is_drawn_and_typed_reads_back_as_it_was()
    {
        var cast = await Cast.CreateAsync(Database);
        var ticks = Gen.Long[0, TimeSpan.TicksPerDay * 3000];
        var generated = Gen.Select(Gen.ULong, Gen.Decimal, Gen.String[Gen.Char['a', 'ÿ'], 0, 12].Array[0, 5], ticks);

        await generated.SampleAsync(
            async drawn =>
            {
                var (seed, number, options, since) = drawn;
                var at = new DateTimeOffset(2020, 1, 1, 0, 0, 0, TimeSpan.FromHours(5)).AddTicks(since);
                var sitting = cast.Sitting();
                sitting = sitting with
                {
                    Draw = sitting.Draw with { Seed = seed },
                    Answers = [new("reach", [], number, Language.Spanish, at), new("first-steps", options, null, Language.English, at)],
                };
                await using var records = Database.Open();
                await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, default);

                var stored = await records.FindSittingAsync(sitting.Id, default);

                var cut = new DateTimeOffset(at.UtcTicks / 10_000 * 10_000, TimeSpan.Zero);
                var expected = sitting with { Answers = [.. sitting.Answers.Select(answer => answer with { SavedAt = cut })] };
                return stored is not null && Text(expected) == Text(stored.Sitting);
            },
            iter: 40);
    }

    [Fact]
    public async Task The_same_post_again_is_the_stored_sitting_even_when_the_server_stamped_it_later()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        await using var records = Database.Open();
        var first = Assert.IsType<Kept.Stored>(await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation));

        var again = sitting with
        {
            SubmittedAt = sitting.SubmittedAt.AddSeconds(7),
            Answers = [.. sitting.Answers.Reverse().Select(answer => answer with { SavedAt = answer.SavedAt.AddSeconds(7) })],
        };
        var second = await records.KeepAsync(again, cast.Failed(again), Cast.Today, Cast.Zone, Cast.Now.AddSeconds(7), Cancellation);

        Assert.Equal(new Kept.AlreadyStored(first.Id), second);
        Assert.Single(await records.CopiesOfSittingAsync(sitting.Id, Cancellation));
    }

    [Fact]
    public async Task Twenty_identical_posts_at_once_are_one_sitting()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();

        var kept = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        })));

        var stored = Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal(19, kept.OfType<Kept.AlreadyStored>().Count(other => other.Id == stored.Id));
        await using var read = Database.Open();
        var copy = Assert.Single(await read.CopiesOfSittingAsync(sitting.Id, Cancellation));
        Assert.Single(copy.Results);
    }

    [Fact]
    public async Task Other_content_under_the_same_id_is_kept_as_disputed_and_counts_for_nothing()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        var other = sitting with { Answers = [sitting.Answers[0] with { OptionIds = ["prod"] }] };
        await using var records = Database.Open();
        await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var kept = await records.KeepAsync(other, cast.Passed(other), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        var repeated = await records.KeepAsync(other, cast.Passed(other), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var disputed = Assert.IsType<Kept.Disputed>(kept);
        Assert.Equal(RecordsProblems.OtherContent, disputed.Problem.Code);
        Assert.Equal(disputed.Id, Assert.IsType<Kept.Disputed>(repeated).Id);
        var copies = await records.CopiesOfSittingAsync(sitting.Id, Cancellation);
        Assert.Equal([Text(sitting), Text(other)], copies.Select(copy => Text(copy.Sitting)));
        Assert.Equal([1, 0], copies.Select(copy => copy.Results.Count));
        Assert.Single(await EvidenceOfAsync(cast));
    }

    [Fact]
    public async Task Of_twelve_contents_at_once_one_counts_and_all_are_kept()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();

        var kept = await Task.WhenAll(Enumerable.Range(0, 12).Select(number => Task.Run(async () =>
        {
            var content = sitting with { Answers = [new("reach", [], number, Language.English, Cast.Now)] };
            await using var records = Database.Open();
            return await records.KeepAsync(content, cast.Failed(content), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal(11, kept.OfType<Kept.Disputed>().Count());
        await using var read = Database.Open();
        var copies = await read.CopiesOfSittingAsync(sitting.Id, Cancellation);
        Assert.Equal(Enumerable.Range(1, 12), copies.Select(copy => copy.Copy));
        Assert.Equal(12, copies.Select(copy => copy.Sitting.Answers[0].Number).Distinct().Count());
    }

    [Fact]
    public async Task A_failure_between_two_writes_leaves_nothing_half_written()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        var failure = new FailureAt("QuestionResults");
        await using (var broken = Database.OpenRowByRow(failure))
        {
            await Assert.ThrowsAnyAsync<Exception>(
                () => broken.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation));
        }

        await using var records = Database.Open();
        Assert.True(failure.InsertsBefore >= 5, "Rows of the sitting had gone to the engine before the failure.");
        Assert.Null(await records.FindSittingAsync(sitting.Id, Cancellation));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation));
    }

    [Fact]
    public async Task A_repeat_inside_the_callers_transaction_leaves_that_transaction_usable()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        await using var transaction = await records.Database.BeginTransactionAsync(Cancellation);

        var issued = await records.IssueAsync(Paper(made, cast, "TAKEN" + made.Id), Cast.Now, Cancellation);
        var clash = await records.IssueAsync(Paper(made, cast, "TAKEN" + made.Id) with { Revision = 2 }, Cast.Now, Cancellation);
        await transaction.CommitAsync(Cancellation);

        Assert.IsType<Issue.Issued>(issued);
        Assert.IsType<Issue.DrawTaken>(clash);
        Assert.Equal(1, await records.Papers.CountAsync(paper => paper.DecisionId == made.Id, Cancellation));
    }

    [Fact]
    public async Task An_unknown_person_and_an_unknown_course_are_both_told()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        sitting = sitting with { PersonId = Guid.CreateVersion7(), Draw = sitting.Draw with { CourseHash = Cast.NewHash() } };
        await using var records = Database.Open();

        var kept = await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.Equal([RecordsProblems.PersonUnknown, RecordsProblems.SnapshotUnknown], Codes(kept));
    }

    [Fact]
    public async Task Two_answers_to_one_question_or_one_to_a_question_not_drawn_were_never_graded()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        var answer = sitting.Answers[0];
        await using var records = Database.Open();

        foreach (var answers in new Answer[][] { [answer, answer], [answer with { QuestionId = "never-drawn" }] })
        {
            await Assert.ThrowsAsync<ArgumentException>(() => records.KeepAsync(
                sitting with { Answers = answers }, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation));
        }
    }

    [Fact]
    public async Task Regrading_adds_a_result_and_new_decisions_read_that_one()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        await using var records = Database.Open();
        await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var correction = await cast.KeepCorrectionAsync(Database);
        Assert.True(await records.KeepRegradedAsync(sitting.Id, 1, cast.Passed(sitting), correction.Id, [], Cast.Now.AddDays(3), Cancellation));

        var stored = await records.FindSittingAsync(sitting.Id, Cancellation);
        Assert.Equal([false, true], stored!.Results.Select(result => result.Result.IsPassed));
        var evidence = Assert.IsType<Certification.Evidence.OfQuiz>(Assert.Single(await EvidenceOfAsync(cast)));
        Assert.Equal([null, correction.Reason], stored.Results.Select(result => result.CorrectionReason));
        Assert.Equal((stored.Results[^1].Id, true, "handler-quiz", Cast.Today), (evidence.ResultId, evidence.IsPassed, evidence.QuizId, evidence.On));
    }

    private static string Text<T>(T value) => JsonSerializer.Serialize(value);

    private static IEnumerable<string> Codes(Kept kept) => Assert.IsType<Kept.Refused>(kept).Problems.Select(problem => problem.Code);

    private async Task<IReadOnlyList<Certification.Evidence>> EvidenceOfAsync(Cast cast)
    {
        await using var records = Database.Open();
        return (await records.FindCaseFileAsync(cast.Worker, SchemeOf(cast), Cancellation))!.Evidence;
    }

    private static Scheme SchemeOf(Cast cast) => new(
        cast.CourseId, SchemeKind.Certification, new(2024, 1, 1), new(2027, 1, 1), Separation.TeachScoreDecide, Cast.Annual, [], [], [],
        new Dictionary<Language, SchemeWords>());

    /// <summary>Lets the engine take rows until the first one of a table.</summary>
    private sealed class FailureAt(string table) : DbCommandInterceptor
    {
        public int InsertsBefore { get; private set; }

        public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
            DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
        {
            Count(command);
            return base.ReaderExecutingAsync(command, eventData, result, cancellationToken);
        }

        public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(
            DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
        {
            Count(command);
            return base.NonQueryExecutingAsync(command, eventData, result, cancellationToken);
        }

        private void Count(DbCommand command)
        {
            if (!command.CommandText.Contains("INSERT INTO", StringComparison.Ordinal)) return;
            if (command.CommandText.Contains(table, StringComparison.Ordinal)) throw new TimeoutException("The power went.");
            InsertsBefore++;
        }
    }
}
