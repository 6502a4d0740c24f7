using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace Training.Courses;

/// <summary>Facts and guidance as JSON with the fields of their YAML files.</summary>
internal static class SourceJson
{
    public static JsonObject Of(Fact fact) => new()
    {
        ["id"] = fact.Id,
        ["says"] = fact.Statement,
        ["source"] = fact.Source,
        ["standing"] = NameOf(fact.Standing),
    };

    /// <summary>Without its successor: a course in force never rests on an entry that has one.</summary>
    public static JsonObject Of(GuidanceEntry entry)
    {
        var json = new JsonObject
        {
            ["id"] = entry.Id,
            ["subject"] = entry.Subject,
            ["region"] = entry.Region,
            ["snakes"] = entry.Snakes,
            ["effective-from"] = entry.EffectiveFrom.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ["fact"] = entry.FactId,
            ["source"] = entry.Source,
            ["standing"] = NameOf(entry.Standing),
        };
        if (entry.Value is GuidanceValue.Quantity quantity)
        {
            json["value"] = quantity.Amount.ToString(CultureInfo.InvariantCulture);
            json["unit"] = quantity.Unit;
        }
        else if (entry.Value is GuidanceValue.Code code)
        {
            json["value"] = code.Name;
        }

        return json;
    }

    /// <summary>The words of those values that are not numbers.</summary>
    public static JsonObject WordsOf(IReadOnlyList<GuidanceEntry> entries, IReadOnlyDictionary<Language, IReadOnlyDictionary<string, string>> words)
    {
        var codes = entries.Select(entry => entry.Value).OfType<GuidanceValue.Code>().Select(code => code.Name).Distinct(StringComparer.Ordinal).ToList();
        var json = new JsonObject();
        foreach (var language in LanguageTags.All)
        {
            var spoken = new JsonObject();
            foreach (var code in codes)
            {
                if (words.GetValueOrDefault(language)?.GetValueOrDefault(code) is { } text) spoken[code] = text;
            }

            json[language.Tag()] = spoken;
        }

        return json;
    }

    /// <summary>Plain text as Markdown that gives it back: CommonMark lets every ASCII punctuation mark be escaped.</summary>
    public static string EscapeMarkdown(string text)
    {
        var escaped = new StringBuilder();
        foreach (var c in text)
        {
            if (char.IsAscii(c) && (char.IsPunctuation(c) || char.IsSymbol(c))) escaped.Append('\\');
            escaped.Append(c);
        }

        return escaped.ToString();
    }

    private static string NameOf(FactStanding standing) => standing switch
    {
        FactStanding.Confirmed => "confirmed",
        FactStanding.CommonPractice => "common-practice",
        FactStanding.FromMemory => "from-memory",
    };
}
