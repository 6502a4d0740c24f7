using PdfSharp.Drawing;
using Training.Documents.Typesetting;

namespace Training.Documents.Drawings;

/// <summary>The word DEMO in outline across the page: drawn over everything, so that no copy can be used.</summary>
/// <remarks>Our own letters: the PDF package cannot turn the letters of a font into outlines.</remarks>
internal static class DemoStamp
{
    private const double Advance = 0.12;
    private const double WordWidth = 0.74 + 0.60 + 0.92 + 0.84 + (3 * Advance);
    private const double Lean = -24;

    // Of the line, points; on a small paper finer, or the words under it could not be read.
    private const double Weight = 1.6;
    private const double WeightOfHeight = 0.02;

    /// <summary>Draws the word along the rising diagonal of the box, as large as the box allows.</summary>
    public static void Draw(XGraphics graphics, XRect box)
    {
        var (cosine, sine) = (Math.Cos(Lean * Math.PI / 180), Math.Abs(Math.Sin(Lean * Math.PI / 180)));
        var size = Math.Min(box.Width / ((WordWidth * cosine) + sine), box.Height / ((WordWidth * sine) + cosine));
        var state = graphics.Save();
        graphics.TranslateTransform(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        graphics.RotateTransform(Lean);
        graphics.ScaleTransform(size, size);
        graphics.TranslateTransform(-WordWidth / 2, -0.5);
        graphics.DrawPath(new XPen(Look.Ochre, Math.Min(Weight / size, WeightOfHeight)) { LineJoin = XLineJoin.Miter }, Word());
        graphics.Restore(state);
    }

    private static XGraphicsPath Word()
    {
        var path = new XGraphicsPath();
        AddD(path, 0);
        AddE(path, 0.74 + Advance);
        AddM(path, 0.74 + 0.60 + (2 * Advance));
        AddO(path, 0.74 + 0.60 + 0.92 + (3 * Advance));
        return path;
    }

    private static void AddD(XGraphicsPath path, double x)
    {
        path.StartFigure();
        path.AddLine(x, 1, x, 0);
        path.AddBezier(x, 0, x + 0.98, -0.02, x + 0.98, 1.02, x, 1);
        path.CloseFigure();
        path.StartFigure();
        path.AddLine(x + 0.18, 0.83, x + 0.18, 0.17);
        path.AddBezier(x + 0.18, 0.17, x + 0.68, 0.17, x + 0.68, 0.83, x + 0.18, 0.83);
        path.CloseFigure();
    }

    private static void AddE(XGraphicsPath path, double x) => path.AddPolygon(
    [
        new(x, 0), new(x + 0.6, 0), new(x + 0.6, 0.17), new(x + 0.18, 0.17), new(x + 0.18, 0.41), new(x + 0.5, 0.41),
        new(x + 0.5, 0.58), new(x + 0.18, 0.58), new(x + 0.18, 0.83), new(x + 0.6, 0.83), new(x + 0.6, 1), new(x, 1),
    ]);

    private static void AddM(XGraphicsPath path, double x) => path.AddPolygon(
    [
        new(x, 1), new(x, 0), new(x + 0.2, 0), new(x + 0.46, 0.5), new(x + 0.72, 0), new(x + 0.92, 0), new(x + 0.92, 1),
        new(x + 0.74, 1), new(x + 0.74, 0.36), new(x + 0.46, 0.88), new(x + 0.18, 0.36), new(x + 0.18, 1),
    ]);

    private static void AddO(XGraphicsPath path, double x)
    {
        path.AddEllipse(x, 0, 0.84, 1);
        path.AddEllipse(x + 0.18, 0.17, 0.48, 0.66);
    }
}
