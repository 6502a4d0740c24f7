namespace Training.Documents.Credentials;

/// <summary>The public part of an issuer's key, and from when to when it was what.</summary>
public sealed record IssuerKey
{
    /// <summary>Whose key it is.</summary>
    public required IssuerAddress Issuer { get; init; }

    /// <summary>The public part; it names the key.</summary>
    public required PublicJwk Jwk { get; init; }

    /// <summary>UTC; since when it signs.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>UTC; since when it signs no more. What it signed stays good. Null while it signs.</summary>
    public DateTimeOffset? RetiredAt { get; init; }

    /// <summary>UTC; since when others may have it. Null where nobody has.</summary>
    public DateTimeOffset? NotBelievedSince { get; init; }

    /// <summary>Whether to believe what it signed.</summary>
    /// <param name="loggedAt">When the register logged the paper: never what the token says of itself, which whoever has the key may write. Null where that is not known.</param>
    public bool IsBelieved(DateTimeOffset? loggedAt) => NotBelievedSince is not { } since || loggedAt < since;
}
