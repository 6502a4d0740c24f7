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

    /// <summary>Checklist; on what; how many steps; the steps that stop it.</summary>
    public static TheoryData<string, string, int, string> Checklists => new()
    {
        {
            "move-to-bucket", "Model Live", 20,
            "test-call inspect-tools place-watcher clear-others judge-length tongs-mid-body hands-outside lid-by-tool eyes-on"
        },
        { "box-and-label", "Model", 13, "look-over others-outside lid-on hands-off-rim into-box count-out" },
        { "bite-drill", "Model", 12, "out-of-reach call-first say-place do-not-list who-drives" },
    };

    [Theory, MemberData(nameof(Checklists))]
    public void A_checklist_has_its_steps_and_says_in_both_languages_why_a_critical_one_stops_it(string id, string on, int steps, string critical)
    {
        var checklist = Reading.Courses.SelectMany(course => course.Checklists).Single(checklist => checklist.Id == id);

        Assert.Equal(on, string.Join(' ', checklist.Subjects));
        Assert.Equal(steps, checklist.Steps.Count);
        Assert.Equal(critical, string.Join(' ', checklist.Steps.Where(step => step.IsCritical).Select(step => step.Id)));
        foreach (var step in critical.Split(' '))
        {
            var reasons = LanguageTags.All.Select(language => checklist.Words[language].ReasonHtml[step]).ToList();
            Assert.All(reasons, reason => Assert.InRange(reason.Length, 40, 400));
            Assert.Distinct(reasons);
        }
    }

    [Fact]
    public void There_are_no_other_checklists() => Assert.Equal(
        Checklists.Select(row => $"handler {row.Data.Item1}"),
        Reading.Courses.SelectMany(course => course.Checklists.Select(checklist => $"{course.Id} {checklist.Id}")));

    [Fact]
    public void A_handler_shows_all_of_them_on_the_model_and_only_the_move_on_a_live_snake() => Assert.Equal(
        ["move-to-bucket Model", "move-to-bucket Live", "box-and-label Model", "bite-drill Model"],
        Reading.Courses.Single(course => course.Id == "handler").Scheme.Grant.OfType<Requirement.PassedPractical>()
            .Select(practical => $"{practical.ChecklistId} {practical.Subject}"));

    [Fact]
    public void Nobody_is_asked_for_a_live_snake_to_renew() => Assert.DoesNotContain(
        Reading.Courses.SelectMany(course => course.Scheme.Renewal), requirement => requirement is Requirement.PassedPractical { Subject: Subject.Live });

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
