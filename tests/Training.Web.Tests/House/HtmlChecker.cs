using System.Diagnostics;
using System.Text.Json;

namespace Training.Web.Tests.House;

/// <summary>The Nu HTML checker (npm vnu-jar), which knows the HTML standard and not us.</summary>
internal static class HtmlChecker
{
    private static readonly string Jar = Repository.Path("tests/node_modules/vnu-jar/build/dist/vnu.jar");

    /// <summary>Everything it says of these pages, a line each; empty where nothing is wrong.</summary>
    public static IReadOnlyList<string> Check(IReadOnlyDictionary<string, string> pages)
    {
        var folder = Directory.CreateTempSubdirectory("training-html-");
        try
        {
            var names = pages.Keys.Select((path, number) => (path, file: Path.Combine(folder.FullName, $"{number}.html"))).ToList();
            foreach (var (path, file) in names) File.WriteAllText(file, pages[path]);
            var start = new ProcessStartInfo("java", ["-jar", Jar, "--format", "json", "--exit-zero-always", .. names.Select(name => name.file)])
            {
                UseShellExecute = false, RedirectStandardError = true,
            };
            using var process = Process.Start(start) ?? throw new InvalidOperationException("java did not start; install default-jre-headless.");
            var said = process.StandardError.ReadToEnd();
            process.WaitForExit();
            return
            [
                .. JsonDocument.Parse(said).RootElement.GetProperty("messages").EnumerateArray().Select(message =>
                    $"{names.Single(name => message.GetProperty("url").GetString()!.EndsWith(name.file, StringComparison.Ordinal)).path}: "
                    + $"{message.GetProperty("message").GetString()} {(message.TryGetProperty("extract", out var extract) ? extract.GetString() : "")}"),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
