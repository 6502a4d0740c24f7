using Training.Certification;
using Training.Courses;
using Training.Scoring;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_scoresheet_and_its_result_read_back_as_they_were()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = cast.Sheet(remarks: "Wind from the west; calm candidate.") with { StoppedAtStep = "lid" };
        await using var records = Database.Open();

        var kept = Assert.IsType<Kept.Stored>(await records.KeepAsync(sheet, Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation));

        var stored = await records.FindScoresheetAsync(sheet.Id, Cancellation);
        Assert.NotNull(stored);
        Assert.Equal(Text(sheet), Text(stored.Sheet));
        Assert.Equal((Cast.Today, Cast.Zone, 1), (stored.ScoredOn, stored.Zone, stored.Copy));
        var graded = Assert.Single(stored.Results);
        Assert.Equal(kept.Id, graded.Id);
        Assert.Equal(Cast.FailedSheet() with { Reasons = [] }, graded.Result with { Reasons = [] } with { Reasons = Cast.PassedSheet().Reasons });
        Assert.Equal(Cast.FailedSheet().Reasons, graded.Result.Reasons);
    }

    [Fact]
    public async Task A_live_sheet_after_a_pass_on_the_model_reads_back_with_its_conditions()
    {
        var cast = await Cast.CreateAsync(Database);
        var model = cast.Sheet();
        var live = cast.Sheet(subject: Subject.Live, live: Live(cast, model));
        await using var records = Database.Open();
        await records.KeepAsync(model, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.IsType<Kept.Stored>(await records.KeepAsync(live, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation));

        Assert.Equal(Text(live), Text((await records.FindScoresheetAsync(live.Id, Cancellation))!.Sheet));
    }

    [Fact]
    public async Task A_live_sheet_without_a_pass_on_the_model_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var failed = cast.Sheet();
        var never = cast.Sheet();
        await using var records = Database.Open();
        await records.KeepAsync(failed, Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        foreach (var model in new[] { failed, never })
        {
            var live = cast.Sheet(subject: Subject.Live, live: Live(cast, model));
            var kept = await records.KeepAsync(live, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
            Assert.Equal([RecordsProblems.ModelPassMissing], Codes(kept));
        }
    }

    [Fact]
    public async Task Twenty_identical_posts_at_once_are_one_scoresheet()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = cast.Sheet();

        var kept = await Task.WhenAll(Enumerable.Range(0, 20).Select(second => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.KeepAsync(
                sheet with { SignedAt = sheet.SignedAt.AddSeconds(second) }, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        })));

        var stored = Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal(19, kept.OfType<Kept.AlreadyStored>().Count(other => other.Id == stored.Id));
    }

    [Fact]
    public async Task Other_content_under_the_same_id_is_a_disputed_scoresheet()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = cast.Sheet();
        var other = sheet with { Remarks = "Scored again at home." };
        await using var records = Database.Open();
        await records.KeepAsync(sheet, Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var kept = await records.KeepAsync(other, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.Equal(RecordsProblems.OtherContent, Assert.IsType<Kept.Disputed>(kept).Problem.Code);
        Assert.Equal(2, (await records.CopiesOfScoresheetAsync(sheet.Id, Cancellation)).Count);
        var evidence = Assert.IsType<Evidence.OfPractical>(Assert.Single(await EvidenceOfAsync(cast)));
        Assert.Equal(PracticalOutcome.Failed, evidence.Outcome);
    }

    [Fact]
    public async Task A_second_sheet_of_the_same_try_is_kept_as_disputed_and_stays_so_when_posted_again()
    {
        var cast = await Cast.CreateAsync(Database);
        var second = cast.Sheet(remarks: "The same try, typed in anew.");
        await using var records = Database.Open();
        await records.KeepAsync(cast.Sheet(), Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var kept = await records.KeepAsync(second, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        var again = await records.KeepAsync(second, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var disputed = Assert.IsType<Kept.Disputed>(kept);
        Assert.Equal((RecordsProblems.TryScored, disputed.Id), (disputed.Problem.Code, Assert.IsType<Kept.Disputed>(again).Id));
        Assert.Equal(2, (await records.FindScoresheetAsync(second.Id, Cancellation))!.Copy);
        Assert.Single(await EvidenceOfAsync(cast));
    }

    [Fact]
    public async Task Two_sheets_of_the_same_try_at_once_do_not_both_count()
    {
        var cast = await Cast.CreateAsync(Database);

        var kept = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.KeepAsync(cast.Sheet(), Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal(7, kept.OfType<Kept.Disputed>().Count());
    }

    [Fact]
    public async Task A_second_try_is_another_scoresheet()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        await records.KeepAsync(cast.Sheet(), Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.IsType<Kept.Stored>(await records.KeepAsync(cast.Sheet(@try: 2), Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation));

        Assert.Equal(2, (await EvidenceOfAsync(cast)).Count);
    }

    [Fact]
    public async Task Who_scores_themselves_or_is_not_appointed_that_day_is_refused_with_every_reason()
    {
        var cast = await Cast.CreateAsync(Database);
        var oneself = cast.Sheet() with { CandidateId = cast.Lead, InstructorId = cast.Lead, ClassId = Guid.CreateVersion7(), CourseHash = Cast.NewHash() };
        await using var records = Database.Open();

        var kept = await records.KeepAsync(oneself, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        var early = await records.KeepAsync(cast.Sheet(), Cast.PassedSheet(), new DateOnly(2023, 12, 31), Cast.Zone, Cast.Now, Cancellation);

        Assert.Equal(
            [RecordsProblems.ScoresOneself, RecordsProblems.NotAnInstructor, RecordsProblems.SnapshotUnknown, RecordsProblems.ClassUnknown],
            Codes(kept));
        Assert.Equal([RecordsProblems.NotAnInstructor], Codes(early));
    }

    [Fact]
    public async Task A_written_reason_shows_in_the_evidence_and_survives_regrading()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = cast.Sheet();
        await using var records = Database.Open();
        await records.KeepAsync(sheet, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var kept = await records.KeepSeparationReasonAsync(sheet.Id, cast.Lead, "No other instructor within 900 km.", Cast.Today, Cast.Now, Cancellation);
        var again = await records.KeepSeparationReasonAsync(sheet.Id, cast.Lead, "No other instructor within 900 km.", Cast.Today, Cast.Now, Cancellation);
        var other = await records.KeepSeparationReasonAsync(sheet.Id, cast.OtherLead, "Changed.", Cast.Today, Cast.Now, Cancellation);
        var noLead = await records.KeepSeparationReasonAsync(sheet.Id, cast.Worker, "Mine.", Cast.Today, Cast.Now, Cancellation);
        var regraded = await records.KeepRegradedAsync(sheet.Id, Cast.PassedSheet(), Cast.Now, Cancellation);

        Assert.IsType<Kept.Stored>(kept);
        Assert.IsType<Kept.AlreadyStored>(again);
        Assert.Equal([RecordsProblems.OtherContent], Codes(other));
        Assert.Equal([RecordsProblems.NotTheScorerNorALead], Codes(noLead));
        var evidence = Assert.IsType<Evidence.OfPractical>(Assert.Single(await EvidenceOfAsync(cast)));
        Assert.Equal(
            (regraded, "No other instructor within 900 km.", cast.Instructor, Subject.Model),
            (evidence.ResultId, evidence.SeparationReason, evidence.ScorerId, evidence.Subject));
    }

    [Fact]
    public async Task The_scorer_may_write_the_reason_themselves()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = cast.Sheet();
        await using var records = Database.Open();
        await records.KeepAsync(sheet, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var kept = await records.KeepSeparationReasonAsync(sheet.Id, cast.Instructor, "The other scorer is ill.", Cast.Today, Cast.Now, Cancellation);

        Assert.IsType<Kept.Stored>(kept);
        Assert.Equal("The other scorer is ill.", Assert.IsType<Evidence.OfPractical>(Assert.Single(await EvidenceOfAsync(cast))).SeparationReason);
    }

    [Fact]
    public async Task A_sheet_of_somebody_who_does_not_attend_or_by_no_scorer_of_the_class_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var stranger = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        var notThere = await records.KeepAsync(
            cast.Sheet() with { CandidateId = stranger.Worker }, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        var noScorer = await records.KeepAsync(
            cast.Sheet() with { InstructorId = stranger.Instructor }, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.Equal([RecordsProblems.NotInClass], Codes(notThere));
        Assert.Equal([RecordsProblems.NotAScorer], Codes(noScorer));
    }

    private static LiveConditions Live(Cast cast, Scoresheet model) =>
        new("AZ-4471", new(2026, 4, 20), Cast.Now.AddHours(-1), cast.OtherLead, model.Id);
}
