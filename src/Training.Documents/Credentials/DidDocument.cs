using System.Text.Json.Nodes;

namespace Training.Documents.Credentials;

/// <summary>Writes the DID document of the issuer (W3C Decentralized Identifiers 1.0, 5): which keys speak for it.</summary>
public static class DidDocument
{
    /// <summary>
    /// The document. Retired keys stay among the assertion methods, since their papers stay good; a key that is not believed stays listed
    /// with <c>revoked</c> (Controlled Identifiers 1.0, 2.2) and asserts nothing.
    /// </summary>
    /// <param name="issuer">Whom it describes; keys of other issuers are left out.</param>
    /// <param name="keys">All of its keys.</param>
    public static string Write(IssuerAddress issuer, IReadOnlyList<IssuerKey> keys)
    {
        var own = keys.Where(key => key.Issuer == issuer).ToList();
        return SignedText.Write(new JsonObject
        {
            ["@context"] = new JsonArray("https://www.w3.org/ns/did/v1", "https://w3id.org/security/jwk/v1"),
            ["id"] = issuer.Did,
            ["verificationMethod"] = new JsonArray([.. own.Select(Method)]),
            ["assertionMethod"] = new JsonArray([.. own.Where(key => key.NotBelievedSince is null).Select(key => JsonValue.Create(issuer.KeyName(key.Jwk.Kid)))]),
        });
    }

    private static JsonObject Method(IssuerKey key)
    {
        var method = new JsonObject
        {
            ["id"] = key.Issuer.KeyName(key.Jwk.Kid),
            ["type"] = "JsonWebKey",
            ["controller"] = key.Issuer.Did,
            ["publicKeyJwk"] = key.Jwk.ToJson(),
        };
        if (key.NotBelievedSince is { } since) method["revoked"] = CredentialDocument.Stamp(since);
        return method;
    }
}
