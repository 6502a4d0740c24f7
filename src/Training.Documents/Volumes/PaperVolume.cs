using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace Training.Documents.Volumes;

/// <summary>Many papers behind one another in one file, for a printer.</summary>
/// <remarks>
/// It proves nothing: signatures cover files, and this is another file, so their fields are left out. Who is to check a paper gets the paper's own file.
/// </remarks>
public static class PaperVolume
{
    /// <summary>Most papers of one volume: memory grows with each.</summary>
    public const int MostPapers = 100;

    /// <summary>Puts papers behind one another.</summary>
    /// <param name="papers">Files that this library wrote, in the order of printing; one at least.</param>
    /// <param name="title">Of the volume.</param>
    /// <exception cref="ArgumentException">There are none, or more than <see cref="MostPapers"/>.</exception>
    public static byte[] Write(IReadOnlyList<byte[]> papers, string title)
    {
        if (papers.Count is 0 or > MostPapers) throw new ArgumentException($"{papers.Count} papers are no volume.", nameof(papers));
        using var volume = new PdfDocument();
        volume.Info.Title = title;
        foreach (var paper in papers)
        {
            using var source = PdfReader.Open(new MemoryStream(paper), PdfDocumentOpenMode.Import);
            foreach (var page in source.Pages) volume.AddPage(page).Elements.Remove("/Annots");
        }

        using var bytes = new MemoryStream();
        volume.Save(bytes);
        return bytes.ToArray();
    }
}
