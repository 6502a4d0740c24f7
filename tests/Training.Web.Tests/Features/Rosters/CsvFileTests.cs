using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Training.Web.Features.Rosters;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Rosters;

/// <summary>
/// The reader against csv-spectrum 2.0.0 (BSD-2-Clause), which <c>tests/run</c> restores from npm and nobody copies here, and against
/// files as people's programs write them.
/// </summary>
public sealed class CsvFileTests
{
    private static readonly string Corpus = Repository.Path("tests/node_modules/csv-spectrum");

    public static TheoryData<string> Names => [.. Directory.EnumerateFiles(Path.Combine(Corpus, "csvs"), "*.csv").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    [Fact]
    public void The_corpus_is_there() => Assert.Equal(12, Names.Count);

    [Theory, MemberData(nameof(Names))]
    public void Every_file_of_the_corpus_reads_as_its_json_says(string name)
    {
        var file = CsvFile.Read(File.ReadAllBytes(Path.Combine(Corpus, "csvs", $"{name}.csv")));

        using var json = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Corpus, "json", $"{name}.json")));
        // One file of the corpus holds its only row without a list around it.
        var rows = json.RootElement.ValueKind == JsonValueKind.Array ? [.. json.RootElement.EnumerateArray()] : new[] { json.RootElement };
        Assert.Empty(file.Problems);
        Assert.Equal(rows.Length, file.Lines.Count - 1);
        foreach (var (row, line) in rows.Zip(file.Lines.Skip(1)))
        {
            Assert.Equal(row.EnumerateObject().Select(cell => cell.Name), file.Lines[0].Cells);
            // In that one file of the corpus the telephone number of the CSV is not the one of the JSON.
            var skipped = name == "location_coordinates" ? 1 : 0;
            Assert.Equal(row.EnumerateObject().Select(cell => cell.Value.GetString()).Skip(skipped), line.Cells.Skip(skipped));
        }
    }

    public static TheoryData<string, byte[]> Encodings => new()
    {
        { "UTF-8", Encoding.UTF8.GetBytes("name;site\nÍñigo Peña;Block é") },
        { "UTF-8 with its mark", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("name,site\r\nÍñigo Peña,Block é\r\n")] },
        { "Windows-1252", [.. "name;site\r\n"u8, 0xCD, 0xF1, .. "igo Pe"u8, 0xF1, .. "a;Block "u8, 0xE9] },
        { "UTF-16, as tabs", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("name\tsite\r\nÍñigo Peña\tBlock é\r\n")] },
        { "UTF-16, big end first", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes("\"name\",\"site\"\n\"Íñigo Peña\",\"Block é\"")] },
        { "Carriage returns alone", Encoding.UTF8.GetBytes("name,site\rÍñigo Peña,Block é\r") },
    };

    [Theory, MemberData(nameof(Encodings))]
    public void Letters_separators_and_line_ends_are_recognised(string kind, byte[] content)
    {
        var file = CsvFile.Read(content);

        Assert.True(file.Problems.Count == 0, kind);
        Assert.Equal([["name", "site"], ["Íñigo Peña", "Block é"]], file.Lines.Select(line => line.Cells));
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Line_numbers_stay_true_after_blank_lines_and_line_ends_inside_quotes(string end)
    {
        var file = CsvFile.Read(Encoding.UTF8.GetBytes(string.Join(end, "name,site", "", "\"Solveig", "Amaro\",East", ",", "Pike,West", "")));

        Assert.Equal([1, 3, 6], file.Lines.Select(line => line.Line));
        Assert.Equal($"Solveig{end}Amaro", file.Lines[1].Cells[0]);
    }

    [Theory]
    [InlineData("a,b\n5'10\",2\n")]
    [InlineData("a,b\n\"1\"\"\",2\n")]
    [InlineData("a,b\n\"\",\"\"")]
    public void A_quote_that_disturbs_nothing_is_read(string text)
    {
        var file = CsvFile.Read(Encoding.UTF8.GetBytes(text));

        Assert.Empty(file.Problems);
        Assert.Equal(2, file.Lines[0].Cells.Count);
    }

    [Theory]
    [InlineData("a,b\n1,2\n\"3,4\n5,6\n", 3)]
    [InlineData("a,b\n1,2\n\"3\"x,4\n5,6\n", 3)]
    public void A_quote_out_of_place_is_told_with_its_line(string text, int line)
    {
        var problem = Assert.Single(CsvFile.Read(Encoding.UTF8.GetBytes(text)).Problems);

        Assert.Equal((RosterProblems.QuoteBroken, line), (problem.Code, problem.Place.Line));
    }

    public static TheoryData<string, string> Garbage => new()
    {
        { "zeros", RosterProblems.NotText },
        { "noise", RosterProblems.NotText },
        { "letters", RosterProblems.LineTooLong },
        { "commas", RosterProblems.LineTooLong },
        { "line ends", RosterProblems.TooManyRows },
        { "short rows", RosterProblems.TooManyRows },
        { "quotes", RosterProblems.LineTooLong },
    };

    [Theory, MemberData(nameof(Garbage))]
    public void Thirty_megabytes_of_garbage_are_refused_in_bounded_time_and_memory(string kind, string code)
    {
        var content = new byte[30 * 1024 * 1024];
        byte[] pattern = kind switch
        {
            "zeros" => [0],
            "noise" => [0xD7, 0x03, 0x9A, 0x22, 0x2C, 0x0A, 0x81],
            "letters" => [.. "x"u8],
            "commas" => [.. ","u8],
            "line ends" => [.. "\n"u8],
            "short rows" => [.. "a,b\n"u8],
            _ => [.. "\"\"\""u8],
        };
        for (var at = 0; at < content.Length; at++) content[at] = pattern[at % pattern.Length];
        var before = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();

        var file = CsvFile.Read(content);

        Assert.Equal(code, Assert.Single(file.Problems).Code);
        Assert.Empty(file.Lines);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
        // The text itself is 60 MB; a form never lets more than 8 MB of file come this far.
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 400L * 1024 * 1024);
    }
}
