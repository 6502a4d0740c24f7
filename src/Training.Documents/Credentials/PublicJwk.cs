using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace Training.Documents.Credentials;

/// <summary>The public part of a signing key as a JSON Web Key (RFC 7517; members: RFC 7518, 6). A closed family.</summary>
public abstract record PublicJwk
{
    /// <summary>Fewest bits of an RSA key (RFC 7518, 3.3).</summary>
    public const int LeastRsaBits = 2048;

    private const string CurveName = "P-256";

    private PublicJwk()
    {
    }

    /// <summary>A point of P-256; signs ES256.</summary>
    /// <param name="X">32 bytes, base64url.</param>
    /// <param name="Y">32 bytes, base64url.</param>
    public sealed record P256(string X, string Y) : PublicJwk;

    /// <summary>RSA; signs RS256.</summary>
    /// <param name="N">Modulus, base64url.</param>
    /// <param name="E">Exponent, base64url.</param>
    public sealed record Rsa(string N, string E) : PublicJwk;

    /// <summary>The one algorithm that the key is used with (RFC 7518, 3.1).</summary>
    public string Algorithm => this switch
    {
        P256 => "ES256",
        Rsa => "RS256",
        _ => throw new UnreachableException(),
    };

    /// <summary>The name of the key: the SHA-256 of its required members in their order, base64url (RFC 7638, 3).</summary>
    public string Kid => CanonicalBase64Url.Encode(SHA256.HashData(Encoding.UTF8.GetBytes(RequiredMembers().ToJsonString())));

    /// <summary>The public part of a key.</summary>
    /// <exception cref="ArgumentException">It lies on another curve than P-256.</exception>
    public static PublicJwk Of(ECDsa key)
    {
        var point = key.ExportParameters(includePrivateParameters: false);
        if (point.Curve.Oid.Value != ECCurve.NamedCurves.nistP256.Oid.Value) throw new ArgumentException("The key is not of the curve P-256.", nameof(key));
        return new P256(CanonicalBase64Url.Encode(point.Q.X), CanonicalBase64Url.Encode(point.Q.Y));
    }

    /// <summary>The public part of a key.</summary>
    /// <exception cref="ArgumentException">It has fewer than <see cref="LeastRsaBits"/> bits.</exception>
    public static PublicJwk Of(RSA key)
    {
        if (key.KeySize < LeastRsaBits) throw new ArgumentException($"The key has {key.KeySize} bits; {LeastRsaBits} are needed.", nameof(key));
        var parts = key.ExportParameters(includePrivateParameters: false);
        return new Rsa(CanonicalBase64Url.Encode(parts.Modulus), CanonicalBase64Url.Encode(parts.Exponent));
    }

    /// <summary>The key with its name, algorithm and use: what a page serves.</summary>
    public JsonObject ToJson()
    {
        var json = RequiredMembers();
        json["alg"] = Algorithm;
        json["kid"] = Kid;
        json["use"] = "sig";
        return json;
    }

    /// <summary>Whether this key made the signature. The s of an ES256 signature may be the high one: <see cref="LowS"/> asks that apart.</summary>
    internal bool Verifies(byte[] data, byte[] signature)
    {
        switch (this)
        {
            case P256 point:
                using (var key = ECDsa.Create(new ECParameters { Curve = ECCurve.NamedCurves.nistP256, Q = new() { X = Bytes(point.X), Y = Bytes(point.Y) } }))
                {
                    return key.VerifyData(data, signature, HashAlgorithmName.SHA256, DSASignatureFormat.IeeeP1363FixedFieldConcatenation);
                }

            case Rsa parts:
                using (var key = RSA.Create(new RSAParameters { Modulus = Bytes(parts.N), Exponent = Bytes(parts.E) }))
                {
                    return key.VerifyData(data, signature, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
                }

            default:
                throw new UnreachableException();
        }
    }

    private static byte[] Bytes(string text) => CanonicalBase64Url.TryDecode(text, out var bytes) ? bytes : throw new FormatException("A member of the key is not base64url.");

    // In the order of the alphabet, as RFC 7638, 3.2 hashes them.
    private JsonObject RequiredMembers() => this switch
    {
        P256 point => new() { ["crv"] = CurveName, ["kty"] = "EC", ["x"] = point.X, ["y"] = point.Y },
        Rsa parts => new() { ["e"] = parts.E, ["kty"] = "RSA", ["n"] = parts.N },
        _ => throw new UnreachableException(),
    };
}
