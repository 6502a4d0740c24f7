using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class TimedDrillTests
{
    private static readonly Checklist Drill = TestScoresheet.Checklist with { Kind = ChecklistKind.Drill, TimeLimitMinutes = 5 };
    private static readonly Course Course = TestCourse.WithChecklist(Drill);

    public static TheoryData<int, PracticalOutcome> Times => new()
    {
        { 1, PracticalOutcome.Passed },
        { 299, PracticalOutcome.Passed },
        { 300, PracticalOutcome.Passed },      // exactly the limit is in time
        { 301, PracticalOutcome.Failed },
    };

    [Theory, MemberData(nameof(Times))]
    public void A_second_over_the_limit_fails_the_sheet_and_is_the_only_reason(int seconds, PracticalOutcome outcome)
    {
        var result = TestScoresheet.Grade(TestScoresheet.AllDone with { Seconds = seconds }, Course);

        Assert.Equal((outcome, 10), (result.Outcome, result.Points));
        Assert.Equal(outcome == PracticalOutcome.Passed ? [] : [new ScoresheetReason.OverTime(seconds, 300)], result.Reasons);
    }

    [Fact]
    public void Too_few_points_and_too_much_time_are_two_reasons()
    {
        var result = TestScoresheet.Grade(TestScoresheet.Of("nnddn") with { Seconds = 400 }, Course);

        Assert.Equal([new ScoresheetReason.BelowPass(4, 10, 70), new ScoresheetReason.OverTime(400, 300)], result.Reasons);
    }

    public static TheoryData<string, bool, string, string?, int?> Refused => new()
    {
        { "scoresheet.seconds-missing @ Seconds", true, "ddddd", null, null },
        { "scoresheet.seconds-unexpected @ Seconds", true, "dd-dd", null, 200 },     // broken off: nobody knows how long it would have taken
        { "scoresheet.seconds-unexpected @ Seconds", true, "ddn--", "reach", 200 },
        { "scoresheet.seconds-unexpected @ Seconds", false, "ddddd", null, 200 },    // handling is never timed
        { "scoresheet.seconds-unbelievable @ Seconds", true, "ddddd", null, 0 },
        { "scoresheet.seconds-unbelievable @ Seconds", true, "ddddd", null, 7201 },
    };

    [Theory, MemberData(nameof(Refused))]
    public void A_time_belongs_to_a_drill_with_a_limit_that_was_seen_whole(string refused, bool isDrill, string letters, string? stoppedAt, int? seconds) =>
        Assert.Equal([refused], TestScoresheet.Refusals(TestScoresheet.Of(letters, stoppedAt) with { Seconds = seconds }, isDrill ? Course : null));

    [Theory]
    [InlineData("dd-dd", null, PracticalOutcome.Incomplete)]
    [InlineData("ddn--", "reach", PracticalOutcome.Failed)]
    public void Of_a_drill_that_was_not_seen_whole_no_time_is_asked(string letters, string? stoppedAt, PracticalOutcome outcome) =>
        Assert.Equal(outcome, TestScoresheet.Grade(TestScoresheet.Of(letters, stoppedAt), Course).Outcome);
}
