using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.CourseReports;

/// <summary>What an author sees of a course while writing it.</summary>
public sealed class CourseReportsControllerTests
{
    [Fact]
    public async Task A_report_counts_what_teaches_what_asks_and_how_hard_it_reads()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using var lead = await site.SignInAsync(cast.Lead);
        var course = site.Shelf.Find("handler")!;

        var html = (await lead.GetAsync("/en/programme/courses/handler")).Html;

        Assert.Contains("nothing to mend", html, StringComparison.Ordinal);
        Assert.Contains("Each objective is taught and asked for", html, StringComparison.Ordinal);
        Assert.Contains("No module is too hard.", html, StringComparison.Ordinal);
        Assert.All(course.Modules, module => Assert.Contains($"/modules/{module.Id}/preview", html, StringComparison.Ordinal));
        Assert.Contains($"<td>{course.Questions.Count}</td><td>{course.Questions.Count(question => question.IsCritical)}</td>", html, StringComparison.Ordinal);
        Assert.Contains("F-CP-01", html, StringComparison.Ordinal);
        Assert.Equal(404, (await lead.GetAsync("/en/programme/courses/juggling")).Status);
    }

    [Fact]
    public async Task A_module_is_shown_as_its_file_is_now_while_workers_read_the_last_good_text()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using var lead = await site.SignInAsync(cast.Lead);
        var file = Path.Combine(site.CoursesFolder, "awareness", "en", "modules", "meeting.md");
        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)).Replace("## Stop and see {#stop}", "## Halt and look {#stop}\n\n<fact:F-NOPE-1>", StringComparison.Ordinal));
        await site.LookAsync();

        var preview = (await lead.GetAsync("/en/programme/courses/awareness/modules/meeting/preview")).Html;
        var read = (await lead.GetAsync("/en/courses/awareness/meeting")).Html;
        var report = (await lead.GetAsync("/en/programme/courses/awareness")).Html;

        Assert.Contains("Halt and look", preview, StringComparison.Ordinal);
        Assert.Contains("F-NOPE-1", preview, StringComparison.Ordinal);
        Assert.Matches("awareness/en/modules/meeting\\.md:\\d+", preview);
        Assert.DoesNotContain("Halt and look", read, StringComparison.Ordinal);
        Assert.Contains("one finding in its files", report, StringComparison.Ordinal);
        Assert.Equal(404, (await lead.GetAsync("/en/programme/courses/awareness/modules/juggling/preview")).Status);
    }

    [Fact]
    public async Task Words_that_a_machine_made_are_named_to_whoever_reviews_them()
    {
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        using var lead = await site.SignInAsync(cast.Lead);
        var file = Path.Combine(site.CoursesFolder, "awareness", "questions.yaml");
        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)).Replace("- id: own-list\n", "- id: own-list\n  machine: [es]\n", StringComparison.Ordinal));
        await site.LookAsync();

        Assert.Contains("(own-list)", (await lead.GetAsync("/en/programme/courses/awareness")).Html, StringComparison.Ordinal);
        Assert.Contains(
            "Drafted or translated by a machine: Español", (await lead.GetAsync("/en/programme/courses/awareness/modules/what-lives-here/questions")).Html,
            StringComparison.Ordinal);
    }
}
