using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Training.Documents.Fonts;

namespace Training.Documents.Certificates;

/// <summary>The sheet under the pen: everything that is drawn is drawn inside a tag, in reading order, or as decoration.</summary>
internal sealed class Canvas(XGraphics graphics, StructureBuilder structure, FontFaces faces, double paperHeight)
{
    // Unicode: a subset with a map back to characters, so that accents can be found, copied and read aloud.
    private static readonly XPdfFontOptions Embedding = new(PdfFontEncoding.Unicode);

    private readonly Dictionary<(FontRole, double), XFont> _fonts = [];

    public FittedText Fit(string text, TextStyle style, double width, double height = double.MaxValue) =>
        FittedText.Fit(
            string.Join(' ', text.Normalize().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), style, part => Measure(part, style.Role), width, height);

    /// <summary>Writes texts below each other as one element.</summary>
    public void Write(PdfBlockLevelElementTag tag, double x, double y, params IReadOnlyList<FittedText> texts)
    {
        structure.BeginElement(tag);
        for (var index = 0; index < texts.Count; index++)
        {
            var text = texts[index];
            var font = Font(text.Style.Role, text.Size);
            var brush = new XSolidBrush(text.Style.Colour);
            for (var line = 0; line < text.Lines.Count; line++)
            {
                // Between two texts of one element stands a space, or their words would be read as one.
                var isLast = line == text.Lines.Count - 1;
                var letters = isLast && index < texts.Count - 1 ? text.Lines[line] + " " : text.Lines[line];
                var baseline = y + (line * text.LineHeight) + (text.Size * 0.98);
                graphics.DrawString(letters, font, brush, new XPoint(x, baseline));
            }

            y += text.Height;
        }

        structure.End();
    }

    /// <summary>Draws what a reader who cannot see it does not miss.</summary>
    public void Decorate(Action<XGraphics> draw)
    {
        structure.BeginArtifact();
        draw(graphics);
        structure.End();
    }

    /// <summary>Draws what must be described to a reader who cannot see it.</summary>
    public void Illustrate(string alternative, XRect box, Action<XGraphics, XRect> draw)
    {
        // The package writes this box as it comes, and the file counts from the bottom of the paper.
        structure.BeginElement(PdfIllustrationElementTag.Figure, alternative, new(box.X, paperHeight - box.Bottom, box.Width, box.Height));
        draw(graphics, box);
        structure.End();
    }

    private double Measure(string text, FontRole role)
    {
        const double Reference = 100;
        return graphics.MeasureString(text, Font(role, Reference)).Width / Reference;
    }

    private XFont Font(FontRole role, double size)
    {
        if (_fonts.TryGetValue((role, size), out var known)) return known;
        var family = role switch
        {
            FontRole.Display => faces.DisplayFamily,
            FontRole.Text => faces.TextFamily,
            FontRole.Strong => faces.StrongFamily,
        };
        return _fonts[(role, size)] = new(family, size, XFontStyleEx.Regular, Embedding);
    }
}
