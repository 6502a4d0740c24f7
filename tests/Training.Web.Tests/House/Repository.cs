namespace Training.Web.Tests.House;

/// <summary>Finds files of the repository from wherever a test runs.</summary>
internal static class Repository
{
    public static readonly string Root = FindRoot();

    public static string Path(string relative) => System.IO.Path.Combine(Root, relative);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(System.IO.Path.Combine(folder.FullName, "Training.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("No Training.sln above the tests.");
        }

        return folder.FullName;
    }
}
