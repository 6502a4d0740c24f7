using System.Diagnostics;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using PdfSharp.Pdf.IO;
using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Fonts;
using Training.Documents.Signatures;
using Training.Documents.Tests.Certificates;
using Training.Scoring;

namespace Training.Documents.Tests.Signatures;

public sealed class SignedPdfTests(ITestOutputHelper output)
{
    private static readonly byte[] Paper = Signing.Paper();

    [Fact]
    public void A_paper_as_we_signed_it_is_genuine_and_tells_its_serial_and_time()
    {
        var genuine = Assert.IsType<PdfVerdict.Genuine>(Check(Paper));

        Assert.Equal(("4G7K29QXPDABC3DE", Signing.At), (genuine.Serial, genuine.SignedAt));
        Assert.Same(Signing.Certificate, genuine.Signer);
        Assert.Null(genuine.Timestamp);
    }

    [Fact]
    public void Papers_of_former_keys_stay_genuine()
    {
        var former = Signing.Paper(new(Signing.Other, Signing.At));

        Assert.Same(Signing.Other, Assert.IsType<PdfVerdict.Genuine>(SignedPdf.Check(former, [Signing.Certificate, Signing.Other])).Signer);
    }

    [Fact]
    public void A_stranger_s_signature_under_the_same_name_is_not_ours() =>
        Assert.IsType<PdfVerdict.UnknownSigner>(Check(Signing.Paper(new(Signing.Other, Signing.At))));

    [Theory]
    [InlineData("/ByteRange[0 0 0 0]/Contents<00>")]
    [InlineData("/Subject(ANOTHERSERIAL) %%EOF")]
    [InlineData("/Type/Sig/SubFilter/ETSI.CAdES.detached")]
    public void A_name_that_looks_like_a_piece_of_a_file_does_no_harm(string name)
    {
        var page = Pages.Of(Language.English) with { WorkerName = name, ProviderName = name };

        var paper = CertificateWriter.Write(page, FontFaces.Default, Signing.Signer);

        Assert.Equal(page.Serial, Assert.IsType<PdfVerdict.Genuine>(Check(paper)).Serial);
        Assert.Contains("Signature is Valid", DebianTool.Signature(paper));
    }

    [Fact]
    public void A_name_that_is_a_whole_entry_gets_no_paper_that_the_check_would_refuse()
    {
        var page = Pages.Of(Language.English) with { WorkerName = "/SubFilter/ETSI.CAdES.detached/ByteRange" };

        Assert.Throws<InvalidOperationException>(() => CertificateWriter.Write(page, FontFaces.Default, Signing.Signer));
    }

    [Fact]
    public void A_PDF_that_another_program_signed_in_another_form_is_not_called_unsigned() =>
        Assert.Equal(new PdfVerdict.NotCanonical(CanonicalFault.Entry), Check("%PDF-1.7 /SubFilter/adbe.pkcs7.detached/ByteRange [0 1 2 3]/Contents <00>"u8));

    [Theory]
    [InlineData("[0 -5 100 3]")]
    [InlineData("[0 100 -5 3]")]
    [InlineData("[0 100 200 -2147483648]")]
    [InlineData("[0 2147483647 2147483647 2147483647]")]
    [InlineData("[0 99999999999 99999999999 99999999999]")]
    [InlineData("[0 0 0 0]")]
    [InlineData("[0 1 2")]
    [InlineData("[0 ")]
    [InlineData("[1 1 2 3]")]
    [InlineData("")]
    public void Ranges_that_point_nowhere_are_refused_and_stop_nothing(string range)
    {
        var entry = Encoding.ASCII.GetBytes("%PDF-1.7 " + PdfSignature.EntryKey + range);

        Assert.Equal(new PdfVerdict.NotCanonical(CanonicalFault.Entry), Check(entry));
        Assert.Equal(new PdfVerdict.NotCanonical(CanonicalFault.Entry), Check([.. entry, .. "/Contents<00>/M(D:20261125183015Z)"u8, .. new byte[400]]));
    }

    [Fact]
    public void A_thousand_papers_with_one_byte_changed_at_random_are_all_refused_and_none_stops_the_check()
    {
        var random = new SplitMix64(20261125);
        var caught = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var _ in Enumerable.Range(0, 1_000)) Count(caught, Change(Paper, (int)random.NextBelow((ulong)Paper.Length), (byte)(1 + random.NextBelow(255))));

        foreach (var (verdict, times) in caught) output.WriteLine($"{verdict}: {times}");
        Assert.Equal(1_000, caught.Values.Sum());
        Assert.DoesNotContain(nameof(PdfVerdict.Genuine), caught.Keys);
    }

    [Fact]
    public void Every_bit_of_the_signature_its_ranges_and_its_padding_counts()
    {
        var start = Paper.AsSpan().IndexOf("/SubFilter"u8);
        var end = Paper.AsSpan().IndexOf(Encoding.ASCII.GetBytes("/M(D:20261125183015Z)")) + 24;
        var caught = new SortedDictionary<string, int>(StringComparer.Ordinal);

        for (var at = start; at < end; at++)
        for (var bit = 0; bit < 8; bit++)
            Count(caught, Change(Paper, at, (byte)(1 << bit)));

        foreach (var (verdict, times) in caught) output.WriteLine($"{verdict}: {times}");
        Assert.DoesNotContain(nameof(PdfVerdict.Genuine), caught.Keys);
    }

    [Fact]
    public void Every_bit_inside_the_envelope_counts_also_where_no_signature_covers_it()
    {
        // Hexadecimal digits that stay digits: what a forger would change.
        var start = Paper.AsSpan().IndexOf("/Contents<"u8) + 10;
        var length = (4 + (Convert.FromHexString(Encoding.ASCII.GetString(Paper, start + 4, 4)) is var size ? (size[0] << 8) + size[1] : 0)) * 2;
        var caught = new SortedDictionary<string, int>(StringComparer.Ordinal);

        for (var at = start; at < start + length + 8; at++)
        for (var digit = 0; digit < 16; digit++)
        {
            var changed = (byte[])Paper.Clone();
            changed[at] = (byte)"0123456789ABCDEF"[digit];
            if (changed[at] != Paper[at]) Count(caught, changed);
        }

        foreach (var (verdict, times) in caught) output.WriteLine($"{verdict}: {times}");
        Assert.DoesNotContain(nameof(PdfVerdict.Genuine), caught.Keys);
    }

    [Fact]
    public void The_other_value_that_mathematics_allows_is_refused()
    {
        var order = new System.Numerics.BigInteger(Convert.FromHexString("FFFFFFFF00000000FFFFFFFFFFFFFFFFBCE6FAADA7179E84F3B9CAC2FC632551"), isUnsigned: true, isBigEndian: true);
        var data = "signed"u8.ToArray();
        var value = SignatureValue.Sign(Signing.Certificate, data);
        var numbers = new System.Formats.Asn1.AsnReader(value, System.Formats.Asn1.AsnEncodingRules.DER).ReadSequence();
        var writer = new System.Formats.Asn1.AsnWriter(System.Formats.Asn1.AsnEncodingRules.DER);
        using (writer.PushSequence())
        {
            writer.WriteInteger(numbers.ReadInteger());
            writer.WriteInteger(order - numbers.ReadInteger());
        }

        using var key = Signing.Certificate.GetECDsaPublicKey()!;
        Assert.True(key.VerifyData(data, writer.Encode(), HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence));
        Assert.False(SignatureValue.IsSignedBy(Signing.Certificate, data, writer.Encode()));
        Assert.True(SignatureValue.IsSignedBy(Signing.Certificate, data, value));
    }

    [Fact]
    public void Lower_case_digits_and_padding_that_is_not_zero_are_not_canonical()
    {
        var contents = Paper.AsSpan().IndexOf("/Contents<"u8) + 10;
        var letter = contents + Paper.AsSpan(contents).IndexOfAnyInRange((byte)'A', (byte)'F');
        var padding = contents + Paper.AsSpan(contents).IndexOf((byte)'>') - 2;

        Assert.Equal(new PdfVerdict.NotCanonical(CanonicalFault.Digits), Check(Change(Paper, letter, 0x20)));
        Assert.Equal(new PdfVerdict.NotCanonical(CanonicalFault.Padding), Check(Change(Paper, padding, 1)));
    }

    [Fact]
    public void Bytes_behind_the_end_are_seen()
    {
        foreach (var tail in new[] { "\n", "\0", " ", "%%EOF\n", "garbage" }) Assert.IsType<PdfVerdict.Extended>(Check([.. Paper, .. Encoding.ASCII.GetBytes(tail)]));
        Assert.Equal(new PdfVerdict.NotCanonical(CanonicalFault.SeveralSignatures), Check([.. Paper, .. Paper]));
        Assert.IsType<PdfVerdict.Extended>(Check([.. Paper, .. Pages.Print(Pages.Of(Language.English))]));
        Assert.False(Check([.. Pages.Print(Pages.Of(Language.English)), .. Paper]) is PdfVerdict.Genuine);
    }

    [Fact]
    public void A_paper_cut_anywhere_is_refused()
    {
        var random = new SplitMix64(7);
        foreach (var length in Enumerable.Range(0, 300).Concat(Enumerable.Range(0, 500).Select(_ => (int)random.NextBelow((ulong)Paper.Length))))
            Assert.False(Check(Paper.AsSpan(0, length)) is PdfVerdict.Genuine, $"{length} bytes");
        Assert.IsType<PdfVerdict.Truncated>(Check(Paper.AsSpan(0, Paper.Length - 1)));
    }

    [Fact]
    public void An_addition_in_the_manner_of_PDF_itself_is_seen()
    {
        // ISO 32000-2 §7.5.6: new objects, a new table and trailer behind the old file; most readers then show the new title.
        var text = Encoding.Latin1.GetString(Paper);
        var old = text[(text.LastIndexOf("startxref", StringComparison.Ordinal) + 9)..].Split('\n', StringSplitOptions.RemoveEmptyEntries)[0];
        var added = $"1 0 obj\n<</Title(Forged)>>\nendobj\nxref\n1 1\n{Paper.Length:D10} 00000 n \ntrailer\n<</Size 2/Prev {old}>>\nstartxref\n{Paper.Length + 42}\n%%EOF\n";

        Assert.IsType<PdfVerdict.Extended>(Check([.. Paper, .. Encoding.ASCII.GetBytes(added)]));
    }

    [Fact]
    public void A_paper_that_another_program_saved_again_is_refused()
    {
        using var reread = PdfReader.Open(new MemoryStream(Paper), PdfDocumentOpenMode.Modify);
        using var saved = new MemoryStream();
        reread.Save(saved);
        Assert.False(Check(saved.ToArray()) is PdfVerdict.Genuine);

        var folder = Directory.CreateTempSubdirectory("qpdf-");
        try
        {
            var (from, to) = (Path.Combine(folder.FullName, "from.pdf"), Path.Combine(folder.FullName, "to.pdf"));
            File.WriteAllBytes(from, Paper);
            DebianTool.Run("qpdf", "qpdf", ["--warning-exit-0", from, to]);
            Assert.False(Check(File.ReadAllBytes(to)) is PdfVerdict.Genuine);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void What_is_no_PDF_or_has_no_signature_is_called_so()
    {
        Assert.IsType<PdfVerdict.NotAPdf>(Check([]));
        Assert.IsType<PdfVerdict.NotAPdf>(Check([0]));
        Assert.IsType<PdfVerdict.NotAPdf>(Check([.. " "u8, .. Paper]));
        Assert.IsType<PdfVerdict.NotSigned>(Check("%PDF-1.7"u8.ToArray()));
        Assert.IsType<PdfVerdict.NotSigned>(Check(Pages.Print(Pages.Of(Language.English))));
        Assert.IsType<PdfVerdict.UnknownSigner>(SignedPdf.Check(Paper, []));
    }

    [Fact]
    public void Random_bytes_behind_every_prefix_of_a_true_entry_are_refused_and_none_stops_the_check()
    {
        var random = new SplitMix64(99);
        var entry = Paper.AsSpan().IndexOf("/SubFilter"u8);
        foreach (var kept in Enumerable.Range(0, 400))
        {
            byte[] noise = [.. Enumerable.Range(0, 200).Select(_ => (byte)random.NextBelow(256))];
            Assert.False(Check([.. "%PDF-1.7"u8, .. noise, .. Paper.AsSpan(entry, kept), .. noise]) is PdfVerdict.Genuine);
        }
    }

    [Fact]
    public void Twenty_megabytes_of_any_kind_are_judged_at_once()
    {
        const int Size = 20 << 20;
        var entry = Paper.AsSpan().IndexOf("/SubFilter"u8);
        var keys = string.Concat(Enumerable.Repeat("/ByteRange", Size / 10));
        byte[][] files =
        [
            new byte[Size],
            [.. "%PDF-"u8, .. new byte[Size]],
            [.. "%PDF-"u8, .. Encoding.ASCII.GetBytes(keys)],
            [.. "%PDF-"u8, .. Encoding.ASCII.GetBytes(keys.Replace("Range", "Rang_"))],
            [.. Paper.AsSpan(0, entry), .. Encoding.ASCII.GetBytes("/SubFilter/ETSI.CAdES.detached/ByteRange[0 62022 20000000 1000]".PadRight(Size, '0'))],
            [.. Paper, .. new byte[Size]],
        ];
        var clock = Stopwatch.StartNew();

        Assert.All(files, file => Assert.False(Check(file) is PdfVerdict.Genuine));

        output.WriteLine($"{clock.Elapsed.TotalMilliseconds:F0} ms");
        Assert.InRange(clock.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(10));
    }

    private static PdfVerdict Check(ReadOnlySpan<byte> file) => SignedPdf.Check(file, [Signing.Certificate]);

    private static byte[] Change(byte[] file, int at, byte difference)
    {
        var changed = (byte[])file.Clone();
        changed[at] ^= difference;
        return changed;
    }

    private static void Count(SortedDictionary<string, int> caught, byte[] file)
    {
        var verdict = Check(file);
        var name = verdict is PdfVerdict.NotCanonical canonical ? $"NotCanonical {canonical.Fault}" : verdict.GetType().Name;
        caught[name] = caught.GetValueOrDefault(name) + 1;
    }
}
