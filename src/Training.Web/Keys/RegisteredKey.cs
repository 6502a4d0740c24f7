using System.Buffers.Text;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Training.Documents.Credentials;

namespace Training.Web.Keys;

/// <summary>A key that signs or once signed, without its private part. It stays in the register for ever: what it signed is checked with it.</summary>
public sealed record RegisteredKey
{
    /// <summary>What for.</summary>
    public required KeyUse Use { get; init; }

    /// <summary>Its name: the thumbprint of the key (RFC 7638), or for papers that of the certificate (SHA-256, RFC 7515, 4.1.8); base64url.</summary>
    public required string Kid { get; init; }

    /// <summary>UTC, whole seconds; since when it signs.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>UTC; since when it signs no more. Null while it signs.</summary>
    public DateTimeOffset? RetiredAt { get; init; }

    /// <summary>UTC; since when others may have it. Null where nobody has.</summary>
    public DateTimeOffset? NotBelievedSince { get; init; }

    /// <summary>Whether the operator brought it: its private part is not ours to keep.</summary>
    public bool IsBrought { get; init; }

    /// <summary>SubjectPublicKeyInfo, or for papers the certificate; DER, base64.</summary>
    public required string PublicPart { get; init; }

    /// <summary>The public part of a key for credentials or badges.</summary>
    /// <exception cref="CryptographicException">It is no such key.</exception>
    public PublicJwk ReadJwk()
    {
        if (Use == KeyUse.Badges)
        {
            using var rsa = RSA.Create();
            rsa.ImportSubjectPublicKeyInfo(Convert.FromBase64String(PublicPart), out _);
            return PublicJwk.Of(rsa);
        }

        using var point = ECDsa.Create();
        point.ImportSubjectPublicKeyInfo(Convert.FromBase64String(PublicPart), out _);
        return PublicJwk.Of(point);
    }

    /// <summary>The public key as SubjectPublicKeyInfo, whatever it is for.</summary>
    public byte[] ReadPublicKey()
    {
        if (Use != KeyUse.Papers) return Convert.FromBase64String(PublicPart);
        using var certificate = ReadCertificate();
        return certificate.PublicKey.ExportSubjectPublicKeyInfo();
    }

    /// <summary>The name of a certificate.</summary>
    public static string KidOf(X509Certificate2 certificate) => Base64Url.EncodeToString(SHA256.HashData(certificate.RawData));

    /// <summary>The certificate of a key for papers, without its private key.</summary>
    /// <exception cref="CryptographicException">It is none.</exception>
    public X509Certificate2 ReadCertificate() => X509CertificateLoader.LoadCertificate(Convert.FromBase64String(PublicPart));
}
