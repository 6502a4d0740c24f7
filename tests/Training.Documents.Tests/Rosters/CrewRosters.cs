using Training.Certification;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Rosters;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.Rosters;

/// <summary>An invented crew with every standing.</summary>
internal static class CrewRosters
{
    public static RosterPage Of(Language language, PaperSize paper = PaperSize.UsLetter, bool isDemonstration = false)
    {
        var (handler, aware) = language == Language.English
            ? ("Tool-only snake handler", "Snake awareness")
            : ("Manejo de serpientes solo con herramientas", "Conciencia sobre serpientes");
        return new()
        {
            Language = language,
            Paper = paper,
            ProviderName = "Quillback Field Safety",
            EmployerName = "Kestrel Ridge Energy",
            SiteName = "Cedar Flat Solar",
            CrewName = "Tracker crew B",
            AsOf = new(2026, 11, 26, 14, 5, 0, TimeSpan.FromHours(-8)),
            People =
            [
                new("José Ángel Ibáñez-Núñez", "KR-1042", [new(handler, Standing.Current, new(2027, 12, 7)), new(aware, Standing.RenewalDue, new(2026, 12, 20))]),
                new("Maren Oakleaf", "KR-0077", [new(handler, Standing.Suspended, new(2027, 3, 1))]),
                new("Tobias Quill", null, [new(handler, Standing.Lapsed, new(2026, 10, 31))]),
                new(null, "KR-0311", [new(aware, Standing.Withdrawn, new(2027, 1, 15))]),
                new("Pilar Sandoval Reyes", "KR-1100", []),
            ],
            IsDemonstration = isDemonstration,
        };
    }

    /// <summary>The same with so many more people.</summary>
    public static RosterPage Of(Language language, PaperSize paper, int people) => Of(language, paper) with
    {
        People = [.. Enumerable.Range(1, people).Select(number => new RosterPerson(
            $"Trabajadora{number} Ocampo", $"KR-{number:0000}", [new("Tool-only snake handler", Standing.Current, new(2027, 12, 7))]))],
    };

    public static byte[] Print(RosterPage page) => RosterWriter.Write(page, FontFaces.Default);

    /// <summary>Every text as long as it may be, for so many people.</summary>
    public static RosterPage Stuffed(RosterPage page, int people, Func<int, string> text) => page with
    {
        ProviderName = text(RosterPage.LongestName),
        EmployerName = text(RosterPage.LongestName),
        SiteName = text(RosterPage.LongestName),
        CrewName = text(RosterPage.LongestName),
        People = [.. Enumerable.Range(0, people).Select(_ => new RosterPerson(
            text(RosterPage.LongestName), text(RosterPage.LongestNumber), [.. Enum.GetValues<Standing>().Select(standing => new RosterHolding(text(RosterPage.LongestName), standing, new(2027, 9, 30)))]))],
    };
}
