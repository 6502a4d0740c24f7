using System.Globalization;
using Training.Courses;
using Training.Web.Problems;
using Training.Web.Settings;

namespace Training.Web.Commands;

/// <summary>Looks through all courses and lists every finding as a compiler would: <c>file:line: sentence mend</c>.</summary>
public static class CheckCommand
{
    /// <summary>Exit code 0 where there is nothing to mend, 1 otherwise.</summary>
    public static int Run(string[] settings, TextWriter output)
    {
        var problems = new List<Problem>();
        var options = SettingsReader.Read(Site.Settings(settings), problems);
        if (options is null) return Print(problems, output);

        var folder = Path.GetFullPath(options.CoursesFolder);
        if (!Directory.Exists(folder)) return Print([new(SettingsProblems.FolderMissing, Place.Of("Training:CoursesFolder"), folder)], output);
        var reading = CourseReader.Read(CourseFiles.FromFolder(folder));
        if (reading.Problems.Count > 0) return Print(reading.Problems, output);

        var courses = reading.Courses;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{courses.Count} courses, {courses.Sum(c => c.Modules.Count)} modules, {courses.Sum(c => c.Questions.Count)} questions, "
            + $"{courses.Sum(c => c.Checklists.Count)} checklists: nothing to mend."));
        return 0;
    }

    private static int Print(IReadOnlyCollection<Problem> problems, TextWriter output)
    {
        foreach (var problem in problems) output.WriteLine(ProblemText.Line(problem, CultureInfo.CurrentUICulture));
        return 1;
    }
}
