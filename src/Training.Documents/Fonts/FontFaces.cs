using System.Buffers.Binary;
using System.Security.Cryptography;
using PdfSharp.WPFonts;
using Training.Courses;

namespace Training.Documents.Fonts;

/// <summary>The three faces that papers are set in. Made once and shared; safe to use from many threads.</summary>
/// <remarks>
/// <see cref="Default"/> prints the same page on every machine. An operator may bring faces of their own as files named
/// <see cref="DisplayFile"/>, <see cref="TextFile"/> and <see cref="StrongFile"/>; who reads the folder hands the bytes to <see cref="Read"/>.
/// </remarks>
public sealed class FontFaces
{
    /// <summary>File of the face for the title and the name.</summary>
    public const string DisplayFile = "display.ttf";

    /// <summary>File of the face for running text.</summary>
    public const string TextFile = "text.ttf";

    /// <summary>File of the face for what must be seen first.</summary>
    public const string StrongFile = "strong.ttf";

    private static readonly Lazy<FontFaces> Packaged =
        new(() => new(FontDataHelper.SegoeWPSemilight, FontDataHelper.SegoeWP, FontDataHelper.SegoeWPSemibold));

    private readonly GlyphCoverage[] _coverages;

    private FontFaces(byte[] display, byte[] text, byte[] strong)
    {
        DisplayFamily = Register(display);
        TextFamily = Register(text);
        StrongFamily = Register(strong);
        _coverages = [GlyphCoverage.Read(display), GlyphCoverage.Read(text), GlyphCoverage.Read(strong)];
    }

    /// <summary>The faces inside the PDF package: Latin with accents, no other script.</summary>
    public static FontFaces Default => Packaged.Value;

    internal string DisplayFamily { get; }

    internal string TextFamily { get; }

    internal string StrongFamily { get; }

    /// <summary>Takes an operator's three TrueType files.</summary>
    /// <param name="display">Bytes of <see cref="DisplayFile"/>.</param>
    /// <param name="text">Bytes of <see cref="TextFile"/>.</param>
    /// <param name="strong">Bytes of <see cref="StrongFile"/>.</param>
    /// <param name="problems">Receives one entry for each file that cannot be used (<see cref="FontProblems"/>).</param>
    /// <returns>The faces, or null where a problem was added.</returns>
    public static FontFaces? Read(byte[] display, byte[] text, byte[] strong, ICollection<Problem> problems)
    {
        var before = problems.Count;
        Check(DisplayFile, display, problems);
        Check(TextFile, text, problems);
        Check(StrongFile, strong, problems);
        return problems.Count == before ? new(display, text, strong) : null;
    }

    /// <summary>The characters of a text that at least one of the three faces cannot show, each once, in order of appearance.</summary>
    /// <param name="text">As it will be printed; it is composed (NFC) first, as the writer does.</param>
    public IReadOnlyList<string> FindMissing(string text) =>
        [.. text.Normalize().EnumerateRunes()
            .Where(rune => !_coverages.All(coverage => coverage.Contains(rune)))
            .Select(rune => rune.ToString())
            .Distinct(StringComparer.Ordinal)];

    private static void Check(string file, byte[] bytes, ICollection<Problem> problems)
    {
        // Outlines in a CFF table (OTTO) are embedded whole and under a wrong type, web fonts (wOFF) crash the writer.
        if (bytes.Length < 12 || BinaryPrimitives.ReadUInt32BigEndian(bytes) is not (0x00010000 or 0x74727565) || !GlyphCoverage.CanRead(bytes))
        {
            problems.Add(new(FontProblems.NotTrueType, new(file), file));
        }
        else if (!TrueTypeTables.AllowEmbedding(bytes))
        {
            problems.Add(new(FontProblems.EmbeddingForbidden, new(file), file));
        }
    }

    private static string Register(byte[] face)
    {
        var name = "face-" + Convert.ToHexStringLower(SHA256.HashData(face));
        FaceRegister.Add(name, face);
        return name;
    }
}
