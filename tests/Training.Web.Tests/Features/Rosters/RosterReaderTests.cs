using System.Diagnostics;
using System.Globalization;
using System.Text;
using Training.Courses;
using Training.Web.Features.Rosters;

namespace Training.Web.Tests.Features.Rosters;

public sealed class RosterReaderTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    private static readonly Records.Site[] Sites =
    [
        new() { Id = Guid.CreateVersion7(), EmployerId = Guid.CreateVersion7(), Name = "Rim Line East", Zone = "America/Denver", Region = "US" },
        new() { Id = Guid.CreateVersion7(), EmployerId = Guid.CreateVersion7(), Name = "Mesa Peña", Zone = "America/Denver", Region = "US" },
    ];

    private static RosterRead Read(string text) => RosterReader.Read(Encoding.UTF8.GetBytes(text), Sites, _ => Today);

    [Theory]
    [InlineData("Badge number,Name,Site,Crew,Language,Mail address,Start date")]
    [InlineData("NÚMERO DE GAFETE;nombre;Sitio;cuadrilla;Idioma;Correo electrónico;fecha de inicio")]
    public void Columns_are_known_in_either_language(string header)
    {
        var delimiter = header.Contains(';', StringComparison.Ordinal) ? ";" : ",";

        var read = Read($"{header}\n{string.Join(delimiter, " A-1 ", "Íñigo Peña", "mesa peña", "North", "español", "inigo@example.org", "2026-03-01")}");

        Assert.Empty(read.Problems);
        var row = Assert.Single(read.Roster!.Rows); // not null: nothing to mend
        Assert.Equal(
            ("A-1", "Íñigo Peña", Sites[1].Id, "North", Language.Spanish, "inigo@example.org", new DateOnly(2026, 3, 1)),
            (row.Badge, row.Name, row.SiteId, row.Crew, row.Language, row.MailAddress, row.StartsOn));
    }

    [Fact]
    public void What_a_file_does_not_say_is_told_apart_from_an_empty_cell()
    {
        var read = Read("shoe size,site,name,badge\n44,Rim Line East,Anselm Pike,A-1\n");

        Assert.Equal(["shoe size"], read.IgnoredColumns);
        Assert.Equal((false, false), (read.Roster!.SaysCrew, read.Roster.SaysMailAddress)); // not null: nothing to mend
        Assert.Equal((null, null, Today), (read.Roster.Rows[0].Crew, read.Roster.Rows[0].Language, read.Roster.Rows[0].StartsOn));
    }

    [Theory]
    [InlineData("badge,name,site\n,Anselm Pike,Rim Line East", RosterProblems.CellEmpty, 2)]
    [InlineData("badge,name,site\nA-1,,Rim Line East", RosterProblems.CellEmpty, 2)]
    [InlineData("badge,name,site\nA-1,Anselm Pike", RosterProblems.CellEmpty, 2)]
    [InlineData("badge,name,site\nA-1,Anselm Pike,Nowhere", RosterProblems.SiteUnknown, 2)]
    [InlineData("badge,name,site\nA-1,Pike, Anselm,Rim Line East", RosterProblems.SiteUnknown, 2)]
    [InlineData("badge,name,site\nA-1,Anselm Pike,Rim Line East,7", RosterProblems.TooManyCells, 2)]
    [InlineData("badge,name,site\nA-1,Anselm Pike,Rim Line East\na-1 ,Íñigo Peña,Mesa Peña", RosterProblems.BadgeTwice, 3)]
    [InlineData("badge,name,site,language\nA-1,Anselm Pike,Rim Line East,fr", RosterProblems.LanguageUnknown, 2)]
    [InlineData("badge,name,site,mail\nA-1,Anselm Pike,Rim Line East,at home", RosterProblems.MailAddressUnclear, 2)]
    [InlineData("badge,name,site,mail\nA-1,Anselm Pike,Rim Line East,anselm@home", RosterProblems.MailAddressUnclear, 2)]
    [InlineData("badge,name,site,mail\nA-1,Anselm Pike,Rim Line East,anselm@@example.org", RosterProblems.MailAddressUnclear, 2)]
    [InlineData("badge,name,site,start date\nA-1,Anselm Pike,Rim Line East,03/01/2026", RosterProblems.DateUnclear, 2)]
    [InlineData("badge,name,site,start date\nA-1,Anselm Pike,Rim Line East,0001-01-01", RosterProblems.DateUnclear, 2)]
    [InlineData("badge,name\nA-1,Anselm Pike", RosterProblems.ColumnsMissing, 1)]
    [InlineData("badge,name,site,gafete\nA-1,Anselm Pike,Rim Line East,A-1", RosterProblems.ColumnTwice, 1)]
    [InlineData("badge,name,site\n", RosterProblems.NoRows, null)]
    [InlineData("", RosterProblems.NoRows, null)]
    public void What_is_to_be_mended_is_told_with_its_line(string text, string code, int? line)
    {
        var read = Read(text);

        Assert.Null(read.Roster);
        Assert.Contains((code, line), read.Problems.Select(problem => (problem.Code, problem.Place.Line)));
    }

    [Fact]
    public void A_cell_has_the_room_of_its_column_and_not_more()
    {
        Assert.Empty(Read($"badge,name,site\n{new string('7', 60)},{new string('x', 200)},Rim Line East").Problems);
        Assert.Equal(
            [RosterProblems.CellTooLong, RosterProblems.CellTooLong],
            Read($"badge,name,site\n{new string('7', 61)},{new string('x', 201)},Rim Line East").Problems.Select(problem => problem.Code));
    }

    [Fact]
    public void Fifty_thousand_rows_are_read_in_seconds()
    {
        var text = new StringBuilder("badge,name,site,crew,mail\n");
        for (var number = 0; number < 50_000; number++)
            text.Append(CultureInfo.InvariantCulture, $"A-{number},\"Amaro, Solveig {number}\",Rim Line East,Crew {number % 200},a{number}@example.org\n");
        var watch = Stopwatch.StartNew();

        var read = Read(text.ToString());

        Assert.Equal(50_000, read.Roster!.Rows.Count); // not null: nothing to mend
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 15);
    }
}
