using System.Text.RegularExpressions;
using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests;

public sealed partial class ScoresheetGraderTests
{
    [Fact]
    public void Everything_done_passes_without_a_reason()
    {
        var result = TestScoresheet.Grade(TestScoresheet.AllDone);

        Assert.Equal((PracticalOutcome.Passed, 10, 10, "checklist-version"), (result.Outcome, result.Points, result.MaxPoints, result.ChecklistVersion));
        Assert.Empty(result.Reasons);
    }

    // The steps: plain, prompt allowed, critical, critical with a prompt allowed, plain. 7 of 10 points pass.
    public static TheoryData<string, string?, PracticalOutcome, int, string> Sheet_outcome_points_and_reasons => new()
    {
        { "dpdpd", null, PracticalOutcome.Passed, 8, "" },                              // a prompt passes a critical step that allows it
        { "pdddd", null, PracticalOutcome.Passed, 8, "" },                              // a prompt that is not allowed earns nothing
        { "npddd", null, PracticalOutcome.Passed, 7, "" },                              // exactly at the mark
        { "nnddd", null, PracticalOutcome.Failed, 6, "BelowPass" },
        { "npdpd", null, PracticalOutcome.Failed, 6, "BelowPass" },
        { "ddn--", "reach", PracticalOutcome.Failed, 4, "BelowPass CriticalStepFailed:reach Stopped:reach" },
        { "ddp--", "reach", PracticalOutcome.Failed, 4, "BelowPass CriticalStepFailed:reach Stopped:reach" },   // prompted without leave
        { "dddn-", "lid", PracticalOutcome.Failed, 6, "BelowPass CriticalStepFailed:lid Stopped:lid" },
        { "dddd-", "lid", PracticalOutcome.Failed, 8, "Stopped:lid" },                  // stopped for another reason: never a pass
        { "ddddd", "report", PracticalOutcome.Failed, 10, "Stopped:report" },
        { "-----", "look", PracticalOutcome.Failed, 0, "BelowPass Stopped:look" },      // the stop explains its own step and what follows
        { "-dn--", "reach", PracticalOutcome.Failed, 2, "BelowPass CriticalStepFailed:reach Stopped:reach StepNotObserved:look" },
        { "dddd-", null, PracticalOutcome.Incomplete, 8, "StepNotObserved:report" },    // enough points, and still nothing is decided
        { "dd-dd", null, PracticalOutcome.Incomplete, 8, "StepNotObserved:reach" },     // not seen is not failed, critical or not
        { "-----", null, PracticalOutcome.Incomplete, 0,
            "StepNotObserved:look StepNotObserved:call StepNotObserved:reach StepNotObserved:lid StepNotObserved:report" },
    };

    [Theory, MemberData(nameof(Sheet_outcome_points_and_reasons))]
    public void What_was_seen_sets_outcome_points_and_reasons(
        string letters, string? stoppedAt, PracticalOutcome outcome, int points, string reasons)
    {
        var result = TestScoresheet.Grade(TestScoresheet.Of(letters, stoppedAt));

        Assert.Equal((outcome, points, 10), (result.Outcome, result.Points, result.MaxPoints));
        Assert.Equal(reasons, string.Join(' ', result.Reasons.Select(Name)));
    }

    [Theory]
    [InlineData("report", "pn-", false)]   // not critical
    [InlineData("reach", "pn", true)]      // critical, no prompt allowed
    [InlineData("reach", "d-", false)]     // not seen is not failed
    [InlineData("lid", "n", true)]         // critical, a prompt allowed
    [InlineData("lid", "dp-", false)]
    public void A_mark_stops_where_a_critical_step_was_seen_to_fail(string step, string letters, bool stops) => Assert.All(
        letters, letter => Assert.Equal(
            stops, ScoresheetGrader.StopsAt(TestScoresheet.Checklist.Steps.Single(other => other.Id == step), TestScoresheet.ObservationOf(letter))));

    [Fact]
    public void Too_few_points_name_the_figures_compared()
    {
        var result = TestScoresheet.Grade(TestScoresheet.Of("nnddd"));

        Assert.Equal<ScoresheetReason>([new ScoresheetReason.BelowPass(6, 10, 70)], result.Reasons);
    }

    [Theory]
    [InlineData(66, PracticalOutcome.Passed)]
    [InlineData(67, PracticalOutcome.Failed)]
    public void The_pass_mark_is_compared_unrounded(int passPercent, PracticalOutcome outcome)
    {
        var checklist = Plain(passPercent, 3);   // 4 of 6 points are 66.7 %

        var result = TestScoresheet.Grade(TestScoresheet.Of("ddn", checklist: checklist), TestCourse.WithChecklist(checklist));

        Assert.Equal(outcome, result.Outcome);
    }

    [Fact]
    public void A_live_sheet_with_its_conditions_is_graded_by_the_same_rule() =>
        Assert.Equal(PracticalOutcome.Passed, TestScoresheet.Grade(TestScoresheet.Live).Outcome);

    [Fact]
    public void Remarks_language_and_try_change_nothing()
    {
        var sheet = TestScoresheet.Of("nnddd");

        var result = TestScoresheet.Grade(sheet with { Remarks = new string('x', 2000), Language = Language.Spanish, Try = 3 });

        Assert.Equal(TestScoresheet.Grade(sheet).Points, result.Points);
        Assert.Equal(PracticalOutcome.Failed, result.Outcome);
    }

    [Fact]
    public void No_points_make_up_for_a_failed_critical_step() => Gen.Int[0, 19].Sample(last =>
    {
        var steps = Enumerable.Range(0, 20).Select(number => Step($"s{number}", isCritical: number == last)).ToArray();
        var checklist = TestCourse.Checklist(1, steps);
        var letters = new string('d', last) + "n" + new string('-', 19 - last);

        var result = TestScoresheet.Grade(TestScoresheet.Of(letters, $"s{last}", checklist), TestCourse.WithChecklist(checklist));

        Assert.Equal(PracticalOutcome.Failed, result.Outcome);
        Assert.Contains(result.Reasons, reason => reason is ScoresheetReason.CriticalStepFailed(var step) && step == $"s{last}");
    });

    [Fact]
    public void A_better_observation_never_lowers_points() => Gen.Select(Gen.Char["dpn"].Array[5], Gen.Int[0, 4]).Sample((letters, better) =>
    {
        var checklist = Plain(70, 5);
        var course = TestCourse.WithChecklist(checklist);
        var before = TestScoresheet.Grade(TestScoresheet.Of(new string(letters), checklist: checklist), course);
        letters[better] = 'd';

        var after = TestScoresheet.Grade(TestScoresheet.Of(new string(letters), checklist: checklist), course);

        Assert.True(after.Points >= before.Points);
        Assert.True(after.Outcome is PracticalOutcome.Passed || before.Outcome is not PracticalOutcome.Passed);
    });

    /// <summary>
    /// A second implementation of docs/rules.md, "Practicals": the sheet written as a line of points, X for a failed critical step, - for
    /// not observed and | behind the step of the stop; one pattern says which lines may stand, and the line's marks say the outcome.
    /// </summary>
    [Fact]
    public void Random_sheets_agree_with_the_rule_written_as_a_pattern()
    {
        var outcomes = new int[4];
        AnySheet.Sample(
            one =>
            {
                var (checklist, letters, stop) = one;
                var line = Line(checklist, letters, stop);
                var problems = new List<Problem>();
                var sheet = TestScoresheet.Of(letters, stop is null ? null : checklist.Steps[stop.Value].Id, checklist);

                var result = ScoresheetGrader.Grade(TestCourse.WithChecklist(checklist), sheet, TestScoresheet.Context, problems);

                var expected = MayStand().IsMatch(line) ? Outcome(line, checklist.PassPercent) : null;
                Interlocked.Increment(ref outcomes[expected is null ? 3 : (int)expected]);
                Assert.Equal(expected, result?.Outcome);
                Assert.Equal(result is null, problems.Count > 0);
                if (result is not null) Assert.Equal(line.Where(char.IsAsciiDigit).Sum(digit => digit - '0'), result.Points);
            },
            iter: 20_000);

        Assert.All(outcomes, count => Assert.True(count > 300, $"only {count} of one kind"));
    }

    private static readonly Gen<(Checklist, string, int?)> AnySheet =
        from steps in Gen.Select(Gen.Bool, Gen.Bool).Array[1, 8]
        from pass in Gen.Int[1, 100]
        from letters in Gen.Frequency((6, Gen.Const('d')), (2, Gen.Const('p')), (1, Gen.Const('n')), (1, Gen.Const('-'))).Array[steps.Length]
        from stop in Gen.Int[0, steps.Length - 1]
        from ending in Gen.Int[0, 3]
        select Sheet(steps, pass, letters, stop, ending);

    private static (Checklist, string, int?) Sheet((bool, bool)[] steps, int pass, char[] letters, int stop, int ending)
    {
        var checklist = TestCourse.Checklist(
            pass, [.. steps.Select((step, index) => new ChecklistStep($"s{index}", "step-back", step.Item1, step.Item2, "F-TEST-01"))]);

        // Half the stopped sheets are rightly blank after the stop; the other half mostly go on.
        if (ending == 0) letters.AsSpan(stop + 1).Fill('-');
        return (checklist, new string(letters), ending <= 1 ? stop : null);
    }

    private static string Line(Checklist checklist, string letters, int? stop)
    {
        var marks = checklist.Steps.Select((step, index) => letters[index] switch
        {
            'd' => "2",
            '-' => "-",
            'p' when step.MayBePrompted => "1",
            _ => step.IsCritical ? "X" : "0",
        });
        return string.Concat(marks.Select((mark, index) => index == stop ? mark + "|" : mark));
    }

    [GeneratedRegex(@"^[012-]*(X?\|-*)?$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex MayStand();

    private static PracticalOutcome? Outcome(string line, int passPercent)
    {
        if (line.Contains('|')) return PracticalOutcome.Failed;
        if (line.Contains('-')) return PracticalOutcome.Incomplete;
        var fewestPoints = ((passPercent * 2 * line.Length) + 99) / 100;   // the percentage of the maximum, rounded up
        return line.Sum(digit => digit - '0') < fewestPoints ? PracticalOutcome.Failed : PracticalOutcome.Passed;
    }

    private static Checklist Plain(int passPercent, int steps) =>
        TestCourse.Checklist(passPercent, [.. Enumerable.Range(0, steps).Select(number => Step($"s{number}", isCritical: false))]);

    private static ChecklistStep Step(string id, bool isCritical) => new(id, "step-back", isCritical, MayBePrompted: true, "F-TEST-01");

    private static string Name(ScoresheetReason reason) => reason switch
    {
        ScoresheetReason.CriticalStepFailed(var step) => $"CriticalStepFailed:{step}",
        ScoresheetReason.Stopped(var step) => $"Stopped:{step}",
        ScoresheetReason.StepNotObserved(var step) => $"StepNotObserved:{step}",
        _ => reason.GetType().Name,
    };
}
