using System.Security.Cryptography;
using Training.Documents.Credentials;

namespace Training.Documents.IssueLog;

/// <summary>A head that the issuer stands by: whoever keeps one notices for ever where the log was changed or cut behind it.</summary>
/// <param name="Head">What was signed.</param>
/// <param name="Signature">ES256 as in RFC 7518 §3.4: r and s, 32 bytes each.</param>
public sealed record SignedTreeHead(TreeHead Head, ReadOnlyMemory<byte> Signature)
{
    /// <summary>Whether the holder of the key signed this head.</summary>
    /// <param name="key">The issuer's public key on P-256.</param>
    public bool IsSignedBy(ECDsa key) => key.VerifyData(Head.SignedBytes(), Signature.Span, HashAlgorithmName.SHA256);

    /// <summary>Whether the holder of a published key signed this head; false for a key of another kind.</summary>
    public bool IsSignedBy(PublicJwk key) => key is PublicJwk.P256 && key.Verifies(Head.SignedBytes(), Signature.ToArray());
}
