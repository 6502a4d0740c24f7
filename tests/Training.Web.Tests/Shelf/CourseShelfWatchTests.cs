using Training.Web.Tests.House;

namespace Training.Web.Tests.Shelf;

/// <summary>Courses are broken in every way that an editor, a copy or a mistake can break them, while the server runs.</summary>
public sealed class CourseShelfWatchTests
{
    private const string Page = "/en/courses/awareness/meeting";

    public static TheoryData<string> Breakages => [.. Breaks.Keys];

    private static Dictionary<string, Action<string>> Breaks { get; } = new(StringComparer.Ordinal)
    {
        ["course.yaml is gone"] = course => File.Delete(Path.Combine(course, "course.yaml")),
        ["course.yaml is empty"] = course => File.WriteAllText(Path.Combine(course, "course.yaml"), ""),
        ["course.yaml is no YAML"] = course => File.WriteAllText(Path.Combine(course, "course.yaml"), "scheme: [\n\t{{"),
        ["a module lacks its Spanish"] = course => File.Delete(Path.Combine(course, "es/modules/meeting.md")),
        ["a module is not text"] = course => File.WriteAllBytes(Path.Combine(course, "en/modules/meeting.md"), [0xFF, 0xFE, 0x00, 0xD8]),
        ["a module lost its caution"] = course => Replace(course, "en/modules/meeting.md", "{#caution}", "{#end}"),
        ["a link leads nowhere"] = course => File.AppendAllText(Path.Combine(course, "en/modules/meeting.md"), "\n[There](nowhere.md)\n"),
        ["a question names an unknown topic"] = course => Replace(course, "questions.yaml", "topic: meeting", "topic: dancing"),
        ["the quiz draws more than there is"] = course => Replace(course, "course.yaml", "questions: 2", "questions: 200"),
        ["the validity is no duration"] = course => Replace(course, "course.yaml", "validity: P24M", "validity: two years"),
        ["a figure carries a script"] = course => File.WriteAllText(
            Path.Combine(course, "figures/step-back.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>"),
        ["the shared facts are gone"] = course => File.Delete(Path.Combine(course, "../facts.yaml")),
        ["a stranger's folder appears"] = course => Directory.CreateDirectory(Path.Combine(course, "../empty/en")),
    };

    [Theory, MemberData(nameof(Breakages))]
    public async Task A_broken_folder_changes_nothing_for_readers_now_or_after_a_restart(string breakage)
    {
        var site = RunningSite.Start();
        try
        {
            var before = await site.GetAsync(Page);
            Breaks[breakage](Path.Combine(site.CoursesFolder, "awareness"));
            await site.LookAsync();

            Assert.Equal(before, await site.GetAsync(Page));
            Assert.Equal(200, (await site.GetAsync("/es/courses/handler")).Status);

            site = site.Restart();
            Assert.Equal(before, await site.GetAsync(Page));
        }
        finally
        {
            site.Dispose();
        }
    }

    [Fact]
    public async Task A_mended_text_is_served_and_a_broken_one_not()
    {
        using var site = RunningSite.Start();
        var module = Path.Combine(site.CoursesFolder, "awareness/en/modules/meeting.md");
        var text = await File.ReadAllTextAsync(module);

        await File.WriteAllTextAsync(module, text.Replace("# ", "# Quite new: ", StringComparison.Ordinal).Replace("{#caution}", "{#gone}", StringComparison.Ordinal));
        await site.LookAsync();
        Assert.DoesNotContain("Quite new", (await site.GetAsync(Page)).Html, StringComparison.Ordinal);

        await File.WriteAllTextAsync(module, text + " Quite new.");
        await site.LookAsync();
        Assert.Contains("Quite new", (await site.GetAsync(Page)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_has_to_call_for_a_change_to_be_seen()
    {
        using var site = RunningSite.Start();
        await File.AppendAllTextAsync(Path.Combine(site.CoursesFolder, "awareness/en/modules/meeting.md"), " Seen by itself.");

        for (var wait = 0; wait < 100; wait++)
        {
            if ((await site.GetAsync(Page)).Html.Contains("Seen by itself.", StringComparison.Ordinal)) return;
            await Task.Delay(100);
        }

        Assert.Fail("Ten seconds went by.");
    }

    [Fact]
    public async Task A_course_whose_folder_was_removed_is_taken_down_and_one_on_a_lost_drive_is_not()
    {
        using var site = RunningSite.Start();

        Directory.Delete(Path.Combine(site.CoursesFolder, "handler"), recursive: true);
        await site.LookAsync();
        Assert.Equal(404, (await site.GetAsync("/en/courses/handler")).Status);

        Directory.Move(site.CoursesFolder, site.CoursesFolder + "-lost");
        await site.LookAsync();
        Assert.Equal(200, (await site.GetAsync(Page)).Status);
    }

    private static void Replace(string course, string file, string text, string with)
    {
        var path = Path.Combine(course, file);
        var old = File.ReadAllText(path);
        Assert.Contains(text, old, StringComparison.Ordinal);
        File.WriteAllText(path, old.Replace(text, with, StringComparison.Ordinal));
    }
}
