using System.Security.Cryptography;
using Training.Documents.Signatures;

namespace Training.Documents.Tests.Signatures;

public sealed class SignerCertificateTests
{
    [Fact]
    public void OpenSSL_finds_a_sound_certificate_for_signatures_and_nothing_else()
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, Signing.Certificate.ExportCertificatePem());

            var text = DebianTool.Run("openssl", "openssl", ["x509", "-in", file, "-noout", "-text"]);
            Assert.Contains("Version: 3", text);
            Assert.Contains("CN = Quillback Field Safety", text);
            Assert.Contains("NIST CURVE: P-256", text);
            Assert.Matches(@"Key Usage: critical\s+Digital Signature, Non Repudiation\n", text);
            Assert.Matches(@"Basic Constraints: critical\s+CA:FALSE\n", text);
            Assert.Contains("Not After : Nov 25 18:30:15 2036 GMT", text);
            DebianTool.Run("openssl", "openssl", ["verify", "-x509_strict", "-check_ss_sig", "-partial_chain", "-attime", $"{Signing.At.ToUnixTimeSeconds()}", "-trusted", file, file]);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void The_same_key_and_dates_have_the_same_serial_number_and_others_another()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        string SerialTo(DateTimeOffset to) => SignerCertificate.Make(key, "Quillback Field Safety", Signing.At, to).SerialNumber;

        Assert.Equal(SerialTo(Signing.At.AddYears(1)), SerialTo(Signing.At.AddYears(1)));
        Assert.NotEqual(SerialTo(Signing.At.AddYears(1)), SerialTo(Signing.At.AddYears(2)));
        Assert.NotEqual(Signing.Certificate.SerialNumber, Signing.Other.SerialNumber);
    }

    [Theory]
    [InlineData("Señales y Campo, S.A. de C.V.")]
    [InlineData("Comma, \"quote\" + plus = all; of <them>")]
    public void The_provider_s_name_is_the_subject_whatever_is_in_it(string provider)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);

        using var certificate = SignerCertificate.Make(key, provider, Signing.At, Signing.At.AddYears(1));

        Assert.Equal(provider, certificate.GetNameInfo(System.Security.Cryptography.X509Certificates.X509NameType.SimpleName, forIssuer: false));
    }

    [Fact]
    public void A_validity_that_ends_before_it_begins_is_refused()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);

        Assert.Throws<ArgumentException>(() => SignerCertificate.Make(key, "Quillback Field Safety", Signing.At, Signing.At));
    }
}
