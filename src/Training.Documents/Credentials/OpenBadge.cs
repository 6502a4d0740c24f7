using System.Text.Json.Nodes;
using Training.Courses;

namespace Training.Documents.Credentials;

/// <summary>Writes an issued paper as an Open Badge 3.0 in its JWT form (Open Badges Specification 3.0, 8.2).</summary>
/// <remarks>It cannot be the same token as the Verifiable Credential: this standard wants RS256 and <c>typ</c> JWT, that one ES256 and vc+jwt.</remarks>
public static class OpenBadge
{
    /// <summary>Ending of the file: the bare token.</summary>
    public const string FileEnding = ".jwt";

    /// <summary>Writes it.</summary>
    /// <param name="credential">What it says.</param>
    /// <param name="language">Of its words; the standard knows one a badge.</param>
    /// <param name="key">RSA.</param>
    /// <exception cref="ArgumentException">The key is not for RS256.</exception>
    public static string Write(IssuedCredential credential, Language language, SigningKey key)
    {
        var document = CredentialDocument.Write(credential, ["OpenBadgeCredential"], language);
        // Each claim repeats a property of the credential, as 8.2 wants.
        var claims = new JsonObject
        {
            ["iss"] = credential.Issuer.Did,
            ["jti"] = credential.CheckPage.AbsoluteUri,
            ["nbf"] = credential.ValidFrom.ToUnixTimeSeconds(),
            ["sub"] = $"urn:uuid:{credential.SubjectId:D}",
            ["exp"] = credential.ValidUntil.ToUnixTimeSeconds(),
        };
        foreach (var claim in claims.ToList())
        {
            claims.Remove(claim.Key);
            document[claim.Key] = claim.Value;
        }

        return SignedText.Sign("RS256", credential.Issuer.KeyPage(key.Public.Kid).AbsoluteUri, "JWT", document, key);
    }
}
