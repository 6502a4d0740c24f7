using CsCheck;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Typesetting;

public sealed class FittedTextTests
{
    // One unit a character.
    private static IReadOnlyList<string>? Wrap(string text, int width, bool breaksWords = false) =>
        FittedText.Wrap(text, width, breaksWords, part => part.Length);

    [Fact]
    public void Lines_are_as_full_as_they_can_be_and_keep_the_space_they_end_at() => Assert.Equal(["one two ", "three"], Wrap("one two three", 8));

    [Fact]
    public void An_address_breaks_after_a_slash_but_not_inside_two() =>
        Assert.Equal(["https://", "site/", "verify/", "AB"], Wrap("https://site/verify/AB", 8));

    [Fact]
    public void A_word_too_wide_is_refused_or_broken()
    {
        Assert.Null(Wrap("abcdef", 4));
        Assert.Equal(["abcd", "ef"], Wrap("abcdef", 4, breaksWords: true));
    }

    [Fact]
    public void Whatever_the_text_nothing_is_lost_and_no_line_is_too_wide() => Gen.Select(Gen.String[Gen.Char["ab/ ñ"], 1, 60], Gen.Int[1, 20]).Sample((text, width) =>
    {
        var lines = Wrap(text, width, breaksWords: true)!;
        Assert.Equal(text.TrimEnd(), string.Concat(lines).TrimEnd());
        Assert.All(lines, line => Assert.True(line.TrimEnd().Length <= width));
    });
}
