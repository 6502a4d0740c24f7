using System.Formats.Asn1;
using System.Globalization;
using System.Numerics;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Training.Documents.Signatures;

/// <summary>The number that only the holder of the private key can make: ECDSA on P-256 or RSA PKCS #1 v1.5, each over SHA-256.</summary>
internal static class SignatureValue
{
    private const int CurveBits = 256;

    // The order n of the group of P-256 (SP 800-186 §3.2.1.3). With (r, s) also (r, n − s) is a good signature; only the smaller s is ours.
    private static readonly BigInteger Order = BigInteger.Parse(
        "0FFFFFFFF00000000FFFFFFFFFFFFFFFFBCE6FAADA7179E84F3B9CAC2FC632551", NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);

    /// <summary>Signs.</summary>
    /// <exception cref="CryptographicException">The certificate has no private key on P-256 or of RSA.</exception>
    public static byte[] Sign(X509Certificate2 certificate, ReadOnlySpan<byte> data)
    {
        using var ecdsa = certificate.GetECDsaPrivateKey();
        if (ecdsa?.KeySize == CurveBits) return WithSmallS(ecdsa.SignData(data, HashAlgorithmName.SHA256));
        using var rsa = certificate.GetRSAPrivateKey();
        return rsa?.SignData(data, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1)
            ?? throw new CryptographicException("The signer's certificate has no private key on P-256 or of RSA.");
    }

    /// <summary>Whether the value is the one spelling of a signature by the certificate's key.</summary>
    public static bool IsSignedBy(X509Certificate2 certificate, ReadOnlySpan<byte> data, ReadOnlySpan<byte> value)
    {
        using var ecdsa = certificate.GetECDsaPublicKey();
        if (ecdsa is not null)
            return HasSmallS(value) && ecdsa.VerifyData(data, value, HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
        using var rsa = certificate.GetRSAPublicKey();
        return rsa?.VerifyData(data, value, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1) ?? false;
    }

    /// <summary>The AlgorithmIdentifier of the certificate's key: RFC 5754 §3.</summary>
    public static void WriteAlgorithm(AsnWriter writer, X509Certificate2 certificate)
    {
        using var rsa = certificate.GetRSAPublicKey();
        using var sequence = writer.PushSequence();
        writer.WriteObjectIdentifier(rsa is null ? "1.2.840.10045.4.3.2" : "1.2.840.113549.1.1.11");
        if (rsa is not null) writer.WriteNull();
    }

    private static byte[] WithSmallS(ReadOnlySpan<byte> signature)
    {
        var r = new BigInteger(signature[..(CurveBits / 8)], isUnsigned: true, isBigEndian: true);
        var s = new BigInteger(signature[(CurveBits / 8)..], isUnsigned: true, isBigEndian: true);
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        {
            writer.WriteInteger(r);
            writer.WriteInteger(BigInteger.Min(s, Order - s));
        }

        return writer.Encode();
    }

    private static bool HasSmallS(ReadOnlySpan<byte> value)
    {
        var reader = new AsnReader(value.ToArray(), AsnEncodingRules.DER);
        var numbers = reader.ReadSequence();
        numbers.ReadInteger();
        var s = numbers.ReadInteger();
        return !numbers.HasData && !reader.HasData && s <= Order - s;
    }
}
