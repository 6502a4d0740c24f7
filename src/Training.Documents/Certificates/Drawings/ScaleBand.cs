using PdfSharp.Drawing;

namespace Training.Documents.Certificates.Drawings;

/// <summary>A strip of keeled scales down the left edge, like the back of a snake and the spine of a notebook.</summary>
internal static class ScaleBand
{
    private const int Columns = 5;

    // Length of a scale over its width, and how far the next row lies below, over the length.
    private const double Slenderness = 1.5;
    private const double Rise = 0.40;

    // A saddle of the back: so many rows from one to the next, so far from its middle to its tip.
    private const int SaddleRows = 20;
    private const double SaddleReach = 2.6;

    private static readonly XPen Plain = new(CertificateLook.Rule, 0.6);
    private static readonly XPen Light = new(CertificateLook.Paper, 0.7);
    private static readonly XPen Keel = new(CertificateLook.Rule, 0.5);
    private static readonly XBrush Skin = new XSolidBrush(CertificateLook.Paper);
    private static readonly XBrush Saddle = new XSolidBrush(CertificateLook.Ochre);

    /// <summary>Fills the box from edge to edge; scales at the border are cut.</summary>
    public static void Draw(XGraphics graphics, XRect box)
    {
        var width = box.Width / Columns;
        var rows = (int)Math.Ceiling(box.Height / (width * Slenderness * Rise)) + 1;
        var state = graphics.Save();
        graphics.IntersectClip(box);
        // From the tail upwards: each row lies over the one behind it. A saddle that the box would cut is left out.
        var lastSaddle = rows / SaddleRows * SaddleRows;
        for (var row = rows; row >= 0; row--) DrawRow(graphics, box, row, width, hasSaddle: row < lastSaddle);
        graphics.Restore(state);
    }

    private static void DrawRow(XGraphics graphics, XRect box, int row, double width, bool hasSaddle)
    {
        var height = width * Slenderness;
        var top = box.Y + ((row - 1) * height * Rise);
        var (plain, saddle, keels) = (new XGraphicsPath(), new XGraphicsPath(), new XGraphicsPath());
        for (var column = 0; column <= Columns; column++)
        {
            var x = box.X + ((column + (row % 2 == 0 ? 0.5 : 0)) * width);
            AddScale(hasSaddle && IsSaddle(row, (x - box.X - (box.Width / 2)) / width) ? saddle : plain, x, top, width * 0.5, height);
            keels.AddLine(x, top + (height * 0.5), x, top + (height * 0.88));
            // Without it the package joins one keel to the next.
            keels.CloseFigure();
        }

        graphics.DrawPath(Plain, Skin, plain);
        graphics.DrawPath(Light, Saddle, saddle);
        graphics.DrawPath(Keel, keels);
    }

    private static bool IsSaddle(int row, double columnsFromMiddle)
    {
        var rowsFromMiddle = Math.Abs((row % SaddleRows) - (SaddleRows / 2));
        return Math.Abs(columnsFromMiddle) + (rowsFromMiddle * 0.5) <= SaddleReach;
    }

    private static void AddScale(XGraphicsPath path, double x, double top, double halfWidth, double height)
    {
        var (middle, bottom) = (top + (height * 0.55), top + height);
        path.AddBezier(x, top, x + halfWidth, top + (height * 0.1), x + (halfWidth * 1.2), middle, x, bottom);
        path.AddBezier(x, bottom, x - (halfWidth * 1.2), middle, x - halfWidth, top + (height * 0.1), x, top);
        path.CloseFigure();
    }
}
