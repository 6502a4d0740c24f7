using System.Diagnostics;
using System.Text.Json;
using Training.Courses.Tests.Library;

namespace Training.Courses.Tests.Readability;

/// <summary>
/// English as others count it: the CMU Pronouncing Dictionary (npm <c>cmu-pronouncing-dictionary</c>), <c>syllable</c> for words that it
/// lacks, and the formula of <c>flesch-kincaid</c>. One node process for all texts, since starting it is what takes time.
/// </summary>
/// <param name="Grades">Grade of each text by its name.</param>
/// <param name="Syllables">Of each word in lower case.</param>
internal sealed record ReferenceGrades(Dictionary<string, double> Grades, Dictionary<string, int> Syllables)
{
    private static readonly string Script =
        Path.Combine(ShippedCourses.Folder, "..", "tests", "Training.Courses.Tests", "Readability", "reference-grades.mjs");

    public static ReferenceGrades Of(IReadOnlyDictionary<string, IReadOnlyList<string>> texts)
    {
        var start = new ProcessStartInfo("node", [Script])
        {
            UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var node = Process.Start(start) ?? throw new InvalidOperationException("node did not start; tests/run installs it with npm.");
        // Read while writing: what node says of a broken start must not fill a pipe that nobody empties.
        var said = node.StandardOutput.ReadToEndAsync();
        var complained = node.StandardError.ReadToEndAsync();
        node.StandardInput.Write(JsonSerializer.Serialize(texts));
        node.StandardInput.Close();
        node.WaitForExit();
        if (node.ExitCode != 0) throw new InvalidOperationException($"Run tests/run, or npm install in tests/. {complained.Result}");
        return JsonSerializer.Deserialize<ReferenceGrades>(said.Result, JsonSerializerOptions.Web) ?? throw new InvalidDataException(said.Result);
    }
}
