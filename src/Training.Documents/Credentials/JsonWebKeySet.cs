using System.Text.Json.Nodes;

namespace Training.Documents.Credentials;

/// <summary>Writes an issuer's keys as a JSON Web Key Set (RFC 7517, 5), public parts only. Retired keys stay in it: their papers stay good.</summary>
/// <remarks>
/// Beside the members of RFC 7517 each key names its issuer (<c>iss</c>), since when it signs (<c>nbf</c>), since when no more
/// (<c>exp</c>) and since when it is not believed (<c>revoked</c> with <c>revoked_at</c>), named as in the historical keys of OpenID Federation 1.0; seconds
/// since 1970. Readers that do not know them pass over them.
/// </remarks>
public static class JsonWebKeySet
{
    /// <summary>For strangers: without keys that are not believed, since a common library passes over <c>revoked</c>.</summary>
    public static string WriteBelieved(IEnumerable<IssuerKey> keys) => WriteAll(keys.Where(key => key.NotBelievedSince is null));

    /// <summary>For our own check page, which asks the log about papers of a key that is not believed any more.</summary>
    public static string WriteAll(IEnumerable<IssuerKey> keys) =>
        SignedText.Write(new JsonObject { ["keys"] = new JsonArray([.. keys.Select(Entry)]) });

    private static JsonObject Entry(IssuerKey key)
    {
        var entry = key.Jwk.ToJson();
        entry["iss"] = key.Issuer.Did;
        entry["nbf"] = key.From.ToUnixTimeSeconds();
        if (key.RetiredAt is { } retired) entry["exp"] = retired.ToUnixTimeSeconds();
        if (key.NotBelievedSince is { } since) entry["revoked"] = new JsonObject { ["revoked_at"] = since.ToUnixTimeSeconds() };
        return entry;
    }
}
