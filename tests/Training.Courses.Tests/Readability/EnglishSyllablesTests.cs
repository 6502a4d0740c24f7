namespace Training.Courses.Tests.Readability;

/// <summary>One word for each habit of spelling; whole pages are held against a dictionary in <see cref="ShippedReadingLevelTests"/>.</summary>
public sealed class EnglishSyllablesTests
{
    [Theory]
    [InlineData("snake", 1), InlineData("snakes", 1), InlineData("snake's", 1), InlineData("snake’s", 1)]      // the silent e …
    [InlineData("moved", 1), InlineData("safely", 2), InlineData("movement", 2), InlineData("careful", 2), InlineData("somebody", 3), InlineData("vague", 1)]
    [InlineData("boxes", 2), InlineData("added", 2), InlineData("handles", 2), InlineData("handled", 2), InlineData("metre", 2)] // … and that which sounds
    [InlineData("called", 1), InlineData("are", 1), InlineData("while", 1)]
    [InlineData("area", 3), InlineData("areas", 3), InlineData("sea", 1), InlineData("people", 2), InlineData("video", 3)]      // two sounds in one group, or one
    [InlineData("fluid", 2), InlineData("build", 1), InlineData("quiet", 2), InlineData("earlier", 3), InlineData("pier", 1)]
    [InlineData("being", 2), InlineData("player", 2), InlineData("beyond", 2), InlineData("whoever", 3), InlineData("behaviour", 3), InlineData("caution", 2)]
    [InlineData("venomous", 3), InlineData("rattlesnake", 3), InlineData("identification", 6)]
    [InlineData("911", 1), InlineData("hmm", 1)]                                                              // never none
    public void A_word_has_the_syllables_that_are_spoken(string word, int syllables) =>
        Assert.Equal(syllables, TextCount.SyllablesOf(word, Language.English));
}
