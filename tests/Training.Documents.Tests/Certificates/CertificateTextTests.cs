using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Training.Documents.Tests.Certificates;

public sealed class CertificateTextTests
{
    private static readonly string Folder = Path.Combine(FindRoot(), "src", "Training.Documents", "Certificates");

    [Fact]
    public void Both_languages_have_the_same_texts_with_the_same_places_for_values()
    {
        var (english, spanish) = (Read("CertificateText.resx"), Read("CertificateText.es.resx"));

        Assert.NotEmpty(english);
        Assert.Equal(english.Keys, spanish.Keys, StringComparer.Ordinal);
        Assert.All(english, text => Assert.Equal(Values(text.Value), Values(spanish[text.Key]), StringComparer.Ordinal));
    }

    [Fact]
    public void No_text_is_empty_or_left_in_English()
    {
        var spanish = Read("CertificateText.es.resx");

        // The title of the file is made of values alone.
        Assert.All(Read("CertificateText.resx").Where(text => text.Key != "DocumentTitle"), text =>
        {
            Assert.NotEmpty(text.Value.Trim());
            Assert.NotEqual(text.Value, spanish[text.Key], StringComparer.Ordinal);
        });
    }

    [Fact]
    public void Every_text_is_used_and_every_used_text_is_there()
    {
        var code = File.ReadAllText(Path.Combine(Folder, "CertificateWords.cs"));
        var used = Regex.Matches(code, "\"[A-Z][A-Za-z]+\"", RegexOptions.NonBacktracking).Select(match => match.Value.Trim('"')).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);

        Assert.Equal(Read("CertificateText.resx").Keys, used, StringComparer.Ordinal);
    }

    private static SortedDictionary<string, string> Read(string file) => new(
        XDocument.Load(Path.Combine(Folder, file)).Root!.Elements("data")
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
