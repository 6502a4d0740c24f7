using System.Globalization;
using Training.Courses;
using Training.Web.Problems;
using Training.Web.Settings;

namespace Training.Web.Commands;

/// <summary>Notes that somebody compared every part of a translation with its original: writes <c>translation.yaml</c> of one course.</summary>
public static class TranslatedCommand
{
    /// <summary>Exit code 0 where the file was written, 1 otherwise.</summary>
    /// <param name="settings">Course, language of the translation, then settings.</param>
    /// <param name="output">Where what happened is told.</param>
    public static int Run(string[] settings, TextWriter output)
    {
        var problems = new List<Problem>();
        if (settings is not [var courseId, var tag, ..] || LanguageTags.Find(tag) is not { } language)
        {
            output.WriteLine("Name the course and the language of its translation, such as: translated awareness es");
            return 1;
        }

        if (SettingsReader.Read(Site.Settings(settings[2..]), problems) is not { } options)
        {
            foreach (var problem in problems) output.WriteLine(ProblemText.Line(problem, CultureInfo.CurrentUICulture));
            return 1;
        }

        var folder = Path.GetFullPath(options.CoursesFolder);
        if (!Directory.Exists(folder) || Translation.FileOf(CourseFiles.FromFolder(folder), courseId, language) is not { } text)
        {
            output.WriteLine($"There is no course \"{courseId}\" in {folder}.");
            return 1;
        }

        var path = Path.Combine(folder, courseId, tag, Translation.FileName);
        File.WriteAllText(path, text);
        output.WriteLine($"Written: {path}. Every part counts as compared with its original now.");
        return 0;
    }
}
