using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Rosters;

/// <summary>Prints the roster of a crew with standings, on as many upright pages as it needs.</summary>
/// <remarks>As for certificates: alike to look at, different in bytes; safe to call from many threads; no standard is claimed.</remarks>
public static class RosterWriter
{
    /// <summary>Prints the roster.</summary>
    /// <param name="page">What it says.</param>
    /// <param name="fonts">What it is set in.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentException">The roster cannot be printed as written; ask <see cref="RosterChecks.CanPrint"/> first.</exception>
    public static byte[] Write(RosterPage page, FontFaces fonts)
    {
        var problems = new List<Problem>();
        RosterChecks.CanPrint(page, fonts, problems);
        Promises.ThrowIfAny(problems, nameof(page));

        var words = new RosterWords(page);
        using var document = new PrintedDocument(new(page.Language, words.Kind, page.ProviderName, words.AsOf, page.AsOf), fonts);
        var sheet = new UprightPaper(document.Ruler, page.Paper, page.Language, page.IsDemonstration);
        sheet.Draw(document, new RosterLayout(page, words, sheet, document.Ruler).Blocks(), $"{words.Kind} · {words.AsOf}");
        return document.Save();
    }
}
