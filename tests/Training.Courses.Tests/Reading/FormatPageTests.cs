using System.Reflection;
using System.Text.RegularExpressions;
using Training.Courses.Tests.Species;

namespace Training.Courses.Tests.Reading;

/// <summary>The samples of docs/course-format.md are a course and a library: whoever writes from that page alone gets one without a finding.</summary>
public sealed partial class FormatPageTests
{
    [Fact]
    public void The_course_of_the_page_reads_without_a_finding()
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["facts.yaml"] = FactsOf(FormatPage.Text),
            ["guidance.yaml"] = FormatPage.Sample("## facts.yaml", "yaml", number: 2),
            ["awareness/course.yaml"] = FormatPage.Sample("## course.yaml", "yaml").Replace(
                "\nquiz:\n", "\n" + FormatPage.Sample("**A module.**", "yaml") + "quiz:\n", StringComparison.Ordinal),
            ["awareness/questions.yaml"] = FormatPage.Sample("## questions.yaml", "yaml")
                + FormatPage.Whole(FormatPage.Sample("## questions.yaml", "yaml", number: 2))
                + FormatPage.Whole(FormatPage.Sample("## questions.yaml", "yaml", number: 3))
                + FormatPage.Sample("**A question.**", "yaml"),
            ["awareness/figures/meeting.svg"] = FormatPage.Sample("## Modules", "svg"),
        };
        foreach (var (tag, number) in new[] { ("en", 1), ("es", 2) })
        {
            texts[$"{tag}/guidance.md"] = string.Concat(FormatPage.Sample("`en/guidance.md` puts", "markdown").Split('\n').Where(line => line.StartsWith("- `stand-off`", StringComparison.Ordinal)));
            // The page shows the headings alone.
            texts[$"awareness/{tag}/course.md"] = EmptyHeading().Replace(FormatPage.Sample("## en/course.md", "markdown"), "$0\nWords.\n");
            texts[$"awareness/{tag}/modules/meeting.md"] = FormatPage.Sample("## Modules", "markdown");
            texts[$"awareness/{tag}/modules/vehicles.md"] = FormatPage.Sample("**A module.**", "markdown", number);
            texts[$"awareness/{tag}/questions.md"] = string.Join(
                "\n", Enumerable.Range(1, 3).Select(sample => FormatPage.Sample("## en/questions.md", "markdown", sample)).Append(FormatPage.Sample("**A question.**", "markdown", number)));
        }

        var reading = CourseReader.Read(new CourseFiles(texts));

        Assert.Empty(Told(reading));
        var course = Assert.Single(reading.Courses);
        Assert.Equal(["silent-snake", "tool-uses", "where-to-stand", "under-the-truck"], course.Questions.Select(question => question.Id));
        Assert.Equal([["meet-a-snake", "look-first"], ["look-first"]], course.Modules.Select(module => module.Objectives));
        Assert.Contains(course.Modules[0].Pages[Language.Spanish].Parts, part => part is PagePart.Text { Snakes: ["coral"] });
        Assert.Contains(new PagePart.Block(PageBlock.SitePlan), course.Modules[0].Pages[Language.Spanish].Parts);
    }

    [Fact]
    public void The_species_of_the_page_read_without_a_finding()
    {
        var texts = CourseFixture.Texts();
        texts["facts.yaml"] += FormatPage.Sample("**A species.**", "yaml") + FactsOf("F-ID-00");
        texts["species.yaml"] = FormatPage.Sample("## species.yaml", "yaml");
        texts["regions.yaml"] = FormatPage.Sample("## regions.yaml", "yaml");
        foreach (var tag in new[] { "en", "es" })
        {
            texts[$"{tag}/species.md"] = FormatPage.Sample("## en/species.md", "markdown");
            texts[$"{tag}/regions.md"] = FormatPage.Sample("## regions.yaml", "markdown");
        }

        var reading = SpeciesFixture.Read(texts);

        Assert.Empty(Told(reading));
        Assert.Equal(["hill-rattlesnake", "hill-gopher-snake"], reading.Species.Select(sheet => sheet.Id));
        Assert.Equal("The hills", Assert.Single(reading.Regions).Names[Language.English]);
    }

    [Fact]
    public void What_the_page_leaves_out_of_a_question_by_a_comment_is_read_too()
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/questions.yaml", "  right: [aa, cc]", "  right: [aa, cc]\n" + string.Join(
            '\n', CommentedField().Matches(FormatPage.Sample("## questions.yaml", "yaml")).Select(field => "  " + field.Groups["field"].Value))));

        Assert.Empty(Told(reading));
        Assert.Equal(["pit-viper"], reading.Courses[0].Questions[1].Snakes);
        Assert.Equal([Language.Spanish], reading.Courses[0].Questions[1].MachineMade);
    }

    [Fact]
    public void A_translation_file_of_the_page_has_the_form_of_one_that_is_written()
    {
        var written = Translation.FileOf(new CourseFiles(CourseFixture.Texts()), "alpha", Language.Spanish);

        Assert.NotNull(written);
        Assert.All(
            FormatPage.Sample("## es/translation.yaml", "yaml").TrimEnd().Split('\n').Concat(written.TrimEnd().Split('\n').Skip(1)),
            line => Assert.Matches("^(course|(module|question|checklist) [a-z0-9-]+): [0-9a-f]{12}$", line));
    }

    [Fact]
    public void The_page_names_every_block()
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/en/modules/second.md", "Some text.", "<block:weather>"));

        var names = Assert.Single(reading.Problems, problem => problem.Code == CourseProblems.BlockUnknown).Arguments[1].Split(", ");

        Assert.Equal(Enum.GetValues<PageBlock>().Length, names.Length);
        Assert.All(names, name => Assert.Contains($"| `<block:{name}>` |", FormatPage.Text, StringComparison.Ordinal));
    }

    /// <summary>Findings of a wrong word; what else the page on writing calls a finding must be one.</summary>
    [Fact]
    public void The_page_on_writing_questions_names_every_finding_about_words_and_none_that_does_not_exist()
    {
        var page = File.ReadAllText(Path.Combine(Library.ShippedCourses.Folder, "..", "docs", "writing-questions.md"));
        var named = Named().Matches(page).Select(match => $"course.{match.Groups["code"].Value}").Where(code => code != "course.like-this").ToHashSet(StringComparer.Ordinal);
        var known = typeof(CourseProblems).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!); // constants all

        Assert.Subset(known.ToHashSet(StringComparer.Ordinal), named);
        Assert.Superset(
            new HashSet<string>
            {
                CourseProblems.OptionCatchAll, CourseProblems.StemNegative, CourseProblems.OptionLength, CourseProblems.QuestionSame, CourseProblems.LongestRight,
                CourseProblems.PassageOtherObjective, CourseProblems.SnakeUnknown, CourseProblems.TranslationOlder,
            },
            named);
    }

    private static IEnumerable<string> Told(CourseReading reading) =>
        reading.Problems.Select(problem => $"{problem.Place.File}:{problem.Place.Line} {problem.Code} {string.Join(' ', problem.Arguments)}");

    private static string FactsOf(string text) => string.Concat(FactId().Matches(text).Select(match => match.Value).Distinct(StringComparer.Ordinal)
        .Select(id => $"- id: {id}\n  says: Something.\n  source: Somebody\n  standing: confirmed\n"));

    [GeneratedRegex("F-[A-Z]{2,3}-[0-9]{2}(-LEN)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex FactId();

    [GeneratedRegex("^## .*\n(?=## |\n## )", RegexOptions.Multiline, 1000)]
    private static partial Regex EmptyHeading();

    [GeneratedRegex("^  # (?<field>[a-z]+: [^#]*[^# ])", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CommentedField();

    [GeneratedRegex("`(?<code>[a-z]+(-[a-z]+)+)`", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Named();
}
