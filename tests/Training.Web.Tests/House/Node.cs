using System.Diagnostics;
using System.Text.Json;

namespace Training.Web.Tests.House;

/// <summary>Runs a script of this project in node with JSON in and JSON out: the judges from npm stand in <c>tests/package.json</c>.</summary>
internal static class Node
{
    /// <summary>What the script says.</summary>
    /// <param name="script">Path below this project.</param>
    /// <param name="input">Written to it as JSON.</param>
    public static async Task<JsonElement> RunAsync(string script, object input)
    {
        var start = new ProcessStartInfo("node", [Repository.Path(Path.Combine("tests", "Training.Web.Tests", script))])
        {
            UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var node = Process.Start(start) ?? throw new InvalidOperationException("node did not start; tests/run installs it with npm.");
        var (said, complained) = (node.StandardOutput.ReadToEndAsync(), node.StandardError.ReadToEndAsync());
        await node.StandardInput.WriteAsync(JsonSerializer.Serialize(input, JsonSerializerOptions.Web));
        node.StandardInput.Close();
        await node.WaitForExitAsync();
        Assert.True(node.ExitCode == 0, $"{script} failed. Run tests/run, or npm install in tests/. {await complained}");
        return JsonSerializer.Deserialize<JsonElement>(await said);
    }
}
