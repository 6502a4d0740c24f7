using System.Globalization;
using System.Xml.Linq;

namespace Training.Documents.Tests.Typesetting;

/// <summary>A printed page as poppler sees it. Points.</summary>
internal sealed record PrintedPage(IReadOnlyList<PrintedWord> Words, double Width, double Height)
{
    public static IReadOnlyList<PrintedPage> ReadAll(byte[] pdf)
    {
        var boxes = DebianTool.WordBoxes(pdf).Replace("<!DOCTYPE html PUBLIC \"-//W3C//DTD XHTML 1.0 Transitional//EN\" \"http://www.w3.org/TR/xhtml1/DTD/xhtml1-transitional.dtd\">", string.Empty);
        return [.. XDocument.Parse(boxes).Descendants().Where(element => element.Name.LocalName == "page").Select(page => new PrintedPage(
            [.. page.Elements().Select(word => new PrintedWord(word.Value, Of(word, "xMin"), Of(word, "yMin"), Of(word, "xMax"), Of(word, "yMax")))],
            Of(page, "width"),
            Of(page, "height")))];
    }

    /// <summary>Nothing stands outside the margin, and no word lies on another.</summary>
    public static void AssertTidy(byte[] pdf, double margin)
    {
        foreach (var page in ReadAll(pdf))
        {
            Assert.All(page.Words, word => Assert.True(
                word.Left > margin && word.Right < page.Width - margin && word.Top > margin && word.Bottom < page.Height - margin, $"{word} leaves the page"));
            foreach (var (index, word) in page.Words.Index())
            {
                var covered = page.Words.Skip(index + 1).FirstOrDefault(word.Covers);
                Assert.True(covered is null, $"{word} lies on {covered}");
            }
        }
    }

    private static double Of(XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);
}

/// <summary>Where a word lies, from the top left.</summary>
internal sealed record PrintedWord(string Text, double Left, double Top, double Right, double Bottom)
{
    /// <summary>Whether letters of the two lie on each other. Boxes hold room above and below the letters, about a quarter each.</summary>
    public bool Covers(PrintedWord other) =>
        Left < other.Right - 0.5 && other.Left < Right - 0.5 && Core.Top < other.Core.Bottom && other.Core.Top < Core.Bottom;

    private (double Top, double Bottom) Core => (Top + ((Bottom - Top) * 0.25), Bottom - ((Bottom - Top) * 0.25));
}
