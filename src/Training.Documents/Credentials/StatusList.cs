using System.IO.Compression;
using System.Numerics;

namespace Training.Documents.Credentials;

/// <summary>One bit for every place, of one purpose (Bitstring Status List 1.0, 2.2). Index 0 is the left-most bit of the first byte.</summary>
/// <remarks>
/// One list for all employers, so that an entry hides among the others, and at least four places for each paper ever given one, so that a
/// random draw rarely meets a taken one. A list grows by doubling; places that were given stay where they are.
/// </remarks>
public sealed class StatusList
{
    /// <summary>Fewest places of a list, from the standard (2.2: 16 KB).</summary>
    public const int FewestEntries = 131_072;

    /// <summary>Most places of a list that is written or read: room for a million papers.</summary>
    public const int MostEntries = 1 << 22;

    private const int EntriesPerPaper = 4;

    // What the longest incompressible list takes as gzip and base64url, and some: nothing longer is unpacked.
    private const int LongestText = 720_000;

    private readonly byte[] _bits;

    private StatusList(byte[] bits) => _bits = bits;

    /// <summary>How many places this list has.</summary>
    public int Entries => _bits.Length * 8;

    /// <summary>Whether the bit of a place is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public bool this[int index]
    {
        get
        {
            RefuseOtherPlaces(index, Entries);
            return (_bits[index / 8] & Mask(index)) != 0;
        }
    }

    /// <summary>
    /// How many places a list has when so many papers were given one: the smallest power of two from <see cref="FewestEntries"/> on with four for
    /// each, and <see cref="MostEntries"/> at most. A place is a random number below it; one that was given before is drawn again, whatever
    /// became of its paper.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than none.</exception>
    public static int SizeFor(int papers)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(papers);
        var entries = FewestEntries;
        while (entries < MostEntries && entries / EntriesPerPaper < papers) entries *= 2;
        return entries;
    }

    /// <summary>A list in which the given places are set.</summary>
    /// <param name="entries">How many places it has, by <see cref="SizeFor"/>.</param>
    /// <param name="set">The places.</param>
    /// <exception cref="ArgumentOutOfRangeException">No list has so many places, or the list has no such place.</exception>
    public static StatusList Of(int entries, IEnumerable<int> set)
    {
        if (!IsSize(entries)) throw new ArgumentOutOfRangeException(nameof(entries), entries, "No list has so many places.");
        var bits = new byte[entries / 8];
        foreach (var index in set)
        {
            RefuseOtherPlaces(index, entries);
            bits[index / 8] |= Mask(index);
        }

        return new(bits);
    }

    /// <summary>Whether it has a place: one that was written earlier may end before the newest.</summary>
    public bool Has(int index) => index >= 0 && index < Entries;

    /// <summary>The list as the standard writes it: <c>u</c> (multibase for base64url) and the gzip of its bytes.</summary>
    public string Encode()
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize)) gzip.Write(_bits);
        return "u" + CanonicalBase64Url.Encode(packed.ToArray());
    }

    /// <summary>Reads what <see cref="Encode"/> wrote; null for everything else, however long it would unpack.</summary>
    public static StatusList? Find(string encoded)
    {
        if (encoded.Length > LongestText || !encoded.StartsWith('u') || !CanonicalBase64Url.TryDecode(encoded[1..], out var packed)) return null;
        var bits = new byte[(MostEntries / 8) + 1];
        try
        {
            using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
            var length = gzip.ReadAtLeast(bits, bits.Length, throwOnEndOfStream: false);
            return IsSize(length * 8) ? new(bits[..length]) : null;
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }

    private static bool IsSize(int entries) => entries is >= FewestEntries and <= MostEntries && BitOperations.IsPow2(entries);

    private static byte Mask(int index) => (byte)(0x80 >> (index % 8));

    private static void RefuseOtherPlaces(int index, int entries)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, entries);
    }
}
