using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Training.Documents.Typesetting;

/// <summary>The sheet under the pen: everything that is drawn is drawn inside a tag, in reading order, or as decoration.</summary>
internal sealed class Canvas(XGraphics graphics, StructureBuilder structure, Ruler ruler, double paperHeight)
{
    // A head that comes again on the next page was read before: it is drawn, and nobody reads it twice.
    private bool _isRepeating;

    /// <summary>Writes texts below each other as one element.</summary>
    public void Write(PdfBlockLevelElementTag tag, double x, double y, params IReadOnlyList<FittedText> texts)
    {
        Begin(tag);
        Letter(x, y, texts);
        End();
    }

    /// <summary>Writes texts below each other inside the element that is open.</summary>
    public void Letter(double x, double y, IReadOnlyList<FittedText> texts)
    {
        for (var index = 0; index < texts.Count; index++)
        {
            var text = texts[index];
            var font = ruler.Font(text.Style.Role, text.Size);
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
    }

    /// <summary>Opens an element that holds others.</summary>
    /// <param name="tag">What it is.</param>
    /// <param name="scope">Of a header cell, what it heads (ISO 32000-2, 14.8.5.7): <c>Column</c> or <c>Row</c>.</param>
    public void Begin(PdfBlockLevelElementTag tag, string? scope = null)
    {
        if (_isRepeating) return;
        structure.BeginElement(tag);
        if (scope is null) return;
        var attributes = new PdfDictionary();
        attributes.Elements.SetName("/O", "/Table");
        attributes.Elements.SetName("/Scope", $"/{scope}");
        structure.CurrentStructureElement.Elements["/A"] = attributes;
    }

    /// <summary>Opens a part of the paper.</summary>
    public void Begin(PdfGroupingElementTag tag) => structure.BeginElement(tag);

    public void End()
    {
        if (!_isRepeating) structure.End();
    }

    /// <summary>Draws what a reader who cannot see it does not miss.</summary>
    public void Decorate(Action<XGraphics> draw)
    {
        if (!_isRepeating) structure.BeginArtifact();
        draw(graphics);
        End();
    }

    /// <summary>Draws again what was read before.</summary>
    public void Repeat(Action<Canvas> draw)
    {
        structure.BeginArtifact();
        _isRepeating = true;
        draw(this);
        _isRepeating = false;
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
}
