using Training.Certification;

namespace Training.Documents.Credentials;

/// <summary>What a reader of tokens relies on; nothing of it comes from the token.</summary>
public sealed record IssuerTrust
{
    /// <summary>Whose tokens are read.</summary>
    public required IssuerAddress Issuer { get; init; }

    /// <summary>Every known key: retired ones, not believed ones, and those of other issuers that may be met.</summary>
    public required IReadOnlyList<IssuerKey> Keys { get; init; }

    /// <summary>The status list credentials at hand, as tokens; those that do not verify are passed over. Of one purpose the newest counts.</summary>
    public IReadOnlyList<string> StatusLists { get; init; } = [];

    /// <summary>When the register logged the paper of a serial; null where that is not known. Asked only where a key is not believed any more.</summary>
    public Func<Serial, DateTimeOffset?> LoggedAt { get; init; } = _ => null;
}
