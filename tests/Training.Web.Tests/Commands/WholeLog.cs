using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Training.Web.Features.IssueLog;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Commands;

/// <summary>The data folder of a server that issued five papers and signed a head, and then stopped.</summary>
public sealed class WholeLog : IAsyncLifetime
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("training-whole-log-");

    public async ValueTask InitializeAsync()
    {
        using var site = RunningSite.Start();
        for (var paper = 0; paper < 5; paper++) await site.IssueSignedAsync(new(2026, 1, 15), new(2027, 6, 1));
        await site.Services.GetRequiredService<TreeHeadJob>().RunAsync(CancellationToken.None);
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "head.json"), await site.Client.GetStringAsync("/log/head"));
        await using var database = new SqliteConnection($"Data Source={Path.Combine(site.DataFolder, "training.db")}");
        await database.OpenAsync();
        await using var copy = database.CreateCommand();
        copy.CommandText = "VACUUM INTO $file";
        copy.Parameters.AddWithValue("$file", Path.Combine(folder.FullName, "training.db"));
        await copy.ExecuteNonQueryAsync();
        Copy(Path.Combine(site.DataFolder, "keys"), Path.Combine(folder.FullName, "keys"));
    }

    public ValueTask DisposeAsync()
    {
        folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>A copy to be at.</summary>
    public string CopyTo(string another)
    {
        Copy(folder.FullName, another);
        Copy(Path.Combine(folder.FullName, "keys"), Path.Combine(another, "keys"));
        return another;
    }

    private static void Copy(string from, string to)
    {
        // As the server makes it: keys that others may read are refused.
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(to);
        else Directory.CreateDirectory(to, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        foreach (var file in Directory.EnumerateFiles(from)) File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
    }
}
