using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.PocketCards;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.PocketCards;

/// <summary>Invented cards.</summary>
internal static class Cards
{
    public static PocketCardPage Of(Language language, bool isDemonstration = false, SchemeKind kind = SchemeKind.Certification) => new()
    {
        Language = language,
        Kind = kind,
        ProviderName = "Quillback Field Safety",
        WorkerName = "José Ángel Ibáñez-Núñez",
        SchemeTitle = language == Language.English ? "Tool-only snake handler" : "Manejo de serpientes solo con herramientas",
        ExpiresOn = new(2027, 12, 7),
        Serial = "4G7K29QXPDAB",
        Revision = "1",
        CheckAddress = "https://training.quillback.example/verify/4G7K-29QX-PDAB",
        PrintedOn = new(2026, 11, 26),
        IsDemonstration = isDemonstration,
    };

    /// <summary>So many cards, each with a name, serial and address of its own.</summary>
    public static IReadOnlyList<PocketCardPage> Several(Language language, int count, bool isDemonstration = false) =>
        [.. Enumerable.Range(1, count).Select(number => Of(language, isDemonstration) with
        {
            WorkerName = $"Trabajador{number} Ocampo",
            Serial = $"4G7K29QXPD{number:00}",
            CheckAddress = $"https://training.quillback.example/verify/4G7K-29QX-PD{number:00}",
        })];

    public static byte[] Print(PocketCardPage page) => PocketCardWriter.Write(page, FontFaces.Default);

    public static byte[] PrintSheet(IReadOnlyList<PocketCardPage> pages, PaperSize paper) => PocketCardWriter.WriteSheet(pages, paper, FontFaces.Default);

    /// <summary>The card with every text as long as it may be.</summary>
    public static PocketCardPage Stuffed(PocketCardPage page, Func<int, string> text) => page with
    {
        ProviderName = text(PocketCardPage.LongestTitle),
        WorkerName = text(PocketCardPage.LongestName),
        SchemeTitle = text(PocketCardPage.LongestTitle),
        Serial = text(PocketCardPage.LongestNumber),
        Revision = text(PocketCardPage.LongestNumber),
        CheckAddress = "https://" + new string('m', PocketCardPage.LongestCheckAddress - 8),
    };
}
