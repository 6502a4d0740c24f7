using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Training.Courses;
using Training.Documents.Fonts;

namespace Training.Documents.Tests.Fonts;

public sealed class FontFacesTests
{
    [Fact]
    public void The_packaged_faces_show_every_letter_of_English_and_Spanish() =>
        Assert.Empty(FontFaces.Default.FindMissing("AZaz09 áéíóúüñÁÉÍÓÚÜÑ¿¡«»—–·’ÇçÀàÈèÒòÏï.,:;-'()/&"));

    [Fact]
    public void Missing_characters_are_named_once_in_order() => Assert.Equal(["龍", "李"], FontFaces.Default.FindMissing("a龍b李龍"));

    [Fact]
    public void Our_reading_of_a_face_agrees_with_fontconfig()
    {
        var ours = GlyphCoverage.Read(Lato.Bytes("Regular"));
        var theirs = DebianTool.Run("fc-query", "fontconfig", ["--format", "%{charset}", Lato.File("Regular")])
            .Split(' ').SelectMany(range =>
            {
                var ends = range.Split('-').Select(end => int.Parse(end, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToArray();
                return Enumerable.Range(ends[0], ends[^1] - ends[0] + 1);
            }).ToHashSet();

        Assert.True(theirs.Count > 1000);
        // Fontconfig leaves out control characters and blank glyphs that no text of ours holds.
        var differing = Enumerable.Range(0x20, 0x2FFFF).Where(Rune.IsValid).Where(value => ours.Contains(new Rune(value)) != theirs.Contains(value));
        Assert.All(differing, value => Assert.True(CharUnicodeInfo.GetUnicodeCategory(value) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.SpaceSeparator or UnicodeCategory.OtherNotAssigned, $"{value:X4}"));
    }

    [Fact]
    public void What_is_no_TrueType_file_is_refused_by_name()
    {
        var problems = new List<Problem>();
        var (text, cut) = (Lato.Bytes("Regular"), Lato.Bytes("Bold")[..2000]);

        Assert.Null(FontFaces.Read("wOF2 and more bytes"u8.ToArray(), text, cut, problems));

        Assert.Equal([(FontProblems.NotTrueType, "display.ttf"), (FontProblems.NotTrueType, "strong.ttf")], problems.Select(problem => (problem.Code, problem.Arguments[0])));
    }

    [Theory]
    [InlineData(0x0000, true)]
    [InlineData(0x0004, true)]
    [InlineData(0x0008, true)]
    [InlineData(0x0002, false)]
    [InlineData(0x0100, false)]
    [InlineData(0x0200, false)]
    public void The_maker_s_licence_bits_are_obeyed(ushort bits, bool isAllowed)
    {
        var face = Lato.Bytes("Regular");
        var table = TrueTypeTables.Find(face, "OS/2"u8);
        BinaryPrimitives.WriteUInt16BigEndian(face.AsSpan(face.AsSpan().IndexOf(table) + 8), bits);
        var problems = new List<Problem>();

        Assert.Equal(isAllowed, FontFaces.Read(face, face, face, problems) is not null);
        Assert.All(problems, problem => Assert.Equal(FontProblems.EmbeddingForbidden, problem.Code));
    }
}
