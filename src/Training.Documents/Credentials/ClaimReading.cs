using System.Text.Json;

namespace Training.Documents.Credentials;

/// <summary>Reads members of what may be any JSON; null for everything that is not as expected.</summary>
internal static class ClaimReading
{
    private static readonly long LastSecond = DateTimeOffset.MaxValue.ToUnixTimeSeconds();

    public static string? FindText(this JsonElement json, string name)
    {
        if (json.ValueKind != JsonValueKind.Object || !json.TryGetProperty(name, out var value) || value.ValueKind != JsonValueKind.String) return null;
        try
        {
            return value.GetString();
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair is valid JSON and no text.
            return null;
        }
    }

    public static long? FindWhole(this JsonElement json, string name, long greatest) =>
        json.ValueKind == JsonValueKind.Object && json.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number
            && value.TryGetInt64(out var number) && number >= 0 && number <= greatest
            ? number
            : null;

    public static DateTimeOffset? FindInstant(this JsonElement json, string name) =>
        json.FindWhole(name, LastSecond) is { } seconds ? DateTimeOffset.FromUnixTimeSeconds(seconds) : null;
}
