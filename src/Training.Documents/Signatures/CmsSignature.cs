using System.Formats.Asn1;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Training.Documents.Signatures;

/// <summary>The signature inside a PDF: detached CMS (RFC 5652 §5) as PAdES B-B asks (ETSI EN 319 142-1 §6.3), with SHA-256.</summary>
/// <param name="certificate">The signer's.</param>
/// <param name="digest">SHA-256 of what is signed.</param>
/// <remarks>
/// Everything but the value and the timestamp follows from certificate and digest. So there is one spelling of a signature, and a check
/// writes it again and compares: what a CMS leaves outside its own signature cannot be changed unnoticed either. A general reader of CMS
/// was rejected for that: it takes many spellings.
/// </remarks>
internal sealed class CmsSignature(X509Certificate2 certificate, byte[] digest)
{
    private const string SignedData = "1.2.840.113549.1.7.2";
    private const string Data = "1.2.840.113549.1.7.1";
    private const string Sha256 = "2.16.840.1.101.3.4.2.1";
    private const string ContentType = "1.2.840.113549.1.9.3";
    private const string MessageDigest = "1.2.840.113549.1.9.4";

    // Names the certificate under the signature, so that no other of the same key can take its place (RFC 5035 §3).
    private const string SigningCertificateV2 = "1.2.840.113549.1.9.16.2.47";

    // RFC 3161, appendix A.
    private const string SignatureTimestamp = "1.2.840.113549.1.9.16.2.14";

    private static readonly Asn1Tag Tag0 = new(TagClass.ContextSpecific, 0, isConstructed: true);
    private static readonly Asn1Tag Tag1 = new(TagClass.ContextSpecific, 1, isConstructed: true);

    /// <summary>What the value is made over: the signed attributes as a SET (RFC 5652 §5.4).</summary>
    public byte[] SignedAttributes()
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        WriteAttributes(writer, Asn1Tag.SetOf);
        return writer.Encode();
    }

    /// <summary>Writes the whole signature.</summary>
    /// <param name="value">The signature value.</param>
    /// <param name="timestamp">The token of RFC 3161 over it, or empty for none.</param>
    public byte[] Encode(ReadOnlySpan<byte> value, ReadOnlySpan<byte> timestamp)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        {
            writer.WriteObjectIdentifier(SignedData);
            using (writer.PushSequence(Tag0))
            using (writer.PushSequence())
            {
                writer.WriteInteger(1);
                using (writer.PushSetOf()) WriteAlgorithm(writer, Sha256);
                using (writer.PushSequence()) writer.WriteObjectIdentifier(Data);
                using (writer.PushSetOf(Tag0)) writer.WriteEncodedValue(certificate.RawData);
                using (writer.PushSetOf()) WriteSigner(writer, value, timestamp);
            }
        }

        return writer.Encode();
    }

    /// <summary>Finds value and timestamp; of the rest nothing is looked at.</summary>
    /// <exception cref="AsnContentException">There are none.</exception>
    public static (byte[] Value, byte[] Timestamp) ReadVariable(ReadOnlyMemory<byte> signature)
    {
        var outer = new AsnReader(signature, AsnEncodingRules.DER).ReadSequence();
        outer.ReadObjectIdentifier();
        var signed = outer.ReadSequence(Tag0).ReadSequence();
        for (var skipped = 0; skipped < 4; skipped++) signed.ReadEncodedValue();
        var signer = signed.ReadSetOf().ReadSequence();
        for (var skipped = 0; skipped < 5; skipped++) signer.ReadEncodedValue();
        var value = signer.ReadOctetString();
        if (!signer.HasData) return (value, []);
        var attribute = signer.ReadSetOf(Tag1).ReadSequence();
        attribute.ReadObjectIdentifier();
        return (value, attribute.ReadSetOf().ReadEncodedValue().ToArray());
    }

    private void WriteSigner(AsnWriter writer, ReadOnlySpan<byte> value, ReadOnlySpan<byte> timestamp)
    {
        using var sequence = writer.PushSequence();
        writer.WriteInteger(1);
        using (writer.PushSequence())
        {
            writer.WriteEncodedValue(certificate.IssuerName.RawData);
            writer.WriteInteger(certificate.SerialNumberBytes.Span);
        }

        WriteAlgorithm(writer, Sha256);
        WriteAttributes(writer, Tag0);
        SignatureValue.WriteAlgorithm(writer, certificate);
        writer.WriteOctetString(value);
        if (timestamp.IsEmpty) return;
        using var unsigned = writer.PushSetOf(Tag1);
        using var attribute = writer.PushSequence();
        writer.WriteObjectIdentifier(SignatureTimestamp);
        using var token = writer.PushSetOf();
        writer.WriteEncodedValue(timestamp);
    }

    // No signing-time: PAdES forbids it beside the PDF's own /M.
    private void WriteAttributes(AsnWriter writer, Asn1Tag tag)
    {
        using var set = writer.PushSetOf(tag);
        using (writer.PushSequence())
        {
            writer.WriteObjectIdentifier(ContentType);
            using (writer.PushSetOf()) writer.WriteObjectIdentifier(Data);
        }

        using (writer.PushSequence())
        {
            writer.WriteObjectIdentifier(MessageDigest);
            using (writer.PushSetOf()) writer.WriteOctetString(digest);
        }

        using (writer.PushSequence())
        {
            writer.WriteObjectIdentifier(SigningCertificateV2);
            // One ESSCertIDv2 with the hash alone, SHA-256 being the default that DER leaves out.
            using (writer.PushSetOf())
            using (writer.PushSequence())
            using (writer.PushSequence())
            using (writer.PushSequence())
            {
                writer.WriteOctetString(SHA256.HashData(certificate.RawData));
            }
        }
    }

    // Without parameters: RFC 5754 §2.
    private static void WriteAlgorithm(AsnWriter writer, string identifier)
    {
        using var sequence = writer.PushSequence();
        writer.WriteObjectIdentifier(identifier);
    }
}
