using System.Buffers.Binary;
using System.Security.Cryptography;

namespace Training.Documents.IssueLog;

/// <summary>The state of the log at an instant.</summary>
/// <param name="Size">Leaves.</param>
/// <param name="Root">The tree's root over them.</param>
/// <param name="At">UTC; only whole milliseconds are signed.</param>
public sealed record TreeHead(long Size, LogHash Root, DateTimeOffset At)
{
    private const int SignedSize = 2 + 8 + 8 + LogHash.Size;

    /// <summary>
    /// The bytes that are signed: TreeHeadSignature of RFC 6962 §3.5 (version 0, type 1, milliseconds since 1970 and size as 64-bit numbers, high byte
    /// first, root). The text that a JWS signs begins with a letter, so one key may sign both and neither passes for the other.
    /// </summary>
    public byte[] SignedBytes()
    {
        var bytes = new byte[SignedSize];
        bytes[1] = 1;
        BinaryPrimitives.WriteInt64BigEndian(bytes.AsSpan(2), At.ToUnixTimeMilliseconds());
        BinaryPrimitives.WriteInt64BigEndian(bytes.AsSpan(10), Size);
        Root.WriteTo(bytes.AsSpan(18));
        return bytes;
    }

    /// <summary>Signs the head.</summary>
    /// <param name="key">The issuer's private key on P-256.</param>
    /// <returns>The head, cut to milliseconds, with its ES256 signature.</returns>
    public SignedTreeHead Sign(ECDsa key) => new(
        this with { At = DateTimeOffset.FromUnixTimeMilliseconds(At.ToUnixTimeMilliseconds()) },
        key.SignData(SignedBytes(), HashAlgorithmName.SHA256));
}
