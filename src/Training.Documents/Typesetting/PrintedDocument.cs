using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Signatures;

namespace Training.Documents.Typesetting;

/// <summary>A file under way: tagged, in one language, page after page.</summary>
/// <remarks>
/// Pure but for the file's own identifiers, which the PDF package draws: two prints of one page look alike and differ in bytes. It claims no
/// archival or accessibility standard: nothing here has validated one.
/// </remarks>
internal sealed class PrintedDocument : IDisposable
{
    private readonly PdfDocument _document = new();
    private readonly StructureBuilder _structure;
    private XGraphics? _graphics;

    public PrintedDocument(DocumentNotes notes, FontFaces fonts)
    {
        // Before the first page: the package tags only what is drawn after it.
        _structure = UAManager.ForDocument(_document).StructureBuilder;
        _document.Language = notes.Language.Tag();
        _document.ViewerPreferences.DisplayDocTitle = true;
        _document.Info.Title = Composed.Of(notes.Title);
        _document.Info.Author = Composed.Of(notes.Author);
        _document.Info.Subject = Composed.Of(notes.Subject);
        _document.Info.CreationDate = notes.MadeAt.UtcDateTime;
        Ruler = new(fonts);
    }

    public Ruler Ruler { get; }

    /// <summary>Begins the next page, in points. The one before is finished.</summary>
    public Canvas AddPage(double width, double height)
    {
        _graphics?.Dispose();
        var page = _document.AddPage();
        page.Width = XUnitPt.FromPoint(width);
        page.Height = XUnitPt.FromPoint(height);
        _graphics = XGraphics.FromPdfPage(page);
        return new(_graphics, _structure, Ruler, height);
    }

    /// <summary>The bytes of the file. Nothing can be drawn afterwards.</summary>
    /// <param name="signer">Who signs it, invisibly and over the whole file; null leaves it unsigned.</param>
    /// <exception cref="System.Security.Cryptography.CryptographicException">The signer's key cannot sign, or its authority's answer is not one.</exception>
    public byte[] Save(PdfSigner? signer = null)
    {
        _graphics?.Dispose();
        _graphics = null;
        var signature = signer is null ? null : PdfSignature.AddTo(_document, _document.Pages[0], signer);
        using var bytes = new MemoryStream();
        _document.Save(bytes);
        var file = bytes.ToArray();
        signature?.Sign(file);
        return file;
    }

    public void Dispose()
    {
        _graphics?.Dispose();
        Ruler.Dispose();
        _document.Dispose();
    }
}

/// <summary>What a file says of itself.</summary>
/// <param name="Language">Of every word that is not a name.</param>
/// <param name="Title">Shown by readers in place of the file's name.</param>
/// <param name="Author">Who gives the paper out.</param>
/// <param name="Subject">What tells this paper from others.</param>
/// <param name="MadeAt">As of when it says what it says.</param>
internal sealed record DocumentNotes(Language Language, string Title, string Author, string Subject, DateTimeOffset MadeAt);
