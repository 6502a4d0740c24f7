using System.Text.Json.Nodes;

namespace Training.Documents.Credentials;

/// <summary>Writes a status list as the credential that others fetch (Bitstring Status List 1.0, 2.2), a JWT like the others.</summary>
public static class StatusListCredential
{
    /// <summary>Writes it.</summary>
    /// <param name="issuer">Who issues it; that of the papers.</param>
    /// <param name="purpose">What a set bit says.</param>
    /// <param name="list">The bits.</param>
    /// <param name="asOf">The instant whose state it tells, UTC.</param>
    /// <param name="refreshAfter">How long others may keep it before they look again; also what the page's caches are told.</param>
    /// <param name="validFor">How long it may be relied on at all; longer than <paramref name="refreshAfter"/>, so that an hour without a network stops nobody.</param>
    /// <param name="key">For ES256.</param>
    /// <exception cref="ArgumentException">The key is for another algorithm.</exception>
    public static string Write(
        IssuerAddress issuer, StatusPurpose purpose, StatusList list, DateTimeOffset asOf, TimeSpan refreshAfter, TimeSpan validFor, SigningKey key)
    {
        var page = issuer.StatusListPage(purpose).AbsoluteUri;
        var document = new JsonObject
        {
            ["@context"] = new JsonArray(CredentialDocument.CredentialsContext),
            ["id"] = page,
            ["type"] = new JsonArray("VerifiableCredential", "BitstringStatusListCredential"),
            ["issuer"] = issuer.Did,
            ["validFrom"] = CredentialDocument.Stamp(asOf),
            ["validUntil"] = CredentialDocument.Stamp(asOf + validFor),
            ["credentialSubject"] = new JsonObject
            {
                ["id"] = $"{page}#list",
                ["type"] = "BitstringStatusList",
                ["statusPurpose"] = purpose.Name(),
                ["encodedList"] = list.Encode(),
                // Milliseconds.
                ["ttl"] = (long)refreshAfter.TotalMilliseconds,
            },
        };
        return SignedText.Sign("ES256", issuer.KeyName(key.Public.Kid), VerifiableCredential.Type, document, key);
    }
}
