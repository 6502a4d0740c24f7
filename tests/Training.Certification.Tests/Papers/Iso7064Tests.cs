using CsCheck;

namespace Training.Certification.Tests;

public sealed class Iso7064Tests
{
    private static readonly Gen<string> Texts = Gen.Char[Iso7064.Characters].Array[1, 16].Select(characters => new string(characters));

    [Fact]
    public void The_published_example_has_its_check_character()
    {
        var row = System.IO.File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "iso7064.csv")).Skip(1).Single();
        var cells = row.Split("\",")[1].Split(',');

        Assert.Equal(cells[1], Iso7064.CheckCharacter(cells[0]).ToString());
        Assert.True(Iso7064.IsChecked(cells[0] + cells[1]));
    }

    [Fact]
    public void Every_single_wrong_character_is_found() => Texts.Sample(text =>
    {
        var right = text + Iso7064.CheckCharacter(text);
        for (var i = 0; i < right.Length; i++)
        {
            foreach (var wrong in Iso7064.Characters)
            {
                var typed = right[..i] + wrong + right[(i + 1)..];
                Assert.Equal(wrong == right[i], Iso7064.IsChecked(typed));
            }
        }
    });

    [Fact]
    public void Swapped_neighbours_go_unnoticed_only_where_their_values_differ_by_one() => Texts.Sample(text =>
    {
        var right = text + Iso7064.CheckCharacter(text);
        for (var i = 0; i < right.Length - 1; i++)
        {
            var typed = right[..i] + right[i + 1] + right[i] + right[(i + 2)..];
            var apart = Math.Abs(Iso7064.Characters.IndexOf(right[i]) - Iso7064.Characters.IndexOf(right[i + 1]));
            if (apart is not (0 or 1 or 35)) Assert.False(Iso7064.IsChecked(typed));
        }
    });

    [Theory]
    [InlineData("AB-C")]
    [InlineData("abc")]
    [InlineData("Ñ12")]
    public void Another_character_is_a_broken_promise(string text) =>
        Assert.Throws<ArgumentException>(() => Iso7064.CheckCharacter(text));

    [Fact]
    public void Nothing_is_not_checked() => Assert.Throws<ArgumentException>(() => Iso7064.IsChecked(""));
}
