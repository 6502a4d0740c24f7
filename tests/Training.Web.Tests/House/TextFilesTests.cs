using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Training.Web.Tests.House;

/// <summary>Texts stand in .resx files beside their feature, in English and Spanish alike, none missing and none left over.</summary>
public sealed partial class TextFilesTests
{
    private static readonly string Web = Repository.Path("src/Training.Web");

    public static TheoryData<string> English => [.. Directory.EnumerateFiles(Web, "*.resx", SearchOption.AllDirectories)
        .Where(path => !path.EndsWith(".es.resx", StringComparison.Ordinal) && !path.Contains("/obj/", StringComparison.Ordinal))
        .Select(path => Path.GetRelativePath(Web, path))];

    [Theory, MemberData(nameof(English))]
    public void Spanish_has_the_same_texts(string file) =>
        Assert.Equal(Texts(file).Keys.Order(StringComparer.Ordinal), Texts(Spanish(file)).Keys.Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(English))]
    public void Both_languages_fill_in_the_same_things(string file)
    {
        var spanish = Texts(Spanish(file));

        foreach (var (key, text) in Texts(file)) Assert.True(Holes(text).SetEquals(Holes(spanish[key])), $"{file}: {key}");
    }

    [Theory, MemberData(nameof(English))]
    public void No_text_is_empty(string file)
    {
        Assert.All(Texts(file), text => Assert.NotEmpty(text.Value.Trim()));
        Assert.All(Texts(Spanish(file)), text => Assert.NotEmpty(text.Value.Trim()));
    }

    [Theory, MemberData(nameof(English))]
    public void Every_text_that_code_asks_for_exists_and_every_text_is_asked_for(string file)
    {
        // Texts of problems are named by codes, not by views: ProblemTextTests walks those.
        if (Path.GetFileName(file) == "ProblemText.resx") return;
        var asked = Asked(Path.GetFileNameWithoutExtension(file));

        Assert.Equal(Texts(file).Keys.Order(StringComparer.Ordinal), asked.Order(StringComparer.Ordinal));
    }

    private static HashSet<string> Asked(string name) => Directory.EnumerateFiles(Web, "*.cs*", SearchOption.AllDirectories)
        .Where(path => !path.Contains("/obj/", StringComparison.Ordinal) && !path.Contains("/bin/", StringComparison.Ordinal))
        .Select(File.ReadAllText)
        .Where(code => code.Contains($"IStringLocalizer<{name}>", StringComparison.Ordinal) || code.Contains($"typeof({name})", StringComparison.Ordinal))
        .SelectMany(code => Ask().Matches(code).Select(match => match.Groups["key"].Value))
        .ToHashSet(StringComparer.Ordinal);

    private static string Spanish(string file) => Path.ChangeExtension(file, ".es.resx");

    private static Dictionary<string, string> Texts(string file) => XDocument.Load(Path.Combine(Web, file)).Root!.Elements("data")
        .ToDictionary(text => text.Attribute("name")!.Value, text => text.Element("value")!.Value, StringComparer.Ordinal);

    private static HashSet<string> Holes(string text) => Hole().Matches(text).Select(match => match.Value).ToHashSet(StringComparer.Ordinal);

    [GeneratedRegex(@"([Tt]ext\[|Word\()""(?<key>\w+)""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Ask();

    [GeneratedRegex(@"\{\d\}", RegexOptions.None, 1000)]
    private static partial Regex Hole();
}
