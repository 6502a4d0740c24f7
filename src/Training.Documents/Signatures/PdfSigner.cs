using System.Security.Cryptography.X509Certificates;

namespace Training.Documents.Signatures;

/// <summary>Who signs one paper, and when.</summary>
/// <param name="Certificate">With its private key, on P-256 or RSA (<see cref="SignerCertificate"/> makes one).</param>
/// <param name="SignedAt">What the paper claims; cut to seconds.</param>
/// <param name="Timestamp">Who vouches for that time, or null for nobody.</param>
public sealed record PdfSigner(X509Certificate2 Certificate, DateTimeOffset SignedAt, TimestampAuthority? Timestamp = null);
