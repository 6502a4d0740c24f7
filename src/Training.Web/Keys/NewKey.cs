using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Training.Documents.Credentials;
using Training.Documents.Signatures;

namespace Training.Web.Keys;

/// <summary>A key that was just made.</summary>
/// <param name="Key">For the register.</param>
/// <param name="Pem">Its private part, PKCS#8.</param>
internal sealed record NewKey(RegisteredKey Key, string Pem)
{
    private const int CertificateYears = 10;

    /// <summary>Makes one.</summary>
    /// <param name="use">What for.</param>
    /// <param name="provider">Name of the provider: whom a certificate names.</param>
    /// <param name="now">Cut to seconds: since when it signs.</param>
    public static NewKey Make(KeyUse use, string provider, DateTimeOffset now)
    {
        var from = DateTimeOffset.FromUnixTimeSeconds(now.ToUnixTimeSeconds());
        if (use == KeyUse.Badges)
        {
            using var rsa = RSA.Create(PublicJwk.LeastRsaBits);
            return new(Of(use, PublicJwk.Of(rsa), rsa.ExportSubjectPublicKeyInfo(), from), rsa.ExportPkcs8PrivateKeyPem());
        }

        using var point = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        if (use == KeyUse.Credentials) return new(Of(use, PublicJwk.Of(point), point.ExportSubjectPublicKeyInfo(), from), point.ExportPkcs8PrivateKeyPem());
        using var certificate = SignerCertificate.Make(point, provider, from, from.AddYears(CertificateYears));
        return new(Of(certificate, from), point.ExportPkcs8PrivateKeyPem());
    }

    /// <summary>A certificate for papers as the register lists it.</summary>
    public static RegisteredKey Of(X509Certificate2 certificate, DateTimeOffset from) => new()
    {
        Use = KeyUse.Papers,
        Kid = RegisteredKey.KidOf(certificate),
        From = DateTimeOffset.FromUnixTimeSeconds(from.ToUnixTimeSeconds()),
        PublicPart = Convert.ToBase64String(certificate.RawData),
    };

    private static RegisteredKey Of(KeyUse use, PublicJwk jwk, byte[] publicPart, DateTimeOffset from) =>
        new() { Use = use, Kid = jwk.Kid, From = from, PublicPart = Convert.ToBase64String(publicPart) };
}
