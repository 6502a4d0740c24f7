using PdfSharp.Drawing;
using Training.Certification;

namespace Training.Documents.Typesetting;

/// <summary>A standing as a word in an outline that differs by standing, so that it reads in grey and from afar.</summary>
internal static class StandingTag
{
    private const double Across = 6;
    private const double Down = 2.2;
    private const double Bar = 5;

    private static readonly XPen Solid = new(Look.Ink, 1);
    private static readonly XPen Thin = new(Look.Ink, 0.7);
    private static readonly TextStyle Word = TextStyle.Of(FontRole.Strong, 9, Look.Ink);

    /// <summary>The tag; it lies inside the element around it.</summary>
    /// <param name="standing">Which.</param>
    /// <param name="word">What it is called.</param>
    /// <param name="ruler">Measures.</param>
    /// <param name="width">Room for it; a longer word takes a second line.</param>
    public static Piece.Raised Of(Standing standing, string word, Ruler ruler, double width)
    {
        var left = standing == Standing.Suspended ? Across + Bar : Across;
        var fitted = ruler.Fit(word, Word, width - left - Across);
        var letters = new Piece.Letters(fitted);
        return new(new Piece.Framed(letters, left + ruler.WidthOf(fitted) + Across, left, Down, Outline(standing, fitted)), Down);
    }

    private static Action<XGraphics, XRect> Outline(Standing standing, FittedText word) => standing switch
    {
        Standing.Current => (graphics, box) => graphics.DrawRectangle(Solid, box),
        Standing.RenewalDue => (graphics, box) => graphics.DrawRectangle(new XPen(Look.Ink, 1) { DashStyle = XDashStyle.Dash }, box),
        Standing.Lapsed => (graphics, box) => graphics.DrawRectangles(Thin, [box, XRect.Inflate(box, -1.8, -1.8)]),
        Standing.Suspended => (graphics, box) =>
        {
            graphics.DrawRectangle(Solid, box);
            graphics.DrawRectangle(new XSolidBrush(Look.Ink), box.X, box.Y, Bar, box.Height);
        },
        Standing.Withdrawn => (graphics, box) =>
        {
            graphics.DrawRectangle(new XPen(Look.Ink, 1) { DashStyle = XDashStyle.Dot }, box);
            StrikeOut(graphics, box, word);
        },
    };

    private static void StrikeOut(XGraphics graphics, XRect box, FittedText word)
    {
        for (var line = 0; line < word.Lines.Count; line++)
        {
            var y = box.Y + Down + (line * word.LineHeight) + (word.Size * 0.68);
            graphics.DrawLine(Thin, box.X + Across, y, box.Right - Across, y);
        }
    }
}
