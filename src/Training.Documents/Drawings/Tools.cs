using PdfSharp.Drawing;
using Training.Documents.Typesetting;

namespace Training.Documents.Drawings;

/// <summary>The hook and the tongs, lying; grip to the left.</summary>
internal static class Tools
{
    private static readonly XPen Outline = new(Look.Ink, Look.Line) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round };
    private static readonly XBrush Grip = new XSolidBrush(Look.Ochre);

    public static void DrawHook(XGraphics graphics, double left, double right, double y)
    {
        var bend = right - 13;
        graphics.DrawRectangle(Outline, Grip, left, y - 2.6, 34, 5.2);
        graphics.DrawLine(Outline, left + 34, y - 1.1, bend, y - 1.1);
        graphics.DrawLine(Outline, left + 34, y + 1.1, bend, y + 1.1);
        foreach (var (offset, tip) in ((double, double)[])[(-1.1, 0), (1.1, 2.2)])
        {
            // The crook: down, forward and up again, two parallel curves.
            graphics.DrawBeziers(Outline,
            [
                new(bend, y + offset), new(bend + 2, y + offset), new(bend + 1.5 - offset, y - 10 + offset), new(bend + 7, y - 10 + offset),
                new(bend + 13 - tip, y - 10 + offset), new(bend + 13 - tip, y - 4), new(bend + 12 - tip, y + 1),
            ]);
        }

        graphics.DrawLine(Outline, bend + 12, y + 1, bend + 9.8, y + 1);
    }

    public static void DrawTongs(XGraphics graphics, double left, double right, double y)
    {
        var jaw = right - 24;
        graphics.DrawRectangle(Outline, Grip, left, y - 2.6, 12, 5.2);
        graphics.DrawLine(Outline, left + 12, y - 1.4, jaw, y - 1.4);
        graphics.DrawLine(Outline, left + 12, y + 1.4, jaw, y + 1.4);
        // The trigger under the grip, and the rod that it pulls.
        graphics.DrawBezier(Outline, left + 30, y + 1.4, left + 27, y + 9, left + 14, y + 9, left + 8, y + 6.5);
        graphics.DrawBezier(Outline, left + 32.5, y + 1.4, left + 29, y + 11.4, left + 14, y + 11.2, left + 7, y + 8.6);
        graphics.DrawLine(Outline, left + 8, y + 6.5, left + 7, y + 8.6);
        graphics.DrawLine(Outline, left + 32, y, jaw, y);
        DrawJaw(graphics, jaw, y, side: -1);
        DrawJaw(graphics, jaw, y, side: 1);
        graphics.DrawEllipse(Outline, new XSolidBrush(Look.Paper), jaw - 2.4, y - 2.4, 4.8, 4.8);
    }

    private static void DrawJaw(XGraphics graphics, double x, double y, int side)
    {
        var path = new XGraphicsPath();
        path.AddBezier(x, y + (side * 1), x + 5, y + (side * 10), x + 15, y + (side * 10), x + 24, y + (side * 2.6));
        path.AddLine(x + 24, y + (side * 2.6), x + 23, y + (side * 0.9));
        path.AddBezier(x + 23, y + (side * 0.9), x + 15, y + (side * 6.8), x + 8, y + (side * 6.8), x + 3.6, y + (side * 0.6));
        path.CloseFigure();
        graphics.DrawPath(Outline, new XSolidBrush(Look.Paper), path);
    }
}
