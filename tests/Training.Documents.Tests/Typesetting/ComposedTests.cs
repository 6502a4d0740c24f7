using CsCheck;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Typesetting;

public sealed class ComposedTests
{
    [Theory]
    [InlineData("  Jo\u0301se \t Nun\u0303ez\r\n", "Jóse Nuñez")]
    [InlineData("a\ud83d\ude00b", "a😀b")]
    [InlineData("", "")]
    public void Accents_join_white_space_is_one_space_and_what_is_no_character_shows(string text, string expected) => Assert.Equal(expected, Composed.Of(text));

    // Not as data of a theory: the runner passes those through UTF-8.
    [Fact]
    public void Half_a_character_and_a_code_that_is_none_come_out_as_the_sign_for_that()
    {
        Assert.Equal("half \ufffd", Composed.Of("half " + '\ud83d'));
        Assert.Equal("none \ufffd", Composed.Of("none " + '\ufffe'));
    }

    [Fact]
    public void Whatever_is_typed_a_field_says_what_is_wrong_with_it_and_nothing_is_thrown() =>
        Gen.String[Gen.Char, 0, 40].Sample(text =>
        {
            var problems = new List<Problem>();

            new FieldChecks(FontFaces.Default, problems).Required("name", text, 20);

            Assert.All(problems, problem => Assert.Equal("name", problem.Place.Part));
        });
}
