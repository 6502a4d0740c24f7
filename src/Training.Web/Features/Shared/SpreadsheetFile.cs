using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace Training.Web.Features.Shared;

/// <summary>Writes CSV for people and their spreadsheets (RFC 4180): UTF-8 with its mark, so that a spreadsheet reads the accents.</summary>
public static class SpreadsheetFile
{
    /// <summary>
    /// How all our files are laid out: rows end with CR LF (RFC 4180), and a cell with a line end of any kind is quoted; the library, told what
    /// ends a row, quotes no other line end.
    /// </summary>
    internal static CsvConfiguration Layout => new(CultureInfo.InvariantCulture)
    {
        NewLine = "\r\n", ShouldQuote = cell => ConfigurationFunctions.ShouldQuote(cell) || cell.Field?.AsSpan().IndexOfAny('\r', '\n') >= 0,
    };

    /// <summary>The file, its heading first. A cell that begins like a formula is written so that nothing is computed: <see cref="SpreadsheetCell"/>.</summary>
    public static byte[] Write(IEnumerable<string?[]> rows)
    {
        using var bytes = new MemoryStream();
        using (var writer = new StreamWriter(bytes, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true)))
        using (var csv = new CsvWriter(writer, Layout))
        {
            foreach (var row in rows)
            {
                foreach (var cell in row) csv.WriteField(SpreadsheetCell.Write(cell ?? ""));
                csv.NextRecord();
            }
        }

        return bytes.ToArray();
    }
}
