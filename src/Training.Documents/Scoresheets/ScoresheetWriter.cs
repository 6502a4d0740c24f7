using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Scoresheets;

/// <summary>Prints a scoresheet as it was signed, on as many upright pages as it needs.</summary>
/// <remarks>As for certificates: alike to look at, different in bytes; safe to call from many threads; no standard is claimed.</remarks>
public static class ScoresheetWriter
{
    /// <summary>Prints the sheet.</summary>
    /// <param name="page">What it says.</param>
    /// <param name="fonts">What it is set in.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentException">
    /// The sheet cannot be printed as written (ask <see cref="ScoresheetPageChecks.CanPrint"/> first), or a reason of its result names a step that it does not have.
    /// </exception>
    public static byte[] Write(ScoresheetPage page, FontFaces fonts)
    {
        var problems = new List<Problem>();
        ScoresheetPageChecks.CanPrint(page, fonts, problems);
        Promises.ThrowIfAny(problems, nameof(page));

        var words = new ScoresheetWords(page);
        using var document = new PrintedDocument(new(page.Language, words.Kind, page.ProviderName, words.Record, page.SignedAt), fonts);
        var sheet = new UprightPaper(document.Ruler, page.Paper, page.Language, page.IsDemonstration);
        sheet.Draw(document, new ScoresheetLayout(page, words, sheet, document.Ruler).Blocks(), $"{words.Kind} · {page.RecordId}");
        return document.Save();
    }
}
