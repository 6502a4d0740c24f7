using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;

namespace Training.Documents.Signatures;

/// <summary>What an authority vouches for.</summary>
/// <param name="At">When it saw the signature, UTC.</param>
/// <param name="Authority">Its certificate as the token brings it: whether to trust it is for the caller to say.</param>
public sealed record Timestamp(DateTimeOffset At, X509Certificate2 Authority)
{
    /// <summary>Reads a token, or null where it is none over this value.</summary>
    internal static Timestamp? Read(byte[] token, byte[] value)
    {
        try
        {
            return Rfc3161TimestampToken.TryDecode(token, out var read, out var length) && length == token.Length
                && read.VerifySignatureForHash(SHA256.HashData(value), HashAlgorithmName.SHA256, out var authority) && authority is not null
                ? new(read.TokenInfo.Timestamp, authority)
                : null;
        }
        catch (CryptographicException)
        {
            // A stranger's bytes: some faults come as false, some so.
            return null;
        }
    }
}
