namespace Training.Documents.Credentials;

/// <summary>Writes an issued paper as a W3C Verifiable Credential secured as a JWT (Securing Verifiable Credentials using JOSE and COSE, 3.1).</summary>
public static class VerifiableCredential
{
    /// <summary>The header's <c>typ</c>.</summary>
    public const string Type = "vc+jwt";

    /// <summary>Media type of the file, as registered by the same standard.</summary>
    public const string MediaType = "application/vc+jwt";

    /// <summary>Writes it, with its words in every language. The key is named by its address in the DID document.</summary>
    /// <exception cref="ArgumentException">The key is not for ES256.</exception>
    public static string Write(IssuedCredential credential, SigningKey key) =>
        SignedText.Sign("ES256", credential.Issuer.KeyName(key.Public.Kid), Type, CredentialDocument.Write(credential, []), key);
}
