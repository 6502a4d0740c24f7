using System.Formats.Asn1;
using System.Security.Cryptography;
using System.Text;
using Training.Documents.Signatures;

namespace Training.Documents.Tests.Signatures;

/// <summary>Against a whole authority after RFC 3161 of OpenSSL's on this machine.</summary>
public sealed class TimestampTests : IDisposable
{
    private const string Configuration = """
        [tsa]
        default_tsa = authority
        [authority]
        serial = serial
        signer_cert = tsa.pem
        signer_key = tsa.key
        signer_digest = sha256
        default_policy = 1.2.3.4.1
        digests = sha256
        accuracy = secs:1
        ordering = no
        tsa_name = no
        ess_cert_id_alg = sha256
        """;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("authority-");

    public TimestampTests()
    {
        File.WriteAllText(In("tsa.cnf"), Configuration.Replace(" = serial", $" = {In("serial")}").Replace("tsa.pem", In("tsa.pem")).Replace("tsa.key", In("tsa.key")));
        File.WriteAllText(In("serial"), "01");
        OpenSsl("req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "3650", "-subj", "/CN=Invented Time", "-keyout", In("tsa.key"), "-out", In("tsa.pem"),
            "-addext", "extendedKeyUsage=critical,timeStamping", "-addext", "keyUsage=critical,digitalSignature");
    }

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void A_stamped_paper_is_valid_to_poppler_and_genuine_with_the_authority_s_time()
    {
        var before = TimeProvider.System.GetUtcNow().AddSeconds(-2);

        var paper = Signing.Paper(Signing.Signer with { Timestamp = new(RandomNumberGenerator.GetBytes(16), Answer) });

        Assert.Contains("Signature is Valid", DebianTool.Signature(paper));
        Assert.Contains("Total document signed", DebianTool.Signature(paper));
        DebianTool.Qpdf(paper, "--check", "--warning-exit-0");
        var genuine = Assert.IsType<PdfVerdict.Genuine>(SignedPdf.Check(paper, [Signing.Certificate]));
        Assert.InRange(genuine.Timestamp!.At, before, TimeProvider.System.GetUtcNow().AddSeconds(2));
        Assert.Equal("CN=Invented Time", genuine.Timestamp.Authority.Subject);
    }

    [Fact]
    public void Without_an_answer_the_paper_is_genuine_and_nobody_vouches_for_its_time()
    {
        var paper = Signing.Paper(Signing.Signer with { Timestamp = new(RandomNumberGenerator.GetBytes(16), _ => default) });

        Assert.Contains("Signature is Valid", DebianTool.Signature(paper));
        Assert.Null(Assert.IsType<PdfVerdict.Genuine>(SignedPdf.Check(paper, [Signing.Certificate])).Timestamp);
    }

    [Fact]
    public void OpenSSL_verifies_the_token_over_the_signature_value()
    {
        var value = RandomNumberGenerator.GetBytes(71);
        File.WriteAllBytes(In("value"), value);

        File.WriteAllBytes(In("token"), new TimestampAuthority(RandomNumberGenerator.GetBytes(16), Answer).Stamp(value));

        OpenSsl("ts", "-verify", "-data", In("value"), "-in", In("token"), "-token_in", "-CAfile", In("tsa.pem"));
    }

    [Fact]
    public void An_answer_to_another_request_is_refused()
    {
        ReadOnlyMemory<byte> first = default;
        ReadOnlyMemory<byte> Replay(ReadOnlyMemory<byte> request) => first.IsEmpty ? first = Answer(request) : first;
        var value = RandomNumberGenerator.GetBytes(71);
        new TimestampAuthority(RandomNumberGenerator.GetBytes(16), Replay).Stamp(value);

        Assert.Throws<CryptographicException>(() => new TimestampAuthority(RandomNumberGenerator.GetBytes(16), Replay).Stamp(value));
        Assert.Throws<CryptographicException>(() => new TimestampAuthority(RandomNumberGenerator.GetBytes(16), _ => "no answer"u8.ToArray()).Stamp(value));
    }

    [Fact]
    public void A_token_over_another_signature_is_not_taken_for_this_one_s()
    {
        var (mine, other) = (RandomNumberGenerator.GetBytes(71), RandomNumberGenerator.GetBytes(71));
        var token = new TimestampAuthority(RandomNumberGenerator.GetBytes(16), Answer).Stamp(mine);

        Assert.NotNull(Timestamp.Read(token, mine));
        Assert.Null(Timestamp.Read(token, other));
        Assert.Null(Timestamp.Read([.. token, 0], mine));
        Assert.Null(Timestamp.Read(token[..^1], mine));
        Assert.Null(Timestamp.Read([], mine));
    }

    [Fact]
    public void A_paper_that_carries_the_token_of_another_is_refused()
    {
        var paper = Signing.Paper(Signing.Signer with { Timestamp = new(RandomNumberGenerator.GetBytes(16), Answer) });
        var other = new TimestampAuthority(RandomNumberGenerator.GetBytes(16), Answer).Stamp(RandomNumberGenerator.GetBytes(71));

        Assert.Equal(new PdfVerdict.NotCanonical(CanonicalFault.Timestamp), SignedPdf.Check(WithToken(paper, other), [Signing.Certificate]));
    }

    [Fact]
    public void A_token_that_somebody_took_out_leaves_a_genuine_paper_with_other_bytes()
    {
        var paper = Signing.Paper(Signing.Signer with { Timestamp = new(RandomNumberGenerator.GetBytes(16), Answer) });

        var bare = WithToken(paper, []);

        Assert.Null(Assert.IsType<PdfVerdict.Genuine>(SignedPdf.Check(bare, [Signing.Certificate])).Timestamp);
        Assert.NotEqual(SHA256.HashData(paper), SHA256.HashData(bare));
    }

    private static byte[] WithToken(byte[] paper, byte[] token)
    {
        var entry = SignatureEntry.Read(paper, paper.AsSpan().IndexOf(Encoding.ASCII.GetBytes(PdfSignature.EntryKey)) + PdfSignature.EntryKey.Length)!.Value;
        var room = Convert.FromHexString(Encoding.ASCII.GetString(paper, entry.Start + 1, entry.End - entry.Start - 2));
        AsnDecoder.ReadEncodedValue(room, AsnEncodingRules.DER, out _, out _, out var length);
        var (value, _) = CmsSignature.ReadVariable(room.AsMemory(0, length));

        var cms = new CmsSignature(Signing.Certificate, SignedPdf.Digest(paper, entry.Start, entry.End)).Encode(value, token);
        var changed = (byte[])paper.Clone();
        Encoding.ASCII.GetBytes(Convert.ToHexString(cms).PadRight(2 * room.Length, '0'), changed.AsSpan(entry.Start + 1));
        return changed;
    }

    private ReadOnlyMemory<byte> Answer(ReadOnlyMemory<byte> request)
    {
        File.WriteAllBytes(In("request"), request.Span);
        OpenSsl("ts", "-reply", "-config", In("tsa.cnf"), "-queryfile", In("request"), "-out", In("reply"));
        return File.ReadAllBytes(In("reply"));
    }

    private string In(string name) => Path.Combine(_folder.FullName, name);

    private static void OpenSsl(params string[] arguments) => DebianTool.Run("openssl", "openssl", arguments);
}
