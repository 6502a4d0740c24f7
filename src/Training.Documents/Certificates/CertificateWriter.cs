using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Signatures;
using Training.Documents.Typesetting;

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
        var words = new CertificateWords(page);
        var decidedAt = new DateTimeOffset(page.DecidedOn, TimeOnly.MinValue, TimeSpan.Zero);
        using var document = new PrintedDocument(new(page.Language, words.DocumentTitle, page.ProviderName, words.Serial, decidedAt), fonts);
        var (height, width) = page.Paper.Sides();
        new CertificateLayout(page, document.Ruler, document.AddPage(width, height), width, height).Draw();
        return document.Save(signer);
    }

    private static void RefuseBrokenPromises(CertificatePage page, FontFaces fonts)
    {
        var problems = new List<Problem>();
        CertificateChecks.CanPrint(page, fonts, problems);
        Promises.ThrowIfAny(problems, nameof(page));
        if (page is { Kind: SchemeKind.Certification, DecidedBy: null })
        {
            throw new ArgumentException("A certification is decided by a named lead.", nameof(page));
        }

        if (page.Validity.After(page.CountedFrom) != page.ExpiresOn)
        {
            throw new ArgumentException($"{page.Validity} after {page.CountedFrom:O} is not {page.ExpiresOn:O}.", nameof(page));
        }
    }
}
