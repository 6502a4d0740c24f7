using PdfSharp.Drawing;
using Training.Documents.Typesetting;

namespace Training.Documents.Drawings;

/// <summary>A strip of keeled scales down the left edge, like the back of a snake and the spine of a notebook.</summary>
internal static class ScaleBand
{
    // Length of a scale over its width, and how far the next row lies below, over the length.
    private const double Slenderness = 1.5;
    private const double Rise = 0.40;

    // A saddle of the back: from one to the next so many rows for each column.
    private const int SaddleRowsOfColumn = 4;

    // Pens are chosen for scales of this width; on smaller ones they are finer, or nothing but lines would be seen.
    private const double DrawnWidth = 7.2;

    private static readonly XBrush Skin = new XSolidBrush(Look.Paper);
    private static readonly XBrush Saddle = new XSolidBrush(Look.Ochre);

    /// <summary>Fills the box from edge to edge; scales at the border are cut.</summary>
    /// <param name="graphics">Where to.</param>
    /// <param name="box">The strip.</param>
    /// <param name="columns">Scales side by side.</param>
    public static void Draw(XGraphics graphics, XRect box, int columns)
    {
        var width = box.Width / columns;
        var rows = (int)Math.Ceiling(box.Height / (width * Slenderness * Rise)) + 1;
        var state = graphics.Save();
        graphics.IntersectClip(box);
        // From the tail upwards: each row lies over the one behind it. A saddle that the box would cut is left out.
        var saddleRows = SaddleRowsOfColumn * columns;
        var lastSaddle = rows / saddleRows * saddleRows;
        for (var row = rows; row >= 0; row--) DrawRow(graphics, box, row, columns, hasSaddle: row < lastSaddle);
        graphics.Restore(state);
    }

    private static void DrawRow(XGraphics graphics, XRect box, int row, int columns, bool hasSaddle)
    {
        var width = box.Width / columns;
        var height = width * Slenderness;
        var top = box.Y + ((row - 1) * height * Rise);
        var (plain, saddle, keels) = (new XGraphicsPath(), new XGraphicsPath(), new XGraphicsPath());
        for (var column = 0; column <= columns; column++)
        {
            var x = box.X + ((column + (row % 2 == 0 ? 0.5 : 0)) * width);
            AddScale(hasSaddle && IsSaddle(row, (x - box.X - (box.Width / 2)) / width, columns) ? saddle : plain, x, top, width * 0.5, height);
            keels.AddLine(x, top + (height * 0.5), x, top + (height * 0.88));
            // Without it the package joins one keel to the next.
            keels.CloseFigure();
        }

        var fineness = Math.Min(1, width / DrawnWidth);
        graphics.DrawPath(new XPen(Look.Rule, 0.6 * fineness), Skin, plain);
        graphics.DrawPath(new XPen(Look.Paper, 0.7 * fineness), Saddle, saddle);
        graphics.DrawPath(new XPen(Look.Rule, 0.5 * fineness), keels);
    }

    private static bool IsSaddle(int row, double columnsFromMiddle, int columns)
    {
        var saddleRows = SaddleRowsOfColumn * columns;
        var rowsFromMiddle = Math.Abs((row % saddleRows) - (saddleRows / 2));
        return Math.Abs(columnsFromMiddle) + (rowsFromMiddle * 0.5) <= (columns / 2.0) + 0.1;
    }

    private static void AddScale(XGraphicsPath path, double x, double top, double halfWidth, double height)
    {
        var (middle, bottom) = (top + (height * 0.55), top + height);
        path.AddBezier(x, top, x + halfWidth, top + (height * 0.1), x + (halfWidth * 1.2), middle, x, bottom);
        path.AddBezier(x, bottom, x - (halfWidth * 1.2), middle, x - halfWidth, top + (height * 0.1), x, top);
        path.CloseFigure();
    }
}
