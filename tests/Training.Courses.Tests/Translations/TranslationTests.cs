namespace Training.Courses.Tests.Translations;

/// <summary>A changed original is found at its translation, until somebody compared the two.</summary>
public sealed class TranslationTests
{
    private const string Path = "alpha/es/translation.yaml";

    private static Dictionary<string, string> Marked()
    {
        var texts = CourseFixture.Texts();
        texts[Path] = Translation.FileOf(new CourseFiles(texts), "alpha", Language.Spanish) ?? "";
        return texts;
    }

    [Fact]
    public void A_translation_that_was_compared_part_by_part_has_no_finding() => Assert.Empty(CourseReader.Read(new CourseFiles(Marked())).Problems);

    [Fact]
    public void A_course_that_says_nothing_of_its_translation_has_none_either() => Assert.Empty(CourseFixture.Read().Problems);

    public static TheoryData<string, string, string, string> Changes => new()
    {
        { "alpha/en/questions.md", "Which?", "Which of them?", "question many" },
        { "alpha/en/modules/second.md", "Some text.", "Some other text.", "module second" },
        { "alpha/en/course.md", "None.", "None at all.", "course" },
    };

    [Theory, MemberData(nameof(Changes))]
    public void One_changed_part_is_one_finding_that_says_what_to_write(string file, string old, string @new, string part)
    {
        var texts = Marked();
        texts[file] = texts[file].Replace(old, @new, StringComparison.Ordinal);

        var finding = Assert.Single(CourseReader.Read(new CourseFiles(texts)).Problems);

        Assert.Equal((CourseProblems.TranslationOlder, Path, part), (finding.Code, finding.Place.File, finding.Place.Part));
        var lines = texts[Path].Split('\n');
        lines[finding.Place.Line!.Value - 1] = $"{part}: {finding.Arguments[0]}"; // a finding of a line has one
        texts[Path] = string.Join('\n', lines);
        Assert.Empty(CourseReader.Read(new CourseFiles(texts)).Problems);
    }

    [Fact]
    public void A_changed_translation_or_a_line_broken_elsewhere_is_no_finding()
    {
        var texts = Marked();
        texts["alpha/es/questions.md"] = texts["alpha/es/questions.md"].Replace("Which?", "¿Cuáles?", StringComparison.Ordinal);
        texts["alpha/en/modules/second.md"] = texts["alpha/en/modules/second.md"].Replace("Some text.", "Some\ntext.", StringComparison.Ordinal);

        Assert.Empty(CourseReader.Read(new CourseFiles(texts)).Problems);
    }

    [Fact]
    public void A_part_without_a_mark_is_a_finding()
    {
        var texts = Marked();
        texts[Path] = string.Concat(texts[Path].Split('\n').Where(line => !line.StartsWith("module first", StringComparison.Ordinal)).Select(line => line + "\n"));

        var finding = Assert.Single(CourseReader.Read(new CourseFiles(texts)).Problems);
        Assert.Equal((CourseProblems.TranslationUnmarked, "module first"), (finding.Code, finding.Place.Part));
    }

    [Fact]
    public void Two_translations_of_each_other_are_a_finding()
    {
        var texts = Marked();
        texts["alpha/en/translation.yaml"] = texts[Path];

        Assert.Equal(CourseProblems.TranslationBoth, Assert.Single(CourseReader.Read(new CourseFiles(texts)).Problems).Code);
    }

    [Fact]
    public void There_is_no_file_for_a_course_that_is_not_there() =>
        Assert.Null(Translation.FileOf(new CourseFiles(CourseFixture.Texts()), "gamma", Language.Spanish));

    [Fact]
    public void A_snapshot_keeps_the_marks_and_gives_the_course_back()
    {
        var reading = CourseReader.Read(new CourseFiles(Marked()));

        Assert.Equal(reading.Courses[0].Hash, reading.Snapshots[0].Read().Hash);
    }
}
