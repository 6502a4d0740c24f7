using Training.Courses;
using Training.Documents.Tests.Typesetting;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.PocketCards;

public sealed class PocketCardTests : PaperTests
{
    protected override string Golden => "PocketCards/Golden/reading-order";

    protected override double Margin => 6;

    // 85.60 × 53.98 mm: ISO/IEC 7810, ID-1.
    protected override string Size(PaperSize paper) => @"Pages:\s+2\n[\s\S]*Page size:\s+242.646 x 153.014 pts";

    protected override byte[] Print(Language language, PaperSize paper, bool isDemonstration) => Cards.Print(Cards.Of(language, isDemonstration));

    protected override IReadOnlyList<string> Sentences(Language language) => language == Language.English
        ? ["Quillback Field Safety Certification", "José Ángel Ibáñez-Núñez", "Tool-only snake handler", "Current through 7 December 2027", "Serial 4G7K 29QX PDAB",
            "A short copy of paper 4G7K 29QX PDAB, revision 1, printed on 26 November 2026.", "Scan the code on the front", "no order to handle a snake", "call emergency services at once", "poison control"]
        : ["Quillback Field Safety Certificación", "José Ángel Ibáñez-Núñez", "Manejo de serpientes solo con herramientas", "Vigente hasta el 7 de diciembre de 2027", "Serie 4G7K 29QX PDAB",
            "Una copia breve del documento 4G7K 29QX PDAB, revisión 1, impresa el 26 de noviembre de 2026.", "Escanee el código del frente", "ni orden de manejar una serpiente", "llame de inmediato a emergencias", "control de envenenamientos"];

    [Theory]
    [InlineData(150)]
    [InlineData(300)]
    public void A_scanner_reads_the_exact_address_also_from_a_grey_and_noisy_copy(int dotsPerInch)
    {
        foreach (var language in Enum.GetValues<Language>())
        foreach (var isDemonstration in (bool[])[false, true])
        {
            var card = Cards.Of(language, isDemonstration);
            var pdf = Cards.Print(card);

            Assert.Equal(card.CheckAddress, DebianTool.ScanCode(pdf, dotsPerInch));
            Assert.Equal(card.CheckAddress, DebianTool.ScanCode(pdf, dotsPerInch, "-gray"));
            Assert.Equal(card.CheckAddress, Photocopy.Of(pdf, dotsPerInch).Noisy(seed: 7, shades: 50).Scan());
            Assert.Equal(card.CheckAddress, Photocopy.Of(pdf, dotsPerInch).HeldOver(leftPercent: 55, topPercent: 35).Decode());
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_second_decoder_reads_it_from_a_bad_photocopy(int seed)
    {
        var card = Cards.Of(Language.Spanish);

        Assert.Equal(card.CheckAddress, Photocopy.Of(Cards.Print(card), 300).Worse((ulong)seed).HeldOver(leftPercent: 55, topPercent: 35).Decode());
    }

    [Fact]
    public void The_longest_address_is_read_from_a_bad_photocopy_at_300_dots()
    {
        var card = Cards.Of(Language.English) with { CheckAddress = "https://training.quillback.example/verify/" + new string('k', 158) };

        Assert.Equal(200, card.CheckAddress.Length);
        Assert.Equal(card.CheckAddress, Photocopy.Of(Cards.Print(card), 300).Noisy(seed: 7, shades: 40).Scan());
        Assert.Equal(card.CheckAddress, Photocopy.Of(Cards.Print(card), 300).Worse(seed: 7).HeldOver(leftPercent: 55, topPercent: 35).Decode());
    }

    [Theory]
    [InlineData(SchemeKind.CertificateOfTraining, "Certificate of training", "ertification")]
    [InlineData(SchemeKind.Certification, "Certification", "ertificate")]
    public void A_card_of_one_kind_never_uses_the_words_of_the_other(SchemeKind kind, string title, string other)
    {
        var text = DebianTool.Text(Cards.Print(Cards.Of(Language.English, kind: kind)));

        Assert.Contains(title, text, StringComparison.Ordinal);
        Assert.DoesNotContain(other, text.Replace(title, "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void The_code_is_described_to_who_cannot_see_it() =>
        Assert.Contains(
            "\"/Alt\": \"u:QR code of the check page, https://training.quillback.example/verify/4G7K-29QX-PDAB\"",
            DebianTool.Qpdf(Cards.Print(Cards.Of(Language.English)), "--json=2", "--json-key=qpdf"));
}
