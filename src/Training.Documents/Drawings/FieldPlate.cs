using PdfSharp.Drawing;

namespace Training.Documents.Drawings;

/// <summary>A plate as in a field notebook: a coiled snake, and the two tools that stay between it and a hand.</summary>
internal static class FieldPlate
{
    // The plate is drawn in its own units and scaled to the box.
    private const double Wide = 184;
    private const double Tall = 152;

    /// <summary>Draws the plate as large as the box allows, centred.</summary>
    public static void Draw(XGraphics graphics, XRect box)
    {
        var scale = Math.Min(box.Width / Wide, box.Height / Tall);
        var state = graphics.Save();
        graphics.TranslateTransform(box.X + ((box.Width - (Wide * scale)) / 2), box.Y + ((box.Height - (Tall * scale)) / 2));
        graphics.ScaleTransform(scale, scale);
        CoiledSnake.Draw(graphics, new(92, 52));
        Tools.DrawHook(graphics, left: 4, right: 180, y: 123);
        Tools.DrawTongs(graphics, left: 4, right: 180, y: 142);
        graphics.Restore(state);
    }
}
