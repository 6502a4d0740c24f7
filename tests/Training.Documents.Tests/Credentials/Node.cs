using System.Diagnostics;
using System.Text.Json;

namespace Training.Documents.Tests.Credentials;

/// <summary>Runs a script of this folder in node with JSON in and JSON out: the judges from npm stand in <c>tests/package.json</c>.</summary>
internal static class Node
{
    private static readonly string Root = FindRoot();

    /// <summary>The module of the check page, as it is served.</summary>
    public static string BrowserModule { get; } = File.ReadAllText(Path.Combine(Root, "src", "Training.Web", "wwwroot", "credential.js"));

    /// <summary>What the project tells builders of gates.</summary>
    public static string CredentialsPage { get; } = File.ReadAllText(Path.Combine(Root, "docs", "credentials.md"));

    public static JsonElement Run(string script, object input)
    {
        var file = Path.Combine(Root, "tests", "Training.Documents.Tests", "Credentials", script);
        var start = new ProcessStartInfo("node", [file])
        {
            UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var node = Process.Start(start) ?? throw new InvalidOperationException("node did not start; tests/run installs it with npm.");
        // Read while writing: what node says must not fill a pipe that nobody empties.
        var said = node.StandardOutput.ReadToEndAsync();
        var complained = node.StandardError.ReadToEndAsync();
        node.StandardInput.Write(JsonSerializer.Serialize(input, JsonSerializerOptions.Web));
        node.StandardInput.Close();
        node.WaitForExit();
        Assert.True(node.ExitCode == 0, $"{script} failed. Run tests/run, or npm install in tests/. {complained.Result}");
        return JsonSerializer.Deserialize<JsonElement>(said.Result);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Training.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("No Training.sln above the tests.");
    }
}
