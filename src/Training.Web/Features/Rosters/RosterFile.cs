using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Languages;
using Training.Web.Problems;

namespace Training.Web.Features.Rosters;

/// <summary>Writes the CSV files of rosters, for people, their spreadsheets and the way back: UTF-8 with its mark, dates as ISO 8601.</summary>
public sealed class RosterFile(IStringLocalizer<RostersText> text)
{
    private string[] Columns =>
        [text["ColumnBadge"], text["ColumnName"], text["ColumnSite"], text["ColumnCrew"], text["ColumnLanguage"], text["ColumnMailAddress"]];

    /// <summary>The employer's people of today; the file can be changed and sent back.</summary>
    public byte[] Write(IEnumerable<RosterPerson> people) => Write(
    [
        Columns,
        .. people.Select(person => (string?[])
            [person.Badge, person.Name, person.SiteName, person.Crew, person.Language.OwnName(), person.MailAddress]),
    ]);

    /// <summary>A file to start from: two invented people on one of the employer's sites, with every column there is.</summary>
    public byte[] WriteSample(string site, DateOnly day) => Write(
    [
        [.. Columns, text["ColumnStartsOn"]],
        ["A-1041", "Solveig Amaro", site, text["SampleCrew"], Language.English.OwnName(), "solveig.amaro@example.org", day.Iso()],
        ["A-1042", "Anselmo Pike", site, "", Language.Spanish.OwnName(), "", ""],
    ]);

    /// <summary>Everything that is to be mended, a row each.</summary>
    public byte[] Write(IEnumerable<Problem> problems) => Write(
    [
        [text["Line"], text["Column"], text["Finding"], text["ToDo"]],
        .. problems.Select(problem => (string?[])
        [
            problem.Place.Line?.ToString(CultureInfo.InvariantCulture), problem.Place.Part, ProblemText.Sentence(problem, CultureInfo.CurrentUICulture),
            ProblemText.Mend(problem, CultureInfo.CurrentUICulture),
        ]),
    ]);

    private static byte[] Write(IEnumerable<string?[]> rows)
    {
        using var bytes = new MemoryStream();
        using (var writer = new StreamWriter(bytes, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true)))
        using (var csv = new CsvWriter(writer, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" }))
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
