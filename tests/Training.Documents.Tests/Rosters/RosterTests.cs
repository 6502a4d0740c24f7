using System.Text.RegularExpressions;
using CsCheck;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Rosters;
using Training.Documents.Tests.Typesetting;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Rosters;

public sealed class RosterTests : PaperTests
{
    protected override string Golden => "Rosters/Golden/reading-order";

    protected override byte[] Print(Language language, PaperSize paper, bool isDemonstration) => CrewRosters.Print(CrewRosters.Of(language, paper, isDemonstration));

    protected override IReadOnlyList<string> Sentences(Language language) => language == Language.English
        ? ["Crew roster: Kestrel Ridge Energy, Cedar Flat Solar, Tracker crew B", "Current in at least one scheme: 1 of 5", "As of 26 November 2026, 14:05 (UTC-08:00)",
            "José Ángel Ibáñez-Núñez KR-1042", "renewal due 20 December 2026", "suspended not current", "lapsed ended on 31 October 2026", "name erased KR-0311", "withdrawn not current",
            "Pilar Sandoval Reyes KR-1100 nothing yet", "look it up again", "Page 1 of 1"]
        : ["Lista de cuadrilla: Kestrel Ridge Energy, Cedar Flat Solar, Tracker crew B", "Vigentes en al menos un esquema: 1 de 5", "Al 26 de noviembre de 2026, 14:05 (UTC-08:00)",
            "por renovar 20 de diciembre de 2026", "suspendido no vigente", "vencido terminó el 31 de octubre de 2026", "nombre borrado KR-0311", "retirado no vigente", "nada todavía", "Página 1 de 1"];

    [Theory]
    [InlineData(Language.English, "Page", "of", "Badge")]
    [InlineData(Language.Spanish, "Página", "de", "Gafete")]
    public void Many_people_take_several_pages_each_with_the_headings_and_its_number(Language language, string page, string of, string heading)
    {
        var pages = PrintedPage.ReadAll(CrewRosters.Print(CrewRosters.Of(language, PaperSize.A4, people: 120)));

        Assert.InRange(pages.Count, 3, 6);
        Assert.All(pages.Index(), one =>
        {
            var text = string.Join(' ', one.Item.Words.Select(word => word.Text));
            Assert.Contains($"{page} {one.Index + 1} {of} {pages.Count}", text, StringComparison.Ordinal);
            Assert.Contains(heading, text, StringComparison.Ordinal);
        });
        Assert.Equal(120, pages.Sum(one => one.Words.Count(word => word.Text.StartsWith("Trabajadora", StringComparison.Ordinal))));
    }

    [Fact]
    public void A_table_over_pages_is_one_table_whose_headings_are_read_once()
    {
        var structure = DebianTool.Info(CrewRosters.Print(CrewRosters.Of(Language.English, PaperSize.UsLetter, people: 120)), "-struct-text");

        Assert.Single(Regex.Matches(structure, @"^\s*Table", RegexOptions.Multiline | RegexOptions.NonBacktracking));
        Assert.Equal(2, structure.Split("\"Badge\"").Length);
        Assert.Equal(121, Regex.Count(structure, @"^\s*TR", RegexOptions.Multiline | RegexOptions.NonBacktracking));
    }

    // ISO 32000-2, 14.8.5.7: a header cell says what it heads.
    [Fact]
    public void Header_cells_say_whether_they_head_a_column_or_a_row()
    {
        var objects = DebianTool.Qpdf(CrewRosters.Print(CrewRosters.Of(Language.English)), "--json=2", "--json-key=qpdf");

        Assert.Equal(5, Regex.Count(objects, "\"/Scope\": \"/Column\""));
        Assert.Equal(6, Regex.Count(objects, "\"/Scope\": \"/Row\""));
    }

    [Fact]
    public void An_empty_roster_says_so() =>
        Assert.Contains("Nobody is on this roster.", DebianTool.Text(CrewRosters.Print(CrewRosters.Of(Language.English) with { People = [] })));

    [Fact]
    public void A_site_without_a_named_crew_is_a_roster_too() =>
        Assert.Contains("Roster: Kestrel Ridge Energy, Cedar Flat Solar", DebianTool.Text(CrewRosters.Print(CrewRosters.Of(Language.English) with { CrewName = null })));

    // docs/rules.md, "Who is told of a hold": it stands on no paper.
    [Fact]
    public void There_is_no_word_for_a_hold()
    {
        var text = DebianTool.Text(CrewRosters.Print(CrewRosters.Of(Language.English))) + DebianTool.Text(CrewRosters.Print(CrewRosters.Of(Language.Spanish)));

        Assert.DoesNotContain("hold", text.Replace("Whoever", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("en espera", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_longest_texts_are_printed_whole_on_as_many_pages_as_they_need()
    {
        foreach (var paper in Enum.GetValues<PaperSize>())
        foreach (var text in (Func<int, string>[])[length => new('W', length), length => string.Concat(Enumerable.Repeat("WÑWÁWÜ ", length))[..length].Trim()])
        {
            PrintedPage.AssertTidy(CrewRosters.Print(CrewRosters.Stuffed(CrewRosters.Of(Language.Spanish, paper, isDemonstration: true), 3, text)), Margin);
        }
    }

    [Fact]
    public void Whatever_the_texts_a_roster_is_printed_whole_or_says_what_is_wrong()
    {
        var texts = Gen.String[Gen.Char["aeiouñáéWMil '-/龍\n"], 0, RosterPage.LongestName + 5];

        Gen.Select(texts, texts).Sample(
            (name, crew) =>
            {
                var page = CrewRosters.Of(Language.English) with { CrewName = crew, People = [new(name, null, [])] };
                var problems = new List<Problem>();
                if (RosterChecks.CanPrint(page, FontFaces.Default, problems)) PrintedPage.AssertTidy(CrewRosters.Print(page), Margin);
                else Assert.NotEmpty(problems);
            },
            iter: 40,
            threads: 1);
    }

    [Fact]
    public void All_problems_are_found_at_once_each_with_its_row()
    {
        var problems = new List<Problem>();

        RosterChecks.CanPrint(CrewRosters.Of(Language.English) with { SiteName = "", People = [new("Ada", null, []), new("李", new('9', 61), [])] }, FontFaces.Default, problems);

        Assert.Equal(
            [("site-name", PaperProblems.FieldEmpty), ("name 2", PaperProblems.CharacterMissing), ("badge-number 2", PaperProblems.FieldTooLong)],
            problems.Select(problem => (problem.Place.Part!, problem.Code)));
    }
}
