using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.SignInSheets;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.SignInSheets;

/// <summary>An invented class day.</summary>
internal static class ClassSheets
{
    public static SignInSheetPage Of(Language language, PaperSize paper = PaperSize.UsLetter, bool isDemonstration = false) => new()
    {
        Language = language,
        Paper = paper,
        ProviderName = "Quillback Field Safety",
        ClassTitle = language == Language.English ? "Tool-only snake handler" : "Manejo de serpientes solo con herramientas",
        ClassId = new("0192f3a4-7c11-7e52-9a08-2b6d5c4e1f90"),
        HeldOn = new(2026, 12, 7),
        StartsAt = new(7, 30),
        EndsAt = new(15, 0),
        SiteName = "Cedar Flat Solar",
        EmployerName = "Kestrel Ridge Energy",
        MeetingPlace = "Gate 2, beside the water tank",
        Kit = "Hook\nTongs\nBucket with a lid that locks",
        Weather = "Called off above 38 °C",
        Teachers = ["Rosa Delgado Güemes"],
        Scorers = ["Ivo Marsh", "Lena Castell"],
        Seated =
        [
            new("José Ángel Ibáñez-Núñez", "KR-1042", "Kestrel Ridge Energy", Language.Spanish),
            new("Maren Oakleaf", "KR-0077", "Kestrel Ridge Energy", Language.English),
            new(null, "KR-0311", "Kestrel Ridge Energy", Language.English),
        ],
        Waiting = [new("Tobias Quill", null, null, Language.English)],
        Seats = 12,
        BlankRows = 4,
        EnterAddress = "https://training.quillback.example/en/class-days/0192f3a4-7c11-7e52-9a08-2b6d5c4e1f90",
        IsDemonstration = isDemonstration,
    };

    public static byte[] Print(SignInSheetPage page) => SignInSheetWriter.Write(page, FontFaces.Default);

    /// <summary>Every text as long as it may be.</summary>
    public static SignInSheetPage Stuffed(SignInSheetPage page, Func<int, string> text)
    {
        var line = new SignInLine(text(SignInSheetPage.LongestName), text(SignInSheetPage.LongestNumber), text(SignInSheetPage.LongestName), Language.Spanish);
        return page with
        {
            ProviderName = text(SignInSheetPage.LongestName),
            ClassTitle = text(SignInSheetPage.LongestName),
            SiteName = text(SignInSheetPage.LongestName),
            EmployerName = text(SignInSheetPage.LongestName),
            MeetingPlace = text(SignInSheetPage.LongestPlace),
            Kit = text(SignInSheetPage.LongestText),
            Weather = text(SignInSheetPage.LongestText),
            Teachers = [.. Enumerable.Repeat(text(SignInSheetPage.LongestName), SignInSheetPage.MostInstructors)],
            Scorers = [.. Enumerable.Repeat(text(SignInSheetPage.LongestName), SignInSheetPage.MostInstructors)],
            Seated = [line, line],
            Waiting = [line],
            EnterAddress = text(SignInSheetPage.LongestAddress),
        };
    }
}
