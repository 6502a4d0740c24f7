using System.Text.RegularExpressions;

namespace Training.Courses.Tests.Schemes;

/// <summary>Changed rules say what those do who were certified by the rules before, and a mark tells whether rules changed at all.</summary>
public sealed partial class TransitionTests
{
    private const string Words = "\n## If you were certified before {#transition}\n\nRead the new part.\n";

    private static readonly string Sample = FormatPage.Sample("## When rules change", "yaml");

    private static Course Beta(Action<Dictionary<string, string>>? change = null)
    {
        var texts = CourseFixture.Texts();
        change?.Invoke(texts);
        var reading = CourseReader.Read(new CourseFiles(texts));
        return Assert.Single(reading.Courses, course => course.Id == "beta");
    }

    private static CourseReading With(string transition, string words)
    {
        var texts = CourseFixture.Texts();
        texts["beta/course.yaml"] = texts["beta/course.yaml"].Replace("  grant:\n", transition + "  grant:\n", StringComparison.Ordinal);
        foreach (var tag in new[] { "en", "es" }) texts[$"beta/{tag}/course.md"] += words;
        return CourseReader.Read(new CourseFiles(texts));
    }

    [Fact]
    public void The_sample_of_the_format_page_is_read_whole()
    {
        // The page asks for what its own course has.
        var reading = With(Sample.Replace("handler-refresher-quiz", "beta-quiz", StringComparison.Ordinal), FormatPage.Sample("## When rules change", "markdown"));

        Assert.Empty(reading.Problems);
        var transition = Assert.Single(reading.Courses, course => course.Id == "beta").Scheme.Transition;
        Assert.Equal(("0b7d31c2a9e4", new DateOnly(2027, 6, 30)), (transition?.From, transition?.By));
        Assert.Equal([new Requirement.PassedQuiz("beta-quiz", new(6, DurationUnit.Months))], transition!.Also);
        Assert.Contains("refresher", reading.Courses.Single(course => course.Id == "beta").Scheme.Words[Language.English].TransitionHtml, StringComparison.Ordinal);
        // A snapshot gives it back, years later.
        Assert.Equal(transition.From, reading.Snapshots.Single(snapshot => snapshot.CourseId == "beta").Read().Scheme.Transition?.From);
    }

    [Fact]
    public void Nothing_besides_needs_no_day()
    {
        var reading = With("  transition:\n    from: 0b7d31c2a9e4\n", Words);

        Assert.Empty(reading.Problems);
        var transition = reading.Courses.Single(course => course.Id == "beta").Scheme.Transition;
        Assert.Null(transition?.By);
        Assert.Empty(transition!.Also);
    }

    public static TheoryData<string, string, string> Slips => new()
    {
        { "from: 0b7d31c2a9e4", "from: before", CourseProblems.TransitionMark },
        { "from: 0b7d31c2a9e4", "from: 0B7D31C2A9E4", CourseProblems.TransitionMark },
        { "    from: 0b7d31c2a9e4\n", "", CourseProblems.FieldMissing },
        { "    by: 2027-06-30\n", "", CourseProblems.FieldMissing },
        { "by: 2027-06-30", "by: 2026-01-01", CourseProblems.DateOrder }, // the first day of the rules itself
        { "by: 2027-06-30", "by: soon", CourseProblems.DateForm },
        { "greatest-age: P6M", "greatest-age: P6M\n        mood: good", CourseProblems.FieldUnknown },
        { "    by: 2027-06-30\n", "    by: 2027-06-30\n    mood: good\n", CourseProblems.FieldUnknown },
    };

    [Theory, MemberData(nameof(Slips))]
    public void Each_slip_is_found(string old, string @new, string code)
    {
        var lines = Comment().Replace(Sample, "").Replace("handler-refresher-quiz", "beta-quiz", StringComparison.Ordinal);
        Assert.Contains(old, lines, StringComparison.Ordinal);

        var problem = Assert.Single(With(lines.Replace(old, @new, StringComparison.Ordinal), Words).Problems);

        Assert.Equal((code, "beta/course.yaml"), (problem.Code, problem.Place.File));
    }

    [Fact]
    public void A_day_without_anything_to_do_is_found() =>
        Assert.Equal([CourseProblems.FieldMissing], Codes(With("  transition:\n    from: 0b7d31c2a9e4\n    by: 2027-06-30\n", Words)));

    [Fact]
    public void What_it_asks_must_exist() =>
        Assert.Equal([CourseProblems.QuizUnknown], Codes(With(Sample.Replace("handler-refresher-quiz", "nobodys-quiz", StringComparison.Ordinal), Words)));

    [Fact]
    public void A_transition_without_words_and_words_without_a_transition_are_found_in_each_language()
    {
        Assert.Equal([CourseProblems.WordsMissing, CourseProblems.WordsMissing], Codes(With("  transition:\n    from: 0b7d31c2a9e4\n", "")));
        Assert.Equal([CourseProblems.WordsUnexpected, CourseProblems.WordsUnexpected], Codes(With("", Words)));
    }

    /// <summary>File, text replaced, its replacement: each a change of rules.</summary>
    public static TheoryData<string, string, string> Rules => new()
    {
        { "beta/course.yaml", "validity: P12M", "validity: P1Y" }, // the same days, another rule: the text of a duration counts
        { "beta/course.yaml", "window: P60D", "window: P61D" },
        { "beta/course.yaml", "grace: P30D", "grace: P29D" },
        { "beta/course.yaml", "    - holds: alpha\n", "" },
        { "beta/course.yaml", "greatest-age: P60D", "greatest-age: P59D" },
        { "beta/course.yaml", "    - quiz: beta-quiz\n      greatest-age: P60D", "    - practised: move\n      times: 2\n      within: P60D" },
        { "beta/course.yaml", "  pass: 80\n", "  pass: 79\n" },
        { "beta/course.yaml", "      questions: 1\n", "      questions: 1\n      pass: 50\n" },
        { "beta/checklists.yaml", "pass: 80", "pass: 81" },
    };

    [Theory, MemberData(nameof(Rules))]
    public void Another_rule_has_another_mark(string file, string old, string @new)
    {
        var before = SchemeRules.MarkOf(Beta());

        var after = SchemeRules.MarkOf(Beta(texts =>
        {
            Assert.Contains(old, texts[file], StringComparison.Ordinal);
            texts[file] = texts[file].Replace(old, @new, StringComparison.Ordinal);
        }));

        Assert.Matches("^[0-9a-f]{12}$", before);
        Assert.NotEqual(before, after);
    }

    [Fact]
    public void Words_dates_and_a_transition_are_no_rules()
    {
        var before = SchemeRules.MarkOf(Beta());

        Assert.Equal(before, SchemeRules.MarkOf(Beta(texts => texts["beta/en/course.md"] = texts["beta/en/course.md"].Replace(". ", ".  ", StringComparison.Ordinal))));
        Assert.Equal(before, SchemeRules.MarkOf(Beta(texts =>
            texts["beta/course.yaml"] = texts["beta/course.yaml"].Replace("effective-from: 2026-01-01", "effective-from: 2026-02-01", StringComparison.Ordinal))));
        Assert.Equal(before, SchemeRules.MarkOf(With("  transition:\n    from: 0b7d31c2a9e4\n", Words).Courses.Single(course => course.Id == "beta")));
    }

    [GeneratedRegex(" +#[^\\n]*", RegexOptions.None, 1000)]
    private static partial Regex Comment();

    private static IEnumerable<string> Codes(CourseReading reading) => reading.Problems.Select(problem => problem.Code);
}
