using Training.Documents.Certificates;
using Training.Documents.PocketCards;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Typesetting;

public sealed class QrCodeTests
{
    [Fact]
    public void A_module_of_the_longest_address_is_printed_at_least_four_tenths_of_a_millimetre_wide()
    {
        var code = new QrCode("https://" + new string('ñ', CertificatePage.LongestCheckAddress - 8));

        Assert.True(CertificateLook.CodeSide / code.Side / 72 * 25.4 >= 0.4, $"{code.Side} modules");
    }

    [Fact]
    public void On_a_pocket_card_too_for_the_letters_that_an_address_has()
    {
        var code = new QrCode("https://" + new string('w', PocketCardPage.LongestCheckAddress - 8));

        Assert.True(PocketCardLook.CodeSide / code.Side / 72 * 25.4 >= 0.4, $"{code.Side} modules");
    }

    [Theory]
    [InlineData("a")]
    [InlineData("https://training.quillback.example/verify/4G7K29QXPDABC3DE")]
    public void Four_white_modules_surround_the_code(string text)
    {
        var code = new QrCode(text);

        // ISO/IEC 18004: a symbol is 17 + 4 × version modules wide; what is left is the quiet zone.
        var symbol = code.Side - (2 * QrCode.QuietModules);
        Assert.Equal(1, symbol % 4);
        Assert.InRange(symbol, 21, 177);
        Assert.Equal(4 * (CertificateLook.CodeSide / code.Side), code.QuietWidth(CertificateLook.CodeSide), 9);
    }
}
