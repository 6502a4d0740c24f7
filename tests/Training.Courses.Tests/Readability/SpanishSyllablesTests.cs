namespace Training.Courses.Tests.Readability;

/// <summary>Words divided by hand after RAE and ASALE, Ortografía de la lengua española (2010), chapter II, "diptongos, triptongos e hiatos".</summary>
public sealed class SpanishSyllablesTests
{
    [Theory]
    // A vowel each.
    [InlineData("ve-ne-no")]
    [InlineData("tron-co")]
    // Strong beside weak: one syllable, and an accent on the strong one parts nothing.
    [InlineData("ser-pien-te")]
    [InlineData("cas-ca-bel")]
    [InlineData("hue-so")]
    [InlineData("tam-bién")]
    [InlineData("lim-piáis")]
    [InlineData("a-ve-ri-güéis")]
    // Two different weak ones always join, accent or not.
    [InlineData("cui-da-do")]
    [InlineData("ciu-dad")]
    [InlineData("cons-truí")]
    [InlineData("vein-tiún")]
    [InlineData("pin-güi-no")]
    // Two strong ones part, and so does a weak one that carries the accent.
    [InlineData("a-é-re-o")]
    [InlineData("lí-ne-a")]
    [InlineData("rí-o")]
    [InlineData("guí-a")]
    [InlineData("ca-í-a")]
    [InlineData("le-í-ais")]
    [InlineData("cons-truí-an")]
    // The same one twice parts.
    [InlineData("cre-er")]
    [InlineData("an-ti-in-fla-ma-to-rio")]
    // The u of que, qui, gue and gui has no sound; that of güe has.
    [InlineData("que")]
    [InlineData("quie-to")]
    [InlineData("se-quí-a")]
    [InlineData("gue-rra")]
    [InlineData("guion")]
    // An h between vowels changes nothing.
    [InlineData("a-ho-ra")]
    [InlineData("al-co-hol")]
    [InlineData("prohi-bir")]
    [InlineData("ve-hí-cu-lo")]
    [InlineData("bú-ho")]
    // A y sounds as a vowel at the end of a word and as a consonant before a vowel.
    [InlineData("y")]
    [InlineData("hoy")]
    [InlineData("muy")]
    [InlineData("buey")]
    [InlineData("bue-yes")]
    [InlineData("yo")]
    [InlineData("ho-yo")]
    public void A_word_has_the_syllables_that_the_rules_give_it(string divided)
    {
        var word = divided.Replace("-", "", StringComparison.Ordinal);

        Assert.Equal(divided.Split('-').Length, TextCount.SyllablesOf(word, Language.Spanish));
        Assert.Equal(divided.Split('-').Length, TextCount.SyllablesOf(word.ToUpperInvariant(), Language.Spanish));
    }
}
