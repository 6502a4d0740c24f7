using System.Buffers;
using System.Formats.Asn1;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;

namespace Training.Documents.Signatures;

/// <summary>Tells whether a PDF that somebody brings is one that we signed, byte for byte.</summary>
/// <remarks>
/// It knows no PDF but how our own papers are written: it looks for the one signature and holds file and signature against the spelling that we
/// write. Nothing is unpacked and nothing followed, so no file can make it work long: a few passes over the bytes, and one copy of the
/// signature. Spare spellings are refused because a signature does not cover itself (hexadecimal case, padding, the second
/// value of ECDSA, the envelope around it).
/// </remarks>
public static class SignedPdf
{
    // Signatures with the longest certificate and timestamp stay far below.
    private const int MostDigits = 1 << 17;

    private const int LongestSerial = 40;

    private static readonly byte[] EntryKey = Encoding.ASCII.GetBytes(PdfSignature.EntryKey);

    private static readonly byte[] RangeKey = Encoding.ASCII.GetBytes(PdfSignature.RangeKey);

    private static readonly SearchValues<byte> Digits = SearchValues.Create("0123456789ABCDEF"u8);

    /// <summary>Judges a file; any bytes at all, none of them makes it throw.</summary>
    /// <param name="file">The whole file. How large it may be is for the caller to say.</param>
    /// <param name="signers">All certificates that papers were ever signed with.</param>
    public static PdfVerdict Check(ReadOnlySpan<byte> file, IReadOnlyCollection<X509Certificate2> signers)
    {
        if (!file.StartsWith("%PDF-"u8)) return new PdfVerdict.NotAPdf();
        var at = file.IndexOf(EntryKey);
        if (at < 0) return file.IndexOf(RangeKey) < 0 ? new PdfVerdict.NotSigned() : new PdfVerdict.NotCanonical(CanonicalFault.Entry);
        at += EntryKey.Length;
        if (file[at..].IndexOf(EntryKey) >= 0) return new PdfVerdict.NotCanonical(CanonicalFault.SeveralSignatures);
        if (SignatureEntry.Read(file, at) is not { } entry) return new PdfVerdict.NotCanonical(CanonicalFault.Entry);
        if (entry.SignedEnd < file.Length) return new PdfVerdict.Extended();
        if (entry.SignedEnd > file.Length) return new PdfVerdict.Truncated();

        var room = ReadDigits(file[(entry.Start + 1)..(entry.End - 1)]);
        if (room is null) return new PdfVerdict.NotCanonical(CanonicalFault.Digits);
        if (!AsnDecoder.TryReadEncodedValue(room, AsnEncodingRules.DER, out _, out _, out _, out var length))
            return new PdfVerdict.NotCanonical(CanonicalFault.Signature);
        if (room.AsSpan(length).ContainsAnyExcept((byte)0)) return new PdfVerdict.NotCanonical(CanonicalFault.Padding);

        var signature = room.AsMemory(0, length);
        var signer = signers.FirstOrDefault(known => signature.Span.IndexOf(known.RawData) >= 0);
        return signer is null ? new PdfVerdict.UnknownSigner() : Check(file, entry, signature, signer);
    }

    private static PdfVerdict Check(ReadOnlySpan<byte> file, SignatureEntry entry, ReadOnlyMemory<byte> signature, X509Certificate2 signer)
    {
        var digest = Digest(file, entry.Start, entry.End);
        if (signature.Span.IndexOf(digest) < 0) return new PdfVerdict.Changed();
        try
        {
            var (value, token) = CmsSignature.ReadVariable(signature);
            var ours = new CmsSignature(signer, digest);
            if (!signature.Span.SequenceEqual(ours.Encode(value, token))) return new PdfVerdict.NotCanonical(CanonicalFault.Signature);
            if (!SignatureValue.IsSignedBy(signer, ours.SignedAttributes(), value)) return new PdfVerdict.Changed();
            var timestamp = token.Length == 0 ? null : Timestamp.Read(token, value);
            if (token.Length > 0 && timestamp is null) return new PdfVerdict.NotCanonical(CanonicalFault.Timestamp);
            return new PdfVerdict.Genuine(FindSerial(file), entry.SignedAt, signer, timestamp);
        }
        catch (AsnContentException)
        {
            return new PdfVerdict.NotCanonical(CanonicalFault.Signature);
        }
    }

    /// <summary>SHA-256 of the file without its signature.</summary>
    internal static byte[] Digest(ReadOnlySpan<byte> file, int start, int end)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(file[..start]);
        hash.AppendData(file[end..]);
        return hash.GetHashAndReset();
    }

    private static byte[]? ReadDigits(ReadOnlySpan<byte> digits) =>
        digits.Length is > 0 and <= MostDigits && digits.Length % 2 == 0 && !digits.ContainsAnyExcept(Digits)
            ? Convert.FromHexString(Encoding.ASCII.GetString(digits))
            : null;

    // The writer puts it there; the signature has been checked before it is read.
    private static string? FindSerial(ReadOnlySpan<byte> file)
    {
        var at = file.IndexOf("/Subject("u8);
        if (at < 0) return null;
        var text = file[(at + 9)..];
        var end = text[..Math.Min(text.Length, LongestSerial)].IndexOf((byte)')');
        return end < 0 ? null : Encoding.ASCII.GetString(text[..end]).Replace(" ", "", StringComparison.Ordinal);
    }
}
