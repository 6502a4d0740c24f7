namespace Training.Documents.Credentials;

/// <summary>Reads the compact token of a QR code. The module <c>credential.js</c> of the check page gives the same verdicts in a browser.</summary>
public static class TokenReading
{
    /// <summary>Reads it. Never throws, whatever the text.</summary>
    /// <param name="token">What was scanned after the <c>#</c>; null where there was none.</param>
    /// <param name="trust">Whose keys, lists and log count.</param>
    /// <param name="now">The clock, UTC.</param>
    public static TokenVerdict Read(string? token, IssuerTrust trust, DateTimeOffset now)
    {
        if (SignedTextReading.Open(token, CompactToken.LongestText, CompactToken.Type, key => key.Jwk.Kid, trust, out var opened) is { } fault)
            return new TokenVerdict.Refused(fault);
        if (CompactClaims.Find(opened.Payload) is not { } claims) return new TokenVerdict.Refused(TokenFault.ClaimsRefused);
        if (claims.Issuer != trust.Issuer.Did) return new TokenVerdict.Refused(TokenFault.IssuerRefused);
        if (opened.Key.NotBelievedSince is not null && !opened.Key.IsBelieved(trust.LoggedAt(claims.Serial)))
            return new TokenVerdict.Refused(TokenFault.KeyNotBelieved);
        return Judge(claims, trust, now);
    }

    private static TokenVerdict Judge(CompactClaims claims, IssuerTrust trust, DateTimeOffset now)
    {
        var withdrawals = StatusListReading.FindNewest(trust, StatusPurpose.Revocation, claims.StatusIndex);
        if (withdrawals is { } withdrawn && withdrawn.List[claims.StatusIndex]) return new TokenVerdict.Withdrawn(claims, withdrawn.AsOf);
        var suspensions = StatusListReading.FindNewest(trust, StatusPurpose.Suspension, claims.StatusIndex);
        if (suspensions is { } suspended && suspended.List[claims.StatusIndex]) return new TokenVerdict.Suspended(claims, suspended.AsOf);
        if (now < claims.ValidFrom) return new TokenVerdict.NotYetValid(claims);
        // RFC 7519, 4.1.4: from that second on.
        if (now >= claims.ValidUntil) return new TokenVerdict.Expired(claims);
        return new TokenVerdict.Current(claims, Older(withdrawals?.AsOf, suspensions?.AsOf));
    }

    private static DateTimeOffset? Older(DateTimeOffset? one, DateTimeOffset? other) => one is null || other is null ? null : one < other ? one : other;
}
