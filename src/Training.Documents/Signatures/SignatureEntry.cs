using System.Buffers.Text;
using System.Globalization;
using System.Text;

namespace Training.Documents.Signatures;

/// <summary>The entry of a signature in a file, as <see cref="PdfSignature"/> writes it.</summary>
/// <param name="Start">Where the signature begins: its angle bracket.</param>
/// <param name="End">The byte behind its closing bracket.</param>
/// <param name="SignedEnd">The end of what it says was signed.</param>
/// <param name="SignedAt">The claimed time.</param>
/// <remarks>It says where everything is. Other spellings of it need no refusal here: the signature covers all of it but the signature itself.</remarks>
internal readonly record struct SignatureEntry(int Start, int End, long SignedEnd, DateTimeOffset SignedAt)
{
    private const string TimeKey = "/M(";

    /// <summary>Reads the entry, or null where it is written otherwise.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="at">Where its ranges begin, right behind <see cref="PdfSignature.EntryKey"/>.</param>
    public static SignatureEntry? Read(ReadOnlySpan<byte> file, int at)
    {
        if (file.Length < at + PdfSignature.RangeLength || ReadNumbers(file.Slice(at, PdfSignature.RangeLength)) is not var (start, end, length)) return null;
        if (start != at + PdfSignature.RangeLength + PdfSignature.ContentsKey.Length || end <= start + 1 || end > file.Length) return null;
        if (file[start] != '<' || file[end - 1] != '>') return null;
        return ReadTime(file[end..]) is { } signedAt ? new(start, end, (long)end + length, signedAt) : null;
    }

    private static (int Start, int End, int Length)? ReadNumbers(ReadOnlySpan<byte> range)
    {
        if (!range.StartsWith("[0 "u8)) return null;
        var at = 3;
        Span<int> numbers = stackalloc int[3];
        foreach (ref var number in numbers)
        {
            if (!Utf8Parser.TryParse(range[at..], out number, out var digits)) return null;
            at = Math.Min(at + digits + 1, range.Length);
        }

        return (numbers[0], numbers[1], numbers[2]);
    }

    private static DateTimeOffset? ReadTime(ReadOnlySpan<byte> behind)
    {
        var end = behind.Length < 64 ? -1 : behind[..64].IndexOf((byte)')');
        if (end < 0 || !behind.StartsWith(Encoding.ASCII.GetBytes(TimeKey))) return null;
        return DateTimeOffset.TryParseExact(
            Encoding.ASCII.GetString(behind[TimeKey.Length..end]), PdfSignature.TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time)
            ? time
            : null;
    }
}
