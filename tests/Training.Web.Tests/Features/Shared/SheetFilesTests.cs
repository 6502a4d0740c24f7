using System.Globalization;
using CsvHelper;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using Training.Web.Features.Shared;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Shared;

/// <summary>One table as CSV and as XLSX, read by programs that are not ours.</summary>
public sealed class SheetFilesTests
{
    private static readonly object?[][] Rows =
    [
        ["=1+1", new DateOnly(2026, 12, 7), 12, null],
        ["@SUM(A1)", new DateOnly(2024, 2, 29), -3, "+1 555"],
        ["Rey 🐍 Salazar", null, 0, "عمر بن الخطيب"],
        ["<b>Bold</b> & \"Sons\", Sr.", new DateOnly(1970, 1, 1), null, "two\nlines\tand a tab"],
        [" spaces ", new DateOnly(9999, 12, 31), int.MaxValue, "_x0041_ as it is"],
        ["000123", null, null, "control \u0001 mark"],
    ];

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private static SheetTable Table => new("Who & what", ["Name", "Day", "Count", "More"], Rows.ToAsyncEnumerable().Select(row => (IReadOnlyList<object?>)row));

    [Fact]
    public async Task A_workbook_is_valid_by_the_validator_of_its_format()
    {
        using var file = await XlsxAsync();
        using var document = SpreadsheetDocument.Open(file, isEditable: false);

        Assert.Empty(new OpenXmlValidator().Validate(document, Cancellation).Select(error => $"{error.Path?.XPath}: {error.Description}"));
    }

    [Fact]
    public async Task The_same_rows_are_the_same_bytes()
    {
        using var one = await XlsxAsync();
        await Task.Delay(TimeSpan.FromSeconds(2.1), Cancellation); // the clock of a zip ticks every two seconds
        using var other = await XlsxAsync();

        Assert.Equal(one.ToArray(), other.ToArray());
    }

    /// <summary>LibreOffice opens the workbook and writes CSV: every cell is what went in, a date is a date, and nothing was computed.</summary>
    [Fact]
    public async Task Another_program_opens_the_workbook_and_reads_every_cell()
    {
        var folder = Directory.CreateTempSubdirectory("training-xlsx-").FullName;
        using (var file = await XlsxAsync()) await File.WriteAllBytesAsync(Path.Combine(folder, "sheet.xlsx"), file.ToArray(), Cancellation);

        var rows = await Office.ReadAsync(Path.Combine(folder, "sheet.xlsx"));

        Assert.Equal(["Name", "Day", "Count", "More"], rows[0]);
        Assert.Equal(Rows.Select(row => string.Join('|', row.Select(Said))), rows.Skip(1).Select(row => string.Join('|', row)));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task The_text_file_has_the_same_cells_and_an_apostrophe_before_what_looks_like_a_formula()
    {
        using var file = new MemoryStream();
        await SheetFiles.WriteCsvAsync(Table, file, Cancellation);
        file.Position = 0;
        using var csv = new CsvReader(new StreamReader(file), CultureInfo.InvariantCulture);
        var rows = new List<string[]>();
        while (await csv.ReadAsync()) rows.Add(csv.Parser.Record!); // not null: it was read

        Assert.Equal(Rows.Select(row => string.Join('|', row.Select(Said))), rows.Skip(1).Select(row => string.Join('|', row.Select(SpreadsheetCell.Read))));
        Assert.Equal("'=1+1", rows[1][0]);
        Assert.Equal("-3", rows[2][2]); // a number is no formula
    }

    [Fact]
    public async Task A_column_beyond_Z_has_two_letters()
    {
        using var file = new MemoryStream();
        await SheetFiles.WriteXlsxAsync(new("Wide", [.. Enumerable.Range(1, 60).Select(number => $"c{number}")], AsyncEnumerable.Empty<IReadOnlyList<object?>>()), file, Cancellation);
        using var document = SpreadsheetDocument.Open(file, isEditable: false);

        Assert.Empty(new OpenXmlValidator().Validate(document, Cancellation));
        Assert.Contains("\"BH1\"", document.WorkbookPart!.WorksheetParts.Single().Worksheet!.OuterXml, StringComparison.Ordinal); // not null: a workbook has a sheet
    }

    private static string Said(object? cell) => cell switch
    {
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => cell?.ToString() ?? "",
    };

    private static async Task<MemoryStream> XlsxAsync()
    {
        var file = new MemoryStream();
        await SheetFiles.WriteXlsxAsync(Table, file, Cancellation);
        file.Position = 0;
        return file;
    }
}
