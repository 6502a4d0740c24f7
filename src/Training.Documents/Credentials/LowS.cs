using System.Globalization;
using System.Numerics;

namespace Training.Documents.Credentials;

/// <summary>
/// Of the two signatures (r, s) and (r, n − s) that both verify, the one with the smaller s. Only that one is written and believed, so
/// that a signed text has one spelling.
/// </summary>
/// <remarks>Order n of the curve: NIST SP 800-186, 3.2.1.3 (P-256). Layout r and s, 32 bytes each: RFC 7518, 3.4.</remarks>
internal static class LowS
{
    /// <summary>Bytes of a signature.</summary>
    public const int SignatureLength = 64;

    private const int Half = SignatureLength / 2;

    private static readonly BigInteger Order = BigInteger.Parse("00FFFFFFFF00000000FFFFFFFFFFFFFFFFBCE6FAADA7179E84F3B9CAC2FC632551", NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);

    public static bool Holds(ReadOnlySpan<byte> signature) => S(signature) <= Order / 2;

    /// <summary>The twin with the smaller s.</summary>
    public static byte[] Normalise(byte[] signature) => Holds(signature) ? signature : Twin(signature);

    /// <summary>The other signature that verifies.</summary>
    public static byte[] Twin(ReadOnlySpan<byte> signature)
    {
        var other = (Order - S(signature)).ToByteArray(isUnsigned: true, isBigEndian: true);
        var twin = signature.ToArray();
        twin.AsSpan(Half).Clear();
        other.CopyTo(twin.AsSpan(SignatureLength - other.Length));
        return twin;
    }

    private static BigInteger S(ReadOnlySpan<byte> signature) => new(signature[Half..], isUnsigned: true, isBigEndian: true);
}
