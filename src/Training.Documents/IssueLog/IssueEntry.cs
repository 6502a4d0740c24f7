using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Training.Documents.IssueLog;

/// <summary>What one leaf of the log commits to: an event in the life of a paper. No name, no person, no employer.</summary>
/// <param name="Serial">Of the paper.</param>
/// <param name="SchemeId">The scheme that it shows.</param>
/// <param name="SchemeVersion">Hash of the course snapshot whose rules decided.</param>
/// <param name="StartsOn">First day of the period that it shows.</param>
/// <param name="ExpiresOn">Last day, included.</param>
/// <param name="Event">What happened.</param>
/// <param name="HappenedAt">When it was entered; cut to milliseconds.</param>
/// <remarks>
/// <para>The leaf, 33 bytes: the format's version, 0x01, and SHA-256 of the opening.</para>
/// <para>The opening: the version 0x01, the 16 bytes of salt, then seven texts in UTF-8, each after its length in two bytes, high byte first:
/// serial, scheme, version, first day, last day (yyyy-MM-dd), the event in lower case, the instant (yyyy-MM-ddTHH:mm:ss.fffZ).</para>
/// <para>Whoever holds the opening can show that the leaf is its own. Without the salt 2^128 guesses stand between the leaf and its
/// content, although serials and dates are few: with the salt deleted the leaf means nothing, and the tree still holds.</para>
/// </remarks>
public sealed record IssueEntry(
    string Serial, string SchemeId, string SchemeVersion, DateOnly StartsOn, DateOnly ExpiresOn, IssueEvent Event, DateTimeOffset HappenedAt)
{
    /// <summary>Bytes of salt, from a secure generator, fresh for each leaf.</summary>
    public const int SaltSize = 16;

    /// <summary>Bytes of a leaf.</summary>
    public const int LeafSize = 1 + LogHash.Size;

    private const byte Format = 1;

    /// <summary>The leaf as the log keeps and shows it.</summary>
    /// <exception cref="ArgumentException">The salt is not <see cref="SaltSize"/> bytes, or a text is longer than 65535 bytes.</exception>
    public byte[] Leaf(ReadOnlySpan<byte> salt) => [Format, .. SHA256.HashData(Opening(salt))];

    /// <summary>The bytes that the leaf commits to, for whoever wants to check it.</summary>
    /// <inheritdoc cref="Leaf"/>
    public byte[] Opening(ReadOnlySpan<byte> salt)
    {
        if (salt.Length != SaltSize) throw new ArgumentException($"A salt has {SaltSize} bytes, not {salt.Length}.", nameof(salt));
        using var bytes = new MemoryStream();
        bytes.WriteByte(Format);
        bytes.Write(salt);
        foreach (var text in Texts()) Write(bytes, text);
        return bytes.ToArray();
    }

    private string[] Texts() =>
    [
        Serial,
        SchemeId,
        SchemeVersion,
        StartsOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        ExpiresOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        Event switch
        {
            IssueEvent.Issued => "issued",
            IssueEvent.Superseded => "superseded",
            IssueEvent.Suspended => "suspended",
            IssueEvent.Reinstated => "reinstated",
            IssueEvent.Withdrawn => "withdrawn",
        },
        HappenedAt.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture),
    ];

    private static void Write(MemoryStream bytes, string text)
    {
        var content = Encoding.UTF8.GetBytes(text);
        if (content.Length > ushort.MaxValue) throw new ArgumentException($"A text of {content.Length} bytes is too long for a leaf.", nameof(text));
        Span<byte> length = stackalloc byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(length, (ushort)content.Length);
        bytes.Write(length);
        bytes.Write(content);
    }
}
