using CsCheck;
using Training.Courses;
using static Training.Scoring.Observation;
using static Training.Scoring.Tests.TestCourse;

namespace Training.Scoring.Tests.Scoresheets;

public sealed class ScoresheetGraderTests
{
    [Fact]
    public void Every_step_done_passes() =>
        AssertGraded(Sheet(Done, Done, Done, Done, Done), PracticalOutcome.Passed, 10);

    [Fact]
    public void A_prompt_earns_one_point_where_the_step_allows_it_and_none_elsewhere()
    {
        AssertGraded(Sheet(Done, Done, Done, Done, DoneAfterPrompt), PracticalOutcome.Passed, 9);
        AssertGraded(Sheet(Done, Done, Done, DoneAfterPrompt, Done), PracticalOutcome.Passed, 8);
    }

    [Fact]
    public void A_critical_step_that_allows_a_prompt_passes_after_one() =>
        AssertGraded(Sheet(Done, DoneAfterPrompt, Done, Done, Done), PracticalOutcome.Passed, 9);

    [Fact]
    public void Too_few_points_fail() => AssertGraded(
        Sheet(Done, Done, Done, NotDone, DoneAfterPrompt), PracticalOutcome.Failed, 7, new ScoresheetReason.BelowPass(7, 10, 80));

    [Fact]
    public void A_critical_step_done_after_a_prompt_that_it_does_not_allow_stops_and_fails() => AssertGraded(
        Sheet(Done, Done, DoneAfterPrompt, NotObserved, NotObserved) with { StoppedAtStep = "tongs" },
        PracticalOutcome.Failed,
        4,
        new ScoresheetReason.Stopped("tongs"), new ScoresheetReason.CriticalStepFailed("tongs"), new ScoresheetReason.BelowPass(4, 10, 80));

    [Fact]
    public void A_critical_step_failed_at_the_very_end_needs_no_points_to_fail()
    {
        var checklist = MoveToBucket with { PassPercent = 1, Steps = [.. MoveToBucket.Steps.Take(3)] };
        var sheet = Sheet(Done, Done, NotDone) with { StoppedAtStep = "tongs" };

        Assert.Equal(PracticalOutcome.Failed, Graded(sheet, checklist).Outcome);
    }

    [Fact]
    public void A_stop_at_a_step_that_was_done_fails_all_the_same() => AssertGraded(
        Sheet(Done, Done, Done, Done, NotObserved) with { StoppedAtStep = "lid" },
        PracticalOutcome.Failed,
        8,
        new ScoresheetReason.Stopped("lid"));

    [Fact]
    public void A_step_that_nobody_observed_leaves_the_sheet_incomplete() => AssertGraded(
        Sheet(Done, Done, Done, NotObserved, Done), PracticalOutcome.Incomplete, 8, new ScoresheetReason.StepNotObserved("lid"));

    /// <summary>An instructor who looked away earlier still saw the critical step fail: the result is failed, not incomplete.</summary>
    [Fact]
    public void A_failed_critical_step_outweighs_one_that_nobody_observed()
    {
        var lastIsCritical = MoveToBucket with { Steps = [MoveToBucket.Steps[0], MoveToBucket.Steps[2]] };
        var sheet = Sheet() with { Observations = [new("kit", NotObserved), new("tongs", NotDone)] };

        Assert.Equal(PracticalOutcome.Failed, Graded(sheet, lastIsCritical).Outcome);
    }

    /// <summary>A second, obvious implementation: walk the steps with a tally and stop where the sheet stopped.</summary>
    [Fact]
    public void Grading_agrees_with_a_walk_down_the_sheet() => Gen.Enum<Observation>().Array[5].Sample(seen =>
    {
        var sheet = Sheet(seen);
        var problems = new List<Problem>();
        var result = ScoresheetGrader.Grade(MoveToBucket, sheet, null, problems);
        var (tally, unseen, broke) = Walk(seen);
        return broke
            ? result is null
            : result is not null && result.Points == tally
                && result.Outcome == (unseen ? PracticalOutcome.Incomplete : tally >= 8 ? PracticalOutcome.Passed : PracticalOutcome.Failed);
    });

    // Places: 0 kit, 1 watcher (critical, prompt allowed), 2 tongs (critical), 3 lid, 4 label (prompt allowed). Broke: went on after a critical failure.
    private static (int Tally, bool Unseen, bool Broke) Walk(Observation[] seen)
    {
        var tally = 0;
        var unseen = false;
        for (var place = 0; place < seen.Length; place++)
        {
            if (seen[place] == Done) tally += 2;
            if (seen[place] == DoneAfterPrompt && (place == 1 || place == 4)) tally += 1;
            unseen |= seen[place] == NotObserved;
            if (place == 1 && seen[place] == NotDone) return (tally, unseen, true);
            if (place == 2 && (seen[place] == NotDone || seen[place] == DoneAfterPrompt)) return (tally, unseen, true);
        }

        return (tally, unseen, false);
    }

    private static void AssertGraded(Scoresheet sheet, PracticalOutcome outcome, int points, params ScoresheetReason[] reasons)
    {
        var result = Graded(sheet, MoveToBucket);

        Assert.Equal((outcome, points, 10), (result.Outcome, result.Points, result.MaxPoints));
        Assert.Equal(reasons, result.Reasons);
    }

    private static ScoresheetResult Graded(Scoresheet sheet, Checklist checklist)
    {
        var problems = new List<Problem>();
        var result = ScoresheetGrader.Grade(checklist, sheet, null, problems);
        Assert.Empty(problems);
        return result!;
    }
}
