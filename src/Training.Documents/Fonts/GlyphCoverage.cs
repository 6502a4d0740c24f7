using System.Buffers.Binary;
using System.Text;

namespace Training.Documents.Fonts;

/// <summary>Which characters a TrueType font has a glyph for: its Unicode character map (OpenType "cmap", formats 4 and 12).</summary>
/// <remarks>The PDF writer prints an empty box for a missing glyph and says nothing; a name must not leave the house like that.</remarks>
internal sealed class GlyphCoverage
{
    private readonly HashSet<int> _characters;

    private GlyphCoverage(HashSet<int> characters) => _characters = characters;

    public static bool CanRead(ReadOnlySpan<byte> font) => FindMap(font) is { Length: > 0 };

    /// <exception cref="ArgumentException">The font has no Unicode map; ask <see cref="CanRead"/> first.</exception>
    public static GlyphCoverage Read(ReadOnlySpan<byte> font)
    {
        var map = FindMap(font);
        if (map.IsEmpty) throw new ArgumentException("The font has no Unicode character map.", nameof(font));
        return new(BinaryPrimitives.ReadUInt16BigEndian(map) == 4 ? ReadSegments(map) : ReadGroups(map));
    }

    public bool Contains(Rune rune) => _characters.Contains(rune.Value);

    private static ReadOnlySpan<byte> FindMap(ReadOnlySpan<byte> font)
    {
        var cmap = TrueTypeTables.Find(font, "cmap"u8);
        if (cmap.Length < 4) return [];
        ReadOnlySpan<byte> found = [];
        var count = BinaryPrimitives.ReadUInt16BigEndian(cmap[2..]);
        for (var index = 0; index < count && 12 + (index * 8) <= cmap.Length; index++)
        {
            var entry = cmap.Slice(4 + (index * 8), 8);
            var offset = BinaryPrimitives.ReadUInt32BigEndian(entry[4..]);
            if (BinaryPrimitives.ReadUInt16BigEndian(entry) != 3 || offset + 16 > cmap.Length) continue;
            var map = cmap[(int)offset..];
            var format = BinaryPrimitives.ReadUInt16BigEndian(map);
            if (format == 12) return map;
            if (format == 4 && BinaryPrimitives.ReadUInt16BigEndian(entry[2..]) == 1) found = map;
        }

        return found;
    }

    private static HashSet<int> ReadSegments(ReadOnlySpan<byte> map)
    {
        var characters = new HashSet<int>();
        var doubled = BinaryPrimitives.ReadUInt16BigEndian(map[6..]);
        // Four arrays of one length, a padding word after the first.
        var ends = map[14..];
        var starts = map[(16 + doubled)..];
        var deltas = map[(16 + (2 * doubled))..];
        var offsets = map[(16 + (3 * doubled))..];
        for (var segment = 0; segment < doubled; segment += 2)
        {
            var start = BinaryPrimitives.ReadUInt16BigEndian(starts[segment..]);
            var end = BinaryPrimitives.ReadUInt16BigEndian(ends[segment..]);
            var delta = BinaryPrimitives.ReadUInt16BigEndian(deltas[segment..]);
            var offset = BinaryPrimitives.ReadUInt16BigEndian(offsets[segment..]);
            for (int character = start; character <= end && character != 0xFFFF; character++)
            {
                var glyph = character;
                if (offset != 0)
                {
                    // The offset counts from its own place in the table.
                    var place = segment + offset + (2 * (character - start));
                    if (place + 2 > offsets.Length) continue;
                    glyph = BinaryPrimitives.ReadUInt16BigEndian(offsets[place..]);
                    if (glyph == 0) continue;
                }

                if (((glyph + delta) & 0xFFFF) != 0) characters.Add(character);
            }
        }

        return characters;
    }

    private static HashSet<int> ReadGroups(ReadOnlySpan<byte> map)
    {
        var characters = new HashSet<int>();
        var count = BinaryPrimitives.ReadUInt32BigEndian(map[12..]);
        for (var index = 0; index < count && 28 + (index * 12) <= map.Length; index++)
        {
            var group = map.Slice(16 + (index * 12), 12);
            var start = (int)BinaryPrimitives.ReadUInt32BigEndian(group);
            var end = (int)BinaryPrimitives.ReadUInt32BigEndian(group[4..]);
            var glyph = BinaryPrimitives.ReadUInt32BigEndian(group[8..]);
            for (var character = start; character <= end && character <= 0x10FFFF; character++)
            {
                if (glyph + (uint)(character - start) != 0) characters.Add(character);
            }
        }

        return characters;
    }
}
