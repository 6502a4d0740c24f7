using CsCheck;

namespace Training.Courses.Tests.Readability;

public sealed class ReadingLevelTests
{
    private static readonly string[] Paragraphs =
        ["Step back. Do not run!", "A snake that is left alone has no reason to strike; it goes.", "Call 911", "First: look. Then: reach?"];

    /// <summary>Worked by hand from the formulas as they were published: Kincaid and others 1975; Szigriszt Pazos 1993.</summary>
    [Theory]
    [InlineData(100, 5, 150, 9.91, 93.385)]     // 0.39·20 + 11.8·1.5 − 15.59; 206.835 − 62.3·1.5 − 20
    [InlineData(100, 10, 200, 11.91, 72.235)]
    [InlineData(1, 1, 1, -3.40, 143.535)]       // the least grade that the formula can give
    public void The_formulas_give_their_published_values(int words, int sentences, int syllables, double grade, double ease)
    {
        var count = new TextCount(words, sentences, syllables);

        Assert.Equal(grade, ReadingLevel.Grade(count)!.Value, 3); // there is a word
        Assert.Equal(ease, ReadingLevel.Ease(count)!.Value, 3);
    }

    [Theory]
    [InlineData(Language.English, "The snake lies still. Step back.", 6, 2, 6)]
    [InlineData(Language.Spanish, "La serpiente no se mueve. Aléjese.", 6, 2, 12)]
    [InlineData(Language.English, "Stay out: 10 feet (3.0 metres), don’t guess", 8, 2, 9)]     // a colon ends a sentence, as Flesch counted; a point inside a number does not
    [InlineData(Language.Spanish, "Llame al 1-800-222-1222 …", 3, 1, 4)]
    public void Words_sentences_and_syllables_are_counted(Language language, string text, int words, int sentences, int syllables) =>
        Assert.Equal(new TextCount(words, sentences, syllables), TextCount.Of([text], language));

    [Fact]
    public void A_paragraph_ends_a_sentence_whatever_its_last_sign_is() =>
        Assert.Equal(2, TextCount.Of(["Call emergency services", "then poison control"], Language.English).Sentences);

    [Theory, InlineData(Language.English), InlineData(Language.Spanish)]
    public void A_text_without_a_word_has_no_level(Language language)
    {
        foreach (var text in new string[][] { [], [""], ["…", " — "] })
        {
            var count = TextCount.Of(text, language);

            Assert.Equal(new TextCount(0, 0, 0), count);
            Assert.Null(ReadingLevel.Grade(count));
            Assert.Null(ReadingLevel.Ease(count));
        }
    }

    [Fact]
    public void The_order_of_paragraphs_does_not_matter() => Gen.Shuffle(Paragraphs).Sample(shuffled =>
        TextCount.Of(shuffled, Language.English) == TextCount.Of(Paragraphs, Language.English));

    [Fact]
    public void A_text_read_twice_is_as_hard_as_read_once() => Gen.Int[1, 50].Sample(times =>
        Math.Abs(
            ReadingLevel.Grade(TextCount.Of(Enumerable.Repeat(Paragraphs, times).SelectMany(text => text), Language.English))!.Value
            - ReadingLevel.Grade(TextCount.Of(Paragraphs, Language.English))!.Value) < 1e-9); // there are words
}
