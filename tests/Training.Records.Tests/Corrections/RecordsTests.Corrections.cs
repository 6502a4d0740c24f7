using Training.Scoring;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task Each_persons_first_sitting_is_read_for_statistics_with_marks_choices_and_times()
    {
        var cast = await Cast.CreateAsync(Database);
        var (first, second) = (cast.Sitting(), cast.Sitting());
        await using var records = Database.Open();
        await records.KeepAsync(first, cast.Failed(first), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        var later = second with { StartedAt = first.StartedAt.AddMinutes(5) };
        await records.KeepAsync(later, cast.Passed(later), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var sitting = Assert.Single(await ReadAsync(records, cast));

        Assert.Equal((first.StartedAt, false), (sitting.StartedAt, sitting.IsPassed));
        Assert.Equal(first.Draw.Questions.Select(drawn => (drawn.QuestionId, drawn.QuestionVersion)), sitting.Questions.Select(one => (one.QuestionId, one.Version)));
        Assert.Equal([Scoring.Mark.Right, Scoring.Mark.Right, Scoring.Mark.Blank], sitting.Questions.Select(one => one.Mark));
        Assert.Equal(["step-back"], sitting.Questions[0].OptionIds);
        Assert.Equal(first.Answers[0].SavedAt, sitting.Questions[0].SavedAt);
        Assert.Null(sitting.Questions[2].Language);
    }

    [Fact]
    public async Task What_was_left_out_of_the_grading_is_left_out_of_the_statistics()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        var (id, version) = (sitting.Draw.Questions[0].QuestionId, sitting.Draw.Questions[0].QuestionVersion);
        await using var records = Database.Open();
        await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        var correction = await cast.KeepCorrectionAsync(Database, id, version);
        Assert.Equal([sitting.Id], await records.NotYetRegradedAsync(correction, 10, Cancellation));

        await records.KeepRegradedAsync(sitting.Id, 1, LeftOut(cast, sitting), correction.Id, [], Cast.Now, Cancellation);

        Assert.Empty(await records.NotYetRegradedAsync(correction, 10, Cancellation));
        Assert.Equal(2, Assert.Single(await ReadAsync(records, cast)).Questions.Count);
        var changed = Assert.Single(await records.RegradedAsync(correction.Id, Cancellation));
        Assert.Equal((sitting.Id, cast.Worker, false, 2, 3, true, 2, 2), (
            changed.FormId, changed.PersonId, changed.WasPassed, changed.Points, changed.MaxPoints, changed.IsPassed, changed.NewPoints, changed.NewMaxPoints));
    }

    [Fact]
    public async Task Two_who_grade_again_at_once_write_one_result()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        await using var records = Database.Open();
        await records.KeepAsync(sitting, cast.Failed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        var correction = await cast.KeepCorrectionAsync(Database);

        var kept = await Task.WhenAll(Enumerable.Range(0, 4).Select(async _ =>
        {
            await using var own = Database.Open();
            return await own.KeepRegradedAsync(sitting.Id, 1, cast.Passed(sitting), correction.Id, [], Cast.Now, Cancellation);
        }));

        Assert.Equal(1, kept.Count(isKept => isKept));
        Assert.Equal(2, (await records.FindSittingAsync(sitting.Id, Cancellation))!.Results.Count); // not null: it was kept
    }

    [Fact]
    public async Task A_certification_on_a_result_that_no_longer_passes_is_a_case_until_a_lead_concludes_it()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        await using var records = Database.Open();
        var result = Assert.IsType<Kept.Stored>(
            await records.KeepAsync(sitting, cast.Passed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation)).Id;
        var made = cast.Granted(1, [result]);
        Assert.IsType<Kept.Stored>(await records.KeepAsync(made, Cast.Now, Cancellation));
        var correction = await cast.KeepCorrectionAsync(Database);

        Assert.Empty(await CasesAsync(records, correction));
        await records.KeepRegradedAsync(sitting.Id, 1, cast.Failed(sitting), correction.Id, [], Cast.Now, Cancellation);

        var open = Assert.Single(await CasesAsync(records, correction));
        Assert.Equal((made.Id, cast.Worker, cast.CourseId, Cast.Today), (open.DecisionId, open.PersonId, open.SchemeId, open.DecidedOn));
        Assert.Equal(RecordsProblems.OwnCase, Assert.Single(await records.ConcludeAsync(Conclusion(correction, made.Id, cast.Worker), Cancellation)).Code);
        Assert.Single(await CasesAsync(records, correction));
        Assert.Empty(await records.ConcludeAsync(Conclusion(correction, made.Id, cast.Lead), Cancellation));
        Assert.Empty(await records.ConcludeAsync(Conclusion(correction, made.Id, cast.OtherLead), Cancellation));
        Assert.Empty(await CasesAsync(records, correction));
    }

    [Fact]
    public async Task A_period_that_is_over_is_no_case()
    {
        var cast = await Cast.CreateAsync(Database);
        var sitting = cast.Sitting();
        await using var records = Database.Open();
        var result = Assert.IsType<Kept.Stored>(
            await records.KeepAsync(sitting, cast.Passed(sitting), Cast.Today, Cast.Zone, Cast.Now, Cancellation)).Id;
        await records.KeepAsync(cast.Granted(1, [result]), Cast.Now, Cancellation);
        var correction = await cast.KeepCorrectionAsync(Database);
        await records.KeepRegradedAsync(sitting.Id, 1, cast.Failed(sitting), correction.Id, [], Cast.Now, Cancellation);

        Assert.Contains(await records.OpenCorrectionCasesAsync(Cast.Today.AddYears(1), Cancellation), one => one.CorrectionId == correction.Id);
        Assert.DoesNotContain(await records.OpenCorrectionCasesAsync(Cast.Today.AddYears(1).AddDays(1), Cancellation), one => one.CorrectionId == correction.Id);
    }

    private static CorrectionCaseRecord Conclusion(KeyCorrectionRecord correction, Guid decisionId, Guid leadId) => new()
    {
        CorrectionId = correction.Id, DecisionId = decisionId, LeadId = leadId, Conclusion = "Sat again and passed.", ConcludedAt = Cast.Now,
    };

    private static SittingResult LeftOut(Cast cast, Sitting sitting)
    {
        var failed = cast.Failed(sitting);
        return failed with
        {
            IsPassed = true, Points = 2, MaxPoints = 2, Reasons = [],
            Questions = [failed.Questions[0] with { Mark = Scoring.Mark.LeftOut }, failed.Questions[1], failed.Questions[2] with { Mark = Scoring.Mark.Right }],
        };
    }

    private static async Task<List<AnsweredSitting>> ReadAsync(RecordsContext records, Cast cast)
    {
        var read = new List<AnsweredSitting>();
        await foreach (var sitting in records.AnsweredSittingsAsync("handler-quiz", [cast.CourseHash], default)) read.Add(sitting);
        return read;
    }

    private static async Task<IReadOnlyList<CorrectionCase>> CasesAsync(RecordsContext records, KeyCorrectionRecord correction) =>
        [.. (await records.OpenCorrectionCasesAsync(Cast.Today, default)).Where(one => one.CorrectionId == correction.Id)];
}
