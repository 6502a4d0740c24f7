using System.Globalization;
using System.Xml.Linq;

namespace Training.Documents.Tests.Certificates;

/// <summary>Where every word lies on a printed page, as poppler sees it. Points from the top left.</summary>
internal sealed record PrintedWord(string Text, double Left, double Top, double Right, double Bottom)
{
    public static (IReadOnlyList<PrintedWord> Words, double PageWidth, double PageHeight) ReadAll(byte[] pdf)
    {
        var page = XDocument.Parse(DebianTool.WordBoxes(pdf).Replace("<!DOCTYPE html PUBLIC \"-//W3C//DTD XHTML 1.0 Transitional//EN\" \"http://www.w3.org/TR/xhtml1/DTD/xhtml1-transitional.dtd\">", string.Empty))
            .Descendants().Single(element => element.Name.LocalName == "page");
        var words = page.Elements().Select(word => new PrintedWord(word.Value, Of(word, "xMin"), Of(word, "yMin"), Of(word, "xMax"), Of(word, "yMax")));
        return ([.. words], Of(page, "width"), Of(page, "height"));
    }

    /// <summary>Whether letters of the two lie on each other. Boxes hold room above and below the letters, about a quarter each.</summary>
    public bool Covers(PrintedWord other) =>
        Left < other.Right - 0.5 && other.Left < Right - 0.5 && Core.Top < other.Core.Bottom && other.Core.Top < Core.Bottom;

    private (double Top, double Bottom) Core => (Top + ((Bottom - Top) * 0.25), Bottom - ((Bottom - Top) * 0.25));

    private static double Of(XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);
}
