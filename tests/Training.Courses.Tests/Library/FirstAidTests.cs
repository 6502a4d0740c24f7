using System.Text.RegularExpressions;

namespace Training.Courses.Tests.Library;

/// <summary>Every do and do-not of the bite pages, held against the table of published sources (Data/first-aid.csv) in both languages.</summary>
public sealed partial class FirstAidTests
{
    /// <summary>The drill of the handler course names what helpers offer; the second pump test and the carrying stand in awareness.</summary>
    private static readonly string[] NotInTheDrill = ["F-NOT-04", "F-NOT-15"];

    /// <summary>Tying a bag shut by hand is not first aid, but no worker page shows it either.</summary>
    private const string KnotByHand = "F-KIT-05";

    private static readonly IReadOnlyList<Row> Table =
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "first-aid.csv")).Skip(1).Select(Row.Read)];

    private static readonly IReadOnlyList<Row> ForWorkers = [.. Table.Where(row => row.For == "workers")];

    /// <summary>Id of each row for workers.</summary>
    public static TheoryData<string> Taught => [.. ForWorkers.Select(row => row.Id)];

    /// <summary>Courses that teach first aid: the instructor's builds on the handler's.</summary>
    public static MatrixTheoryData<string, Language> Pages =>
        new(ShippedCourses.Ids.Where(course => ShippedCourses.ModuleFiles(course, Language.English).Contains("modules/bite.md")), LanguageTags.All);

    [Fact]
    public void The_table_holds_every_do_and_do_not_and_says_for_whom_it_is()
    {
        Assert.Equal(
            [.. Enumerable.Range(1, 25).Select(number => $"F-AID-{number:00}"), .. Enumerable.Range(1, 15).Select(number => $"F-NOT-{number:00}"), "F-STA-13"],
            Table.Select(row => row.Id));
        Assert.Equal(["F-AID-12", "F-AID-17", "F-AID-18", "F-NOT-14", "F-STA-13"], Table.Where(row => row.For == "clinicians").Select(row => row.Id));
        Assert.Equal(["F-AID-15", "F-AID-20", "F-AID-21", "F-AID-24", "F-AID-25"], Table.Where(row => row.For == "nobody").Select(row => row.Id));
    }

    [Theory, MemberData(nameof(Taught))]
    public void The_fact_names_the_publishers_of_its_row_and_claims_no_better_standing(string id)
    {
        var row = Table.Single(row => row.Id == id);
        var fact = Assert.Single(ShippedCourses.Reading.Facts, fact => fact.Id == id);

        Assert.All(row.Publishers, publisher => Assert.Contains(publisher, row.Source, StringComparison.Ordinal));
        Assert.All(row.Publishers, publisher => Assert.Contains(publisher, fact.Source, StringComparison.Ordinal));
        Assert.True(fact.Standing >= row.Standing, $"{id} is {fact.Standing}, its source {row.Standing}.");
    }

    [Fact]
    public void Every_course_but_the_instructors_teaches_first_aid() =>
        Assert.Equal(["instructor"], ShippedCourses.Ids.Where(course => !ShippedCourses.ModuleFiles(course, Language.English).Contains("modules/bite.md")));

    [Theory, MemberData(nameof(Pages))]
    public void Every_row_for_workers_is_cited_where_its_statement_stands(string course, Language language)
    {
        var statements = Statements(course, language);

        Assert.Equal(course == "handler" ? NotInTheDrill : [], ForWorkers.Where(row => !statements.Exists(text => row.IsSaidIn(text, language))).Select(row => row.Id));
    }

    /// <summary>What is only remembered is no step, and two figures for one thing help nobody.</summary>
    [Theory, MemberData(nameof(Pages))]
    public void No_row_that_is_not_for_workers_is_cited_on_a_bite_page(string course, Language language) => Assert.DoesNotContain(
        Table.Where(row => row.For != "workers"), row => ShippedCourses.Text(course, language, "modules/bite.md").Contains($"<fact:{row.Id}>", StringComparison.Ordinal));

    /// <summary>A harmful act may be named only where the text says not to do it.</summary>
    [Theory, MemberData(nameof(Pages))]
    public void No_harmful_act_stands_among_the_steps_to_take(string course, Language language)
    {
        var steps = SectionOf(ShippedCourses.Text(course, language, "modules/bite.md"), "do");
        var harmful = language == Language.English
            ? new[] { "tourniquet", "cut ", "suck", " ice", "shock", "alcohol", "aspirin", "raise" }
            : ["torniquete", "corte ", "chupe", "hielo", "descarga", "alcohol", "aspirina", "levante"];

        Assert.DoesNotContain(harmful, act => steps.Contains(act, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Nothing_meant_for_clinicians_is_named_in_any_file()
    {
        var files = CourseFiles.FromFolder(ShippedCourses.Folder);

        Assert.Empty(
            from path in files.Paths
            from id in Table.Where(row => row.For == "clinicians").Select(row => row.Id).Append(KnotByHand)
            where files.Find(path)!.Contains(id, StringComparison.Ordinal) // a path of its own list has a text
            select $"{path}: {id}");
    }

    // A statement is a paragraph, list item or table row: what a reader takes in at once.
    private static List<string> Statements(string course, Language language) =>
        [.. NewStatement().Split(ShippedCourses.Text(course, language, "modules/bite.md")).Select(text => text.ReplaceLineEndings(" "))];

    private static string SectionOf(string text, string id)
    {
        var from = text.IndexOf($"{{#{id}}}", StringComparison.Ordinal);
        var to = text.IndexOf("\n## ", from, StringComparison.Ordinal);
        return text[from..to];
    }

    [GeneratedRegex(@"\n\s*\n|\n(?=- )|\n(?=\d\. )|\n(?=\|)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex NewStatement();

    [GeneratedRegex("(?<=^|,)(\"(?<cell>[^\"]*)\"|(?<cell>[^,\"]*))(?=,|$)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Cell();

    /// <summary>A row of the table; Data/first-aid.README.md says what each column holds.</summary>
    private sealed record Row(string Id, string For, string Source, string[] Publishers, FactStanding Standing, string English, string Spanish)
    {
        public static Row Read(string line)
        {
            var cells = Cell().Matches(line).Select(match => match.Groups["cell"].Value).ToList();
            Assert.Equal(8, cells.Count);
            return new(cells[0], cells[1], cells[3], cells[4].Split('|'), StandingOf(cells[5]), cells[6], cells[7]);
        }

        public bool IsSaidIn(string statement, Language language) =>
            statement.Contains($"<fact:{Id}>", StringComparison.Ordinal)
            && statement.Contains(language == Language.English ? English : Spanish, StringComparison.OrdinalIgnoreCase);

        private static FactStanding StandingOf(string standing) => standing switch
        {
            "confirmed-P" or "confirmed-S" => FactStanding.Confirmed,
            "from-memory" => FactStanding.FromMemory,
            _ => throw new InvalidDataException(standing),
        };
    }
}
