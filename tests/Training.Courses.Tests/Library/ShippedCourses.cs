namespace Training.Courses.Tests.Library;

/// <summary>The courses that this repository ships, as the text that their authors wrote.</summary>
internal static class ShippedCourses
{
    public static string Folder { get; } = Path.Combine(FindRoot(), "courses");

    /// <summary>As the engine reads them.</summary>
    public static CourseReading Reading { get; } = CourseReader.Read(CourseFiles.FromFolder(Folder));

    public static IReadOnlyList<string> Ids { get; } =
        [.. Directory.EnumerateFiles(Folder, "course.yaml", SearchOption.AllDirectories).Select(file => new FileInfo(file).Directory!.Name).Order()];

    public static string Text(string course, Language language, string file) =>
        File.ReadAllText(Path.Combine(Folder, course, language.Tag(), file));

    public static IEnumerable<string> ModuleFiles(string course, Language language) => Directory
        .EnumerateFiles(Path.Combine(Folder, course, language.Tag(), "modules"), "*.md")
        .Select(file => Path.Combine("modules", Path.GetFileName(file)))
        .Order();

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Training.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("No Training.sln above the tests.");
    }
}
