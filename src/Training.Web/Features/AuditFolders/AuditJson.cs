using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace Training.Web.Features.AuditFolders;

/// <summary>Records as JSON for a program: names in camelCase, enums by name, days and instants as ISO 8601.</summary>
public static class AuditJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
        NewLine = "\n",
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>The file of something.</summary>
    public static byte[] Write(object value) => Encoding.UTF8.GetBytes(JsonSerializer.Serialize(value, Options) + "\n");

    /// <summary>A case of a closed family, with its name as <c>kind</c>.</summary>
    public static JsonNode Case(object one)
    {
        var node = JsonSerializer.SerializeToNode(one, one.GetType(), Options)!.AsObject(); // not null: it is no null
        node["kind"] = one.GetType().Name;
        return node;
    }

    /// <summary>Typed reasons as the records keep them.</summary>
    public static JsonNode? Stored(string reasons) => JsonNode.Parse(reasons)?["items"]?.DeepClone();
}
