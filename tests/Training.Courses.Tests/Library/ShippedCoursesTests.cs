namespace Training.Courses.Tests.Library;

public sealed class ShippedCoursesTests
{
    private static readonly CourseReading Reading = CourseReader.Read(CourseFiles.FromFolder(ShippedCourses.Folder));

    [Fact]
    public void No_shipped_course_has_a_finding() =>
        Assert.Empty(Reading.Problems.Select(problem =>
            $"{problem.Place.File}:{problem.Place.Line} {problem.Place.Part} {problem.Code} {string.Join(' ', problem.Arguments)}"));

    [Fact]
    public void Every_folder_is_a_course() =>
        Assert.Equal(ShippedCourses.Ids, Reading.Courses.Select(course => course.Id).Order());

    [Fact]
    public void The_handler_checklist_has_twenty_steps_and_nobody_is_asked_for_a_live_snake_again()
    {
        var handler = Reading.Courses.Single(course => course.Id == "handler");

        Assert.Equal(20, Assert.Single(handler.Checklists).Steps.Count);
        Assert.DoesNotContain(handler.Scheme.Renewal, requirement => requirement is Requirement.PassedPractical { Subject: Subject.Live });
    }

    [Fact]
    public void Every_course_reads_back_from_its_snapshot() => Assert.All(Reading.Snapshots, snapshot =>
        Assert.Equal(Reading.Courses.Single(course => course.Id == snapshot.CourseId).Hash, snapshot.Read().Hash));

    [Fact]
    public void Every_module_ends_by_deferring_to_site_rules_local_codes_poison_control_and_licensed_care() =>
        Assert.Empty(ModulePages().SelectMany(page => NotNamed(page.Language, LastSection(page.Html)).Select(word => $"{page.Name}: {word}")));

    [Fact]
    public void Every_checklist_defers_to_them_before_the_start() => Assert.Empty(
        Reading.Courses.SelectMany(course => course.Checklists).SelectMany(checklist => checklist.Words.SelectMany(words =>
            NotNamed(words.Key, words.Value.InstructionsHtml).Select(word => $"{checklist.Id} {words.Key}: {word}"))));

    [Fact]
    public void A_source_number_stays_with_its_word_and_apart_from_the_next() =>
        Assert.All(ModulePages(), page => Assert.DoesNotMatch("[ \n]<sup class=\"note\"|</sup><sup", page.Html));

    private static IEnumerable<(string Name, Language Language, string Html)> ModulePages() =>
        Reading.Courses.SelectMany(course => course.Modules.SelectMany(module =>
            module.Pages.Select(page => ($"{course.Id}/{module.Id} {page.Key}", page.Key, page.Value.Html))));

    /// <summary>What the usual caution names and the text does not: who goes before this page, in words of the language.</summary>
    private static IEnumerable<string> NotNamed(Language language, string text)
    {
        string[] words = language == Language.English
            ? ["site", "local code", "poison control", "licensed"]
            : ["sitio", "local", "envenenamiento", "licencia"];
        return words.Where(word => !text.Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    private static string LastSection(string html) => html[html.LastIndexOf("<h2", StringComparison.Ordinal)..].ReplaceLineEndings(" ");
}
