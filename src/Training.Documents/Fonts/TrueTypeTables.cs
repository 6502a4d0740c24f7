using System.Buffers.Binary;

namespace Training.Documents.Fonts;

/// <summary>Finds tables of a TrueType file (OpenType specification, "Organization of an OpenType font").</summary>
internal static class TrueTypeTables
{
    private const int DirectoryStart = 12;
    private const int DirectoryEntry = 16;

    /// <summary>The bytes of a table, empty where the file has none or is cut short.</summary>
    public static ReadOnlySpan<byte> Find(ReadOnlySpan<byte> font, ReadOnlySpan<byte> tag)
    {
        if (font.Length < DirectoryStart) return [];
        var count = BinaryPrimitives.ReadUInt16BigEndian(font[4..]);
        for (var index = 0; index < count; index++)
        {
            var start = DirectoryStart + (index * DirectoryEntry);
            if (start + DirectoryEntry > font.Length) return [];
            var entry = font.Slice(start, DirectoryEntry);
            if (!entry[..4].SequenceEqual(tag)) continue;
            var offset = BinaryPrimitives.ReadUInt32BigEndian(entry[8..]);
            var length = BinaryPrimitives.ReadUInt32BigEndian(entry[12..]);
            return offset + (ulong)length <= (ulong)font.Length ? font.Slice((int)offset, (int)length) : [];
        }

        return [];
    }

    /// <summary>Whether the font's own licence bits (OS/2 table, fsType) let a subset of it be embedded.</summary>
    public static bool AllowEmbedding(ReadOnlySpan<byte> font)
    {
        var os2 = Find(font, "OS/2"u8);
        if (os2.Length < 10) return false;
        var type = BinaryPrimitives.ReadUInt16BigEndian(os2[8..]);
        const int RestrictedLicence = 0x0002, NoSubsetting = 0x0100, BitmapOnly = 0x0200;
        return (type & 0x000F) != RestrictedLicence && (type & (NoSubsetting | BitmapOnly)) == 0;
    }
}
