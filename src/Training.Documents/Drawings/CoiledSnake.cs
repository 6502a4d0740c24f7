using PdfSharp.Drawing;
using Training.Documents.Typesetting;

namespace Training.Documents.Drawings;

/// <summary>A resting pit viper, coiled, seen from the side and above. Its outline comes from a spiral, not from a picture.</summary>
/// <remarks>
/// The body is laid down from tail to head in short pieces, each white with two edges; a later piece covers what it lies on. That
/// is how the coils hide each other without a hidden-line calculation.
/// </remarks>
internal static class CoiledSnake
{
    private const int Pieces = 280;
    private const double Turns = 2.98;
    private const double OuterRadius = 73;
    private const double InnerRadius = 23;
    private const double Squash = 0.5;
    private const double Pile = 20;
    private const double HalfBody = 9;
    private const double HeadScale = 1.35;
    private const int Saddles = 21;

    private static readonly XPen Outline = new(Look.Ink, Look.Line) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round };
    private static readonly XBrush Skin = new XSolidBrush(Look.Paper);
    private static readonly XBrush Saddle = new XSolidBrush(Look.Ochre);

    public static void Draw(XGraphics graphics, XPoint middle)
    {
        DrawRattle(graphics, middle);
        for (var piece = 0; piece < Pieces; piece++)
        {
            var (from, to) = (piece / (double)Pieces, (piece + 1) / (double)Pieces);
            // Each reaches back a little, or a hairline of what lies below would show between two pieces; what is drawn on the skin
            // reaches back further, for the skin has just covered the end of it.
            Fill(graphics, Skin, middle, Math.Max(0, from - 0.002), to, HalfWidth);
            var again = Math.Max(0, from - 0.005);
            Fill(graphics, Saddle, middle, Math.Max(0, from - 0.003), to, SaddleWidth);
            DrawEdge(graphics, middle, again, to, side: -1);
            DrawEdge(graphics, middle, again, to, side: 1);
        }

        DrawHead(graphics, middle);
    }

    // Along runs from 0 at the tail to 1 at the neck.
    private static XPoint Centre(XPoint middle, double along)
    {
        var radius = OuterRadius + ((InnerRadius - OuterRadius) * Math.Pow(Math.Max(0, along), 0.9));
        var angle = (0.30 + (along * Turns)) * 2 * Math.PI;
        return new(middle.X + (radius * Math.Cos(angle)), middle.Y + (radius * Squash * Math.Sin(angle)) + 8 - (Pile * along));
    }

    private static double HalfWidth(double along)
    {
        var tail = Math.Min(1, 0.22 + (along * 5.2));
        var neck = along > 0.86 ? 1 - ((along - 0.86) / 0.14 * 0.42) : 1;
        return HalfBody * tail * neck;
    }

    private static double SaddleWidth(double along)
    {
        var phase = along * Saddles % 1;
        var diamond = Math.Max(0, 0.36 - Math.Abs(phase - 0.5)) / 0.36;
        return along is < 0.06 or > 0.97 ? 0 : HalfWidth(along) * 0.62 * diamond;
    }

    private static (XPoint Left, XPoint Right) Across(XPoint middle, double along, double halfWidth)
    {
        const double Little = 0.0005;
        var (before, after, here) = (Centre(middle, along - Little), Centre(middle, along + Little), Centre(middle, along));
        var (dx, dy) = (after.X - before.X, after.Y - before.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        var (nx, ny) = (-dy / length * halfWidth, dx / length * halfWidth);
        return (new(here.X + nx, here.Y + ny), new(here.X - nx, here.Y - ny));
    }

    private static void Fill(XGraphics graphics, XBrush brush, XPoint middle, double from, double to, Func<double, double> halfWidth)
    {
        var (start, end) = (halfWidth(from), halfWidth(to));
        if (start + end <= 0) return;
        var (a, b) = (Across(middle, from, start), Across(middle, to, end));
        graphics.DrawPolygon(brush, [a.Left, b.Left, b.Right, a.Right], XFillMode.Winding);
    }

    private static void DrawEdge(XGraphics graphics, XPoint middle, double from, double to, int side)
    {
        var (a, b) = (Across(middle, from, side * HalfWidth(from)).Left, Across(middle, to, side * HalfWidth(to)).Left);
        graphics.DrawLine(Outline, a, b);
    }

    private static void DrawRattle(XGraphics graphics, XPoint middle)
    {
        var (tail, next) = (Centre(middle, 0), Centre(middle, 0.01));
        var length = Math.Sqrt(Math.Pow(tail.X - next.X, 2) + Math.Pow(tail.Y - next.Y, 2));
        var (dx, dy) = ((tail.X - next.X) / length, (tail.Y - next.Y) / length);
        for (var ring = 5; ring >= 0; ring--)
        {
            var (x, y, radius) = (tail.X + (dx * ring * 2.6), tail.Y + (dy * ring * 2.6), 2.3 - (ring * 0.18));
            graphics.DrawEllipse(Outline, Skin, x - radius, y - radius, radius * 2, radius * 2);
        }
    }

    private static void DrawHead(XGraphics graphics, XPoint middle)
    {
        var (neck, before) = (Centre(middle, 1), Centre(middle, 0.99));
        var turn = Math.Atan2(neck.Y - before.Y, neck.X - before.X);
        XPoint At(double forward, double aside) => new(
            neck.X + (HeadScale * ((forward * Math.Cos(turn)) - (aside * Math.Sin(turn)))),
            neck.Y + (HeadScale * ((forward * Math.Sin(turn)) + (aside * Math.Cos(turn)))));

        var head = new XGraphicsPath();
        head.AddBeziers(
        [
            At(-3, -3.8), At(0, -3.9), At(0, -8.4), At(4.5, -8.4), At(10, -8.2), At(13, -5.4), At(20, -4.4), At(23.5, -3.8), At(23.5, 3.8),
            At(20, 4.4), At(13, 5.4), At(10, 8.2), At(4.5, 8.4), At(0, 8.4), At(0, 3.9), At(-3, 3.8),
        ]);
        graphics.DrawPath(Skin, head);
        graphics.DrawPath(Outline, head);
        foreach (var side in (double[])[-1, 1])
        {
            var (eye, pit) = (At(13, side * 4.5), At(18, side * 2.9));
            graphics.DrawEllipse(new XSolidBrush(Look.Ink), eye.X - 1.2, eye.Y - 1.2, 2.4, 2.4);
            graphics.DrawEllipse(new XSolidBrush(Look.Ink), pit.X - 0.5, pit.Y - 0.5, 1, 1);
            graphics.DrawBezier(Outline, At(11.3, side * 5), At(8.5, side * 5.4), At(6, side * 5.8), At(3.6, side * 6.2));
        }
    }
}
