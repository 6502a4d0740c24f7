using System.Buffers;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using CsvHelper;
using Microsoft.AspNetCore.Mvc;

namespace Training.Web.Features.Shared;

/// <summary>Writes a table as a file that is sent once it is whole: onto the disk, row by row, never in memory.</summary>
/// <remarks>XLSX is the smallest workbook that ECMA-376 part 1 allows: one sheet, text as inline strings, dates as numbers with a date format.</remarks>
public static class SheetFiles
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const int DateStyle = 1;
    private const int HeadStyle = 2;

    private static readonly SearchValues<char> HexDigits = SearchValues.Create("0123456789abcdefABCDEF");

    // Day 0 of a workbook's calendar. It has a 29 February 1900 that never was; all our dates lie after it.
    private static readonly DateOnly DayZero = new(1899, 12, 30);

    // No stamp of the moment: the same rows are the same bytes.
    private static readonly DateTimeOffset EntryTime = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The table as a file to download, in the format that the address asked for: its end is <c>.xlsx</c> or <c>.csv</c>.</summary>
    /// <param name="controller">Who answers.</param>
    /// <param name="table">What is in it.</param>
    /// <param name="name">Name of the file without its end.</param>
    /// <param name="cancellation">Ends the writing.</param>
    public static async Task<IActionResult> SheetAsync(this Controller controller, SheetTable table, string name, CancellationToken cancellation)
    {
        var isWorkbook = controller.Request.Path.Value?.EndsWith(".xlsx", StringComparison.Ordinal) == true;
        var file = NewFile();
        try
        {
            await (isWorkbook ? WriteXlsxAsync(table, file, cancellation) : WriteCsvAsync(table, file, cancellation));
        }
        catch
        {
            await file.DisposeAsync();
            throw;
        }

        file.Position = 0;
        return isWorkbook
            ? controller.File(file, "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", $"{name}.xlsx")
            : controller.File(file, "text/csv; charset=utf-8", $"{name}.csv");
    }

    /// <summary>An empty file on the disk that is gone once it is closed.</summary>
    public static FileStream NewFile() => new(
        Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16,
        FileOptions.DeleteOnClose | FileOptions.Asynchronous);

    /// <summary>CSV for people (RFC 4180, UTF-8 with its mark): dates as ISO 8601, cells that look like a formula kept from being one.</summary>
    public static async Task WriteCsvAsync(SheetTable table, Stream file, CancellationToken cancellation)
    {
        await using var writer = new StreamWriter(file, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true), leaveOpen: true);
        await using var csv = new CsvWriter(writer, SpreadsheetFile.Layout);
        foreach (var head in table.Heads) csv.WriteField(SpreadsheetCell.Write(head));
        await csv.NextRecordAsync();
        await foreach (var row in table.Rows.WithCancellation(cancellation))
        {
            foreach (var cell in row)
            {
                csv.WriteField(cell switch
                {
                    null => "",
                    string text => SpreadsheetCell.Write(text),
                    DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                    int number => number.ToString(CultureInfo.InvariantCulture),
                    _ => throw new ArgumentException($"No cell holds a {cell.GetType().Name}.", nameof(table)),
                });
            }

            await csv.NextRecordAsync();
        }
    }

    /// <summary>XLSX: text stays text, dates are dates, numbers are numbers, the head stays in sight; nothing is computed.</summary>
    public static async Task WriteXlsxAsync(SheetTable table, Stream file, CancellationToken cancellation)
    {
        using var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true);
        foreach (var (path, text) in Parts(table.Name))
        {
            await using var part = new StreamWriter(Entry(zip, path).Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            await part.WriteAsync(text.AsMemory(), cancellation);
        }

        await using var sheet = Entry(zip, "xl/worksheets/sheet1.xml").Open();
        // What XML cannot hold is written as workbooks write it, below; so nothing is left to check.
        await using var xml = XmlWriter.Create(sheet, new() { Async = true, NewLineHandling = NewLineHandling.Entitize });
        xml.WriteStartElement("worksheet", Main);
        xml.WriteRaw("<sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"1\" topLeftCell=\"A2\" activePane=\"bottomLeft\" state=\"frozen\"/></sheetView></sheetViews>");
        xml.WriteRaw($"<cols><col min=\"1\" max=\"{table.Heads.Count}\" width=\"18\" customWidth=\"1\"/></cols>");
        xml.WriteStartElement("sheetData", Main);
        WriteRow(xml, 1, table.Heads, HeadStyle);
        var number = 1;
        await foreach (var row in table.Rows.WithCancellation(cancellation))
        {
            WriteRow(xml, ++number, row, style: 0);
            if (number % 500 == 0) await xml.FlushAsync();
        }

        await xml.WriteEndElementAsync();
        await xml.WriteEndElementAsync();
    }

    private static ZipArchiveEntry Entry(ZipArchive zip, string path)
    {
        var entry = zip.CreateEntry(path);
        entry.LastWriteTime = EntryTime;
        return entry;
    }

    private static void WriteRow(XmlWriter xml, int number, IReadOnlyList<object?> cells, int style)
    {
        xml.WriteStartElement("row", Main);
        xml.WriteAttributeString("r", number.ToString(CultureInfo.InvariantCulture));
        foreach (var (column, cell) in cells.Index())
        {
            if (cell is null) continue;
            xml.WriteStartElement("c", Main);
            xml.WriteAttributeString("r", Column(column) + number.ToString(CultureInfo.InvariantCulture));
            switch (cell)
            {
                case string text:
                    if (style > 0) xml.WriteAttributeString("s", style.ToString(CultureInfo.InvariantCulture));
                    xml.WriteAttributeString("t", "inlineStr");
                    xml.WriteStartElement("is", Main);
                    xml.WriteStartElement("t", Main);
                    xml.WriteAttributeString("xml", "space", null, "preserve");
                    xml.WriteString(Escaped(text));
                    xml.WriteEndElement();
                    xml.WriteEndElement();
                    break;
                case DateOnly day:
                    xml.WriteAttributeString("s", DateStyle.ToString(CultureInfo.InvariantCulture));
                    xml.WriteElementString("v", Main, (day.DayNumber - DayZero.DayNumber).ToString(CultureInfo.InvariantCulture));
                    break;
                case int count:
                    xml.WriteElementString("v", Main, count.ToString(CultureInfo.InvariantCulture));
                    break;
                default:
                    throw new ArgumentException($"No cell holds a {cell.GetType().Name}.", nameof(cells));
            }

            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private static string Column(int index) => index < 26 ? $"{(char)('A' + index)}" : Column((index / 26) - 1) + (char)('A' + (index % 26));

    // Workbooks write what XML cannot hold as _x0001_, and so also what merely looks like that (ECMA-376 part 1, 22.9.2.19).
    private static string Escaped(string text)
    {
        var written = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && XmlConvert.IsXmlSurrogatePair(text[i + 1], text[i])) written.Append(text[i]).Append(text[++i]);
            else if (!XmlConvert.IsXmlChar(text[i])) written.Append(CultureInfo.InvariantCulture, $"_x{(int)text[i]:X4}_");
            else if (IsLikeEscape(text.AsSpan(i))) written.Append("_x005F_");
            else written.Append(text[i]);
        }

        return written.ToString();
    }

    private static bool IsLikeEscape(ReadOnlySpan<char> text) =>
        text.Length >= 7 && text[0] == '_' && text[1] == 'x' && text[6] == '_' && text[2..6].IndexOfAnyExcept(HexDigits) < 0;

    private static IEnumerable<(string Path, string Text)> Parts(string sheet) =>
    [
        ("[Content_Types].xml", """
            <?xml version="1.0" encoding="UTF-8"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/></Types>
            """),
        ("_rels/.rels", $"""
            <?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="{Relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>
            """),
        ("xl/workbook.xml", $"""
            <?xml version="1.0" encoding="UTF-8"?><workbook xmlns="{Main}" xmlns:r="{Relations}"><sheets><sheet name="{System.Security.SecurityElement.Escape(sheet)}" sheetId="1" r:id="rId1"/></sheets></workbook>
            """),
        ("xl/_rels/workbook.xml.rels", $"""
            <?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="{Relations}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="{Relations}/styles" Target="styles.xml"/></Relationships>
            """),
        // Style 1 is a date, 2 a head; 14 is the date format that each spreadsheet writes as its reader is used to.
        ("xl/styles.xml", $"""
            <?xml version="1.0" encoding="UTF-8"?><styleSheet xmlns="{Main}"><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="14" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/></cellXfs></styleSheet>
            """),
    ];
}
