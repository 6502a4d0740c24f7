using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json;

namespace Training.Documents.Credentials;

/// <summary>Opens a signed text strictly: ES256 only, known keys only, one spelling only.</summary>
internal static class SignedTextReading
{
    // Deeper than any text of a length that is read can nest: the limit must not decide what is wrong with it.
    private const int DeepestHeader = CompactToken.LongestText;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Opens it.</summary>
    /// <param name="text">Anything.</param>
    /// <param name="longest">Greatest number of characters that is looked at.</param>
    /// <param name="type">The only <c>typ</c> that is taken.</param>
    /// <param name="kidOf">How a key is named in the header.</param>
    /// <param name="trust">Whose keys are believed.</param>
    /// <param name="opened">What it holds and the key that signed it; set where null is returned.</param>
    /// <returns>The first fault, or null.</returns>
    public static TokenFault? Open(
        string? text, int longest, string type, Func<IssuerKey, string> kidOf, IssuerTrust trust, out (JsonElement Payload, IssuerKey Key) opened)
    {
        opened = default;
        if (text is null || text.Length > longest || text.Split('.') is not [var header, var payload, var signature]) return TokenFault.NotAToken;
        if (!CanonicalBase64Url.TryDecode(header, out var headerBytes) || !CanonicalBase64Url.TryDecode(payload, out var payloadBytes)
            || !CanonicalBase64Url.TryDecode(signature, out var signatureBytes)) return TokenFault.NotCanonical;

        if (ReadHeader(headerBytes, type, out var kid) is { } headerFault) return headerFault;
        if (trust.Keys.FirstOrDefault(known => kidOf(known) == kid && known.Jwk is PublicJwk.P256) is not { } key) return TokenFault.KeyUnknown;
        if (key.Issuer != trust.Issuer) return TokenFault.KeyOfAnotherIssuer;
        if (signatureBytes.Length != LowS.SignatureLength || !key.Jwk.Verifies(Encoding.ASCII.GetBytes($"{header}.{payload}"), signatureBytes)) return TokenFault.BadSignature;
        if (!LowS.Holds(signatureBytes)) return TokenFault.TwinSignature;

        if (!TryParse(payloadBytes, allowTwice: false, out _, out var json)) return TokenFault.ClaimsRefused;
        opened = (json, key);
        return null;
    }

    private static TokenFault? ReadHeader(byte[] bytes, string type, out string kid)
    {
        kid = "";
        if (!TryParse(bytes, allowTwice: true, out var text, out var header)) return TokenFault.NotAToken;
        // Nothing in a header of ours needs an escape, and some are no text.
        if (text.Contains('\\', StringComparison.Ordinal)) return TokenFault.HeaderRefused;
        if (header.FindText("alg") != "ES256") return TokenFault.AlgorithmRefused;
        if (header.EnumerateObject().Any(member => member.Name is not ("alg" or "kid" or "typ"))) return TokenFault.HeaderRefused;
        if (header.FindText("typ") != type) return TokenFault.TypeRefused;
        if (header.FindText("kid") is not { } named) return TokenFault.KeyUnknown;
        kid = named;
        return SignedText.Header("ES256", named, type) == text ? null : TokenFault.HeaderRefused;
    }

    private static bool TryParse(byte[] bytes, bool allowTwice, [NotNullWhen(true)] out string? text, out JsonElement json)
    {
        (text, json) = (null, default);
        try
        {
            text = StrictUtf8.GetString(bytes);
            using var document = JsonDocument.Parse(text, new() { AllowDuplicateProperties = allowTwice, MaxDepth = DeepestHeader });
            json = document.RootElement.Clone();
            return json.ValueKind == JsonValueKind.Object;
        }
        catch (Exception refused) when (refused is JsonException or DecoderFallbackException)
        {
            return false;
        }
    }
}
