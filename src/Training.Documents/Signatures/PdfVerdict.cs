using System.Security.Cryptography.X509Certificates;

namespace Training.Documents.Signatures;

/// <summary>What a file that somebody brought turned out to be. A closed family.</summary>
public abstract record PdfVerdict
{
    private PdfVerdict()
    {
    }

    /// <summary>It does not begin as a PDF does.</summary>
    public sealed record NotAPdf : PdfVerdict;

    /// <summary>A PDF without a signature.</summary>
    public sealed record NotSigned : PdfVerdict;

    /// <summary>It is not written as we write: not ours, or changed where a signature does not look.</summary>
    public sealed record NotCanonical(CanonicalFault Fault) : PdfVerdict;

    /// <summary>There are bytes behind what was signed.</summary>
    public sealed record Extended : PdfVerdict;

    /// <summary>There are fewer bytes than were signed.</summary>
    public sealed record Truncated : PdfVerdict;

    /// <summary>Signed with a certificate that is none of ours, whatever name it bears.</summary>
    public sealed record UnknownSigner : PdfVerdict;

    /// <summary>It names a certificate of ours, and its bytes are not those that were signed.</summary>
    public sealed record Changed : PdfVerdict;

    /// <summary>
    /// Every byte is as it was signed; only a timestamp may have been put in or taken out since, for none can lie under the signature that it stamps. Whether the
    /// certificate still holds, or another took its place, the records know.
    /// </summary>
    /// <param name="Serial">As the document names it, or null where it names none.</param>
    /// <param name="SignedAt">As the signer claimed, UTC.</param>
    /// <param name="Signer">The one of the given certificates that signed it.</param>
    /// <param name="Timestamp">Who vouches for the time, or null for nobody.</param>
    public sealed record Genuine(string? Serial, DateTimeOffset SignedAt, X509Certificate2 Signer, Timestamp? Timestamp) : PdfVerdict;
}
