using System.Buffers.Binary;

namespace Training.Documents.IssueLog;

/// <summary>A SHA-256 value of the log: 32 bytes, compared by value.</summary>
/// <remarks>Four numbers instead of an array: a million of them cost no million objects.</remarks>
public readonly record struct LogHash
{
    /// <summary>Bytes of one hash.</summary>
    public const int Size = 32;

    private readonly ulong _first, _second, _third, _fourth;

    /// <summary>Reads a hash.</summary>
    /// <param name="bytes">Exactly <see cref="Size"/> bytes.</param>
    /// <exception cref="ArgumentException">More or fewer bytes.</exception>
    public LogHash(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length != Size) throw new ArgumentException($"A hash has {Size} bytes, not {bytes.Length}.", nameof(bytes));
        _first = BinaryPrimitives.ReadUInt64BigEndian(bytes);
        _second = BinaryPrimitives.ReadUInt64BigEndian(bytes[8..]);
        _third = BinaryPrimitives.ReadUInt64BigEndian(bytes[16..]);
        _fourth = BinaryPrimitives.ReadUInt64BigEndian(bytes[24..]);
    }

    /// <summary>Writes the hash to the first <see cref="Size"/> bytes.</summary>
    public void WriteTo(Span<byte> bytes)
    {
        BinaryPrimitives.WriteUInt64BigEndian(bytes, _first);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[8..], _second);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[16..], _third);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[24..], _fourth);
    }

    /// <summary>The bytes in an array of their own.</summary>
    public byte[] ToArray()
    {
        var bytes = new byte[Size];
        WriteTo(bytes);
        return bytes;
    }

    /// <summary>64 lower-case hexadecimal digits.</summary>
    public override string ToString() => Convert.ToHexStringLower(ToArray());
}
