using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Training.Documents.Signatures;

/// <summary>Makes the certificate that readers of signed papers see, for a provider that brings none of its own.</summary>
public static class SignerCertificate
{
    private const int SerialSize = 16;

    /// <summary>Makes a self-signed certificate for signing papers.</summary>
    /// <param name="key">The provider's private key on P-256.</param>
    /// <param name="provider">Name of the provider: the subject.</param>
    /// <param name="from">First instant of its validity, to the second.</param>
    /// <param name="to">Last instant, to the second.</param>
    /// <returns>The certificate with its private key: its own, so the caller may dispose of <paramref name="key"/>.</returns>
    /// <remarks>
    /// RFC 5280: key usage digitalSignature and nonRepudiation (§4.2.1.3), no authority (§4.2.1.9). The serial number is a hash of key and
    /// validity, so the same arguments always give the same one.
    /// </remarks>
    /// <exception cref="ArgumentException"><paramref name="to"/> is not after <paramref name="from"/>.</exception>
    public static X509Certificate2 Make(ECDsa key, string provider, DateTimeOffset from, DateTimeOffset to)
    {
        if (to <= from) throw new ArgumentException("The validity ends before it begins.", nameof(to));
        var subject = new X500DistinguishedNameBuilder();
        subject.AddCommonName(provider.Normalize());
        var request = new CertificateRequest(subject.Build(), key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(false, false, 0, true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature | X509KeyUsageFlags.NonRepudiation, true));
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, false));
        using var certificate = request.Create(
            request.SubjectName, X509SignatureGenerator.CreateForECDsa(key), from, to, SerialNumber(key, from, to));
        return certificate.CopyWithPrivateKey(key);
    }

    private static byte[] SerialNumber(ECDsa key, DateTimeOffset from, DateTimeOffset to)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(key.ExportSubjectPublicKeyInfo());
        hash.AppendData(BitConverter.GetBytes(from.ToUnixTimeSeconds()));
        hash.AppendData(BitConverter.GetBytes(to.ToUnixTimeSeconds()));
        var serial = hash.GetHashAndReset()[..SerialSize];
        // Positive and of full length (RFC 5280 §4.1.2.2).
        serial[0] = (byte)(serial[0] & 0x7f | 0x40);
        return serial;
    }
}
