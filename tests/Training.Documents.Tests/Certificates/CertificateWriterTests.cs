using CsCheck;
using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Fonts;
using Training.Documents.Tests.Typesetting;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Certificates;

public sealed class CertificateWriterTests
{
    public static TheoryData<Language, SchemeKind, PaperSize, bool> Every_page => Pages.All;

    [Theory, MemberData(nameof(Every_page))]
    public void The_file_is_sound_and_has_one_page(Language language, SchemeKind kind, PaperSize paper, bool isDemonstration)
    {
        var pdf = Pages.Print(Pages.Of(language, kind, paper, isDemonstration));

        // The package closes its compressed streams in a way that qpdf warns of; an error still fails.
        DebianTool.Qpdf(pdf, "--check", "--warning-exit-0");
        var info = DebianTool.Info(pdf);
        Assert.Matches(@"Pages:\s+1\n", info);
        Assert.Matches(paper == PaperSize.A4 ? @"Page size:\s+84[12](\.\d+)? x 595" : @"Page size:\s+792 x 612", info);
    }

    [Theory, MemberData(nameof(Every_page))]
    public void Every_font_is_embedded_as_a_subset_with_its_characters(Language language, SchemeKind kind, PaperSize paper, bool isDemonstration)
    {
        var fonts = DebianTool.Fonts(Pages.Print(Pages.Of(language, kind, paper, isDemonstration))).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];

        Assert.Equal(3, fonts.Length);
        Assert.All(fonts, font => Assert.Matches(@"^[A-Z]{6}\+.*CID TrueType\s+Identity-H\s+yes yes yes", font));
    }

    [Theory, MemberData(nameof(Every_page))]
    public void A_scanner_reads_the_exact_address_from_the_printed_page(Language language, SchemeKind kind, PaperSize paper, bool isDemonstration)
    {
        var page = Pages.Of(language, kind, paper, isDemonstration);

        Assert.Equal(page.CheckAddress, DebianTool.ScanCode(Pages.Print(page), 150));
    }

    // In black and white alone, without grey, a module needs more dots than 150 to the inch give it.
    [Theory]
    [InlineData(300, "-gray", CertificatePage.LongestCodeAddress)]
    [InlineData(150, "-gray", CertificatePage.LongestCodeAddress)]
    [InlineData(300, "-mono", CertificatePage.LongestCodeAddress)]
    [InlineData(200, "-mono", 530)]
    public void A_scanner_reads_a_long_address_from_a_grey_or_black_print(int dotsPerInch, string rendering, int length)
    {
        var page = WithCode(length);

        Assert.Equal(page.CodeAddress, DebianTool.ScanCode(Pages.Print(page), dotsPerInch, rendering));
    }

    [Theory]
    [InlineData(300, CertificatePage.LongestCodeAddress)]
    [InlineData(150, CertificatePage.LongestCodeAddress)]
    public void A_second_decoder_reads_the_longest_address(int dotsPerInch, int length) =>
        Assert.Equal(WithCode(length).CodeAddress, Photocopy.Of(Pages.Print(WithCode(length)), dotsPerInch).Decode());

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_second_decoder_reads_a_usual_code_from_a_bad_photocopy(int seed) =>
        Assert.Equal(WithCode(530).CodeAddress, Photocopy.Of(Pages.Print(WithCode(530)), 300).Worse((ulong)seed).HeldOver(leftPercent: 70, topPercent: 40).Decode());

    private static CertificatePage WithCode(int length)
    {
        const string Check = "https://training.quillback.example/verify/4G7K29QXPDABC3DE#";
        return Pages.Of(Language.English) with { CodeAddress = Check + new string('k', length - Check.Length) };
    }

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void The_reading_order_is_the_one_written_down(Language language)
    {
        var expected = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Certificates", "Golden", $"reading-order.{language.Tag()}.txt"));

        var tagged = DebianTool.Info(Pages.Print(Pages.Of(language, isDemonstration: true)), "-struct-text");

        Assert.Equal(expected.Trim(), tagged.Trim());
    }

    [Theory]
    [InlineData(Language.English, "en", "Line drawing: a coiled snake", "QR code of the check page, https://training.quillback.example/verify/4G7K29QXPDABC3DE")]
    [InlineData(Language.Spanish, "es", "Dibujo de línea: una serpiente enroscada", "Código QR de la página de verificación, https://training.quillback.example/verify/4G7K29QXPDABC3DE")]
    public void Pictures_title_and_language_speak_to_a_screen_reader(Language language, string tag, string drawing, string code)
    {
        var pdf = Pages.Print(Pages.Of(language));

        var objects = DebianTool.Qpdf(pdf, "--json=2", "--json-key=qpdf");
        Assert.Contains($"\"/Alt\": \"u:{drawing}", objects);
        Assert.Contains($"\"/Alt\": \"u:{code}\"", objects);
        Assert.Contains($"\"/Lang\": \"u:{tag}\"", objects);
        Assert.Contains("\"/DisplayDocTitle\": true", objects);
        Assert.Contains("\"/Marked\": true", objects);
        Assert.Matches(@"Title:\s+.*José Ángel Ibáñez-Núñez", DebianTool.Info(pdf));
        Assert.Matches(@"Tagged:\s+yes", DebianTool.Info(pdf));
    }

    [Fact]
    public void The_metadata_repeats_the_title_and_claims_no_standard()
    {
        var metadata = DebianTool.Info(Pages.Print(Pages.Of(Language.Spanish)), "-meta");

        Assert.Contains("José Ángel Ibáñez-Núñez", metadata);
        Assert.DoesNotContain("pdfuaid", metadata, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("pdfaid", metadata, StringComparison.OrdinalIgnoreCase);
    }

    [Theory, MemberData(nameof(Every_page))]
    public void The_longest_texts_stay_inside_the_frame_and_cover_nothing(Language language, SchemeKind kind, PaperSize paper, bool isDemonstration)
    {
        // One unbroken word of the widest letter is the worst there is; words of it break elsewhere.
        foreach (var text in (Func<int, string>[])[length => new('W', length), length => string.Concat(Enumerable.Repeat("WÑWÁWÜ ", length))[..length].Trim()])
        {
            AssertTidy(Pages.Print(Pages.Stuffed(Pages.Of(language, kind, paper, isDemonstration), text)));
        }
    }

    [Theory, MemberData(nameof(Every_page))]
    public void An_ordinary_page_stays_inside_the_frame_and_covers_nothing(Language language, SchemeKind kind, PaperSize paper, bool isDemonstration) =>
        AssertTidy(Pages.Print(Pages.Of(language, kind, paper, isDemonstration)));

    [Fact]
    public void A_name_of_any_length_is_printed_whole_on_one_page()
    {
        var names = Gen.String[Gen.Char["aeiouñáéWMil '-"], 1, CertificatePage.LongestName].Where(name => name.Trim().Length > 0);

        names.Sample(
            name =>
            {
                var pdf = Pages.Print(Pages.Of(Language.Spanish, paper: PaperSize.A4) with { WorkerName = name });
                AssertTidy(pdf);
                Assert.Contains(WithoutSpaces(name), WithoutSpaces(DebianTool.Text(pdf)));
            },
            iter: 40,
            threads: 1);
    }

    [Theory]
    [InlineData("María de los Ángeles Fernández-Villaseñor Etxeberria y Goñi Ü")]
    [InlineData("Jo\u0301se Nu\u0303n\u0303ez")]
    public void Accents_come_out_as_they_went_in(string name) =>
        Assert.Contains(name.Normalize(), DebianTool.Text(Pages.Print(Pages.Of(Language.English) with { WorkerName = name })));

    [Fact]
    public void Many_threads_print_at_once_and_mix_nothing_up()
    {
        var printed = new byte[64][];

        Parallel.For(0, printed.Length, index => printed[index] = Pages.Print(Pages.Of(Language.Spanish) with { WorkerName = $"Trabajadora Número {index}" }));

        Assert.All(printed.Index(), page => Assert.Contains($"Trabajadora Número {page.Index} ", DebianTool.Text(page.Item)));
    }

    [Fact]
    public void An_operator_s_own_faces_are_used()
    {
        var problems = new List<Problem>();
        var faces = FontFaces.Read(Lato.Bytes("Light"), Lato.Bytes("Regular"), Lato.Bytes("Bold"), problems);

        Assert.Empty(problems);
        var pdf = CertificateWriter.Write(Pages.Stuffed(Pages.Of(Language.Spanish, paper: PaperSize.A4), length => new('W', length)), faces!);
        Assert.Equal(3, DebianTool.Fonts(pdf).Split('\n').Count(line => line.Contains("+Lato", StringComparison.Ordinal)));
        AssertTidy(pdf);
    }

    [Fact]
    public void A_certification_without_a_lead_is_refused() =>
        Assert.Throws<ArgumentException>(() => Pages.Print(Pages.Of(Language.English) with { DecidedBy = null }));

    [Fact]
    public void An_expiry_that_the_validity_does_not_lead_to_is_refused() =>
        Assert.Throws<ArgumentException>(() => Pages.Print(Pages.Of(Language.English) with { ExpiresOn = new(2027, 12, 8) }));

    [Fact]
    public void A_page_that_the_check_refuses_is_not_printed() =>
        Assert.Throws<ArgumentException>(() => Pages.Print(Pages.Of(Language.English) with { WorkerName = "李小龍" }));

    private static void AssertTidy(byte[] pdf) => PrintedPage.AssertTidy(pdf, margin: 26);

    private static string WithoutSpaces(string text) => string.Concat(text.Where(character => !char.IsWhiteSpace(character)));
}
