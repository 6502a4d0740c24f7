using System.Text.Json;
using System.Text.Json.Serialization;
using Training.Documents.IssueLog;
using Training.Records;

namespace Training.Web.Features.IssueLog;

/// <summary>A signed head as JSON: what <c>/log/head</c> serves, and what whoever watches the log keeps. docs/log.md, "A signed head".</summary>
/// <param name="Size">Leaves.</param>
/// <param name="Timestamp">When it was signed: milliseconds since 1970, UTC.</param>
/// <param name="Root">Lower-case hexadecimal, 64 digits.</param>
/// <param name="Signature">ES256 (r and s): lower-case hexadecimal, 128 digits.</param>
/// <param name="Kid">Names the key in the issuer's key set.</param>
public sealed record PublishedHead(
    [property: JsonRequired] long Size,
    [property: JsonRequired] long Timestamp,
    [property: JsonRequired] string Root,
    [property: JsonRequired] string Signature,
    [property: JsonRequired] string Kid)
{
    /// <summary>The last millisecond that our instants reach.</summary>
    public static readonly long LastTimestamp = DateTimeOffset.MaxValue.ToUnixTimeMilliseconds();

    /// <summary>A head of the records.</summary>
    public static PublishedHead Of(TreeHeadRecord head) => new(
        head.Size, head.At.ToUnixTimeMilliseconds(), Convert.ToHexStringLower(head.Root), Convert.ToHexStringLower(head.Signature), head.KeyId);

    /// <summary>Reads a saved head; null for everything that is none. Its signature is not looked at.</summary>
    public static PublishedHead? Find(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<PublishedHead>(json, JsonSerializerOptions.Web) is { } head && head.FindHead() is not null ? head : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>What was signed, and by which key; null where a member is no number or text of its kind.</summary>
    public SignedTreeHead? FindHead()
    {
        if (Size is < 0 or > MerkleTree.MostLeaves || Timestamp < 0 || Timestamp > LastTimestamp) return null;
        if (FindBytes(Root, LogHash.Size) is not { } root || FindBytes(Signature, 2 * LogHash.Size) is not { } signature) return null;
        return new(new(Size, new(root), DateTimeOffset.FromUnixTimeMilliseconds(Timestamp)), signature);
    }

    private static byte[]? FindBytes(string? text, int length) =>
        text?.Length == 2 * length && text.All(char.IsAsciiHexDigitLower) ? Convert.FromHexString(text) : null;
}
