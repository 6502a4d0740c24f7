using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Training.Documents.Fonts;

namespace Training.Documents.Typesetting;

/// <summary>Measures texts in the three faces and fits them into their places. For one thread.</summary>
internal sealed class Ruler(FontFaces faces) : IDisposable
{
    // Unicode: a subset with a map back to characters, so that accents can be found, copied and read aloud.
    private static readonly XPdfFontOptions Embedding = new(PdfFontEncoding.Unicode);

    // Nothing is drawn on it: its size does not matter.
    private readonly XGraphics _measure = XGraphics.CreateMeasureContext(new XSize(1, 1), XGraphicsUnit.Point, XPageDirection.Downwards);
    private readonly Dictionary<(FontRole, double), XFont> _fonts = [];

    /// <summary>The text in its place.</summary>
    /// <exception cref="InvalidOperationException">It does not fit: the greatest lengths of the page are wrong.</exception>
    public FittedText Fit(string text, TextStyle style, double width, double height = double.MaxValue) =>
        Find(text, style, width, height) ?? throw new InvalidOperationException($"A text of {text.Length} characters does not fit {width:0} by {height:0} points.");

    /// <summary>The text in its place, or null where it does not fit.</summary>
    public FittedText? Find(string text, TextStyle style, double width, double height) =>
        FittedText.Find(Composed.Of(text), style, part => Measure(part, style.Role), width, height);

    /// <summary>Width of the widest line.</summary>
    public double WidthOf(FittedText text) => text.Lines.Max(line => Measure(line.TrimEnd(), text.Style.Role)) * text.Size;

    public XFont Font(FontRole role, double size)
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

    public void Dispose() => _measure.Dispose();

    private double Measure(string text, FontRole role)
    {
        const double Reference = 100;
        return _measure.MeasureString(text, Font(role, Reference)).Width / Reference;
    }
}
