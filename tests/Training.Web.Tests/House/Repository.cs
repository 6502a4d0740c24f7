namespace Training.Web.Tests.House;

/// <summary>Where the checkout lies: the folder that holds Training.sln, found upwards from the test's own folder.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Training.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("No Training.sln above the tests.");
    }
}
