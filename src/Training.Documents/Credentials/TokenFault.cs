namespace Training.Documents.Credentials;

/// <summary>Why a text is not believed at all, in the order in which it is asked.</summary>
public enum TokenFault
{
    /// <summary>Too long, not three parts, or its header is no JSON object.</summary>
    NotAToken,

    /// <summary>A part is not base64url, or not its one spelling: white space, padding, other characters, spare bits set.</summary>
    NotCanonical,

    /// <summary>Another algorithm than ES256: unknown, none, or a MAC (RFC 8725, 3.1).</summary>
    AlgorithmRefused,

    /// <summary>The header says more than its algorithm, type and key, such as where to fetch a key, or is spelled otherwise than ours.</summary>
    HeaderRefused,

    /// <summary>Its <c>typ</c> is that of another kind of token (RFC 8725, 3.11).</summary>
    TypeRefused,

    /// <summary>No key of that name is known, or it is for another algorithm.</summary>
    KeyUnknown,

    /// <summary>The key is known and belongs to another issuer.</summary>
    KeyOfAnotherIssuer,

    /// <summary>The signature is not that of the key.</summary>
    BadSignature,

    /// <summary>The signature would verify, and is the twin with the high s: somebody changed it.</summary>
    TwinSignature,

    /// <summary>A claim is missing, twice there, of another type or out of its range.</summary>
    ClaimsRefused,

    /// <summary>It is signed and names another issuer.</summary>
    IssuerRefused,

    /// <summary>Others may have the key, and the log does not show that the paper is older than that.</summary>
    KeyNotBelieved,
}
