using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.PocketCards;
using Training.Documents.Tests.Typesetting;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.PocketCards;

public sealed class PocketCardSheetTests : PaperTests
{
    protected override string Golden => "PocketCards/Golden/sheet-reading-order";

    protected override byte[] Print(Language language, PaperSize paper, bool isDemonstration) =>
        Cards.PrintSheet(Cards.Several(language, 3, isDemonstration), paper);

    protected override IReadOnlyList<string> Sentences(Language language) => language == Language.English
        ? ["Pocket cards, fronts. Print at 100 %, on both sides, turned over the long edge. Cut along the marks.", "Trabajador1 Ocampo", "Trabajador3 Ocampo", "Backs of the cards on the page before"]
        : ["Tarjetas de bolsillo, frentes. Imprima al 100 %, por ambos lados, volteando por el lado largo. Corte por las marcas.", "Trabajador1 Ocampo", "Trabajador3 Ocampo", "Reversos de las tarjetas de la página anterior"];

    [Theory]
    [InlineData(PaperSize.UsLetter)]
    [InlineData(PaperSize.A4)]
    public void Turned_over_the_long_edge_each_back_meets_its_front(PaperSize paper)
    {
        var pages = PrintedPage.ReadAll(Cards.PrintSheet(Cards.Several(Language.English, 8), paper));

        Assert.Equal(2, pages.Count);
        for (var number = 1; number <= 8; number++)
        {
            var front = pages[0].Words.Single(word => word.Text == $"Trabajador{number}");
            // The last group of the serial stands on both sides: "PD01," on the back.
            var back = pages[1].Words.Single(word => word.Text == $"PD{number:00},");
            var turned = pages[1].Width - back.Left;
            var card = Column(front.Left, pages[0].Width);
            Assert.Equal(card, Column(turned, pages[1].Width));
            Assert.Equal(Row(front.Top, pages[0].Height), Row(back.Top, pages[1].Height));
        }
    }

    [Fact]
    public void A_ninth_card_begins_another_sheet() =>
        Assert.Matches(@"Pages:\s+4\n", DebianTool.Info(Cards.PrintSheet(Cards.Several(Language.Spanish, 9), PaperSize.A4)));

    [Theory]
    [InlineData(PaperSize.UsLetter, 150)]
    [InlineData(PaperSize.A4, 300)]
    public void A_scanner_reads_all_eight_codes_of_a_grey_sheet(PaperSize paper, int dotsPerInch)
    {
        var cards = Cards.Several(Language.English, 8);

        var codes = DebianTool.ScanCode(Cards.PrintSheet(cards, paper), dotsPerInch, "-gray").Split('\n');

        Assert.Equal(cards.Select(card => card.CheckAddress).Order(StringComparer.Ordinal), codes.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_card_too_many_cards_and_two_languages_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Cards.PrintSheet([], PaperSize.A4));
        Assert.Throws<ArgumentException>(() => Cards.PrintSheet(Cards.Several(Language.English, PocketCardWriter.MostCards + 1), PaperSize.A4));
        Assert.Throws<ArgumentException>(() => Cards.PrintSheet([Cards.Of(Language.English), Cards.Of(Language.Spanish)], PaperSize.A4));
        Assert.Throws<ArgumentException>(() => PocketCardWriter.WriteSheet([Cards.Of(Language.English) with { Serial = "" }], PaperSize.A4, FontFaces.Default));
    }

    private static int Column(double x, double width) => x < width / 2 ? 0 : 1;

    private static int Row(double y, double height)
    {
        var top = (height - (4 * PocketCardLook.Height) - (3 * PocketCardLook.Gutter)) / 2;
        return (int)((y - top) / (PocketCardLook.Height + PocketCardLook.Gutter));
    }
}
