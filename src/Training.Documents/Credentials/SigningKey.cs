using System.Diagnostics;
using System.Security.Cryptography;

namespace Training.Documents.Credentials;

/// <summary>A key that signs: P-256 for ES256, or RSA for RS256. Whoever made the key within keeps and disposes it.</summary>
public sealed class SigningKey
{
    private readonly AsymmetricAlgorithm _key;

    /// <param name="key">With its private part.</param>
    /// <exception cref="ArgumentException">It lies on another curve than P-256.</exception>
    public SigningKey(ECDsa key) => (_key, Public) = (key, PublicJwk.Of(key));

    /// <param name="key">With its private part.</param>
    /// <exception cref="ArgumentException">It is too short.</exception>
    public SigningKey(RSA key) => (_key, Public) = (key, PublicJwk.Of(key));

    /// <summary>Its public part.</summary>
    public PublicJwk Public { get; }

    /// <summary>Signs as RFC 7518, 3.3 (RS256) or 3.4 (ES256) says; of two ES256 signatures the one with the low s.</summary>
    internal byte[] Sign(byte[] data)
    {
        // One key signs for all requests, and the framework promises of its keys that they serve one thread at a time.
        lock (_key)
        {
            return _key switch
            {
                ECDsa key => LowS.Normalise(key.SignData(data, HashAlgorithmName.SHA256, DSASignatureFormat.IeeeP1363FixedFieldConcatenation)),
                RSA key => key.SignData(data, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1),
                _ => throw new UnreachableException(),
            };
        }
    }
}
