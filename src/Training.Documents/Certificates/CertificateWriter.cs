using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Signatures;

namespace Training.Documents.Certificates;

/// <summary>Prints one certificate as a tagged PDF of one page with embedded fonts.</summary>
/// <remarks>
/// Pure but for the file's own identifiers, which the PDF package draws: two prints of one page look alike and differ in bytes, so
/// the bytes are stored and never made again to compare. Safe to call from many threads. It claims no archival or accessibility
/// standard: nothing here has validated one.
/// </remarks>
public static class CertificateWriter
{
    /// <summary>Prints the page.</summary>
    /// <param name="page">What it says.</param>
    /// <param name="fonts">What it is set in.</param>
    /// <param name="signer">Who signs it, invisibly and over the whole file; null leaves it unsigned.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentException">
    /// The page cannot be printed as written (ask <see cref="CertificateChecks.CanPrint"/> first), a certification names nobody who
    /// decided, or the expiry is not the validity after the day it is counted from.
    /// </exception>
    /// <exception cref="System.Security.Cryptography.CryptographicException">The signer's key cannot sign, or its authority's answer is not one.</exception>
    public static byte[] Write(CertificatePage page, FontFaces fonts, PdfSigner? signer = null)
    {
        RefuseBrokenPromises(page, fonts);
        using var document = new PdfDocument();
        // Before the first page: the package tags only what is drawn after it.
        var tags = UAManager.ForDocument(document).StructureBuilder;
        var words = new CertificateWords(page);
        Describe(document, page, words);
        var sheet = document.AddPage();
        sheet.Size = page.Paper switch
        {
            PaperSize.UsLetter => PageSize.Letter,
            PaperSize.A4 => PageSize.A4,
        };
        sheet.Orientation = PageOrientation.Landscape;

        using (var graphics = XGraphics.FromPdfPage(sheet))
        {
            new CertificateLayout(page, new(graphics, tags, fonts, sheet.Height.Point), sheet.Width.Point, sheet.Height.Point).Draw();
        }

        var signature = signer is null ? null : PdfSignature.AddTo(document, sheet, signer);
        using var bytes = new MemoryStream();
        document.Save(bytes);
        var file = bytes.ToArray();
        signature?.Sign(file);
        return file;
    }

    private static void RefuseBrokenPromises(CertificatePage page, FontFaces fonts)
    {
        var problems = new List<Problem>();
        if (!CertificateChecks.CanPrint(page, fonts, problems))
        {
            throw new ArgumentException($"The page cannot be printed: {string.Join("; ", problems.Select(problem => $"{problem.Place.Part} {problem.Code}"))}.", nameof(page));
        }

        if (page is { Kind: SchemeKind.Certification, DecidedBy: null })
        {
            throw new ArgumentException("A certification is decided by a named lead.", nameof(page));
        }

        if (page.Validity.After(page.CountedFrom) != page.ExpiresOn)
        {
            throw new ArgumentException($"{page.Validity} after {page.CountedFrom:O} is not {page.ExpiresOn:O}.", nameof(page));
        }
    }

    private static void Describe(PdfDocument document, CertificatePage page, CertificateWords words)
    {
        document.Language = page.Language.Tag();
        document.ViewerPreferences.DisplayDocTitle = true;
        document.Info.Title = words.DocumentTitle.Normalize();
        document.Info.Author = page.ProviderName.Normalize();
        document.Info.Subject = words.Serial;
        document.Info.CreationDate = page.DecidedOn.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
    }
}
