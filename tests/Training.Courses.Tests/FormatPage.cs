using Training.Courses.Tests.Library;

namespace Training.Courses.Tests;

/// <summary>docs/course-format.md and its samples, which tests read as an author would type them.</summary>
internal static class FormatPage
{
    public static string Text { get; } = File.ReadAllText(Path.Combine(ShippedCourses.Folder, "..", "docs", "course-format.md"));

    /// <summary>A sample below a heading or another line that the page has once.</summary>
    /// <param name="below">The line, or its beginning.</param>
    /// <param name="language">As the fence names it: yaml, markdown or svg.</param>
    /// <param name="number">Which of them, from 1.</param>
    public static string Sample(string below, string language, int number = 1)
    {
        var from = Text.IndexOf("\n" + below, StringComparison.Ordinal);
        Assert.True(from >= 0, below);
        var fence = $"\n```{language}\n";
        for (var i = 0; i < number; i++) from = Text.IndexOf(fence, from, StringComparison.Ordinal) + fence.Length;
        return Text[from..(Text.IndexOf("\n```", from, StringComparison.Ordinal) + 1)];
    }

    /// <summary>A question whose sample leaves out the fields that every type has.</summary>
    public static string Whole(string question)
    {
        const string LeftOut = "  # topic, objective, difficulty, passage, fact …\n";
        Assert.Contains(LeftOut, question, StringComparison.Ordinal);
        return question.Replace(
            LeftOut, "  topic: meeting\n  objective: meet-a-snake\n  difficulty: easy\n  passage: meeting#stop\n  fact: F-CP-09\n", StringComparison.Ordinal);
    }
}
