using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Training.Courses;

namespace Training.Web.Features.Rosters;

/// <summary>The rows of a CSV file, whatever program wrote it.</summary>
/// <param name="Lines">In the file's order, lines without any cell left out; empty where the file as a whole cannot be read.</param>
/// <param name="Problems">What is wrong with the file as a whole, and quotes that are out of place.</param>
/// <remarks>
/// RFC 4180, and what people's programs make of it: commas, semicolons or tabs; any line end; UTF-8 with or without a mark, UTF-16 with
/// one, else Windows-1252.
/// </remarks>
public sealed record CsvFile(IReadOnlyList<CsvLine> Lines, IReadOnlyList<Problem> Problems)
{
    /// <summary>Most lines of cells that are read.</summary>
    public const int MostLines = 60_001;

    /// <summary>Most characters between two line ends. A file of one endless line is no roster, and its cells would fill the memory.</summary>
    public const int LongestLine = 20_000;

    private static readonly Encoding Windows1252 = CodePagesEncodingProvider.Instance.GetEncoding(1252)!; // not null: the provider has it

    /// <summary>Reads a file that is in memory as a whole.</summary>
    public static CsvFile Read(byte[] content)
    {
        var text = Decode(content);
        // Text has no control characters but tabs and line ends.
        if (text.AsSpan().IndexOfAnyInRange('\0', '\b') >= 0 || text.AsSpan().IndexOfAnyInRange('\u000e', '\u001f') >= 0)
            return new([], [new(RosterProblems.NotText, new())]);
        if (FindLongLine(text) is { } line) return new([], [new(RosterProblems.LineTooLong, new(Line: line), Figure(LongestLine))]);
        return Parse(text);
    }

    private static string Decode(byte[] content)
    {
        try
        {
            return content switch
            {
                [0xEF, 0xBB, 0xBF, ..] => Strict(new UTF8Encoding(false, true), content.AsSpan(3)),
                [0xFF, 0xFE, ..] => Strict(new UnicodeEncoding(bigEndian: false, byteOrderMark: false, throwOnInvalidBytes: true), content.AsSpan(2)),
                [0xFE, 0xFF, ..] => Strict(new UnicodeEncoding(bigEndian: true, byteOrderMark: false, throwOnInvalidBytes: true), content.AsSpan(2)),
                _ => Strict(new UTF8Encoding(false, true), content),
            };
        }
        catch (DecoderFallbackException)
        {
            // Not Unicode: the code page that office programs write where they do not write Unicode. It gives every byte a meaning.
            return Windows1252.GetString(content);
        }
    }

    private static string Strict(Encoding encoding, ReadOnlySpan<byte> bytes) => encoding.GetString(bytes);

    private static int? FindLongLine(string text)
    {
        var number = 1;
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (line.Length > LongestLine) return number;
            number++;
        }

        return null;
    }

    private static CsvFile Parse(string text)
    {
        var (lines, problems) = (new List<CsvLine>(), new List<Problem>());
        var begins = 1;
        var form = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = FindDelimiter(text),
            // Blank lines are left out below: left out by the parser they would not be counted, and every number after them would be wrong.
            IgnoreBlankLines = false,
            BadDataFound = found =>
            {
                // A quote inside a cell that has none around it is read as it stands: 5'10" and Anselm "Ace" Pike are what people write.
                if (found.Field.TrimStart().StartsWith('"')) problems.Add(new(RosterProblems.QuoteBroken, new(Line: begins)));
            },
        };
        using var reader = new StringReader(text);
        using var parser = new CsvParser(reader, form);
        var (read, last, raw) = (0, 1, "");
        while (parser.Read())
        {
            if (++read > MostLines) return new([], [new(RosterProblems.TooManyRows, new(), Figure(MostLines - 1))]);
            (last, raw) = (begins, parser.RawRecord);
            var cells = parser.Record ?? [];
            if (cells.Any(cell => cell.Length > 0)) lines.Add(new(begins, cells));
            begins = parser.RawRow + 1;
        }

        // An open quote swallows the rest of the file, which then is the last row.
        if (IsOpen(raw, form.Delimiter[0])) problems.Add(new(RosterProblems.QuoteBroken, new(Line: last)));
        return new(lines, [.. problems.DistinctBy(problem => problem.Place.Line)]);
    }

    /// <summary>Whether the row ends inside quotes.</summary>
    private static bool IsOpen(string row, char delimiter)
    {
        var (isQuoted, isStart) = (false, true);
        foreach (var sign in row)
        {
            // A doubled quote closes and opens again.
            if (sign == '"' && (isQuoted || isStart)) (isQuoted, isStart) = (!isQuoted, isQuoted);
            else isStart = !isQuoted && (sign == delimiter || sign is '\r' or '\n');
        }

        return isQuoted;
    }

    /// <summary>The separator that stands most often in the first row, outside quotes.</summary>
    private static string FindDelimiter(string text)
    {
        var counts = new Dictionary<char, int> { [','] = 0, [';'] = 0, ['\t'] = 0 };
        var isQuoted = false;
        foreach (var sign in text)
        {
            if (sign == '"') isQuoted = !isQuoted;
            else if (!isQuoted && sign is '\r' or '\n') break;
            else if (!isQuoted && counts.TryGetValue(sign, out var count)) counts[sign] = count + 1;
        }

        return counts.MaxBy(pair => pair.Value).Key.ToString();
    }

    private static string Figure(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>One row of a CSV file.</summary>
/// <param name="Line">One-based line on which it begins; a row with line ends inside quotes takes several.</param>
/// <param name="Cells">Without their quotes.</param>
public sealed record CsvLine(int Line, IReadOnlyList<string> Cells);
