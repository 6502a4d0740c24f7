using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Scoring;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task Sheets_of_two_scorers_of_one_try_both_count_and_their_evidence_names_the_try()
    {
        var (cast, other) = await TwoScorersAsync();
        await using var records = Database.Open();
        await records.KeepAsync(cast.Sheet(@try: 2), Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.IsType<Kept.Stored>(await records.KeepAsync(
            cast.Sheet(@try: 2) with { InstructorId = other }, Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation));

        var evidence = (await EvidenceOfAsync(cast)).Cast<Evidence.OfPractical>().OrderBy(sheet => sheet.Outcome).ToList();
        Assert.Equal([(cast.Class, 2, cast.Instructor), (cast.Class, 2, other)], evidence.Select(sheet => (sheet.ClassId, sheet.Try, sheet.ScorerId)));
        var asked = new Requirement.PassedPractical("move-to-bucket", Subject.Model, new(90, DurationUnit.Days));
        var scheme = SchemeOf(cast) with { Grant = [asked], Renewal = [asked] };
        var file = await records.FindCaseFileAsync(cast.Worker, scheme, Cancellation);
        var decision = Assert.IsType<Decision.NotYet>(Certification.Decisions.Decide(file!, new Decider.Lead(cast.Lead), Cast.Today));
        Assert.Equal([new DecisionReason.ScorersDisagree(asked, evidence[0].ResultId, evidence[1].ResultId)], decision.Reasons);
        Assert.DoesNotContain(await records.WaitingDecisionsAsync(scheme, Cast.Today, Cancellation), waiting => waiting.PersonId == cast.Worker);
    }

    [Fact]
    public async Task Of_two_scorers_who_start_at_once_unaware_only_one_gets_the_number_and_its_kit_is_kept()
    {
        var (cast, other) = await TwoScorersAsync();
        Guid[] scorers = [cast.Instructor, other];

        var kept = await Task.WhenAll(scorers.Select(scorer => Task.Run(async () =>
        {
            await using var mine = Database.Open();
            return await mine.StartAsync(Started(cast, instructor: scorer), TryChoice.Next, Cast.Today, Cancellation);
        })));

        var stored = Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal([RecordsProblems.TryTaken], Codes(Assert.Single(kept.OfType<Kept.Refused>())));
        await using var records = Database.Open();
        Assert.Single((await records.StartedScoresheets.AsNoTracking().Include(sheet => sheet.UsedKit).SingleAsync(sheet => sheet.Id == stored.Id, Cancellation)).UsedKit);
    }

    [Fact]
    public async Task Twelve_starts_at_one_class_at_once_are_all_kept_with_their_kit()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheets = Enumerable.Range(0, 12).Select(_ => Started(cast)).ToList();

        await Task.WhenAll(sheets.Select(sheet => Task.Run(async () =>
        {
            await using var mine = Database.Open();
            Assert.IsType<Kept.Stored>(await mine.StartAsync(sheet, TryChoice.Next, Cast.Today, Cancellation));
        })));

        await using var records = Database.Open();
        var stored = await records.StartedScoresheets.AsNoTracking().Include(sheet => sheet.UsedKit).Where(sheet => sheet.ClassId == cast.Class).ToListAsync(Cancellation);
        Assert.Equal(12, stored.Count(sheet => sheet.UsedKit.Count == 1));
    }

    [Fact]
    public async Task A_second_scoring_is_a_choice_and_the_next_number_goes_on_from_what_others_started()
    {
        var (cast, other) = await TwoScorersAsync();
        await using var records = Database.Open();
        await records.StartAsync(Started(cast), TryChoice.Next, Cast.Today, Cancellation);

        var tries = await records.TriesAtClassAsync(cast.Class, cast.Worker, "move-to-bucket", other, Cast.Today, Cancellation);
        var own = await records.TriesAtClassAsync(cast.Class, cast.Worker, "move-to-bucket", cast.Instructor, Cast.Today, Cancellation);
        var none = await records.StartAsync(Started(cast, instructor: cast.Instructor), TryChoice.SecondScoring, Cast.Today, Cancellation);
        var second = await records.StartAsync(Started(cast, instructor: other), TryChoice.SecondScoring, Cast.Today, Cancellation);

        Assert.Equal((2, 1), (tries.Next(Subject.Model), own.Next(Subject.Model)));
        Assert.Equal((1, cast.Instructor), Assert.Single(tries.Second.Select(sheet => (sheet.Try, sheet.InstructorId))));
        Assert.Equal([RecordsProblems.NoSecondScoring], Codes(none));
        Assert.IsType<Kept.Stored>(second);
    }

    [Fact]
    public async Task A_sheet_is_closed_to_another_scorer_until_they_signed_theirs_or_the_day_is_over()
    {
        var (cast, other) = await TwoScorersAsync();
        await using var records = Database.Open();
        var first = cast.Sheet();
        await records.KeepAsync(first, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        Task<List<Guid>> ClosedTo(Guid scorer, int days = 0) =>
            records.SheetsClosedTo(scorer, Cast.Today.AddDays(days)).Where(sheet => sheet.ClassId == cast.Class).Select(sheet => sheet.FormId).ToListAsync(Cancellation);

        Assert.Equal([first.Id], await ClosedTo(other));
        Assert.Empty(await ClosedTo(other, 1));
        Assert.Empty(await ClosedTo(cast.Instructor)); // their own
        Assert.Empty(await ClosedTo(cast.Lead)); // scores nobody there

        var own = Started(cast, instructor: other);
        Assert.IsType<Kept.Stored>(await records.StartAsync(own, TryChoice.SecondScoring, Cast.Today, Cancellation));
        Assert.Equal([first.Id], await ClosedTo(other, 1)); // it can still be signed

        await records.KeepAsync(first with { Id = own.Id, InstructorId = other }, Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        Assert.Empty(await ClosedTo(other));
        Assert.Empty((await records.TriesAtClassAsync(cast.Class, cast.Worker, "move-to-bucket", other, Cast.Today, Cancellation)).Second);
    }

    [Fact]
    public async Task What_is_shown_already_cannot_be_scored_a_second_time()
    {
        var (cast, other) = await TwoScorersAsync();
        await using var records = Database.Open();
        await records.KeepAsync(cast.Sheet(), Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var kept = await records.StartAsync(Started(cast, instructor: other), TryChoice.SecondScoring, Cast.Today.AddDays(1), Cancellation);

        Assert.Equal([RecordsProblems.NoSecondScoring], Codes(kept));
    }

    // What two scorers of one try found, after how many failures another class comes first, and whether a next try is open.
    [Theory]
    [InlineData(PracticalOutcome.Failed, PracticalOutcome.Failed, 2, true)]
    [InlineData(PracticalOutcome.Failed, PracticalOutcome.Failed, 1, false)]
    [InlineData(PracticalOutcome.Failed, PracticalOutcome.Passed, 2, true)]
    [InlineData(PracticalOutcome.Failed, PracticalOutcome.Passed, 1, false)]
    public async Task Two_sheets_of_one_try_are_one_failure(PracticalOutcome one, PracticalOutcome two, int most, bool isOpen)
    {
        var (cast, other) = await TwoScorersAsync();
        await using var records = Database.Open();
        foreach (var (scorer, outcome) in new[] { (cast.Instructor, one), (other, two) })
        {
            var result = outcome == PracticalOutcome.Passed ? Cast.PassedSheet() : Cast.FailedSheet();
            await records.KeepAsync(cast.Sheet() with { InstructorId = scorer }, result, Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        }

        var (retest, isGuarded) = await records.MayTryPracticalAsync(
            cast.CourseId, Checklist(most), Subject.Model, cast.Worker, cast.Instructor, Cast.Today, Cancellation);

        Assert.Equal((isOpen, false), (retest is Retest.Allowed, isGuarded));
    }

    [Theory]
    [InlineData(PracticalOutcome.Passed)]
    [InlineData(PracticalOutcome.Failed)]
    [InlineData(PracticalOutcome.Incomplete)]
    public async Task To_whom_a_sheet_is_closed_a_next_try_is_answered_the_same_whatever_it_came_to(PracticalOutcome outcome)
    {
        var (cast, other) = await TwoScorersAsync();
        await using var records = Database.Open();
        await records.KeepAsync(cast.Sheet(), Cast.PassedSheet() with { Outcome = outcome }, Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        var (retest, isGuarded) = await records.MayTryPracticalAsync(
            cast.CourseId, Checklist(most: 1), Subject.Model, cast.Worker, other, Cast.Today, Cancellation);

        Assert.Equal((false, true), (retest is Retest.Allowed, isGuarded));
    }

    private static Checklist Checklist(int most) => new(
        "move-to-bucket", 80, [Subject.Model], [], new Dictionary<Language, ChecklistWords>(), "v1",
        Retest: new RetestRules(new(0, DurationUnit.Days), most, new(30, DurationUnit.Days)));

    /// <summary>The usual class with a second scorer.</summary>
    private async Task<(Cast Cast, Guid Other)> TwoScorersAsync()
    {
        var cast = await Cast.CreateAsync(Database);
        var other = (await Cast.CreateAsync(Database)).Instructor;
        await using var records = Database.Open();
        records.Add(new ClassScorer { ClassId = cast.Class, InstructorId = other });
        records.AddRange(cast.CompetenceOf(other));
        await records.SaveChangesAsync(Cancellation);
        return (cast, other);
    }
}
