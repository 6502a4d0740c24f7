using System.Globalization;
using System.Text.RegularExpressions;
using CsvHelper;
using Training.Web.Doors;
using Training.Web.Features.Shared;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Files;

/// <summary>What an employer takes along says what the pages say, in both formats; the workbooks are read by LibreOffice.</summary>
[Collection(ServedDemoTests.Name)]
public sealed partial class EmployerTablesTests(ServedDemo demo)
{
    [Theory]
    [InlineData("matrix", "")]
    [InlineData("matrix", "?standing=RenewalDue&order=LastDay")]
    [InlineData("lapses", "")]
    [InlineData("classes", "")]
    [InlineData("evidence", "")]
    public async Task Both_formats_have_the_same_cells(string table, string query)
    {
        using var browser = await demo.SignInAsync(ServedDemo.Actors[Role.Employer]);
        foreach (var language in new[] { "en", "es" })
        {
            var home = $"/{language}/employers/{demo.Own.EmployerId}";
            var csv = await browser.GetAsync($"{home}/{table}.csv{query}");
            var xlsx = await browser.GetAsync($"{home}/{table}.xlsx{query}");
            var folder = Directory.CreateTempSubdirectory("training-table-").FullName;
            await File.WriteAllBytesAsync(Path.Combine(folder, "table.xlsx"), xlsx.Bytes, TestContext.Current.CancellationToken);

            var expected = Read(csv);
            var read = await Office.ReadAsync(Path.Combine(folder, "table.xlsx"));

            Assert.Equal("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", xlsx.Headers["Content-Type"]);
            Assert.True(expected.Count > 1);
            Assert.Equal(expected.Select(row => string.Join('|', row)), read.Select(row => string.Join('|', row)));
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task The_numbers_of_the_pages_are_the_numbers_of_the_tables()
    {
        using var browser = await demo.SignInAsync(ServedDemo.Actors[Role.Employer]);
        var home = $"/en/employers/{demo.Own.EmployerId}";
        var page = (await browser.GetAsync(home)).Html;
        var lapses = Read(await browser.GetAsync($"{home}/lapses.csv")).Skip(1).ToList();
        var matrix = (await browser.GetAsync($"{home}/matrix?standing=Lapsed")).Html;
        var rows = Read(await browser.GetAsync($"{home}/matrix.csv?standing=Lapsed")).Skip(1).ToList();

        Assert.Equal(Figure().Count(page), lapses.Count);
        Assert.Contains($"of {rows.Count}, by name.", matrix, StringComparison.Ordinal);
        Assert.All(rows, row => Assert.Contains("lapsed", row));
    }

    [Theory]
    [InlineData("from=2026-02-30&through=2026-03-01")]
    [InlineData("from=2026-03-02&through=2026-03-01")]
    [InlineData("through=2999-01-01")]
    [InlineData("site=00000000-0000-0000-0000-000000000001")]
    public async Task What_cannot_be_asked_for_has_no_table(string query)
    {
        using var browser = await demo.SignInAsync(ServedDemo.Actors[Role.Employer]);

        Assert.Equal(404, (await browser.GetAsync($"/en/employers/{demo.Own.EmployerId}/evidence.xlsx?{query}")).Status);
    }

    private static List<string[]> Read(Reply file)
    {
        using var csv = new CsvReader(new StreamReader(new MemoryStream(file.Bytes)), CultureInfo.InvariantCulture);
        var rows = new List<string[]>();
        while (csv.Read()) rows.Add([.. csv.Parser.Record!.Select(SpreadsheetCell.Read)]); // not null: it was read
        return rows;
    }

    [GeneratedRegex("<span class=\"figure\">", RegexOptions.None, 1000)]
    private static partial Regex Figure();
}
