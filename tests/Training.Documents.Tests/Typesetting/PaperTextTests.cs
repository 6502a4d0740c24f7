using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Training.Documents.Tests.Typesetting;

/// <summary>The words of every paper, in both languages.</summary>
public sealed class PaperTextTests
{
    private static readonly string Source = Path.Combine(FindRoot(), "src", "Training.Documents");

    // What is made of values alone, and what a language calls itself.
    private static readonly string[] Alike = ["CertificateText: DocumentTitle", "SignInSheetText: English", "SignInSheetText: Spanish"];

    public static TheoryData<string> Papers => [.. Directory.EnumerateFiles(Source, "*Text.resx", SearchOption.AllDirectories)
        .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
        .Select(file => Path.GetRelativePath(Source, file))];

    [Fact]
    public void Eight_files_hold_them() => Assert.Equal(8, Papers.Count);

    [Theory, MemberData(nameof(Papers))]
    public void Both_languages_have_the_same_texts_with_the_same_places_for_values(string file)
    {
        var (english, spanish) = (Read(file), Read(Spanish(file)));

        Assert.NotEmpty(english);
        Assert.Equal(english.Keys, spanish.Keys, StringComparer.Ordinal);
        Assert.All(english, text => Assert.Equal(Values(text.Value), Values(spanish[text.Key]), StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Papers))]
    public void No_text_is_empty_or_left_in_English(string file)
    {
        var spanish = Read(Spanish(file));

        Assert.All(Read(file).Where(text => !Alike.Contains($"{Path.GetFileNameWithoutExtension(file)}: {text.Key}", StringComparer.Ordinal)), text =>
        {
            Assert.NotEmpty(text.Value.Trim());
            Assert.NotEqual(text.Value, spanish[text.Key], StringComparer.Ordinal);
        });
    }

    [Theory, MemberData(nameof(Papers))]
    public void Every_text_is_used_and_every_used_text_is_there(string file)
    {
        var code = File.ReadAllText(Path.Combine(Source, file.Replace("Text.resx", "Words.cs", StringComparison.Ordinal)));
        var used = Regex.Matches(code, "\"[A-Z][A-Za-z]+\"", RegexOptions.NonBacktracking).Select(match => match.Value.Trim('"'))
            .Where(name => name != Path.GetFileNameWithoutExtension(file)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);

        Assert.Equal(Read(file).Keys, used, StringComparer.Ordinal);
    }

    private static string Spanish(string file) => Path.ChangeExtension(file, ".es.resx");

    private static SortedDictionary<string, string> Read(string file) => new(
        XDocument.Load(Path.Combine(Source, file)).Root!.Elements("data")
            .ToDictionary(data => data.Attribute("name")!.Value, data => data.Element("value")!.Value, StringComparer.Ordinal),
        StringComparer.Ordinal);

    private static IEnumerable<string> Values(string text) => Regex.Matches(text, @"\{\d\}", RegexOptions.NonBacktracking).Select(match => match.Value).Order(StringComparer.Ordinal);

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Training.sln"))) return folder.FullName;
        }

        throw new InvalidOperationException("The tests read source files; run them inside the repository.");
    }
}
