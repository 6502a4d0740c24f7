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

    /// <summary>Cautions: neither handler nor treatment, and who goes before this page, in words of the language.</summary>
    [Fact]
    public void Every_module_defers_to_site_rules_local_codes_poison_control_and_licensed_care()
    {
        string[] english = ["site", "local code", "poison control", "licensed"];
        string[] spanish = ["sitio", "local", "envenenamiento", "licencia"];
        var pages = Reading.Courses.SelectMany(course => course.Modules.SelectMany(module => module.Pages.Select(page =>
            (course.Id, Module: module.Id, page.Key, Caution: LastSection(page.Value.Html)))));

        Assert.Empty(pages.SelectMany(page => (page.Key == Language.English ? english : spanish)
            .Where(word => !page.Caution.Contains(word, StringComparison.OrdinalIgnoreCase))
            .Select(word => $"{page.Id}/{page.Module} {page.Key}: {word}")));
    }

    private static string LastSection(string html) => html[html.LastIndexOf("<h2", StringComparison.Ordinal)..].ReplaceLineEndings(" ");
}
