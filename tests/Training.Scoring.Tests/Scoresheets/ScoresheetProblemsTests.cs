using Training.Courses;
using static Training.Scoring.Observation;
using static Training.Scoring.Tests.TestCourse;

namespace Training.Scoring.Tests.Scoresheets;

public sealed class ScoresheetProblemsTests
{
    private static readonly Guid Watcher = new("00000000-0000-0000-0000-0000000000b1");

    private static readonly ModelPass Pass = new(new("00000000-0000-0000-0000-0000000000d1"), Candidate, "move-to-bucket", Start.AddHours(-2));

    private static readonly LiveConditions Conditions = new("CW-1", new(2026, 2, 20), Start.AddHours(-1), Watcher, Pass.ScoresheetId);

    private static Scoresheet Model => Sheet(Done, Done, Done, Done, Done);

    private static Scoresheet Live => Model with { Subject = Subject.Live, Live = Conditions };

    public static TheoryData<string, string, Scoresheet> Refused => new()
    {
        { ScoresheetProblems.ChecklistDiffers, "checklist", Model with { ChecklistVersion = "v2" } },
        { ScoresheetProblems.ChecklistDiffers, "checklist", Model with { ChecklistId = "other" } },
        { ScoresheetProblems.StepMissing, "step label", Model with { Observations = [.. Model.Observations.Take(4)] } },
        { ScoresheetProblems.StepUnknown, "step dance", Model with { Observations = [.. Model.Observations, new("dance", Done)] } },
        { ScoresheetProblems.StepOrder, "steps", Model with { Observations = [.. Model.Observations.Reverse()] } },
        { ScoresheetProblems.StepOrder, "steps", Model with { Observations = [.. Model.Observations, Model.Observations[0]] } },
        { ScoresheetProblems.StepUnknown, "stop", Model with { StoppedAtStep = "dance" } },
        { ScoresheetProblems.ScoresThemselves, "instructor", Model with { InstructorId = Candidate } },
        { ScoresheetProblems.IdentityNotConfirmed, "identity", Model with { IdentityConfirmed = false } },
        { ScoresheetProblems.TryNotCounted, "try", Model with { Try = 0 } },
        { ScoresheetProblems.RemarksTooLong, "remarks", Model with { Remarks = new string('x', 2001) } },
        { ScoresheetProblems.NotStopped, "step tongs", Sheet(Done, Done, NotDone, Done, Done) },
        { ScoresheetProblems.ObservedAfterStop, "step lid", Sheet(Done, Done, NotDone, Done, NotObserved) with { StoppedAtStep = "tongs" } },
        { ScoresheetProblems.StopUnobserved, "step tongs", Sheet(Done, Done, NotObserved, NotObserved, NotObserved) with { StoppedAtStep = "tongs" } },
        { ScoresheetProblems.LiveConditionsOnModel, "live conditions", Model with { Live = Conditions } },
        { ScoresheetProblems.PermitMissing, "permit", With(live => live with { PermitNumber = " " }) },
        { ScoresheetProblems.BitePlanNotCurrent, "bite plan", With(live => live with { BitePlanCheckedOn = new(2026, 3, 3) }) },
        { ScoresheetProblems.BitePlanNotCurrent, "bite plan", With(live => live with { BitePlanCheckedOn = new(2025, 12, 1) }) },
        { ScoresheetProblems.CommunicationsNotTested, "communications", With(live => live with { CommunicationsTestedAt = Start.AddHours(-12).AddSeconds(-1) }) },
        { ScoresheetProblems.CommunicationsNotTested, "communications", With(live => live with { CommunicationsTestedAt = Start.AddSeconds(1) }) },
        { ScoresheetProblems.WatcherNotApart, "watcher", With(live => live with { WatcherId = Candidate }) },
        { ScoresheetProblems.WatcherNotApart, "watcher", With(live => live with { WatcherId = Instructor }) },
        { ScoresheetProblems.ModelPassMissing, "pass on the model", With(live => live with { ModelPassId = Guid.Empty }) },
    };

    [Theory, MemberData(nameof(Refused))]
    public void A_sheet_that_is_no_record_of_its_checklist_is_refused(string code, string part, Scoresheet sheet)
    {
        var problem = Assert.Single(Problems(sheet, Pass));

        Assert.Equal((code, part), (problem.Code, problem.Place.Part));
    }

    [Fact]
    public void A_live_sheet_with_everything_in_place_is_graded() => Assert.Empty(Problems(Live, Pass));

    public static TheoryData<LiveConditions> On_the_last_moment => new()
    {
        Conditions with { BitePlanCheckedOn = new(2026, 3, 2) },
        Conditions with { BitePlanCheckedOn = new(2025, 12, 2) },          // 90 days before
        Conditions with { CommunicationsTestedAt = Start },
        Conditions with { CommunicationsTestedAt = Start.AddHours(-12) },
    };

    [Theory, MemberData(nameof(On_the_last_moment))]
    public void A_condition_counts_to_its_last_moment(LiveConditions conditions) =>
        Assert.Empty(Problems(Live with { Live = conditions }, Pass));

    public static TheoryData<ModelPass?> No_pass => new()
    {
        (ModelPass?)null,
        Pass with { CandidateId = Instructor },
        Pass with { ChecklistId = "other" },
        Pass with { SignedAt = Start },               // earlier means earlier
    };

    [Theory, MemberData(nameof(No_pass))]
    public void Nobody_goes_to_a_live_snake_without_an_earlier_pass_on_the_model(ModelPass? pass) =>
        Assert.Equal(ScoresheetProblems.ModelPassMissing, Assert.Single(Problems(Live, pass)).Code);

    [Fact]
    public void A_live_sheet_without_conditions_is_refused() =>
        Assert.Contains(Problems(Live with { Live = null }, Pass), problem => problem.Code == ScoresheetProblems.LiveConditionsMissing);

    [Fact]
    public void A_subject_that_the_checklist_does_not_allow_is_refused()
    {
        var problems = new List<Problem>();

        ScoresheetGrader.Grade(MoveToBucket with { Subjects = [Subject.Model] }, Live, Pass, problems);

        Assert.Equal(ScoresheetProblems.SubjectNotAllowed, Assert.Single(problems).Code);
    }

    private static Scoresheet With(Func<LiveConditions, LiveConditions> change) => Live with { Live = change(Conditions) };

    private static List<Problem> Problems(Scoresheet sheet, ModelPass? pass)
    {
        var problems = new List<Problem>();
        var result = ScoresheetGrader.Grade(MoveToBucket, sheet, pass, problems);
        Assert.Equal(problems.Count == 0, result is not null);
        return problems;
    }
}
