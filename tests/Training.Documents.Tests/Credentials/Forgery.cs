using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Training.Documents.Credentials;

namespace Training.Documents.Tests.Credentials;

/// <summary>Makes tokens that are wrong in one point, most of them signed with a real key.</summary>
internal static class Forgery
{
    /// <summary>Header and payload as given, signed as they stand.</summary>
    public static string Signed(string header, string payload, SigningKey key)
    {
        var text = $"{Encode(header)}.{Encode(payload)}";
        return $"{text}.{CanonicalBase64Url.Encode(key.Sign(Encoding.ASCII.GetBytes(text)))}";
    }

    public static string WithHeader(string header) => Signed(header, Payload(), Cast.Gate);

    public static string WithPayload(string payload) => Signed(SignedText.Header("ES256", Cast.Gate.Public.Kid, CompactToken.Type), payload, Cast.Gate);

    /// <summary>The claims of the paper with one put in its place or, where null, left out.</summary>
    public static string WithClaim(string name, JsonNode? value)
    {
        var claims = CompactClaims.Of(Cast.Paper).ToJson();
        claims.Remove(name);
        if (value is not null) claims[name] = value;
        return WithPayload(SignedText.Write(claims));
    }

    public static string Payload() => SignedText.Write(CompactClaims.Of(Cast.Paper).ToJson());

    /// <summary>The public key taken for the secret of a MAC, as libraries did that believed the header.</summary>
    public static string WithMac(SigningKey key)
    {
        var text = $"{Encode($$"""{"alg":"HS256","kid":"{{key.Public.Kid}}","typ":"gate+jwt"}""")}.{Encode(Payload())}";
        return $"{text}.{CanonicalBase64Url.Encode(HMACSHA256.HashData(Encoding.UTF8.GetBytes(key.Public.ToJson().ToJsonString()), Encoding.ASCII.GetBytes(text)))}";
    }

    public static string WithoutSignature() => $"{Encode($$"""{"alg":"none","kid":"{{Cast.Gate.Public.Kid}}","typ":"gate+jwt"}""")}.{Encode(Payload())}.";

    public static string Twin(string token)
    {
        var parts = token.Split('.');
        return $"{parts[0]}.{parts[1]}.{CanonicalBase64Url.Encode(LowS.Twin(System.Buffers.Text.Base64Url.DecodeFromChars(parts[2])))}";
    }

    /// <summary>The same bytes in another spelling: a spare bit of the last character is set.</summary>
    public static string WithSpareBit(string token)
    {
        const string alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
        return token[..^1] + alphabet[alphabet.IndexOf(token[^1], StringComparison.Ordinal) + 1];
    }

    private static string Encode(string text) => CanonicalBase64Url.Encode(Encoding.UTF8.GetBytes(text));
}
