using System.IO.Compression;

namespace Training.Documents.Credentials;

/// <summary>One bit for every place, of one purpose (Bitstring Status List 1.0, 2.2). Index 0 is the left-most bit of the first byte.</summary>
/// <remarks>131,072 places, the standard's fewest: one list for all employers, so that an entry hides among the others.</remarks>
public sealed class StatusList
{
    /// <summary>How many places a list has.</summary>
    public const int Entries = 131_072;

    private const int ByteCount = Entries / 8;

    // What an incompressible list takes as gzip and base64url, and some: nothing longer is unpacked.
    private const int LongestText = 24_000;

    private readonly byte[] _bits;

    private StatusList(byte[] bits) => _bits = bits;

    /// <summary>Whether the bit of a place is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public bool this[int index]
    {
        get
        {
            RefuseOtherPlaces(index);
            return (_bits[index / 8] & Mask(index)) != 0;
        }
    }

    /// <summary>A list in which the given places are set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public static StatusList Of(IEnumerable<int> set)
    {
        var bits = new byte[ByteCount];
        foreach (var index in set)
        {
            RefuseOtherPlaces(index);
            bits[index / 8] |= Mask(index);
        }

        return new(bits);
    }

    /// <summary>Draws a free place, each as likely, so that it tells neither when nor for whom a paper was issued.</summary>
    /// <param name="next">Gives a number from 0 to below its argument that nobody can guess: <c>RandomNumberGenerator.GetInt32</c>.</param>
    /// <param name="taken">Places ever given, whatever became of the paper: none is given twice.</param>
    /// <exception cref="InvalidOperationException">No place is free.</exception>
    public static int DrawIndex(Func<int, int> next, IReadOnlySet<int> taken)
    {
        var free = Enumerable.Range(0, Entries).Where(index => !taken.Contains(index)).ToList();
        return free.Count > 0 ? free[next(free.Count)] : throw new InvalidOperationException($"All {Entries} places of the status list are taken.");
    }

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
        var bits = new byte[ByteCount + 1];
        try
        {
            using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
            return gzip.ReadAtLeast(bits, bits.Length, throwOnEndOfStream: false) == ByteCount ? new(bits[..ByteCount]) : null;
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }

    private static byte Mask(int index) => (byte)(0x80 >> (index % 8));

    private static void RefuseOtherPlaces(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Entries);
    }
}
