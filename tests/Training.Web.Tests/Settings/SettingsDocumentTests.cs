using System.Globalization;
using System.Text.RegularExpressions;
using Training.Web.Settings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Settings;

public sealed partial class SettingsDocumentTests
{
    [Fact]
    public void The_document_lists_every_setting_with_its_default_and_no_other()
    {
        var listed = Row().Matches(File.ReadAllText(Repository.Path("docs/settings.md")))
            .ToDictionary(row => row.Groups["key"].Value, row => row.Groups["default"].Value.Trim('`', ' '), StringComparer.Ordinal);

        var real = SettingsReader.All(typeof(TrainingOptions)).ToDictionary(
            setting => "Training__" + setting.Key.Replace(":", "__", StringComparison.Ordinal),
            setting => Default(setting.Key),
            StringComparer.Ordinal);
        Assert.Equal(real.OrderBy(s => s.Key, StringComparer.Ordinal), listed.OrderBy(s => s.Key, StringComparer.Ordinal));
    }

    private static string Default(string key)
    {
        object? value = new TrainingOptions();
        foreach (var name in key.Split(':')) value = value!.GetType().GetProperty(name)!.GetValue(value);
        var text = Convert.ToString(value, CultureInfo.InvariantCulture);
        return string.IsNullOrEmpty(text) ? "none" : text;
    }

    [GeneratedRegex(@"^\| `(?<key>Training__\w+)` \| (?<default>[^|]+) \|", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Row();
}
