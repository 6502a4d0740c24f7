using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Shared;
using Training.Web.Languages;
using Training.Web.Problems;

namespace Training.Web.Features.Rosters;

/// <summary>Writes the CSV files of rosters, for people, their spreadsheets and the way back; dates as ISO 8601.</summary>
public sealed class RosterFile(IStringLocalizer<RostersText> text)
{
    private string[] Columns =>
        [text["ColumnBadge"], text["ColumnName"], text["ColumnSite"], text["ColumnCrew"], text["ColumnLanguage"], text["ColumnMailAddress"]];

    /// <summary>The employer's people of today; the file can be changed and sent back.</summary>
    public byte[] Write(IEnumerable<RosterPerson> people) => SpreadsheetFile.Write(
    [
        Columns,
        .. people.Select(person => (string?[])
            [person.Badge, person.Name, person.SiteName, person.Crew, person.Language.OwnName(), person.MailAddress]),
    ]);

    /// <summary>A file to start from: two invented people on one of the employer's sites, with every column there is.</summary>
    public byte[] WriteSample(string site, DateOnly day) => SpreadsheetFile.Write(
    [
        [.. Columns, text["ColumnStartsOn"]],
        ["A-1041", "Solveig Amaro", site, text["SampleCrew"], Language.English.OwnName(), "solveig.amaro@example.org", day.Iso()],
        ["A-1042", "Anselmo Pike", site, "", Language.Spanish.OwnName(), "", ""],
    ]);

    /// <summary>Everything that is to be mended, a row each.</summary>
    public byte[] Write(IEnumerable<Problem> problems) => SpreadsheetFile.Write(
    [
        [text["Line"], text["Column"], text["Finding"], text["ToDo"]],
        .. problems.Select(problem => (string?[])
        [
            problem.Place.Line?.ToString(CultureInfo.InvariantCulture), problem.Place.Part, ProblemText.Sentence(problem, CultureInfo.CurrentUICulture),
            ProblemText.Mend(problem, CultureInfo.CurrentUICulture),
        ]),
    ]);
}
