using System.Globalization;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Web.Settings;

namespace Training.Web.Keys;

/// <summary>Reads the certificate that an operator brings for papers.</summary>
internal static class SettingsCertificate
{
    // ERROR_INVALID_PASSWORD: the framework gives it on every system for a right file with a wrong password.
    private const int WrongPassword = unchecked((int)0x80070056);

    private static readonly Place Setting = Place.Of("Training:Keys:Certificate");

    /// <summary>The certificate with its private key; null where it cannot be used.</summary>
    /// <param name="options">Name a file.</param>
    /// <param name="now">UTC; it must hold now.</param>
    /// <param name="problems">Receives the one thing that is wrong with it.</param>
    public static X509Certificate2? Read(KeysOptions options, DateTimeOffset now, ICollection<Problem> problems)
    {
        var path = Path.GetFullPath(options.Certificate);
        if (!File.Exists(path))
        {
            problems.Add(new(SettingsProblems.FileMissing, Setting, path));
            return null;
        }

        try
        {
            var certificate = X509CertificateLoader.LoadPkcs12FromFile(path, options.CertificatePassword);
            if (FindFault(certificate, path, now) is not { } fault) return certificate;
            certificate.Dispose();
            problems.Add(fault);
        }
        catch (Exception refused) when (refused is CryptographicException or UnauthorizedAccessException)
        {
            problems.Add(new(refused.HResult == WrongPassword ? KeysProblems.CertificateLocked : KeysProblems.CertificateUnreadable, Setting, path));
        }

        return null;
    }

    private static Problem? FindFault(X509Certificate2 certificate, string path, DateTimeOffset now)
    {
        if (!certificate.HasPrivateKey) return new(KeysProblems.CertificateWithoutKey, Setting, path);
        if (!IsSuitable(certificate)) return new(KeysProblems.CertificateUnsuitable, Setting, path);
        if (now.UtcDateTime >= certificate.NotBefore.ToUniversalTime() && now.UtcDateTime <= certificate.NotAfter.ToUniversalTime()) return null;
        return new(KeysProblems.CertificateOutOfTime, Setting, path, Day(certificate.NotBefore), Day(certificate.NotAfter));
    }

    private static bool IsSuitable(X509Certificate2 certificate)
    {
        using var point = certificate.GetECDsaPublicKey();
        using var rsa = certificate.GetRSAPublicKey();
        if (rsa is not null) return rsa.KeySize >= PublicJwk.LeastRsaBits;
        return point?.ExportParameters(includePrivateParameters: false).Curve.Oid.Value == ECCurve.NamedCurves.nistP256.Oid.Value;
    }

    private static string Day(DateTime instant) => instant.ToUniversalTime().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
