using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace Training.Courses;

/// <summary>
/// JSON that is the same bytes for the same content: names in ordinal order, texts escaped as RFC 8785 section 3.2.2.2 says. Written here
/// and not by the framework, whose choice of escapes may change with a version while hashes in the records stay.
/// </summary>
internal static class CanonicalJson
{
    public static string Write(JsonNode node)
    {
        var text = new StringBuilder();
        Append(text, node);
        return text.ToString();
    }

    /// <summary>SHA-256 of a text's UTF-8, in lower-case hexadecimal digits.</summary>
    public static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    public static JsonArray Texts(IEnumerable<string> texts) => [.. texts.Select(text => (JsonNode)JsonValue.Create(text))];

    private static void Append(StringBuilder text, JsonNode? node)
    {
        if (node is JsonObject map)
        {
            // A space after each colon: YAML readers want one, and facts and guidance are read back as YAML.
            AppendAll(text, '{', '}', map.OrderBy(member => member.Key, StringComparer.Ordinal), member =>
            {
                AppendText(text, member.Key);
                text.Append(": ");
                Append(text, member.Value);
            });
        }
        else if (node is JsonArray list)
        {
            AppendAll(text, '[', ']', list, item => Append(text, item));
        }
        else
        {
            AppendText(text, node?.GetValue<string>() ?? "");
        }
    }

    private static void AppendAll<T>(StringBuilder text, char open, char close, IEnumerable<T> items, Action<T> append)
    {
        var isFirst = true;
        text.Append(open);
        foreach (var item in items)
        {
            if (!isFirst) text.Append(", ");
            isFirst = false;
            append(item);
        }

        text.Append(close);
    }

    private static void AppendText(StringBuilder text, string value)
    {
        text.Append('"');
        foreach (var c in value)
        {
            _ = c switch
            {
                '"' => text.Append("\\\""),
                '\\' => text.Append("\\\\"),
                '\n' => text.Append("\\n"),
                '\t' => text.Append("\\t"),
                '\r' => text.Append("\\r"),
                '\b' => text.Append("\\b"),
                '\f' => text.Append("\\f"),
                < ' ' => text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => text.Append(c),
            };
        }

        text.Append('"');
    }
}
