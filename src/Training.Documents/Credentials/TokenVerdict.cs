namespace Training.Documents.Credentials;

/// <summary>What became of reading a compact token. A closed family; withdrawn goes before suspended, suspended before dates.</summary>
public abstract record TokenVerdict
{
    private TokenVerdict()
    {
    }

    /// <summary>Nothing that it says is to be believed or shown.</summary>
    /// <param name="Fault">The first that was found.</param>
    public sealed record Refused(TokenFault Fault) : TokenVerdict;

    /// <summary>Signed by the issuer and withdrawn.</summary>
    /// <param name="Claims">What it says.</param>
    /// <param name="AsOf">The instant of the list that says so.</param>
    public sealed record Withdrawn(CompactClaims Claims, DateTimeOffset AsOf) : TokenVerdict;

    /// <summary>Signed by the issuer and suspended.</summary>
    /// <param name="Claims">What it says.</param>
    /// <param name="AsOf">The instant of the list that says so.</param>
    public sealed record Suspended(CompactClaims Claims, DateTimeOffset AsOf) : TokenVerdict;

    /// <summary>Signed by the issuer; its first day has not begun.</summary>
    /// <param name="Claims">What it says.</param>
    public sealed record NotYetValid(CompactClaims Claims) : TokenVerdict;

    /// <summary>Signed by the issuer; its last day is over.</summary>
    /// <param name="Claims">What it says.</param>
    public sealed record Expired(CompactClaims Claims) : TokenVerdict;

    /// <summary>Signed by the issuer and within its days.</summary>
    /// <param name="Claims">What it says.</param>
    /// <param name="StatusAsOf">When it was neither withdrawn nor suspended, the older of both lists; null where a list is not at hand: not known.</param>
    public sealed record Current(CompactClaims Claims, DateTimeOffset? StatusAsOf) : TokenVerdict;
}
