using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Training.Documents.Credentials;

namespace Training.Web.Keys;

/// <summary>Our keys as they lie in the folder, with the private parts of those that sign. Nobody disposes them: requests may still use those of before.</summary>
internal sealed record OpenedKeys
{
    /// <summary>All of them.</summary>
    public required KeyRegister Register { get; init; }

    /// <summary>Which state of the register this is.</summary>
    public required (DateTime WrittenAt, long Length) Stamp { get; init; }

    /// <summary>Signs tokens, credentials and status lists.</summary>
    public required SigningKey Credentials { get; init; }

    /// <summary>The same key once more, for heads of the log.</summary>
    public required ECDsa Head { get; init; }

    /// <summary>Signs badges.</summary>
    public required SigningKey Badges { get; init; }

    /// <summary>Signs papers.</summary>
    public required X509Certificate2 Papers { get; init; }

    /// <summary>Every key for credentials and badges, public part only.</summary>
    public required IReadOnlyList<IssuerKey> All { get; init; }

    /// <summary>Every certificate that papers were ever signed with.</summary>
    public required IReadOnlyList<X509Certificate2> Signers { get; init; }
}
