namespace Training.Documents.Credentials;

/// <summary>Writes the token of the QR code: a JWS (RFC 7515) of a few claims that a gate verifies without a network.</summary>
public static class CompactToken
{
    /// <summary>The header's <c>typ</c>, its own, so that no other token of ours is taken for it (RFC 8725, 3.11).</summary>
    public const string Type = "gate+jwt";

    /// <summary>Greatest length that is read: the longest name in a script of three bytes a character fits.</summary>
    public const int LongestText = 1200;

    /// <summary>Writes it.</summary>
    /// <exception cref="ArgumentException">The key is not for ES256.</exception>
    public static string Write(IssuedCredential credential, SigningKey key) =>
        SignedText.Sign("ES256", key.Public.Kid, Type, CompactClaims.Of(credential).ToJson(), key);

    /// <summary>What the QR code holds: the check page with the token as its fragment, which a browser does not send to anybody.</summary>
    public static Uri Address(IssuedCredential credential, string token) => new($"{credential.CheckPage.GetLeftPart(UriPartial.Query)}#{token}");
}
