using System.Globalization;
using System.Text.RegularExpressions;

namespace Training.Web.Tests.House;

public sealed partial class StylesheetTests
{
    private static readonly string Css = File.ReadAllText(Repository.Path("src/Training.Web/wwwroot/site.css"));

    /// <summary>Text on ground, and the least contrast (WCAG 2.2: 1.4.6 for what is read, 1.4.11 for edges).</summary>
    public static TheoryData<string, string, double> Pairs => new()
    {
        { "ink", "paper", 7 },
        { "ink", "paper-deep", 7 },
        { "ink", "ochre-wash", 7 },
        { "ink-soft", "paper", 7 },
        { "ink-soft", "paper-deep", 4.5 },
        { "ochre", "paper", 4.5 },
        { "paper", "ochre", 4.5 },
        { "stop", "paper", 4.5 },
        { "stop-ink", "stop", 4.5 },
        { "edge", "paper", 3 },
    };

    [Theory, MemberData(nameof(Pairs))]
    public void What_is_read_stands_out_from_its_ground_in_light_dark_and_print(string text, string ground, double least)
    {
        var themes = Root().Matches(Css).Select(root => Tokens(root.Value)).Where(tokens => tokens.ContainsKey("paper")).ToList();

        Assert.Equal(3, themes.Count);
        Assert.All(themes, tokens => Assert.InRange(Contrast(tokens[text], tokens[ground]), least, 21));
    }

    [Fact]
    public void Every_brace_closes_before_the_next_part_begins()
    {
        var depth = 0;
        var open = new List<string>();
        foreach (var line in Css.Split('\n'))
        {
            if (line.StartsWith("/* ", StringComparison.Ordinal) && depth != 0) open.Add(line);
            depth += line.Count(c => c == '{') - line.Count(c => c == '}');
        }

        Assert.Empty(open);
        Assert.Equal(0, depth);
    }

    [Fact]
    public void Nothing_moves() => Assert.DoesNotMatch("(animation|transition|@keyframes|scroll-behavior)", Css);

    [Fact]
    public void Nothing_comes_from_elsewhere() => Assert.DoesNotMatch("(url\\(|@import|@font-face)", Css);

    [Fact]
    public void Every_class_is_used_by_a_view()
    {
        var views = string.Concat(Directory
            .EnumerateFiles(Repository.Path("src/Training.Web/Features"), "*.cshtml", SearchOption.AllDirectories)
            .Select(File.ReadAllText));
        var used = ClassAttribute().Matches(views).SelectMany(match => match.Groups["names"].Value.Split(' ')).ToHashSet(StringComparer.Ordinal);

        // Courses are not views: they bring the classes of drawings and their places, notes and guidance values.
        var rules = ClassRule().Matches(Css).Select(match => match.Groups["name"].Value).Where(name => !CourseClasses.Contains(name));
        Assert.Empty(rules.Except(used, StringComparer.Ordinal));
    }

    private static readonly HashSet<string> CourseClasses = new(StringComparer.Ordinal) { "drawing", "l", "thin", "wash", "mark", "spot", "note", "value" };

    private static Dictionary<string, string> Tokens(string root) => Token().Matches(root)
        .ToDictionary(token => token.Groups["name"].Value, token => token.Groups["value"].Value, StringComparer.Ordinal);

    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>Relative luminance as WCAG 2.2 defines it.</summary>
    private static double Luminance(string hex)
    {
        double Channel(int at)
        {
            var value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(0)) + (0.7152 * Channel(2)) + (0.0722 * Channel(4));
    }

    [GeneratedRegex(@":root \{[^}]*\}", RegexOptions.None, 1000)]
    private static partial Regex Root();

    [GeneratedRegex(@"--(?<name>[\w-]+): #(?<value>[0-9a-f]{6});", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Token();

    [GeneratedRegex(@"class=""(?<names>[\w -]+)""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ClassAttribute();

    [GeneratedRegex(@"\.(?<name>[a-z][\w-]*)(?=[^{}]*\{)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ClassRule();
}
