using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Training.Documents.Credentials;

/// <summary>Writes signed texts in the compact form of RFC 7515, 3.1: header, payload and signature.</summary>
internal static class SignedText
{
    // Nothing of it stands in a page's source, so letters stay letters: a name with accents would otherwise triple in length.
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(JsonObject json) => json.ToJsonString(Plain);

    /// <summary>Signs a payload.</summary>
    /// <exception cref="ArgumentException">The key is for another algorithm.</exception>
    public static string Sign(string algorithm, string kid, string type, JsonObject payload, SigningKey key)
    {
        if (key.Public.Algorithm != algorithm) throw new ArgumentException($"A key for {algorithm} is needed, not for {key.Public.Algorithm}.", nameof(key));
        var text = $"{Encode(Header(algorithm, kid, type))}.{Encode(Write(payload))}";
        return $"{text}.{CanonicalBase64Url.Encode(key.Sign(Encoding.ASCII.GetBytes(text)))}";
    }

    /// <summary>The one spelling of a header: readers of ours refuse every other. None of the three needs an escape in JSON.</summary>
    public static string Header(string algorithm, string kid, string type) => $$"""{"alg":"{{algorithm}}","kid":"{{kid}}","typ":"{{type}}"}""";

    private static string Encode(string text) => CanonicalBase64Url.Encode(Encoding.UTF8.GetBytes(text));
}
