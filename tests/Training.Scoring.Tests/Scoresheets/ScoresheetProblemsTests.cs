using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class ScoresheetProblemsTests
{
    private static readonly Scoresheet AllDone = TestScoresheet.AllDone;
    private static readonly Scoresheet Live = TestScoresheet.Live;
    private static readonly LiveConditions Conditions = Live.Live!;   // the live sheet is made with them
    private static readonly PracticalConditions Around = AllDone.Conditions;

    public static TheoryData<string, Scoresheet> Refusal_and_sheet => new()
    {
        { "course-mismatch @ CourseHash", AllDone with { CourseHash = "older" } },
        { "checklist-unknown @ ChecklistId", AllDone with { ChecklistId = "nowhere" } },
        { "checklist-version-mismatch @ ChecklistVersion", AllDone with { ChecklistVersion = "older" } },
        { "scored-themselves @ InstructorId", AllDone with { InstructorId = AllDone.CandidateId } },
        { "identity-not-confirmed @ IdentityConfirmed", AllDone with { IdentityConfirmed = false } },
        { "try-not-positive @ Try", AllDone with { Try = 0 } },
        { "remarks-too-long @ Remarks", AllDone with { Remarks = new string('x', 2001) } },
        { "surroundings-missing @ Surroundings", AllDone with { Conditions = Around with { Surroundings = " \n" } } },
        { "surroundings-too-long @ Surroundings", AllDone with { Conditions = Around with { Surroundings = new string('x', 501) } } },
        { "air-temperature-unbelievable @ AirTemperature", AllDone with { Conditions = Around with { AirTemperature = -51 } } },
        { "air-temperature-unbelievable @ AirTemperature", AllDone with { Conditions = Around with { AirTemperature = 61 } } },
        { "kit-missing @ Kit", AllDone with { Conditions = Around with { Kit = "" } } },
        { "kit-too-long @ Kit", AllDone with { Conditions = Around with { Kit = new string('x', 501) } } },
        { "signed-name-missing @ SignedName", AllDone with { SignedName = "\t" } },
        { "signed-name-too-long @ SignedName", AllDone with { SignedName = new string('x', 201) } },
        { "step-unknown @ step extra", AllDone with { Observations = [.. AllDone.Observations, new("extra", Observation.Done)] } },
        { "step-missing @ step report", AllDone with { Observations = [.. AllDone.Observations.SkipLast(1)] } },
        { "step-repeated @ step look", AllDone with { Observations = [AllDone.Observations[0], .. AllDone.Observations] } },
        { "steps-out-of-order @ step call", AllDone with { Observations = [AllDone.Observations[1], AllDone.Observations[0], .. AllDone.Observations.Skip(2)] } },
        { "stop-unknown @ StoppedAtStep", AllDone with { StoppedAtStep = "nowhere" } },
        { "not-stopped @ step reach", TestScoresheet.Of("ddndd") },
        { "not-stopped @ step reach", TestScoresheet.Of("ddpdd") },
        { "not-stopped @ step reach", TestScoresheet.Of("ddn--") },                  // blank afterwards, but no stop is marked
        { "not-stopped @ step reach", TestScoresheet.Of("ddnd-", stoppedAt: "lid") },
        { "observed-after-stop @ step report", TestScoresheet.Of("ddddn", stoppedAt: "lid") },
        { "observed-after-stop @ step reach", TestScoresheet.Of("ddn--", stoppedAt: "call") },
        { "live-conditions-missing @ Live", Live with { Live = null } },
        { "live-conditions-on-model @ Live", Live with { Subject = Subject.Model } },
        { "permit-number-missing @ PermitNumber", With(Conditions with { PermitNumber = " \t" }) },
        { "permit-number-too-long @ PermitNumber", With(Conditions with { PermitNumber = new string('7', 61) }) },
        { "bite-plan-in-future @ BitePlanCheckedOn", With(Conditions with { BitePlanCheckedOn = new(2026, 3, 3) }) },
        { "bite-plan-too-old @ BitePlanCheckedOn", With(Conditions with { BitePlanCheckedOn = new(2025, 3, 1) }) },
        { "communications-not-tested @ CommunicationsTestedAt", With(Conditions with { CommunicationsTestedAt = Live.SignedAt.AddMilliseconds(1) }) },
        { "communications-not-tested @ CommunicationsTestedAt", With(Conditions with { CommunicationsTestedAt = Live.SignedAt.AddHours(-24).AddMilliseconds(-1) }) },
        { "watcher-missing @ WatcherId", With(Conditions with { WatcherId = Guid.Empty }) },
        { "watcher-takes-part @ WatcherId", With(Conditions with { WatcherId = Live.CandidateId }) },
        { "watcher-takes-part @ WatcherId", With(Conditions with { WatcherId = Live.InstructorId }) },
        { "model-pass-unknown @ ModelPassId", With(Conditions with { ModelPassId = Live.Id }) },
    };

    [Theory, MemberData(nameof(Refusal_and_sheet), DisableDiscoveryEnumeration = true)]
    public void What_may_not_stand_is_refused_with_its_place(string refusal, Scoresheet sheet) =>
        Assert.Equal([$"scoresheet.{refusal}"], TestScoresheet.Refusals(sheet));

    public static TheoryData<Scoresheet> Sheets_on_a_bound => new()
    {
        With(Conditions with { BitePlanCheckedOn = new(2026, 3, 2) }),
        With(Conditions with { BitePlanCheckedOn = new(2025, 3, 2) }),
        With(Conditions with { CommunicationsTestedAt = Live.SignedAt }),
        With(Conditions with { PermitNumber = new string('7', 60) }),
        With(Conditions with { CommunicationsTestedAt = Live.SignedAt.AddHours(-24) }),
        AllDone with { Remarks = new string('x', 2000) },
        AllDone with { Conditions = new(new string('x', 500), -50, new string('x', 500), []) },
        AllDone with { Conditions = Around with { AirTemperature = 60 } },
        AllDone with { Conditions = Around with { AirTemperature = null } },
        AllDone with { SignedName = new string('x', 200) },
    };

    [Theory, MemberData(nameof(Sheets_on_a_bound), DisableDiscoveryEnumeration = true)]
    public void A_bound_itself_is_allowed(Scoresheet sheet) =>
        Assert.Equal(PracticalOutcome.Passed, TestScoresheet.Grade(sheet).Outcome);

    public static TheoryData<string, ModelPass?> Refusal_and_model_pass => new()
    {
        { "model-pass-unknown", null },
        { "model-pass-unknown", Pass with { Id = Guid.NewGuid() } },
        { "model-pass-of-another", Pass with { CandidateId = Guid.NewGuid() } },
        { "model-pass-on-another-checklist", Pass with { ChecklistId = "other" } },
        { "model-pass-not-earlier", Pass with { SignedAt = Live.SignedAt } },
        { "model-pass-not-earlier", Pass with { SignedAt = Live.SignedAt.AddDays(1) } },
    };

    [Theory, MemberData(nameof(Refusal_and_model_pass), DisableDiscoveryEnumeration = true)]
    public void Live_needs_an_earlier_pass_on_the_model_by_the_same_candidate(string code, ModelPass? pass) => Assert.Equal(
        [$"scoresheet.{code} @ ModelPassId"],
        TestScoresheet.Refusals(Live, context: TestScoresheet.Context with { ModelPass = pass }));

    [Fact]
    public void A_model_sheet_needs_no_pass()
    {
        var problems = new List<Problem>();

        Assert.NotNull(ScoresheetGrader.Grade(TestScoresheet.Course, AllDone, TestScoresheet.Context with { ModelPass = null }, problems));
    }

    [Theory]
    [InlineData(Subject.Model)]
    [InlineData(Subject.Live)]
    public void A_subject_that_the_checklist_does_not_name_is_refused(Subject subject)
    {
        var other = subject is Subject.Model ? Subject.Live : Subject.Model;
        var course = TestCourse.WithChecklist(TestScoresheet.Checklist with { Subjects = [other] });

        Assert.Equal(["scoresheet.subject-not-allowed @ Subject"], TestScoresheet.Refusals(subject is Subject.Live ? Live : AllDone, course));
    }

    [Fact]
    public void The_day_of_the_sheet_is_the_sites_not_UTCs()
    {
        var sheet = With(Conditions with { BitePlanCheckedOn = new(2026, 3, 2) });
        var stillTheDayBefore = TestScoresheet.Context with { SignedOn = new(2026, 3, 1) };

        Assert.Equal(["scoresheet.bite-plan-in-future @ BitePlanCheckedOn"], TestScoresheet.Refusals(sheet, context: stillTheDayBefore));
    }

    [Theory]
    [InlineData(-2)]
    [InlineData(2)]
    public void A_day_that_no_zone_has_is_a_broken_promise(int days) => Assert.Throws<ArgumentOutOfRangeException>(() => ScoresheetGrader.Grade(
        TestScoresheet.Course, AllDone, TestScoresheet.Context with { SignedOn = new DateOnly(2026, 3, 2).AddDays(days) }, []));

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    public void A_neighbouring_day_is_some_zones_day(int days) => Assert.NotNull(ScoresheetGrader.Grade(
        TestScoresheet.Course, AllDone, TestScoresheet.Context with { SignedOn = new DateOnly(2026, 3, 2).AddDays(days) }, new List<Problem>()));

    [Fact]
    public void Everything_is_told_at_once()
    {
        var sheet = TestScoresheet.Of("dnndd") with { InstructorId = Live.CandidateId, IdentityConfirmed = false, Subject = Subject.Live };

        Assert.Equal(
            [
                "scoresheet.scored-themselves @ InstructorId",
                "scoresheet.identity-not-confirmed @ IdentityConfirmed",
                "scoresheet.not-stopped @ step reach",
                "scoresheet.live-conditions-missing @ Live",
            ],
            TestScoresheet.Refusals(sheet));
    }

    [Fact]
    public void Every_step_observed_after_the_stop_is_named() => Assert.Equal(
        ["scoresheet.observed-after-stop @ step lid", "scoresheet.observed-after-stop @ step report"],
        TestScoresheet.Refusals(TestScoresheet.Of("ddndn", stoppedAt: "reach")));

    [Fact]
    public void Several_wrong_steps_are_told_together()
    {
        var sheet = AllDone with { Observations = [.. AllDone.Observations.Skip(1), AllDone.Observations[1], new("extra", Observation.Done)] };

        Assert.Equal(
            ["scoresheet.step-unknown @ step extra", "scoresheet.step-missing @ step look", "scoresheet.step-repeated @ step call"],
            TestScoresheet.Refusals(sheet));
    }

    [Fact]
    public void Arguments_name_dates_and_lengths()
    {
        var problems = new List<Problem>();
        var sheet = With(Conditions with { BitePlanCheckedOn = new(2025, 3, 1) }) with { Remarks = new string('x', 2001) };
        ScoresheetGrader.Grade(TestScoresheet.Course, sheet, TestScoresheet.Context, problems);

        Assert.Equal(["2001", "2000"], problems[0].Arguments);
        Assert.Equal(["2025-03-01", "2025-03-02"], problems[1].Arguments);
    }

    [Fact]
    public void Earlier_problems_of_the_caller_neither_refuse_nor_vanish()
    {
        var problems = new List<Problem> { new("other.thing", new Place()) };

        Assert.NotNull(ScoresheetGrader.Grade(TestScoresheet.Course, AllDone, TestScoresheet.Context, problems));
        Assert.Single(problems);
    }

    private static ModelPass Pass { get; } = new(TestScoresheet.EarlierPass, TestScoresheet.Candidate, "move-to-bucket", Live.SignedAt.AddMilliseconds(-1));

    private static Scoresheet With(LiveConditions conditions) => Live with { Live = conditions };
}
