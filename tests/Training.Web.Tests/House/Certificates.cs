using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Training.Web.Tests.House;

/// <summary>Certificates for servers on loopback.</summary>
internal static class Certificates
{
    /// <summary>One for <c>localhost</c> and its address that vouches for itself; only who is told to trust it does.</summary>
    public static X509Certificate2 SelfSigned()
    {
        using var key = RSA.Create(2048);
        var request = new CertificateRequest("CN=localhost", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName("localhost");
        names.AddIpAddress(IPAddress.Loopback);
        request.CertificateExtensions.Add(names.Build());
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(certificateAuthority: true, false, 0, critical: true));
        var now = TimeProvider.System.GetUtcNow();
        using var made = request.CreateSelfSigned(now.AddDays(-1), now.AddDays(1));
        // With its key in the form that servers take on every platform.
        return X509CertificateLoader.LoadPkcs12(made.Export(X509ContentType.Pkcs12), password: null);
    }
}
