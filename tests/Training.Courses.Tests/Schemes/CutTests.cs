using CsCheck;

namespace Training.Courses.Tests.Schemes;

/// <summary>The pass mark says where it comes from: structure beside it, the reason in words, and nothing that contradicts it.</summary>
public sealed class CutTests
{
    private const string Panel = "019c2f4e-7d10-7c41-9b52-6a1f0e3d8c27";
    private const string Reason = "\n## Why {#cut-alpha-quiz}\n\nBecause.\n";

    [Fact]
    public void The_sample_of_the_format_page_is_read_whole()
    {
        var sample = FormatPage.Sample("## Where a pass mark comes from", "yaml");

        var course = Assert.Single(With(sample, Reason).Courses, course => course.Id == "alpha");

        Assert.Equal(79, course.Quiz.PassPercent);
        Assert.Equal(
            new Cut(Guid.Parse(Panel), CutMethod.Angoff, new(2026, 2, 11), "M. A.", Judges: 6, Rounds: 2, Mean: 78.42m, StandardError: 2.31m), course.Quiz.Cut);
        Assert.Equal("<p>Because.</p>", course.Scheme.Words[Language.Spanish].CutHtml["alpha-quiz"].Trim());
        Assert.All(course.Checklists, checklist => Assert.Null(checklist.Cut));
    }

    [Fact]
    public void A_checklist_has_a_cut_of_its_own_and_keeps_its_version()
    {
        var before = CourseFixture.Read().Courses.Single(course => course.Id == "beta").Checklists[0];
        var texts = CourseFixture.Texts();
        texts["beta/checklists.yaml"] = texts["beta/checklists.yaml"].Replace($"  pass: {before.PassPercent}\n", Lines($"{before.PassPercent}", $"{before.PassPercent}"), StringComparison.Ordinal);
        foreach (var tag in new[] { "en", "es" }) texts[$"beta/{tag}/course.md"] += $"\n## Why {{#cut-{before.Id}}}\n\nBecause.\n";

        var after = CourseReader.Read(new CourseFiles(texts)).Courses.Single(course => course.Id == "beta").Checklists[0];

        Assert.Equal(6, after.Cut?.Judges);
        Assert.Equal(before.Version, after.Version);
    }

    [Fact]
    public void Only_the_whole_percent_that_the_mean_leads_to_is_the_pass_mark() =>
        Gen.Select(Gen.Int[0, 10_000], Gen.Int[1, 100]).Sample((hundredths, pass) =>
        {
            var mean = hundredths / 100m;

            var problems = With(Lines($"{pass}", $"{mean}"), Reason).Problems;

            // Rounded up by whole numbers, not by the code's own way.
            var isRight = pass * 100 >= hundredths && (pass - 1) * 100 < hundredths;
            Assert.Equal(isRight ? [] : [CourseProblems.CutPass], problems.Select(problem => problem.Code));
        }, iter: 25);

    public static TheoryData<string, string, string> Slips => new()
    {
        { $"panel: {Panel}", "panel: ours", CourseProblems.CutPanel },
        { $"    panel: {Panel}\n", "", CourseProblems.FieldMissing },
        { "method: angoff", "method: feeling", CourseProblems.FieldValue },
        { "judges: 6", "judges: 0", CourseProblems.NumberRange },
        { "rounds: 2", "rounds: 3", CourseProblems.NumberRange },
        { "mean: 78.42", "mean: NaN", CourseProblems.NumberRange },
        { "set-on: 2026-02-11", "set-on: February", CourseProblems.DateForm },
        { "rounds: 2", "rounds: 2\n    mood: good", CourseProblems.FieldUnknown },
    };

    [Theory, MemberData(nameof(Slips))]
    public void Each_slip_is_found_at_the_quiz(string old, string @new, string code)
    {
        var lines = Lines("79", "78.42");
        Assert.Contains(old, lines, StringComparison.Ordinal);

        var problems = With(lines.Replace(old, @new, StringComparison.Ordinal), Reason).Problems;

        Assert.Contains(problems, problem => problem.Code == code && problem.Place is { File: "alpha/course.yaml", Part: "quiz" });
    }

    [Fact]
    public void A_cut_without_a_reason_and_a_reason_without_a_cut_are_found_in_each_language()
    {
        Assert.Equal([CourseProblems.WordsMissing, CourseProblems.WordsMissing], Codes(With(Lines("79", "78.42"), "")));
        Assert.Equal([CourseProblems.WordsMissing, CourseProblems.WordsMissing], Codes(With(Lines("79", "78.42"), "\n## Why {#cut-alpha-quiz}\n")));
        Assert.Equal([CourseProblems.WordsUnexpected, CourseProblems.WordsUnexpected], Codes(With("  pass: 80\n", Reason)));
    }

    [Fact]
    public void An_adopted_cut_changes_no_snapshot_of_before()
    {
        var before = CourseFixture.Read().Snapshots.Single(snapshot => snapshot.CourseId == "alpha");

        var after = With(Lines("79", "78.42"), Reason).Snapshots.Single(snapshot => snapshot.CourseId == "alpha");

        Assert.NotEqual(before.Hash, after.Hash);
        Assert.Equal((79, 6), (after.Read().Quiz.PassPercent, after.Read().Quiz.Cut?.Judges));
        Assert.Equal((80, null), (before.Read().Quiz.PassPercent, before.Read().Quiz.Cut));
    }

    private static IEnumerable<string> Codes(CourseReading reading) => reading.Problems.Select(problem => problem.Code);

    private static string Lines(string pass, string mean) =>
        $"  pass: {pass}\n  cut:\n    panel: {Panel}\n    method: angoff\n    set-on: 2026-02-11\n    set-by: M. A.\n    judges: 6\n    rounds: 2\n    mean: {mean}\n";

    private static CourseReading With(string passLines, string reason)
    {
        var texts = CourseFixture.Texts();
        texts["alpha/course.yaml"] = texts["alpha/course.yaml"].Replace("  pass: 80\n", passLines, StringComparison.Ordinal);
        foreach (var tag in new[] { "en", "es" }) texts[$"alpha/{tag}/course.md"] += reason;
        return CourseReader.Read(new CourseFiles(texts));
    }
}
