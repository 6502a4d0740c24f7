using Training.Courses;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class SeparationTests
{
    private static readonly Decider ByLead = new Decider.Lead(Lead);

    private static Decision Decide(Evidence[] sheets, Teaching[] taught, Decider? decider = null) =>
        Decisions.Decide(File(CertificationScheme(OnModel), sheets) with { TaughtBy = taught }, decider ?? ByLead, On("2026-03-31"));

    // Day of the teaching, day of the sheet, whether that scorer may count.
    public static TheoryData<string, string, bool> Taught_scored_and_free => new()
    {
        { "2024-03-10", "2026-03-10", true },  // exactly two years later
        { "2024-03-11", "2026-03-10", false }, // a day less
        { "2024-03-09", "2026-03-10", true },
        { "2026-03-10", "2026-03-10", false }, // the same day
        { "2026-03-11", "2026-03-10", true },  // taught only afterwards
        { "2024-02-29", "2026-02-28", false }, // 28 February less two years is the 28th
        { "2024-02-29", "2026-03-01", true },
        { "2026-02-28", "2028-02-29", true },  // 29 February less two years is the 28th
        { "2026-03-01", "2028-02-29", false },
    };

    [Theory, MemberData(nameof(Taught_scored_and_free))]
    public void A_scorer_who_taught_the_person_within_two_years_cannot_count(string taughtOn, string scoredOn, bool isFree)
    {
        var file = File(CertificationScheme(OnModel), Sheet(1, scoredOn)) with { TaughtBy = [Taught(Scorer, taughtOn)] };

        var decision = Decisions.Decide(file, ByLead, On(scoredOn).AddDays(1));

        if (isFree) Assert.Empty(decision.Granted().Exceptions);
        else Assert.Equal([new DecisionReason.ScorerTaught(OnModel, Id(1), Scorer, On(taughtOn))], decision.Reasons());
    }

    [Fact]
    public void The_latest_teaching_that_binds_is_named() =>
        Assert.Equal(
            [new DecisionReason.ScorerTaught(OnModel, Id(1), Scorer, On("2026-02-02"))],
            Decide(
                [Sheet(1, "2026-03-10")],
                [Taught(Scorer, "2025-01-01"), Taught(Scorer, "2026-02-02"), Taught(Scorer, "2026-03-20"), Taught(Teacher, "2026-03-01")])
                .Reasons());

    [Fact]
    public void A_written_reason_lets_it_count_and_is_shown()
    {
        var sheet = Sheet(1, "2026-03-10") with { SeparationReason = "Only scorer on the island; watched by a second instructor." };

        var granted = Decide([sheet], [Taught(Scorer, "2026-03-01")]).Granted();

        Assert.Equal([new SeparationException(Id(1), Scorer, sheet.SeparationReason!)], granted.Exceptions); // set two lines above
    }

    [Fact]
    public void A_blank_reason_is_none() =>
        Assert.IsType<DecisionReason.ScorerTaught>(
            Assert.Single(Decide([Sheet(1, "2026-03-10") with { SeparationReason = " " }], [Taught(Scorer, "2026-03-01")]).Reasons()));

    [Fact]
    public void A_reason_that_was_not_needed_is_no_exception() =>
        Assert.Empty(Decide([Sheet(1, "2026-03-10") with { SeparationReason = "just in case" }], []).Granted().Exceptions);

    [Fact]
    public void A_sheet_that_stands_by_itself_goes_before_a_later_one_with_an_exception_and_that_before_one_that_cannot_count()
    {
        var alone = Sheet(1, "2026-03-01") with { ScorerId = Id(301) };
        var excepted = Sheet(2, "2026-03-05") with { SeparationReason = "written" };
        var refused = Sheet(3, "2026-03-10");
        Teaching[] taught = [Taught(Scorer, "2026-02-01")];

        Assert.Equal([Id(1)], Decide([refused, excepted, alone], taught).Granted().RestsOn);
        Assert.Equal([Id(2)], Decide([refused, excepted], taught).Granted().RestsOn);
        Assert.IsType<Decision.NotYet>(Decide([refused], taught));
    }

    [Fact]
    public void Of_equals_the_latest_is_taken_and_within_a_day_the_smaller_id()
    {
        Evidence[] sheets = [Sheet(4, "2026-03-01"), Sheet(3, "2026-03-02"), Sheet(2, "2026-03-02"), Sheet(1, "2026-03-01")];

        Assert.Equal([Id(2)], Decide(sheets, []).Granted().RestsOn);
        Assert.Equal([Id(2)], Decide([.. sheets.Reverse()], []).Granted().RestsOn);
    }

    [Fact]
    public void Of_sheets_that_cannot_count_the_latest_is_named() =>
        Assert.Equal(
            [new DecisionReason.ScorerTaught(OnModel, Id(2), Scorer, On("2026-02-01"))],
            Decide([Sheet(1, "2026-03-01"), Sheet(2, "2026-03-02")], [Taught(Scorer, "2026-02-01")]).Reasons());

    [Fact]
    public void Nobody_scores_themselves_whatever_the_scheme()
    {
        var own = Sheet(1, "2026-03-10") with { ScorerId = Worker };

        Assert.Equal([new DecisionReason.ScoredThemselves(OnModel, Id(1))], Decide([own], []).Reasons());
        Assert.Equal(
            [new DecisionReason.ScoredThemselves(OnModel, Id(1))],
            Decisions.Decide(File(TrainingScheme(OnModel), own), new Decider.Rule(), On("2026-03-31")).Reasons());
        Assert.Equal([Id(2)], Decide([own, Sheet(2, "2026-03-01")], []).Granted().RestsOn);
    }

    [Theory]
    [InlineData("2003-01-01", false)] // no age limit
    [InlineData("2026-03-31", false)] // the day of the decision
    [InlineData("2026-04-01", true)]
    public void Who_ever_taught_the_person_does_not_decide(string taughtOn, bool isGranted)
    {
        var decision = Decide([Sheet(1, "2026-03-10")], [Taught(Teacher, "2026-01-01"), Taught(Lead, taughtOn)]);

        if (isGranted) Assert.IsType<Decision.Granted>(decision);
        else Assert.Equal([new DecisionReason.DeciderNotIndependent(Lead, Hat.Taught)], decision.Reasons());
    }

    [Fact]
    public void Who_scored_what_it_would_rest_on_does_not_decide_even_with_a_reason()
    {
        var own = Sheet(1, "2026-03-10") with { ScorerId = Lead, SeparationReason = "written" };

        Assert.Equal([new DecisionReason.DeciderNotIndependent(Lead, Hat.Scored)], Decide([own], []).Reasons());
    }

    [Fact]
    public void A_deciders_own_sheet_is_left_aside_where_another_one_counts()
    {
        var own = Sheet(1, "2026-03-10") with { ScorerId = Lead };

        Assert.Equal([Id(2)], Decide([own, Sheet(2, "2026-03-01")], []).Granted().RestsOn);
    }

    [Fact]
    public void Two_own_sheets_are_one_reason()
    {
        var file = File(
            CertificationScheme(OnModel, OnLive),
            Sheet(1, "2026-03-10") with { ScorerId = Lead },
            Sheet(2, "2026-03-11", subject: Subject.Live) with { ScorerId = Lead });

        Assert.Equal(
            [new DecisionReason.DeciderNotIndependent(Lead, Hat.Scored)], Decisions.Decide(file, ByLead, On("2026-03-31")).Reasons());
    }

    [Fact]
    public void A_certification_needs_a_named_lead() =>
        Assert.Equal([new DecisionReason.LeadRequired()], Decide([Sheet(1, "2026-03-10")], [], new Decider.Rule()).Reasons());

    [Fact]
    public void Nobody_decides_about_themselves_whatever_the_scheme()
    {
        var reason = new DecisionReason.DeciderNotIndependent(Worker, Hat.Candidate);
        var training = File(TrainingScheme(OnQuiz), Sitting(1, "2026-03-10"));

        Assert.Equal([reason], Decide([Sheet(1, "2026-03-10")], [], new Decider.Lead(Worker)).Reasons());
        Assert.Equal([reason], Decisions.Decide(training, new Decider.Lead(Worker), On("2026-03-31")).Reasons());
    }

    [Fact]
    public void A_scheme_without_separation_lets_one_person_teach_score_and_decide()
    {
        var file = File(TrainingScheme(OnModel), Sheet(2, "2026-03-01"), Sheet(1, "2026-03-10") with { ScorerId = Lead })
            with { TaughtBy = [Taught(Lead, "2026-03-01")] };

        var granted = Decisions.Decide(file, ByLead, On("2026-03-31")).Granted();

        Assert.Equal([Id(1)], granted.RestsOn);
        Assert.Empty(granted.Exceptions);
    }

    [Fact]
    public void A_certificate_of_training_that_keeps_hats_apart_may_be_granted_by_rule_and_binds_the_scorer()
    {
        var scheme = TrainingScheme(OnModel) with { Separation = Separation.TeachScoreDecide };
        var file = File(scheme, Sheet(1, "2026-03-10"));

        Assert.IsType<Decision.Granted>(Decisions.Decide(file, new Decider.Rule(), On("2026-03-31")));
        Assert.Equal(
            [new DecisionReason.ScorerTaught(OnModel, Id(1), Scorer, On("2026-03-01"))],
            Decisions.Decide(file with { TaughtBy = [Taught(Scorer, "2026-03-01")] }, new Decider.Rule(), On("2026-03-31")).Reasons());
    }
}
