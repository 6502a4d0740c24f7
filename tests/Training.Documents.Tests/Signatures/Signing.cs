using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Fonts;
using Training.Documents.Signatures;
using Training.Documents.Tests.Certificates;

namespace Training.Documents.Tests.Signatures;

/// <summary>An invented provider's key, and papers that it signs.</summary>
internal static class Signing
{
    public static readonly DateTimeOffset At = new(2026, 11, 25, 18, 30, 15, TimeSpan.Zero);

    public static readonly X509Certificate2 Certificate = Make("Quillback Field Safety");

    public static readonly X509Certificate2 Other = Make("Quillback Field Safety");

    public static readonly PdfSigner Signer = new(Certificate, At);

    public static byte[] Paper(PdfSigner? signer = null) => CertificateWriter.Write(Pages.Of(Language.Spanish), FontFaces.Default, signer ?? Signer);

    private static X509Certificate2 Make(string provider)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        return SignerCertificate.Make(key, provider, At.AddDays(-1), At.AddYears(10));
    }
}
