using System.Text.RegularExpressions;

namespace Training.Courses.Tests.Library;

/// <summary>Every do and do-not of the bite modules, held against the published lists in both languages.</summary>
/// <remarks>
/// What is to be done: CDC/NIOSH, Venomous Snakes, Symptoms and First Aid (2016-07-01) and the list as reprinted 2023-05-24; WHO first-aid page;
/// Florida Poison Information Center Tampa (poison-control number). What is to be left undone in the United States after a pit-viper bite: the same lists; Lavonas et al. 2011,
/// BMC Emergency Medicine 11:2, box 15; Alberts et al. 2004, Annals of Emergency Medicine 43:181 (suction); ACMT, AACT, AAPCC, EAPCCT, IST
/// and APAMT 2011, Journal of Medical Toxicology 7(4):322-323 (pressure bandage).
/// </remarks>
public sealed partial class FirstAidTests
{
    /// <summary>Fact id, and a word of the statement in English and Spanish.</summary>
    private static readonly (string Fact, string English, string Spanish)[] Do =
    [
        ("F-AID-01", "alone", "paz"),
        ("F-AID-02", "emergency services at once", "de inmediato"),
        ("F-AID-03", "drive", "conduce"),
        ("F-AID-04", "rings", "anillos"),
        ("F-AID-05", "still", "calma"),
        ("F-AID-06", "limb-position-us-2023", "limb-position-us-2023"),
        ("F-AID-07", "soap", "jabón"),
        ("F-AID-08", "clean, dry dressing", "limpi"),
        ("F-AID-09", "write the time", "escriba la hora"),
        ("F-AID-11", "when and where", "cuándo y dónde"),
        ("F-AID-13", "supervisor", "supervisor"),
        ("F-AID-14", "poison control", "envenenamiento"),
    ];

    private static readonly (string Fact, string English, string Spanish)[] DoNot =
    [
        ("F-NOT-01", "tourniquet", "torniquete"),
        ("F-NOT-02", "cutting", "cortar"),
        ("F-NOT-03", "sucking", "chupar"),
        ("F-NOT-05", "ice", "hielo"),
        ("F-NOT-06", "electric shock", "eléctric"),
        ("F-NOT-07", "alcohol", "alcohol"),
        ("F-NOT-09", "aspirin, ibuprofen", "aspirina, ibuprofeno"),
        ("F-NOT-10", "catch", "atrapa"),
        ("F-NOT-11", "wait", "esper"),
        ("F-NOT-12", "folk remedies", "remedios caseros"),
        ("F-NOT-13", "pressure bandage", "presión"),
    ];

    /// <summary>For clinicians or not sourced for workers: on no worker page.</summary>
    private static readonly string[] NotForWorkers = ["F-AID-12", "F-AID-17", "F-AID-18", "F-STA-13", "F-NOT-14", "F-KIT-05"];

    public static MatrixTheoryData<string, Language> Courses => new(ShippedCourses.Ids, LanguageTags.All);

    /// <summary>Courses that teach first aid: the instructor's builds on the handler's.</summary>
    public static MatrixTheoryData<string, Language> Pages =>
        new(ShippedCourses.Ids.Where(course => ShippedCourses.ModuleFiles(course, Language.English).Contains("modules/bite.md")), LanguageTags.All);

    [Fact]
    public void Every_course_but_the_instructors_teaches_first_aid() =>
        Assert.Equal(["instructor"], ShippedCourses.Ids.Where(course => !ShippedCourses.ModuleFiles(course, Language.English).Contains("modules/bite.md")));

    [Theory, MemberData(nameof(Pages))]
    public void Every_step_of_the_published_lists_is_taught(string course, Language language) =>
        Assert.Empty(Missing(Statements(course, language), Do, language));

    [Theory, MemberData(nameof(Pages))]
    public void Everything_to_be_left_undone_is_named(string course, Language language) =>
        Assert.Empty(Missing(Statements(course, language), DoNot, language));

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

    [Theory, MemberData(nameof(Courses))]
    public void Nothing_meant_for_clinicians_stands_on_a_worker_page(string course, Language language)
    {
        var text = string.Concat(ShippedCourses.ModuleFiles(course, language).Select(file => ShippedCourses.Text(course, language, file)));

        Assert.DoesNotContain(NotForWorkers, fact => text.Contains($"fact:{fact}>", StringComparison.Ordinal));
    }

    private static IEnumerable<string> Missing(
        List<string> statements, (string Fact, string English, string Spanish)[] rows, Language language) => rows
        .Where(row => !statements.Any(statement =>
            statement.Contains($"<fact:{row.Fact}>", StringComparison.Ordinal)
            && statement.Contains(language == Language.English ? row.English : row.Spanish, StringComparison.OrdinalIgnoreCase)))
        .Select(row => row.Fact);

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
}
