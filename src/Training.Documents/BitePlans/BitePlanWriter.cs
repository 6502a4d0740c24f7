using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.BitePlans;

/// <summary>Prints the bite plan of a site on one upright page, in the largest type that fits it.</summary>
/// <remarks>As for certificates: alike to look at, different in bytes; safe to call from many threads; no standard is claimed.</remarks>
public static class BitePlanWriter
{
    /// <summary>Prints the plan.</summary>
    /// <param name="page">What it says.</param>
    /// <param name="fonts">What it is set in.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentException">The plan cannot be printed as written; ask <see cref="BitePlanChecks.CanPrint"/> first.</exception>
    public static byte[] Write(BitePlanPage page, FontFaces fonts)
    {
        var problems = new List<Problem>();
        BitePlanChecks.CanPrint(page, fonts, problems);
        Promises.ThrowIfAny(problems, nameof(page));

        var words = new BitePlanWords(page);
        var printedAt = new DateTimeOffset(page.PrintedOn, TimeOnly.MinValue, TimeSpan.Zero);
        using var document = new PrintedDocument(new(page.Language, words.Kind, page.ProviderName, words.Review, printedAt), fonts);
        var (width, height) = page.Paper.Sides();
        BitePlanLayout.Compose(page, document.Ruler).Draw(document.AddPage(width, height));
        return document.Save();
    }
}
