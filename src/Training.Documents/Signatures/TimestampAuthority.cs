using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;

namespace Training.Documents.Signatures;

/// <summary>An authority after RFC 3161 that says that a signature existed at a time, so that it is worth something after its key has ended.</summary>
/// <param name="Nonce">Fresh and random for each signature: it ties the answer to this request.</param>
/// <param name="Ask">
/// Takes the bytes of a TimeStampReq, answers with those of a TimeStampResp, or with none where there is no answer: then nobody vouches. The caller
/// owns the network.
/// </param>
public sealed record TimestampAuthority(ReadOnlyMemory<byte> Nonce, Func<ReadOnlyMemory<byte>, ReadOnlyMemory<byte>> Ask)
{
    /// <summary>The token over a signature value; empty where there was no answer.</summary>
    /// <exception cref="CryptographicException">The answer is a refusal, or not for this request.</exception>
    internal byte[] Stamp(byte[] value)
    {
        var request = Rfc3161TimestampRequest.CreateFromHash(SHA256.HashData(value), HashAlgorithmName.SHA256, nonce: Nonce, requestSignerCertificates: true);
        var answer = Ask(request.Encode());
        return answer.IsEmpty ? [] : request.ProcessResponse(answer, out _).AsSignedCms().Encode();
    }
}
