using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Training.Certification;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>
/// Lists of typed values as text, version 1: <c>{"version":1,"items":[…]}</c>. A case of a closed family carries its name as
/// <c>kind</c>; enums are names; durations are written <c>P12M</c>. Names are part of what is stored: renaming one in code needs a new
/// version here. Kept as text on all engines, so that what was written is what is read.
/// </summary>
internal static class StoredJson
{
    private const int Version = 1;

    private static readonly Type[] Families = [typeof(SittingReason), typeof(ScoresheetReason), typeof(DecisionReason), typeof(Requirement)];

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        // Stored text is no HTML; Spanish words stay readable in the database.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(), new DurationJsonConverter() },
        TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { NameCases } },
    };

    internal static string Write<T>(IReadOnlyList<T> items) => JsonSerializer.Serialize(new Envelope<T>(Version, items), Options);

    internal static IReadOnlyList<T> Read<T>(string stored)
    {
        var envelope = JsonSerializer.Deserialize<Envelope<T>>(stored, Options);
        if (envelope?.Version != Version) throw new FormatException($"Stored list of version {envelope?.Version}; version {Version} is known.");
        return envelope.Items;
    }

    private static void NameCases(JsonTypeInfo type)
    {
        if (!Families.Contains(type.Type)) return;
        type.PolymorphismOptions = new JsonPolymorphismOptions { TypeDiscriminatorPropertyName = "kind" };
        foreach (var member in type.Type.GetNestedTypes().Where(nested => nested.IsSubclassOf(type.Type)))
            type.PolymorphismOptions.DerivedTypes.Add(new JsonDerivedType(member, member.Name));
    }

    private sealed record Envelope<T>(int Version, IReadOnlyList<T> Items);

    private sealed class DurationJsonConverter : JsonConverter<Duration>
    {
        public override Duration Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Duration.TryParse(reader.GetString(), out var duration) ? duration : throw new JsonException("No duration.");

        public override void Write(Utf8JsonWriter writer, Duration value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.ToString());
    }
}
