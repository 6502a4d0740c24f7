using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static Panel PanelOf(Cast cast, string purpose = "A pass mark that somebody else could defend.") => new()
    {
        Id = Guid.CreateVersion7(), CourseId = cast.CourseId, CourseHash = cast.CourseHash, TargetId = "quiz", ItemIds = ["q1", "q2"], Purpose = purpose,
        JustCompetent = "Keeps back, and needs the sheet for the rest.", Balance = "Two trades, two languages.", LeadId = cast.Lead, OpenedAt = Cast.Now,
    };

    private static PanelJudge JudgeOf(Panel panel, Cast cast, Guid? person = null, string? outsider = null) => new()
    {
        Id = Guid.CreateVersion7(), PanelId = panel.Id, Number = 0, PersonId = person, OutsiderName = outsider, Qualification = "Ten years in the field.",
        AddedById = cast.Lead, AddedAt = Cast.Now,
    };

    private static PanelRating[] Say(Guid formId, PanelJudge judge, Cast cast, int round, int minute, params (string Item, int Percent)[] said) =>
    [
        .. said.Select(one => new PanelRating
        {
            FormId = formId, JudgeId = judge.Id, ItemId = one.Item, Round = round, Percent = one.Percent, KeptById = cast.Lead, KeptAt = Cast.Now.AddMinutes(minute),
        }),
    ];

    private static IEnumerable<(string Item, int Percent)> Pairs(IReadOnlyDictionary<string, int> said) =>
        said.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => (pair.Key, pair.Value));

    [Fact]
    public async Task What_a_judge_says_last_in_a_round_counts_and_the_second_round_begins_with_the_first()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var panel = PanelOf(cast);
        var judge = JudgeOf(panel, cast, outsider: "Ottoline Vetch");
        await records.KeepAsync(panel, Cancellation);
        await records.KeepAsync(judge, Cancellation);

        await records.KeepAsync(panel.Id, Say(Guid.CreateVersion7(), judge, cast, 1, 1, ("q1", 60), ("q2", 70)), Cancellation);
        await records.KeepAsync(panel.Id, Say(Guid.CreateVersion7(), judge, cast, 1, 2, ("q1", 65), ("q2", 70)), Cancellation);
        await records.KeepAsync(new PanelRoundEnd { PanelId = panel.Id, Round = 1, LeadId = cast.Lead, EndedAt = Cast.Now.AddMinutes(3) }, Cancellation);
        await records.KeepAsync(panel.Id, Say(Guid.CreateVersion7(), judge, cast, 2, 4, ("q2", 80)), Cancellation);

        var file = await records.FindPanelAsync(panel.Id, Cancellation);
        Assert.NotNull(file);
        Assert.Equal(2, file.OpenRound);
        Assert.Equal([("q1", 65), ("q2", 70)], Pairs(file.Counting(judge.Id, 1)));
        Assert.Equal([("q1", 65), ("q2", 80)], Pairs(file.Counting(judge.Id, 2)));
        // Four said, one of them twice in the same words: three and one rows.
        Assert.Equal(4, records.PanelRatings.Count(rating => rating.JudgeId == judge.Id));
    }

    [Fact]
    public async Task A_form_that_comes_twice_rates_once_and_with_other_content_it_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var (panel, form) = (PanelOf(cast), Guid.CreateVersion7());
        var judge = JudgeOf(panel, cast, outsider: "Ottoline Vetch");
        await records.KeepAsync(panel, Cancellation);
        await records.KeepAsync(judge, Cancellation);

        Assert.IsType<Kept.Stored>(await records.KeepAsync(panel.Id, Say(form, judge, cast, 1, 1, ("q1", 60)), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(panel.Id, Say(form, judge, cast, 1, 1, ("q1", 60)), Cancellation));
        var other = Assert.IsType<Kept.Refused>(await records.KeepAsync(panel.Id, Say(form, judge, cast, 1, 1, ("q1", 61)), Cancellation));

        Assert.Equal(PanelProblems.FormReused, Assert.Single(other.Problems).Code);
        Assert.Equal([("q1", 60)], Pairs((await records.FindPanelAsync(panel.Id, Cancellation))!.Said(judge.Id, 1)));
    }

    [Fact]
    public async Task Nothing_is_said_in_a_round_that_is_not_open()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var panel = PanelOf(cast);
        var judge = JudgeOf(panel, cast, person: cast.Instructor);
        await records.KeepAsync(panel, Cancellation);
        await records.KeepAsync(judge, Cancellation);

        var early = Assert.IsType<Kept.Refused>(await records.KeepAsync(panel.Id, Say(Guid.CreateVersion7(), judge, cast, 2, 1, ("q1", 60)), Cancellation));
        await records.KeepAsync(new PanelRoundEnd { PanelId = panel.Id, Round = 1, LeadId = cast.Lead, EndedAt = Cast.Now.AddMinutes(2) }, Cancellation);
        await records.KeepAsync(new PanelRoundEnd { PanelId = panel.Id, Round = 1, LeadId = cast.Lead, EndedAt = Cast.Now.AddMinutes(9) }, Cancellation);
        var late = Assert.IsType<Kept.Refused>(await records.KeepAsync(panel.Id, Say(Guid.CreateVersion7(), judge, cast, 1, 3, ("q1", 60)), Cancellation));

        Assert.Equal([PanelProblems.RoundClosed, PanelProblems.RoundClosed], early.Problems.Concat(late.Problems).Select(problem => problem.Code));
        Assert.Equal(Cast.Now.AddMinutes(2), Assert.Single((await records.FindPanelAsync(panel.Id, Cancellation))!.Ends).EndedAt);
    }

    [Fact]
    public async Task Ten_judges_added_at_once_get_ten_numbers_and_nobody_judges_twice()
    {
        var cast = await Cast.CreateAsync(Database);
        var panel = PanelOf(cast);
        await using var records = Database.Open();
        await records.KeepAsync(panel, Cancellation);

        await Task.WhenAll(Enumerable.Range(0, 10).Select(number => Task.Run(async () =>
        {
            await using var node = Database.Open();
            await node.KeepAsync(number < 5 ? JudgeOf(panel, cast, person: cast.Instructor) : JudgeOf(panel, cast, outsider: $"Outsider {number}"), Cancellation);
        })));

        var judges = (await records.FindPanelAsync(panel.Id, Cancellation))!.Judges;
        Assert.Equal([1, 2, 3, 4, 5, 6], judges.Select(judge => judge.Number));
        Assert.Single(judges, judge => judge.PersonId == cast.Instructor);
    }

    [Fact]
    public async Task An_adoption_is_kept_once_with_its_figures_and_a_later_one_stands_beside_it()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var panel = PanelOf(cast);
        await records.KeepAsync(panel, Cancellation);
        CutAdoption Adopt(Guid id, string reason, int minute) => new()
        {
            Id = id, PanelId = panel.Id, Method = CutMethod.Angoff, Mean = 78.42m, PassPercent = 79, StandardError = 2.31m, StandardDeviation = 5.66m, Judges = 6,
            Rounds = 2, Reason = reason, LeadId = cast.Lead, AdoptedOn = new(2026, 2, 11), KeptAt = Cast.Now.AddMinutes(minute),
        };
        var first = Guid.CreateVersion7();

        Assert.IsType<Kept.Stored>(await records.KeepAsync(Adopt(first, "Because.", 1), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Adopt(first, "Because.", 2), Cancellation));
        Assert.IsType<Kept.Refused>(await records.KeepAsync(Adopt(first, "Otherwise.", 2), Cancellation));
        await records.KeepAsync(Adopt(Guid.CreateVersion7(), "Again.", 3), Cancellation);

        var adoptions = (await records.FindPanelAsync(panel.Id, Cancellation))!.Adoptions;
        Assert.Equal([("Because.", 78.42m, 79), ("Again.", 78.42m, 79)], adoptions.Select(row => (row.Reason, row.Mean, row.PassPercent)));
        Assert.Equal(79, Assert.Single(await records.PanelsAsync(Cancellation), line => line.Id == panel.Id).PassPercent);
    }

    [Fact]
    public async Task Everybody_counts_once_in_the_scores_by_their_first_sitting_and_each_answer_in_the_shares()
    {
        var cast = await Cast.CreateAsync(Database);
        var quiz = $"quiz-{Guid.CreateVersion7():N}";
        await using var records = Database.Open();
        var first = cast.Sitting();
        first = first with { Draw = first.Draw with { QuizId = quiz } };
        var second = first with { Id = Guid.CreateVersion7(), StartedAt = first.StartedAt.AddMinutes(5) };
        // The later sitting is kept first: the instant counts, not the order of keeping.
        await records.KeepAsync(second, cast.Passed(second), Cast.Today, Cast.Zone, Cast.Now, Cancellation);
        await records.KeepAsync(first, cast.Failed(first), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.Equal([0, 0, 1, 0], await records.FirstScoresAsync(quiz, 3, Cancellation));
        Assert.Equal([0, 0, 0], await records.FirstScoresAsync(quiz, 2, Cancellation));

        var versions = first.Draw.Questions.ToDictionary(question => question.QuestionId, question => question.QuestionVersion, StringComparer.Ordinal);
        var shares = await records.SharesRightAsync(versions, Cancellation);
        Assert.Equal(((2, 2), (2, 0)), (shares["reach"], shares["first-steps"]));
    }
}
