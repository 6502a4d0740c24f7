using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.SignInSheets;

/// <summary>Prints the paper of a class: the sheet that people sign, and behind it the roster.</summary>
/// <remarks>As for certificates: alike to look at, different in bytes; safe to call from many threads; no standard is claimed.</remarks>
public static class SignInSheetWriter
{
    /// <summary>Prints the sheet.</summary>
    /// <param name="page">What it says.</param>
    /// <param name="fonts">What it is set in.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentException">The sheet cannot be printed as written; ask <see cref="SignInSheetChecks.CanPrint"/> first.</exception>
    public static byte[] Write(SignInSheetPage page, FontFaces fonts)
    {
        var problems = new List<Problem>();
        SignInSheetChecks.CanPrint(page, fonts, problems);
        Promises.ThrowIfAny(problems, nameof(page));

        var words = new SignInSheetWords(page);
        var heldAt = new DateTimeOffset(page.HeldOn, TimeOnly.MinValue, TimeSpan.Zero);
        using var document = new PrintedDocument(new(page.Language, words.Title, page.ProviderName, words.ClassId, heldAt), fonts);
        var sheet = new UprightPaper(document.Ruler, page.Paper, page.Language, page.IsDemonstration);
        sheet.Draw(document, new SignInSheetLayout(page, words, sheet, document.Ruler).Blocks(), $"{words.Title} {words.ClassId}");
        return document.Save();
    }
}
