namespace Training.Benchmarks;

/// <summary>Where the shipped files lie.</summary>
internal static class Repository
{
    /// <summary>The shipped courses.</summary>
    public static string Courses
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder.FullName, "Training.sln"))) folder = folder.Parent ?? throw new InvalidOperationException("No Training.sln above.");
            return Path.Combine(folder.FullName, "courses");
        }
    }
}
