using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using System.Text.RegularExpressions;
using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Fonts;
using Training.Documents.Signatures;
using Training.Documents.Tests.Certificates;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Signatures;

/// <summary>Signed papers before judges from outside: poppler, qpdf, OpenSSL, the framework's own reader of CMS.</summary>
public sealed class PdfSignatureTests
{
    private const string SigningCertificateV2 = "1.2.840.113549.1.9.16.2.47";

    public static TheoryData<Language, SchemeKind, PaperSize, bool> Every_page => Pages.All;

    [Theory, MemberData(nameof(Every_page))]
    public void Poppler_finds_a_valid_PAdES_signature_over_the_whole_document(
        Language language, SchemeKind kind, PaperSize paper, bool isDemonstration)
    {
        var verdict = DebianTool.Signature(CertificateWriter.Write(Pages.Of(language, kind, paper, isDemonstration), FontFaces.Default, Signing.Signer));

        Assert.Contains("Signature is Valid", verdict);
        Assert.Contains("Total document signed", verdict);
        Assert.Contains("ETSI.CAdES.detached", verdict);
        Assert.Contains("SHA-256", verdict);
        Assert.Contains("CN=Quillback Field Safety", verdict);
        Assert.Contains("Nov 25 2026 18:30:15", verdict);
        Assert.DoesNotContain("Signature #2", verdict);
    }

    [Fact]
    public void A_signed_paper_is_still_sound_tagged_and_looks_as_the_unsigned_one()
    {
        var (signed, plain) = (Signing.Paper(), Pages.Print(Pages.Of(Language.Spanish)));

        DebianTool.Qpdf(signed, "--check", "--warning-exit-0");
        Assert.Matches(@"Tagged:\s+yes", DebianTool.Info(signed));
        Assert.Equal(DebianTool.Info(plain, "-struct-text"), DebianTool.Info(signed, "-struct-text"));
        Assert.Equal(DebianTool.WordBoxes(plain), DebianTool.WordBoxes(signed));
        Assert.DoesNotContain("Signature", DebianTool.Text(signed));
    }

    [Fact]
    public void OpenSSL_verifies_the_signature_over_the_ranges()
    {
        var folder = Directory.CreateTempSubdirectory("signed-");
        try
        {
            string In(string name) => Path.Combine(folder.FullName, name);
            var (ranges, cms) = Take(Signing.Paper());
            File.WriteAllBytes(In("ranges"), ranges);
            File.WriteAllBytes(In("cms"), cms);
            File.WriteAllText(In("signer.pem"), Signing.Certificate.ExportCertificatePem());

            // -cades: the signing-certificate attribute must be there and name the certificate.
            DebianTool.Run("openssl", "openssl",
            [
                "cms", "-verify", "-cades", "-binary", "-inform", "DER", "-in", In("cms"), "-content", In("ranges"), "-CAfile", In("signer.pem"), "-partial_chain",
                "-purpose", "any", "-attime", $"{Signing.At.ToUnixTimeSeconds()}", "-out", In("verified"),
            ]);

            Assert.Equal(ranges, File.ReadAllBytes(In("verified")));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void The_framework_s_reader_finds_one_signer_the_certificate_s_hash_and_no_second_time()
    {
        var (ranges, encoded) = Take(Signing.Paper());
        var cms = new SignedCms(new ContentInfo(ranges), detached: true);
        cms.Decode(encoded);

        cms.CheckSignature(verifySignatureOnly: true);

        var signer = Assert.Single(cms.SignerInfos.Cast<SignerInfo>());
        Assert.Equal("2.16.840.1.101.3.4.2.1", signer.DigestAlgorithm.Value);
        Assert.Equal(Signing.Certificate, signer.Certificate);
        var attributes = signer.SignedAttributes.Cast<CryptographicAttributeObject>().ToDictionary(attribute => attribute.Oid.Value!, attribute => attribute.Values[0].RawData);
        Assert.Equal([SigningCertificateV2, "1.2.840.113549.1.9.3", "1.2.840.113549.1.9.4"], attributes.Keys.Order(StringComparer.Ordinal));
        // RFC 5035 §3: SigningCertificateV2 { { { certHash } } }.
        Assert.Equal([0x30, 38, 0x30, 36, 0x30, 34, 0x04, 32, .. SHA256.HashData(Signing.Certificate.RawData)], attributes[SigningCertificateV2]);
    }

    [Fact]
    public void The_value_is_always_the_one_with_the_smaller_s()
    {
        // n / 2 of P-256, SP 800-186; without care every second signature would lie above.
        var half = Convert.FromHexString("7FFFFFFF800000007FFFFFFFFFFFFFFFDE737D56D38BCF4279DCE5617E3192A8");
        foreach (var _ in Enumerable.Range(0, 64))
        {
            var value = SignatureValue.Sign(Signing.Certificate, "the same data"u8);
            var s = new System.Numerics.BigInteger(value.AsSpan(4 + value[3] + 2), isBigEndian: true);
            Assert.True(s <= new System.Numerics.BigInteger(half, isUnsigned: true, isBigEndian: true));
        }
    }

    [Fact]
    public void A_provider_s_own_RSA_certificate_signs_as_well()
    {
        using var key = RSA.Create(3072);
        var request = new CertificateRequest("CN=Quillback Field Safety", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        using var certificate = request.CreateSelfSigned(Signing.At.AddDays(-1), Signing.At.AddYears(2));

        var paper = Signing.Paper(new(certificate, Signing.At));

        Assert.Contains("Signature is Valid", DebianTool.Signature(paper));
        Assert.IsType<PdfVerdict.Genuine>(SignedPdf.Check(paper, [Signing.Certificate, certificate]));
    }

    [Fact]
    public void A_certificate_without_a_fitting_private_key_signs_nothing()
    {
        using var withoutKey = X509CertificateLoader.LoadCertificate(Signing.Certificate.RawData);
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP384);
        using var otherCurve = SignerCertificate.Make(key, "Quillback Field Safety", Signing.At, Signing.At.AddYears(1));

        Assert.Throws<CryptographicException>(() => Signing.Paper(new(withoutKey, Signing.At)));
        Assert.Throws<CryptographicException>(() => Signing.Paper(new(otherCurve, Signing.At)));
    }

    /// <summary>Ranges and signature by another way than the code under test: a pattern over the text of the file.</summary>
    private static (byte[] Ranges, byte[] Cms) Take(byte[] pdf)
    {
        var range = Regex.Match(Encoding.Latin1.GetString(pdf), @"/ByteRange\s*\[0 (?<first>\d+) (?<second>\d+) (?<length>\d+)\]", RegexOptions.NonBacktracking);
        var (first, second, length) = (int.Parse(range.Groups["first"].Value), int.Parse(range.Groups["second"].Value), int.Parse(range.Groups["length"].Value));
        Assert.Equal(pdf.Length, second + length);
        var room = Convert.FromHexString(Encoding.ASCII.GetString(pdf[(first + 1)..(second - 1)]));
        return ([.. pdf[..first], .. pdf[second..]], room[..(4 + (room[2] << 8) + room[3])]);
    }
}
