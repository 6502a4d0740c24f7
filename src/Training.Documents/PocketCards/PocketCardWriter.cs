using PdfSharp.UniversalAccessibility;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;
using static Training.Documents.PocketCards.PocketCardLook;

namespace Training.Documents.PocketCards;

/// <summary>Prints pocket cards of the size ID-1 (ISO/IEC 7810): one on a page of its own size, or eight to a sheet.</summary>
/// <remarks>As for certificates: alike to look at, different in bytes; safe to call from many threads; no standard is claimed but the size.</remarks>
public static class PocketCardWriter
{
    /// <summary>Most cards of one file.</summary>
    public const int MostCards = 400;

    /// <summary>Prints one card: the front on the first page, the back on the second, each 85.60 × 53.98 mm.</summary>
    /// <param name="page">What it says.</param>
    /// <param name="fonts">What it is set in.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentException">The card cannot be printed as written; ask <see cref="PocketCardChecks.CanPrint"/> first.</exception>
    public static byte[] Write(PocketCardPage page, FontFaces fonts)
    {
        using var document = Begin(page, fonts, words => words.DocumentTitle);
        var card = Compose(page, fonts, document.Ruler);
        card.DrawFront(document.AddPage(Width, Height), 0, 0, PdfBlockLevelElementTag.Heading1);
        card.DrawBack(document.AddPage(Width, Height), 0, 0);
        return document.Save();
    }

    /// <summary>
    /// Prints cards eight to a sheet: a page of fronts, then a page of their backs, mirrored so that they meet where the printer turns the paper over its
    /// long edge.
    /// </summary>
    /// <param name="pages">The cards, 1 to <see cref="MostCards"/>, all of one language.</param>
    /// <param name="paper">The sheet, upright.</param>
    /// <param name="fonts">What they are set in.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentException">There is no card, there are too many, of two languages, or one that cannot be printed as written.</exception>
    public static byte[] WriteSheet(IReadOnlyList<PocketCardPage> pages, PaperSize paper, FontFaces fonts)
    {
        if (pages.Count is 0 or > MostCards) throw new ArgumentException($"A file takes 1 to {MostCards} cards.", nameof(pages));
        if (pages.Any(page => page.Language != pages[0].Language)) throw new ArgumentException("A file has one language.", nameof(pages));
        using var document = Begin(pages[0], fonts, words => words.SheetTitle);
        foreach (var sheet in pages.Chunk(PocketCardSheet.Cards))
        {
            new PocketCardSheet([.. sheet.Select(page => Compose(page, fonts, document.Ruler))], new(sheet[0]), paper).Draw(document);
        }

        return document.Save();
    }

    private static PrintedDocument Begin(PocketCardPage page, FontFaces fonts, Func<PocketCardWords, string> title)
    {
        var words = new PocketCardWords(page);
        var printedAt = new DateTimeOffset(page.PrintedOn, TimeOnly.MinValue, TimeSpan.Zero);
        return new(new(page.Language, title(words), page.ProviderName, words.Serial, printedAt), fonts);
    }

    private static PocketCardLayout Compose(PocketCardPage page, FontFaces fonts, Ruler ruler)
    {
        var problems = new List<Problem>();
        var card = PocketCardChecks.Compose(page, fonts, ruler, problems);
        Promises.ThrowIfAny(problems, nameof(page));
        return card!; // not null: there are no problems
    }
}
