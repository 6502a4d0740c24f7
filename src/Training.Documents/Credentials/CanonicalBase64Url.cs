using System.Buffers.Text;
using System.Diagnostics.CodeAnalysis;

namespace Training.Documents.Credentials;

/// <summary>base64url without padding (RFC 7515, 2), of which every value has exactly one spelling here.</summary>
internal static class CanonicalBase64Url
{
    public static string Encode(ReadOnlySpan<byte> bytes) => Base64Url.EncodeToString(bytes);

    /// <summary>Refuses padding, white space, other characters, and last characters whose spare bits are set.</summary>
    public static bool TryDecode(string text, [NotNullWhen(true)] out byte[]? bytes)
    {
        bytes = null;
        // The package forgives white space, padding and spare bits; what it read is written again and must be what came in.
        if (!Base64Url.IsValid(text)) return false;
        var read = Base64Url.DecodeFromChars(text);
        if (Encode(read) != text) return false;
        bytes = read;
        return true;
    }
}
