using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace Training.Web.Features.Statistics;

/// <summary>Writes CSV for programs: RFC 4180 as it stands, UTF-8 without a mark, nothing escaped for spreadsheets.</summary>
public static class PlainFile
{
    private static readonly CsvConfiguration Rfc4180 = new(CultureInfo.InvariantCulture) { NewLine = "\r\n" };

    /// <summary>A file that fits into memory.</summary>
    public static byte[] Write(IEnumerable<string[]> rows)
    {
        using var bytes = new MemoryStream();
        using (var writer = new StreamWriter(bytes, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)))
        using (var csv = new CsvWriter(writer, Rfc4180))
        {
            foreach (var row in rows) WriteRow(csv, row);
        }

        return bytes.ToArray();
    }

    /// <summary>A file that is written while its rows are read; each group of rows is sent before the next is asked for.</summary>
    public static async Task WriteAsync(IAsyncEnumerable<IReadOnlyList<string[]>> groups, Stream to, CancellationToken cancellation)
    {
        await foreach (var rows in groups.WithCancellation(cancellation)) await to.WriteAsync(Write(rows), cancellation);
    }

    private static void WriteRow(CsvWriter csv, string[] row)
    {
        foreach (var cell in row) csv.WriteField(cell);
        csv.NextRecord();
    }
}
